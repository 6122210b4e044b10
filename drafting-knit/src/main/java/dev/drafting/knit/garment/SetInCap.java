package dev.drafting.knit.garment;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The cap of a sleeve that is set in: a bell, level at the underarm and at its top. */
final class SetInCap {
  private static final double BELL = 0.5;
  private static final double EXACT_MM = 1e-9;
  private static final int MOST_STEPS = 200;

  private SetInCap() {}

  /** Half of the sleeve's width that makes its cap as long as wanted. */
  static double width(double height, double wanted) {
    UnivariateFunction over = width -> curve(width, height).length().toMm() - wanted;
    double least = height / 4;
    if (over.value(least) > 0) {
      throw DraftingException.of("the cap is too high for the armhole")
          .at("cap height")
          .value(Length.mm(height))
          .accepted("a lower cap, or a deeper armhole");
    }
    return new BrentSolver(EXACT_MM).solve(MOST_STEPS, over, least, wanted);
  }

  /** From the right end, half the width from the middle, over the top to the left one. */
  static Curve curve(double width, double height) {
    Point right = new Point(width, 0);
    Point top = new Point(0, height);
    Point left = new Point(-width, 0);
    double handle = width * BELL;
    return Curve.of(
        new Cubic(right, new Point(width - handle, 0), new Point(handle, height), top),
        new Cubic(top, new Point(-handle, height), new Point(handle - width, 0), left));
  }
}
