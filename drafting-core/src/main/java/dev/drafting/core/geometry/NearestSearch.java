package dev.drafting.core.geometry;

import dev.drafting.core.measure.Length;
import java.util.List;

/**
 * The nearest point of a curve: runs of segments whose box is further away than the best point so
 * far are left out, the nearer run is looked at first.
 */
final class NearestSearch {
  private final List<Segment> segments;
  private final SegmentTree tree;
  private final Point point;
  private int segment;
  private double parameter;
  private double distance = Double.POSITIVE_INFINITY;

  private NearestSearch(List<Segment> segments, SegmentTree tree, Point point) {
    this.segments = segments;
    this.tree = tree;
    this.point = point;
  }

  static Nearest of(Curve curve, SegmentTree tree, Point point) {
    NearestSearch search = new NearestSearch(curve.segments(), tree, point);
    search.visit(1);
    return new Nearest(
        curve.segments().get(search.segment).pointAt(search.parameter),
        Length.mm(curve.alongAt(search.segment, search.parameter)),
        Length.mm(search.distance));
  }

  /** The parameter of the point of one segment that is nearest to a point. */
  static double onSegment(Segment segment, Point point) {
    if (segment instanceof Cubic cubic) {
      return new CubicDistance(cubic, point).nearest();
    }
    return segment instanceof Arc arc ? onArc(arc, point) : onLine(segment, point);
  }

  private void visit(int node) {
    double bound = Math.sqrt(tree.squaredDistance(node, point.x(), point.y()));
    if (tree.isEmpty(node) || bound > distance * (1 + 1e-12)) {
      return;
    }
    int at = tree.segment(node);
    if (at >= 0) {
      look(at);
      return;
    }
    double left = tree.squaredDistance(2 * node, point.x(), point.y());
    double right = tree.squaredDistance(2 * node + 1, point.x(), point.y());
    int first = left <= right ? 2 * node : 2 * node + 1;
    visit(first);
    visit(first ^ 1);
  }

  private void look(int at) {
    double t = onSegment(segments.get(at), point);
    double found = segments.get(at).pointAt(t).gap(point);
    if (found < distance || (found == distance && at < segment)) {
      segment = at;
      parameter = t;
      distance = found;
    }
  }

  private static double onLine(Segment line, Point point) {
    Vector way = line.end().minus(line.start());
    double t = point.minus(line.start()).dot(way) / way.dot(way);
    return t > 0 ? Math.min(1, t) : 0;
  }

  private static double onArc(Arc arc, Point point) {
    Vector spoke = point.minus(arc.centre());
    double turn = arc.start().minus(arc.centre()).turnInRadians(spoke);
    double sweep = arc.sweepRadians();
    double round = 2 * Math.PI;
    double t =
        (sweep > 0 ? (turn < 0 ? turn + round : turn) : (turn > 0 ? turn - round : turn)) / sweep;
    if (t >= 0 && t <= 1) {
      return t;
    }
    return arc.start().gap(point) <= arc.end().gap(point) ? 0 : 1;
  }
}
