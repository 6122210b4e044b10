package dev.drafting.core.geometry;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.util.List;

/**
 * Straight stretches for a curve, with points on the curve. A chord of a cubic strays from it by at
 * most h^2/8 times the greatest second derivative, which a cubic has at one of its ends; a chord of
 * an arc by its sagitta.
 */
final class Flattening {
  private Flattening() {}

  static double checked(Length tolerance) {
    if (!tolerance.isPositive()) {
      throw DraftingException.of("a tolerance is not above zero")
          .value(tolerance)
          .accepted("a length above 0 mm");
    }
    return tolerance.toMm();
  }

  static Polyline of(List<Segment> segments, Length tolerance) {
    double allowed = checked(tolerance);
    double total = 1;
    int[] pieces = new int[segments.size()];
    for (int i = 0; i < pieces.length; i++) {
      double needed = Math.max(1, Math.ceil(pieces(segments.get(i), allowed)));
      total += needed;
      if (total > Curve.MOST) {
        throw DraftingException.of("a tolerance is too fine: over a million points")
            .value(tolerance)
            .accepted("a longer tolerance or a shorter curve");
      }
      pieces[i] = (int) needed;
    }
    double[] xy = new double[2 * (int) total];
    int at = put(xy, 0, segments.get(0).start());
    for (int i = 0; i < pieces.length; i++) {
      Segment segment = segments.get(i);
      for (int k = 1; k < pieces[i]; k++) {
        at = put(xy, at, segment.pointAt(k / (double) pieces[i]));
      }
      at = put(xy, at, segment.end());
    }
    return Polyline.owning(xy);
  }

  private static int put(double[] xy, int at, Point point) {
    xy[at] = point.x();
    xy[at + 1] = point.y();
    return at + 2;
  }

  private static double pieces(Segment segment, double allowed) {
    if (segment instanceof Cubic cubic) {
      double bend =
          6
              * Math.max(
                  bend(cubic.start(), cubic.control1(), cubic.control2()),
                  bend(cubic.control1(), cubic.control2(), cubic.end()));
      return Math.sqrt(bend / (8 * allowed));
    }
    if (segment instanceof Arc arc) {
      double half = 2 * Math.asin(Math.sqrt(Math.min(1, allowed / (2 * arc.radiusMm()))));
      return Math.max(Math.abs(arc.sweepRadians()) / (2 * half), Math.abs(arc.sweepRadians()) / 3);
    }
    return 1;
  }

  private static double bend(Point a, Point b, Point c) {
    return Coordinates.norm(a.x() - 2 * b.x() + c.x(), a.y() - 2 * b.y() + c.y());
  }
}
