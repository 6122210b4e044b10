package dev.drafting.core.geometry;

import java.util.List;

/** Where curves meet. */
final class CurveCrossings {
  private CurveCrossings() {}

  static List<Crossing> between(Curve curve, Curve other) {
    throw new UnsupportedOperationException("crossings of " + curve + " and " + other);
  }

  static List<Crossing> within(Curve curve) {
    throw new UnsupportedOperationException("crossings of " + curve);
  }
}
