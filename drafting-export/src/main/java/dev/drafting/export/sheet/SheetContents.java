package dev.drafting.export.sheet;

import dev.drafting.core.cut.ChalkPoint;
import dev.drafting.core.cut.ChalkTable;
import dev.drafting.core.cut.CutItem;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.finding.Severity;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.StepDrawing;
import dev.drafting.export.drawing.StrokeStyle;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Goods;
import dev.drafting.knit.Measure;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.sewing.SewnLine;
import dev.drafting.knit.sewing.Step;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a making-up sheet says, section by section. */
final class SheetContents {
  private final Draft draft;
  private final Drawing drawing;
  private final Tape tape;

  SheetContents(Draft draft, Drawing drawing, Tape tape) {
    this.draft = draft;
    this.drawing = drawing;
    this.tape = tape;
  }

  <X extends Exception> void write(SheetWriter<X> sheet) throws X {
    title(sheet);
    findings(sheet);
    adaptations(sheet);
    measures(sheet);
    goods(sheet);
    pieces(sheet);
    strips(sheet);
    stitches(sheet);
    orderOfWork(sheet);
    cautions(sheet);
    chalking(sheet);
    sheet.end();
  }

  private <X extends Exception> void title(SheetWriter<X> sheet) throws X {
    List<String> leads = new ArrayList<>();
    String version = draft.pattern().version();
    leads.add("Making-up sheet" + (version.isBlank() ? "" : ", version " + version));
    String fabrics =
        draft.fabrics().entrySet().stream()
            .map(e -> e.getKey() + " in " + e.getValue().name())
            .collect(Collectors.joining("; "));
    if (!fabrics.isEmpty()) {
      leads.add("Fabrics: " + fabrics);
    }
    sheet.title(draft.name(), leads);
  }

  private <X extends Exception> void findings(SheetWriter<X> sheet) throws X {
    List<Finding> findings = new ArrayList<>(draft.findings());
    findings.sort(Comparator.comparing(Finding::severity).reversed());
    sheet.section("Look at this first");
    if (findings.isEmpty()) {
      sheet.paragraph("Nothing was found that would not sew, lie flat or go on.");
    }
    for (Finding finding : findings) {
      sheet.finding(
          finding.severity() == Severity.NOTE,
          sentence(finding.severity().name()),
          finding.place() + ": " + tape.words(finding.reason()),
          tape.words(finding.remedies().stream().map(Remedy::text).toList()));
    }
  }

  private static String sentence(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT)
        + word.substring(1).toLowerCase(Locale.ROOT);
  }

  private <X extends Exception> void adaptations(SheetWriter<X> sheet) throws X {
    List<String> said = draft.adaptations();
    if (!said.isEmpty()) {
      sheet.section("Changed for these fabrics");
      sheet.bullets(tape.words(said));
    }
  }

  private <X extends Exception> void measures(SheetWriter<X> sheet) throws X {
    sheet.section("Finished measures");
    sheet.paragraph("Of the garment lying flat and at rest. Check them against the one that fits.");
    List<List<String>> rows = new ArrayList<>();
    for (Measure measure : draft.measures()) {
      rows.add(tape.columns(measure.name(), measure.length()));
    }
    List<String> heads = new ArrayList<>(List.of("Measure"));
    heads.addAll(tape.heads());
    sheet.table("Finished measures", heads, rows);
  }

  private <X extends Exception> void goods(SheetWriter<X> sheet) throws X {
    sheet.section("To buy");
    List<List<String>> rows = new ArrayList<>();
    for (Goods goods : draft.goods()) {
      rows.add(List.of(tape.words(goods.what()), tape.words(goods.amount())));
    }
    sheet.table("To buy", List.of("What", "How much"), rows);
  }

  private <X extends Exception> void pieces(SheetWriter<X> sheet) throws X {
    sheet.section("To cut");
    List<Group> pieces =
        drawing.groups().stream()
            .map(piece -> new Group(piece.name(), List.copyOf(piece.strokes())))
            .toList();
    sheet.pieces(pieces, pieces.stream().map(this::size).toList());
    sheet.lines(Arrays.stream(StrokeStyle.values()).filter(this::isExplained).toList());
    List<List<String>> rows = new ArrayList<>();
    for (CutItem item : draft.cutList()) {
      rows.add(
          List.of(
              item.name(), Integer.toString(item.count()), item.cloth(), size(item), item.how()));
    }
    sheet.table("Cut list", List.of("Piece", "How many", "Cloth", "Size", "How"), rows);
  }

  private String size(CutItem item) {
    return tape == Tape.BOTH
        ? item.size()
        : tape.length(item.length()) + " x " + tape.length(item.width());
  }

  private String size(Group piece) {
    Box box = piece.bounds();
    return tape == Tape.INCH
        ? tape.length(box.width()) + " by " + tape.length(box.height())
        : Wording.amount(box.width()) + " by " + Wording.amount(box.height());
  }

  private boolean isExplained(StrokeStyle style) {
    return !style.meaning().isEmpty()
        && drawing.groups().stream().anyMatch(group -> !group.strokes(style).isEmpty());
  }

  private <X extends Exception> void strips(SheetWriter<X> sheet) throws X {
    List<Strip> strips = draft.strips();
    if (!strips.isEmpty()) {
      sheet.section("Strips");
      for (Strip strip : strips) {
        new StripCard(strip, tape).write(sheet);
      }
    }
  }

  private <X extends Exception> void stitches(SheetWriter<X> sheet) throws X {
    sheet.section("Seams and stitches");
    sheet.paragraph(
        "Stitch numbers are those of ISO 4915, classes of seams those of ISO 4916. Try every one on"
            + " a scrap; if an overlocked edge waves, raise the differential feed (1.3 to 2).");
    List<List<String>> rows = new ArrayList<>();
    for (SewnLine line : draft.sewing().lines()) {
      rows.add(
          List.of(
              line.name(),
              line.stitch().toString(),
              line.seamClass().toString(),
              (line.times() > 1 ? line.times() + " of " : "") + tape.length(line.length())));
    }
    sheet.table("Seams and stitches", List.of("Line", "Stitch", "Seam", "Length"), rows);
  }

  private <X extends Exception> void orderOfWork(SheetWriter<X> sheet) throws X {
    sheet.section("Order of work");
    sheet.beginSteps();
    for (Step step : draft.orderOfWork()) {
      sheet.step(
          step.title(),
          tape.words(step.text()),
          StepDrawing.of(draft, step),
          tape.words(step.caution()));
    }
    sheet.endSteps();
  }

  private <X extends Exception> void chalking(SheetWriter<X> sheet) throws X {
    sheet.section("Without paper");
    sheet.paragraph("Instead of printing, a piece can be chalked on the cloth by tape and square.");
    for (CutPiece piece : draft.cutPieces()) {
      ChalkTable table = ChalkTable.of(piece);
      sheet.heading(piece.name());
      sheet.paragraph(table.how());
      List<List<String>> rows = new ArrayList<>();
      for (ChalkPoint point : table.points()) {
        rows.add(row(Integer.toString(rows.size() + 1), point));
      }
      table.notches().forEach(notch -> rows.add(row("-", notch)));
      String up = table.alongFold() ? "Up the fold" : "Up the grain";
      sheet.asideTable(
          piece.name() + ", " + rows.size() + " points",
          List.of("Point", "Begins here", up, "Across"),
          rows);
    }
  }

  private List<String> row(String number, ChalkPoint point) {
    Length up = point.up();
    return List.of(number, point.line(), tape.length(up), tape.length(point.across()));
  }

  private <X extends Exception> void cautions(SheetWriter<X> sheet) throws X {
    sheet.section("Cautions");
    List<String> pairs = new ArrayList<>();
    for (Caution caution : draft.cautions()) {
      pairs.add(caution.topic());
      pairs.add(tape.words(caution.text()));
    }
    sheet.terms(pairs);
  }
}
