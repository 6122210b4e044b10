package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.trace.EdgeReport;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.RefusedPoint;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.TruedPiece;
import java.util.ArrayList;
import java.util.List;

/**
 * What was traced under what it was trued to: the strokes of the pencil, the finished edges over
 * them, the points that were refused, and how sure each edge is, in words.
 *
 * <pre>{@code
 * Tracing pocket = Tracing.of("pocket", Extent.HALF_ON_FOLD, List.of(TracedEdge.of("bottom", 0, 0, 20, 0.2, 40, -0.1, 60, 0), TracedEdge.of("side", 60, 0, 60.2, 30, 59.9, 60, 60, 80), TracedEdge.of("top", 60, 80, 40, 80.2, 20, 79.9, 0, 80)));
 * TracingDrawing.of("pocket", List.of(pocket), List.of(Truing.of(pocket).result())).title();  // => pocket, traced and trued
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class TracingDrawing {
  private static final Length GAP = Length.mm(60);
  private static final Length HEADING = Length.mm(7);
  private static final Length LETTERS = Length.mm(5);
  private static final double STEP = 9;
  private static final double MARK = 3;

  private TracingDrawing() {}

  /**
   * Draws tracings and their pieces.
   *
   * @param title of what garment
   * @param tracings what was traced
   * @param trued what each of them was trued to, in the same order
   * @return one group for each piece; of a whole piece both halves
   * @throws DraftingException if there are not as many pieces as tracings
   */
  public static Drawing of(String title, List<Tracing> tracings, List<TruedPiece> trued) {
    if (tracings.size() != trued.size()) {
      throw DraftingException.of("there are not as many pieces as tracings")
          .at(title)
          .value(trued.size() + " pieces")
          .accepted(tracings.size() + " pieces, in the order of the tracings");
    }
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < tracings.size(); i++) {
      groups.add(group(tracings.get(i), trued.get(i)));
    }
    return Drawing.sideBySide(title + ", traced and trued", groups, GAP);
  }

  private static Group group(Tracing tracing, TruedPiece trued) {
    Transform placement = trued.report().placement();
    List<Element> elements = new ArrayList<>();
    for (TracedEdge stroke : tracing.edges()) {
      elements.add(
          new Stroke(StrokeStyle.TRACED, stroke.name() + " traced", line(stroke, placement)));
    }
    for (Edge edge : trued.piece().edges()) {
      StrokeStyle style = edge.isOnFold() ? StrokeStyle.FOLD : StrokeStyle.FINISHED_EDGE;
      elements.add(new Stroke(style, edge.name(), edge.curve()));
      if (tracing.extent() == Extent.WHOLE && !edge.isOnFold()) {
        Curve opposite = edge.curve().map(Transform.mirrorInFold());
        elements.add(new Stroke(style, edge.name() + " opposite", opposite));
      }
    }
    for (EdgeReport report : trued.report().edges()) {
      report.refused().forEach(point -> refused(elements, point));
    }
    words(elements, tracing, trued);
    return new Group(tracing.piece(), elements);
  }

  private static Curve line(TracedEdge stroke, Transform placement) {
    Polyline points = stroke.points().map(placement);
    List<Point> line = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      if (i == 0 || !points.point(i).equals(points.point(i - 1))) {
        line.add(points.point(i));
      }
    }
    return Curve.polyline(line.toArray(new Point[0]));
  }

  private static void refused(List<Element> elements, RefusedPoint point) {
    double x = point.placed().x();
    double y = point.placed().y();
    Curve mark =
        Curve.polyline(
            new Point(x - MARK, y),
            new Point(x, y - MARK),
            new Point(x + MARK, y),
            new Point(x, y + MARK),
            new Point(x - MARK, y));
    elements.add(new Stroke(StrokeStyle.FINDING, "refused", mark));
  }

  private static void words(List<Element> elements, Tracing tracing, TruedPiece trued) {
    Box box = new Group(tracing.piece(), elements).bounds();
    double y = box.minY() - 16;
    elements.add(Label.of(tracing.piece(), new Point(box.minX(), y), HEADING));
    for (EdgeReport report : trued.report().edges()) {
      y -= STEP;
      elements.add(Label.of(words(report), new Point(box.minX(), y), LETTERS));
      if (!report.refused().isEmpty()) {
        y -= STEP;
        String refused = "refused, a diamond each: " + report.refused().size();
        elements.add(Label.of(refused, new Point(box.minX(), y), LETTERS).asFinding());
      }
    }
  }

  private static String words(EdgeReport report) {
    return report.edge()
        + (report.isStraight() ? ": straight, " : ": curved, ")
        + report.length().text(LengthUnit.MM)
        + " ± "
        + report.lengthUncertainty().text(LengthUnit.MM)
        + "; traced within "
        + report.largest().text(LengthUnit.MM);
  }
}
