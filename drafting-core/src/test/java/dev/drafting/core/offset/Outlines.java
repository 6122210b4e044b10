package dev.drafting.core.offset;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** Outlines that the tests of this package share. */
final class Outlines {
  private Outlines() {}

  static OffsetEdge edge(String name, double distance, Segment... segments) {
    return OffsetEdge.of(name, Curve.of(segments), Length.mm(distance));
  }

  static OffsetEdge line(String name, double distance, double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return OffsetEdge.of(name, Curve.polyline(points.toArray(new Point[0])), Length.mm(distance));
  }

  static Cubic cubic(
      double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
    return new Cubic(new Point(x0, y0), new Point(x1, y1), new Point(x2, y2), new Point(x3, y3));
  }

  static Arc arc(double x, double y, double radius, double from, double sweep) {
    return Arc.of(new Point(x, y), Length.mm(radius), Angle.degrees(from), Angle.degrees(sweep));
  }

  /** A rectangle from (0, 0) with edges bottom, right, top, left. */
  static List<OffsetEdge> rectangle(
      double width, double height, double bottom, double right, double top, double left) {
    return List.of(
        line("bottom", bottom, 0, 0, width, 0),
        line("right", right, width, 0, width, height),
        line("top", top, width, height, 0, height),
        line("left", left, 0, height, 0, 0));
  }

  /**
   * Half the front of a sleeveless vest, fold on x = 0: hem, side, armhole, shoulder, neck, fold.
   *
   * @param distances of hem, side, armhole, shoulder, neck, fold
   */
  static List<OffsetEdge> vest(double... distances) {
    return List.of(
        edge("hem", distances[0], cubic(0, 0, 80, 0, 160, 4, 240, 12)),
        edge("side", distances[1], cubic(240, 12, 236, 120, 226, 230, 232, 360)),
        edge("armhole", distances[2], cubic(232, 360, 190, 370, 160, 430, 168, 560)),
        line("shoulder", distances[3], 168, 560, 96, 588),
        edge("neck", distances[4], cubic(96, 588, 80, 500, 50, 470, 0, 470)),
        line("fold", distances[5], 0, 470, 0, 0));
  }
}
