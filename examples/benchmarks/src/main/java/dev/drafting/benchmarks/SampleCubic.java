package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Point;

/** Cubics as they stand in patterns, from mild to hard to measure. */
public enum SampleCubic {
  /** A front neck, 80 mm wide and 95 mm deep. */
  NECK,
  /** A deep armhole with a hollow towards the side. */
  ARMHOLE,
  /** A side seam, nearly straight. */
  SIDE,
  /** A tight hook that comes close to a cusp. */
  HOOK;

  /** The curve, in millimetres. */
  Cubic cubic() {
    return switch (this) {
      case NECK -> cubic(0, 0, 45, 0, 80, 40, 80, 95);
      case ARMHOLE -> cubic(0, 0, -60, 30, -95, 120, -70, 230);
      case SIDE -> cubic(0, 0, 4, 130, 9, 270, 15, 400);
      case HOOK -> cubic(0, 0, 100, 98, 0, 98, 100, 0);
    };
  }

  private static Cubic cubic(double... xy) {
    return new Cubic(
        new Point(xy[0], xy[1]),
        new Point(xy[2], xy[3]),
        new Point(xy[4], xy[5]),
        new Point(xy[6], xy[7]));
  }
}
