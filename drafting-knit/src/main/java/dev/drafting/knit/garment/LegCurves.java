package dev.drafting.knit.garment;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;

/** Curves of a leg without a side seam, its front on the right. */
final class LegCurves {
  private static final double LONG = 0.4;

  private LegCurves() {}

  /** From the fork, where the inside leg arrives in this way, up to the waist; square to both. */
  static Curve centre(Point fork, Vector into, Point waist) {
    double way = Math.abs(fork.x() - waist.x());
    Vector across = fork.x() > 0 ? into.left() : into.left().negated();
    return Curve.of(
        new Cubic(
            fork,
            fork.plus(across.times(way)),
            new Point(waist.x(), fork.y() + LONG * (waist.y() - fork.y())),
            waist));
  }

  /** Square to the upright lines at its front and its back. */
  static Curve waist(Point front, Point back) {
    double handle = LONG * (front.x() - back.x());
    return Curve.of(
        new Cubic(
            front,
            new Point(front.x() - handle, front.y()),
            new Point(back.x() + handle, back.y()),
            back));
  }
}
