package dev.drafting.core.offset;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.List;

/** How often the raw chain, flattened finely, runs counter-clockwise round a point. */
final class Winding {
  private static final Length FINELY = Length.mm(1e-4);
  private static final double BESIDE = 1e-3;

  private final Polyline chain;

  private Winding(Polyline chain) {
    this.chain = chain;
  }

  static Winding of(List<Strand> chain) {
    List<Segment> segments = chain.stream().map(Strand::segment).toList();
    return new Winding(Curve.of(segments).flatten(FINELY));
  }

  /** The winding numbers left and right of a place on a strand. */
  void beside(Segment segment, double at, double length, int[] leftAndRight) {
    Point point = segment.pointAt(at);
    Vector left = segment.directionAt(at).left();
    double off = Math.min(BESIDE, length / 10);
    leftAndRight[0] = round(point.plus(left.times(off)));
    leftAndRight[1] = round(point.plus(left.times(-off)));
  }

  private int round(Point point) {
    int winding = 0;
    for (int i = 1; i < chain.size(); i++) {
      double y0 = chain.y(i - 1) - point.y();
      double y1 = chain.y(i) - point.y();
      if (y0 <= 0 != y1 <= 0) {
        double x0 = chain.x(i - 1) - point.x();
        double x1 = chain.x(i) - point.x();
        double side = x0 * y1 - x1 * y0;
        if (y0 <= 0 && side > 0) {
          winding++;
        } else if (y0 > 0 && side < 0) {
          winding--;
        }
      }
    }
    return winding;
  }
}
