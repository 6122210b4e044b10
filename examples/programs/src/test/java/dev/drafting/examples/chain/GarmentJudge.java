package dev.drafting.examples.chain;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.SeamCheck;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.LaidPiece;
import dev.drafting.core.lay.LayPlan;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Piece;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.dxf.PieceFile;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripSection;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Finds what a draft must never have: each fault is said in words. */
final class GarmentJudge {
  /** As wide as no piece is. */
  private static final Cloth TABLE = Cloth.of(Length.cm(400)).foldedLengthwise();

  private static final Length SEWN = Length.mm(0.01);
  private static final double LAID_MM = 0.01;

  private final Draft draft;
  private final List<String> faults = new ArrayList<>();

  private GarmentJudge(Draft draft) {
    this.draft = draft;
  }

  /** All faults of a draft. */
  static List<String> faults(Draft draft) throws IOException {
    GarmentJudge judge = new GarmentJudge(draft);
    judge.outlines();
    judge.seams();
    judge.strips();
    judge.words();
    for (String cloth : draft.fabrics().keySet()) {
      judge.lay(draft.lay(cloth, TABLE).plan(1, 0));
    }
    judge.drawings();
    return List.copyOf(judge.faults);
  }

  private void require(boolean holds, String otherwise) {
    if (!holds) {
      faults.add(otherwise);
    }
  }

  private void outlines() {
    for (Piece piece : draft.pattern().pieces()) {
      require(Outlines.isSimple(piece.outline()), piece.name() + " crosses itself");
    }
    for (CutPiece piece : draft.cutPieces()) {
      require(Outlines.isSimple(piece.cutLine()), "cut " + piece.name() + " crosses itself");
    }
  }

  private void seams() {
    for (SeamCheck seam : Assembly.of(draft.pattern()).seamChecks()) {
      require(
          seam.seam().isMirrored() || seam.matches(SEWN),
          "seam " + seam.seam().name() + " is off by " + seam.difference());
    }
  }

  private void strips() {
    for (Strip strip : draft.strips()) {
      double sections = 0;
      for (StripSection section : strip.sections()) {
        require(section.onStrip().isPositive(), strip.name() + " has a section without length");
        sections += section.onStrip().toMm();
      }
      require(
          Math.abs(sections - strip.loop().toMm()) < SEWN.toMm(),
          strip.name() + " is " + strip.loop() + ", its sections " + sections + " mm");
    }
  }

  private void words() {
    for (Finding finding : draft.findings()) {
      require(!finding.reason().isBlank(), "a finding without a reason");
    }
    require(!draft.orderOfWork().isEmpty(), "nothing to sew");
    require(!draft.goods().isEmpty(), "nothing to buy");
  }

  private void lay(LayPlan plan) {
    double width = plan.cloth().tableWidth().toMm() + LAID_MM;
    List<LaidPiece> laid = plan.pieces();
    for (int i = 0; i < laid.size(); i++) {
      Curve outline = laid.get(i).cutLine();
      Box box = outline.bounds();
      boolean inside = box.minX() > -LAID_MM && box.minY() > -LAID_MM && box.maxY() < width;
      require(inside, laid.get(i) + " lies off the cloth");
      for (int j = 0; j < i; j++) {
        Curve other = laid.get(j).cutLine();
        double bearable = LAID_MM * outline.length().toMm();
        require(
            !meet(box, other.bounds()) || Outlines.overlap(outline, other) <= bearable,
            laid.get(i) + " lies over " + laid.get(j));
      }
    }
  }

  private static boolean meet(Box a, Box b) {
    return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
  }

  /** What anybody measures in the files is what the draft says: the cut lines at true size. */
  private void drawings() throws IOException {
    ByteArrayOutputStream svg = new ByteArrayOutputStream();
    SvgFormat.of().write(DraftDrawing.of(draft), svg);
    faults.addAll(TrueSize.ofDrawing(svg.toString(StandardCharsets.UTF_8), draft.cutPieces()));
    ByteArrayOutputStream dxf = new ByteArrayOutputStream();
    PieceFile.of(draft).write(dxf);
    faults.addAll(TrueSize.ofPieces(dxf.toString(StandardCharsets.UTF_8), draft.cutPieces()));
  }
}
