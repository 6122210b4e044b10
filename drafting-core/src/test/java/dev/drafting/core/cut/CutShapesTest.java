package dev.drafting.core.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.MarkingLine;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.pattern.SharedPaper;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cut lines, notches, labels and transfers of pieces that can be reckoned in the head. */
class CutShapesTest {
  private static final SeamFinish SEAM = SeamFinish.of(Length.mm(7));

  private static CutPiece cut(Piece piece) {
    return CutPlan.of(Pattern.of("garment", List.of(piece), List.of())).pieces().get(0);
  }

  /** However sharp it meets the fold: unfolded, the edge goes on into its mirror image. */
  @Test
  void theCutLineGoesStraightOnAcrossTheFold() {
    Point tip = new Point(0, 0);
    Point side = new Point(60, 60 / Math.tan(Math.toRadians(8)));
    Point top = new Point(0, side.y());
    Piece half =
        Piece.of(
            "godet",
            List.of(
                Edge.of("slope", Curve.line(tip, side)).withFinish(SEAM),
                Edge.of("top", Curve.line(side, top)).withFinish(SEAM),
                Edge.onFold(Curve.line(top, tip))));
    double beyond = 7 / Math.sin(Math.toRadians(8));
    assertEquals(-beyond, cut(half).cutLine().bounds().minY(), 1e-6);
    for (int first = 1; first < 3; first++) {
      Curve told = cut(Rectangles.toldFrom(half, first)).cutLine();
      assertEquals(-beyond, told.bounds().minY(), 1e-6, "told from edge " + first);
      assertEquals(0, told.bounds().minX(), 1e-9, "told from edge " + first);
    }
  }

  /** The corner of a square cut off: its tip lies 7 mm from the corner instead of 7 sqrt 2. */
  @Test
  void aCornerIsTreatedAsThePieceSays() {
    Piece square = Rectangles.piece("pocket", 100, 100);
    for (Edge edge : square.edges()) {
      square = square.withFinish(edge.name(), SEAM);
    }
    assertEquals(114 * 114, cut(square).cutLine().areaSquareMm(), 1e-6);
    Piece bevelled = square.withCorner("right", "top", CornerTreatment.bevel());
    assertEquals(114 * 114 - 7 * 7 / 2.0, cut(bevelled).cutLine().areaSquareMm(), 1e-6);
  }

  /** Sewn at the very edge of the cloth there is no line to draw beside the cut line. */
  @Test
  void aLineOnTheCutLineIsNotDrawn() {
    Profile edge =
        Profile.of(
            new ProfileLine(LineRole.CUT, Length.mm(5)),
            new ProfileLine(LineRole.JOIN, Length.mm(5)));
    Piece piece =
        Rectangles.piece("pocket", 100, 100)
            .withFinish("top", new Finishes.Other("sewn at the edge", edge));
    assertEquals(List.of(), cut(piece).lines());
    Piece inside =
        piece.withFinish(
            "top",
            new Finishes.Other(
                "sewn inside",
                Profile.of(
                    new ProfileLine(LineRole.CUT, Length.mm(5)),
                    new ProfileLine(LineRole.JOIN, Length.mm(4.9)))));
    assertEquals(
        List.of("top: join line"), cut(inside).lines().stream().map(DerivedLine::label).toList());
  }

  /** Both sides of a skirt are mirrored at the fold of its hem, the one after it and before it. */
  @Test
  void bothSidesFollowTheTurnedHem() {
    double lean = 300 / Math.tan(Math.toRadians(80));
    Point a = new Point(0, 0);
    Point b = new Point(200, 0);
    Point c = new Point(200 - lean, 300);
    Point d = new Point(lean, 300);
    Piece skirt =
        Piece.of(
            "skirt",
            List.of(
                Edge.of("hem", Curve.line(a, b)).withFinish(Finishes.hemOnce(20)),
                Edge.of("right", Curve.line(b, c)).withFinish(SEAM),
                Edge.of("waist", Curve.line(c, d)),
                Edge.of("left", Curve.line(d, a)).withFinish(SEAM)));
    double shift = 20 / Math.tan(Math.toRadians(80));
    double leaning = 320 / Math.sin(Math.toRadians(80));
    for (int first = 0; first < 4; first++) {
      CutPiece cut = cut(Rectangles.toldFrom(skirt, first));
      Curve right = line(cut, "right: join line");
      Curve left = line(cut, "left: join line");
      assertEquals(0, right.start().distanceTo(new Point(200 - shift, -20)).toMm(), 1e-6);
      assertEquals(0, left.end().distanceTo(new Point(shift, -20)).toMm(), 1e-6);
      assertEquals(leaning, right.length().toMm(), 1e-6);
      assertEquals(leaning, left.length().toMm(), 1e-6);
    }
  }

  private static Curve line(CutPiece cut, String label) {
    return cut.lines().stream()
        .filter(line -> line.label().equals(label))
        .findFirst()
        .orElseThrow()
        .curve();
  }

  @Test
  void aPieceThatIsCutOnceLiesRightSideUp() {
    Piece once = Rectangles.piece("pocket", 100, 100).withFinish("top", SEAM);
    assertEquals(
        List.of(
            "cut 1 from body cloth",
            "right side of the cloth up",
            "allowances included: bottom, right, left none; top 7 mm"),
        cut(once).labels());
  }

  /** The other cut line of a strap 10 mm wide lies nearer to its seam than many a notch. */
  @Test
  void aNotchOfANarrowStrapLiesOnItsOwnSide() {
    Piece strap =
        Rectangles.piece("strap", 10, 300)
            .withFinish("right", SEAM)
            .withFinish("left", SEAM)
            .withNotch(Notch.of("right", Length.mm(120), "middle"));
    CutNotch notch = cut(strap).notches().get(0);
    assertEquals(0, notch.at().distanceTo(new Point(17, 120)).toMm(), 1e-9);
    assertEquals(0, notch.inward().minus(new Vector(-1, 0)).length().toMm(), 1e-9);
  }

  /** An inner corner rounded with 5 mm: the cut line has no point 7 mm outside of it. */
  @Test
  void aNotchWithoutACutLineOfItsOwnLiesOnTheNearest() {
    Arc inner = Arc.of(new Point(105, 55), Length.mm(5), Angle.degrees(-90), Angle.degrees(-90));
    Curve rim =
        Curve.of(
            List.of(
                new Line(new Point(200, 0), new Point(200, 50)),
                new Line(new Point(200, 50), inner.start()),
                inner,
                new Line(inner.end(), new Point(100, 100)),
                new Line(new Point(100, 100), new Point(0, 0))));
    double first = 50 + 95 + 5 * Math.toRadians(20);
    Piece pocket =
        Rectangles.foot("pocket", 200, rim)
            .withFinish("rim", SEAM)
            .withNotch(Notch.of("rim", Length.mm(first), "dot"))
            .withNotch(Notch.of("rim", Length.mm(25), "plain"));
    CutPiece cut = cut(pocket);
    CutNotch notch = cut.notches().get(0);
    // the cut lines of both sides meet there, 7 mm from each
    assertEquals(0, notch.at().distanceTo(new Point(107, 57)).toMm(), 1e-9);
    assertEquals(0, cut.notches().get(1).at().distanceTo(new Point(207, 25)).toMm(), 1e-9);
  }

  /** Of two necks on one paper the shallower is cut and the deeper is marked, in one line. */
  @Test
  void aTransferIsOneLineWhereverTheInnerPieceBegins() {
    Piece back = Rectangles.piece("back", 200, 300);
    Piece front =
        Piece.of(
            "front",
            List.of(
                Edge.of("bottom", Curve.line(new Point(0, 0), new Point(200, 0))),
                Edge.of("right", Curve.line(new Point(200, 0), new Point(200, 300))),
                Edge.of("shoulder", Curve.line(new Point(200, 300), new Point(120, 300))),
                Edge.of("neck", Curve.line(new Point(120, 300), new Point(60, 200))),
                Edge.of("slit", Curve.line(new Point(60, 200), new Point(0, 240))),
                Edge.of("left", Curve.line(new Point(0, 240), new Point(0, 0)))));
    double marked = Math.hypot(60, 100) + Math.hypot(60, 40);
    for (int first = 0; first < 6; first++) {
      Pattern pattern =
          Pattern.of("vest", List.of(back, Rectangles.toldFrom(front, first)), List.of())
              .withSharedPaper(SharedPaper.of("both", "back", "front"));
      CutPlan plan = CutPlan.of(pattern);
      assertEquals(List.of(), plan.findings());
      List<MarkingLine> lines = plan.pieces().get(0).markings();
      assertEquals(
          List.of("neck and slit of front: transfer"),
          lines.stream().map(MarkingLine::label).toList(),
          "told from edge " + first);
      assertEquals(marked, lines.get(0).curve().length().toMm(), 1e-6);
    }
  }

  /** Nothing in common: the whole cut line of the inner piece is marked. */
  @Test
  void aPieceWithinAnotherIsMarkedAllRound() {
    CutPlan plan = CutPlan.of(within(new Vector(50, 50)));
    assertEquals(List.of(), plan.findings());
    List<MarkingLine> lines = plan.pieces().get(0).markings();
    assertEquals(
        List.of("bottom and right and top and left of lining: transfer"),
        lines.stream().map(MarkingLine::label).toList());
    assertEquals(2 * (100 + 80), lines.get(0).curve().length().toMm(), 1e-6);
    assertEquals(
        List.of("paper.too-small"),
        CutPlan.of(within(new Vector(101, 50))).findings().stream().map(Finding::id).toList());
  }

  private static Pattern within(Vector at) {
    Transform moved = Transform.translation(at);
    Piece lining =
        Piece.of(
            "lining",
            Rectangles.piece("lining", 100, 80).edges().stream()
                .map(edge -> Edge.of(edge.name(), edge.curve().map(moved)))
                .toList());
    return Pattern.of("vest", List.of(Rectangles.piece("back", 200, 300), lining), List.of())
        .withSharedPaper(SharedPaper.of("both", "back", "lining"));
  }

  @Test
  void whatDoesNotShareAPaperHasOneOfItsOwn() {
    Piece sleeve = Rectangles.piece("sleeve", 80, 40);
    Piece back = Rectangles.piece("back", 200, 300);
    Piece front = Rectangles.piece("front", 200, 280);
    SharedPaper both = SharedPaper.of("both", "back", "front");
    Pattern pattern =
        Pattern.of("vest", List.of(back, front, sleeve), List.of()).withSharedPaper(both);
    assertEquals(List.of("both", "sleeve"), papers(pattern));
    Piece uncut = Rectangles.piece("back", 200, 8).withFinish("top", Finishes.foldedBand(20, 5));
    assertEquals(List.of("front", "sleeve"), papers(pattern.withPiece(uncut)));
    Piece low = Rectangles.piece("front", 200, 8).withFinish("top", Finishes.foldedBand(20, 5));
    assertEquals(List.of("back", "sleeve"), papers(pattern.withPiece(low)));
  }

  private static List<String> papers(Pattern pattern) {
    return CutPlan.of(pattern).pieces().stream().map(CutPiece::name).toList();
  }
}
