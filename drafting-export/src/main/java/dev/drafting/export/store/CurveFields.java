package dev.drafting.export.store;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A curve as lists of numbers: its start as x and y, then every segment in order of travel. A line
 * is its end, a cubic its two handles and its end, an arc the eight numbers of {@link Arc#toArray}.
 */
final class CurveFields {
  private CurveFields() {}

  static List<double[]> of(Curve curve) {
    List<double[]> lists = new ArrayList<>();
    lists.add(xy(curve.start()));
    curve.segments().forEach(segment -> lists.add(numbers(segment)));
    return lists;
  }

  private static double[] xy(Point point) {
    return new double[] {point.x(), point.y()};
  }

  private static double[] numbers(Segment segment) {
    if (segment instanceof Cubic cubic) {
      Point one = cubic.control1();
      Point two = cubic.control2();
      return new double[] {one.x(), one.y(), two.x(), two.y(), cubic.end().x(), cubic.end().y()};
    }
    return segment instanceof Arc arc ? arc.toArray() : xy(segment.end());
  }

  static Curve read(Node node) {
    List<double[]> lists = node.list(Node::numbers);
    require(node, lists.size() > 1 && lists.get(0).length == 2);
    Point at = new Point(lists.get(0)[0], lists.get(0)[1]);
    List<Segment> segments = new ArrayList<>();
    for (double[] numbers : lists.subList(1, lists.size())) {
      Segment segment = segment(at, node, numbers);
      segments.add(segment);
      at = segment.end();
    }
    return node.placed(() -> Curve.of(segments));
  }

  private static Segment segment(Point start, Node node, double[] n) {
    require(node, n.length == 2 || n.length == 6 || n.length == 8);
    return switch (n.length) {
      case 2 -> new Line(start, new Point(n[0], n[1]));
      case 6 ->
          new Cubic(start, new Point(n[0], n[1]), new Point(n[2], n[3]), new Point(n[4], n[5]));
      default -> node.placed(() -> Arc.of(n));
    };
  }

  private static void require(Node node, boolean suits) {
    if (!suits) {
      throw node.fault("this is no curve")
          .accepted("its start, then 2 numbers for a line, 6 for a cubic, 8 for an arc");
    }
  }
}
