package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import dev.drafting.core.trace.DrawnRectangle;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet of known size that lay beside the pieces: all strokes are put right by it, and it is no
 * piece itself.
 */
final class SheetReader {
  private static final String NAME = "sheet";
  private static final Length SMALLEST = Length.mm(20);
  private static final Length LARGEST = Length.mm(5_000);

  /** Of the tangent of a turn; what a line of a drawing is divided into does not turn at all. */
  private static final double STRAIGHT = 1e-9;

  private SheetReader() {}

  /** Strokes at their true size, and what the sheet says of them. */
  record Corrected(List<Stroke> strokes, List<Finding> findings) {}

  static Corrected read(Fields garment, List<Stroke> strokes) {
    return garment
        .find(NAME)
        .map(sheet -> corrected(sheet, strokes))
        .orElseGet(() -> new Corrected(strokes, List.of()));
  }

  private static Corrected corrected(Entry sheet, List<Stroke> strokes) {
    Fields fields = sheet.fields("width", "height");
    Length width = fields.get("width").length(SMALLEST, LARGEST);
    Length height = fields.get("height").length(SMALLEST, LARGEST);
    List<Stroke> drawn = strokes.stream().filter(stroke -> stroke.piece().equals(NAME)).toList();
    if (drawn.size() != 1) {
      throw sheet.place(
          DraftingException.of("the sheet is not in the tracing")
              .value(drawn.size() + " strokes called " + NAME)
              .accepted("one, round the four corners of the sheet"));
    }
    List<Point> corners = corners(drawn.get(0));
    DrawnRectangle rectangle = rectangle(drawn.get(0), width, height, corners);
    List<Stroke> others = new ArrayList<>();
    for (Stroke stroke : strokes) {
      if (!stroke.piece().equals(NAME)) {
        others.add(corrected(stroke, rectangle));
      }
    }
    return new Corrected(others, findings(rectangle, corners, width, height));
  }

  private static DrawnRectangle rectangle(
      Stroke drawn, Length width, Length height, List<Point> corners) {
    try {
      return DrawnRectangle.of(
          width, height, corners.get(0), corners.get(1), corners.get(2), corners.get(3));
    } catch (DraftingException e) {
      throw e.at(drawn.where());
    }
  }

  private static Stroke corrected(Stroke stroke, DrawnRectangle sheet) {
    try {
      return stroke.along(sheet.corrected(stroke.line()));
    } catch (DraftingException e) {
      throw e.at(stroke.where());
    }
  }

  /** The first point and those where the stroke turns, closed or not. */
  private static List<Point> corners(Stroke drawn) {
    Polyline line = drawn.line();
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      boolean isEnd = i == 0 || i == line.size() - 1;
      if (isEnd || isTurn(line.point(i - 1), line.point(i), line.point(i + 1))) {
        corners.add(line.point(i));
      }
    }
    if (corners.size() > 1 && corners.get(0).equals(corners.get(corners.size() - 1))) {
      corners.remove(corners.size() - 1);
    }
    if (corners.size() != 4) {
      throw DraftingException.of("the sheet does not have four corners")
          .at(drawn.where())
          .value(corners.size() + " corners")
          .accepted("lower left, lower right, upper right and upper left");
    }
    return corners;
  }

  private static boolean isTurn(Point before, Point at, Point after) {
    var in = at.minus(before);
    var out = after.minus(at);
    return Math.abs(in.cross(out)) > STRAIGHT * Math.abs(in.dot(out)) || in.dot(out) < 0;
  }

  private static List<Finding> findings(
      DrawnRectangle rectangle, List<Point> corners, Length width, Length height) {
    List<Finding> findings = new ArrayList<>();
    findings.add(
        Finding.note(
            "trace.sheet",
            Place.draft(),
            "all tracings were put right by the sheet: " + rectangle));
    Length across = side(corners, 0, 1).plus(side(corners, 2, 3));
    Length up = side(corners, 1, 2).plus(side(corners, 3, 0));
    double seen = Math.log(across.ratioTo(up));
    double said = Math.log(width.ratioTo(height));
    if (Math.abs(seen + said) < Math.abs(seen - said)) {
      findings.add(
          Finding.warning(
                  "trace.sheet-on-its-side",
                  Place.draft(),
                  "the sheet looks as if its height were its width")
              .withRemedy(
                  Remedy.of(
                      "Begin at the other corner, or exchange width and height of the sheet.")));
    }
    return findings;
  }

  private static Length side(List<Point> corners, int from, int to) {
    return corners.get(from).distanceTo(corners.get(to));
  }
}
