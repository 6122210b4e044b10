package dev.drafting.core.offset;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import java.util.List;
import org.locationtech.jts.index.intervalrtree.SortedPackedIntervalRTree;

/**
 * How often the raw chain runs counter-clockwise round a point: the crossings of a ray to the right
 * with the strands themselves, not with chords. Strands are looked up by the height of the ray.
 */
final class Winding {
  private static final double[] BESIDE = {1e-8, 1e-6, 1e-4};
  private static final double SMALLEST = 1e-12;

  private final SortedPackedIntervalRTree byHeight = new SortedPackedIntervalRTree();

  private Winding(List<Strand> chain) {
    for (Strand strand : chain) {
      Segment segment = strand.segment();
      Box box = segment.bounds();
      byHeight.insert(box.minY(), box.maxY(), segment);
    }
  }

  static Winding of(List<Strand> chain) {
    return new Winding(chain);
  }

  /**
   * The winding numbers left and right of a place on a strand, as near beside it as numbers can
   * tell. They differ by one unless other strands lie on this one; by more where these run the same
   * way.
   */
  int[] beside(Segment segment, double at, double length) {
    Point point = segment.pointAt(at);
    Vector left = segment.directionAt(at).left();
    int[] found = {0, 0};
    for (int i = 0; i < BESIDE.length && found[0] <= found[1]; i++) {
      double near = Math.min(BESIDE[i], length / 10);
      found[0] = round(point.plus(left.times(near)));
      found[1] = round(point.plus(left.times(-near)));
    }
    return found;
  }

  private int round(Point point) {
    int[] winding = {0};
    byHeight.query(point.y(), point.y(), segment -> winding[0] += passes((Segment) segment, point));
    return winding[0];
  }

  private static int passes(Segment segment, Point point) {
    return segment instanceof Line line
        ? passes(line.start(), line.end(), point)
        : passes(Stretch.of(segment), point);
  }

  private static int passes(Stretch stretch, Point point) {
    if (!stretch.reaches(point)) {
      return 0;
    }
    if (stretch.isRightOf(point) || stretch.size() < SMALLEST) {
      return above(stretch.end(), point) - above(stretch.start(), point);
    }
    return passes(stretch.half(true), point) + passes(stretch.half(false), point);
  }

  private static int above(Point end, Point point) {
    return end.y() > point.y() ? 1 : 0;
  }

  /** One upwards, minus one downwards, zero where the ray misses the line. */
  private static int passes(Point start, Point end, Point point) {
    int way = above(end, point) - above(start, point);
    if (way == 0) {
      return 0;
    }
    double side =
        (end.x() - start.x()) * (point.y() - start.y())
            - (end.y() - start.y()) * (point.x() - start.x());
    return side * way > 0 ? way : 0;
  }
}
