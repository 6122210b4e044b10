package dev.drafting.core.offset;

/**
 * Proves that a fitted cubic stays within a tolerance of the true parallel of a cubic, along its
 * whole length.
 *
 * <p>Fit Q and source P are cut into pairs of pieces whose ends are opposite each other (the end of
 * the piece of P is the foot of the perpendicular from the end of the piece of Q), and each pair is
 * compared at equal parameters. With D = Q - P, n the outward normal of P and h = |P'|², the normal
 * distance is F = (D . n|P'|) / sqrt(h) and the tangential slip is G = (D . P') / sqrt(h). The
 * polynomials f² - d² h (degree 10), g (degree 5) and h (degree 4) lie between their least and
 * greatest Bernstein coefficient, which bounds |F² - d²|, hence |F - d|, and |G| everywhere. The
 * point Q is then at most |F - d| + |G| from the parallel; and because the parallel leaves its
 * tangent no faster than a circle of its strongest curvature K does, also at most |F - d| + 0.54 K
 * G² while K |G| is at most a half. The pieces are halved until the bound is met or a joint between
 * pieces disproves it.
 *
 * <p>Bernstein bounds: Farouki and Rajan, "On the numerical condition of polynomials in Bernstein
 * form", 1987; squared distance as a Bernstein polynomial: Elber and Cohen, "Error bounded variable
 * distance offset operator for free form curves and surfaces", 1991.
 */
final class ParallelBound {
  private static final int FEWEST_PIECES = 2;
  private static final int DEEPEST = 7;
  private static final double[][] RAISED = raised();

  private final double tolerance;
  private final CubicCoefficients fit;
  private final CubicCoefficients source;
  private final double distance;

  private ParallelBound(
      double tolerance, CubicCoefficients fit, CubicCoefficients source, double distance) {
    this.tolerance = tolerance;
    this.fit = fit;
    this.source = source;
    this.distance = distance;
  }

  /** Whether the fit is proven to lie within the tolerance of the parallel of the source. */
  static boolean within(
      double tolerance, CubicCoefficients fit, CubicCoefficients source, double distance) {
    return new ParallelBound(tolerance, fit, source, distance).holds();
  }

  private boolean holds() {
    double[] feet = new double[FEWEST_PIECES + 1];
    feet[FEWEST_PIECES] = 1;
    for (int i = 1; i < FEWEST_PIECES; i++) {
      feet[i] = foot((double) i / FEWEST_PIECES, feet[i - 1], 1);
      if (disproved((double) i / FEWEST_PIECES, feet[i])) {
        return false;
      }
    }
    for (int i = 0; i < FEWEST_PIECES; i++) {
      double u0 = (double) i / FEWEST_PIECES;
      double u1 = (i + 1.0) / FEWEST_PIECES;
      if (!holds(u0, u1, feet[i], feet[i + 1], DEEPEST)) {
        return false;
      }
    }
    return true;
  }

  private boolean holds(double u0, double u1, double t0, double t1, int depth) {
    if (!(t1 > t0)) {
      return false;
    }
    if (bound(fit.between(u0, u1), source.between(t0, t1), distance) <= tolerance) {
      return true;
    }
    if (depth == 0) {
      return false;
    }
    double u = (u0 + u1) / 2;
    double t = foot(u, t0, t1);
    return !disproved(u, t) && holds(u0, u, t0, t, depth - 1) && holds(u, u1, t, t1, depth - 1);
  }

  private boolean disproved(double u, double t) {
    double offX = fit.x(u) - source.x(t);
    double offY = fit.y(u) - source.y(t);
    double gap = Math.sqrt(offX * offX + offY * offY);
    return Math.abs(gap - Math.abs(distance)) > tolerance;
  }

  /** The foot of the perpendicular from the fit at u, between two parameters of the source. */
  private double foot(double u, double low, double high) {
    double x = fit.x(u);
    double y = fit.y(u);
    double t = Math.max(low, Math.min(high, u));
    for (int i = 0; i < 6; i++) {
      double dx = source.dx(t);
      double dy = source.dy(t);
      double offX = x - source.x(t);
      double offY = y - source.y(t);
      double along = offX * dx + offY * dy;
      double slope = dx * dx + dy * dy - offX * source.ddx(t) - offY * source.ddy(t);
      if (!(slope > 0)) {
        break;
      }
      double next = Math.max(low, Math.min(high, t + along / slope));
      if (Math.abs(next - t) < 1e-12) {
        return next;
      }
      t = next;
    }
    return t;
  }

  /** The proven deviation of one pair of pieces, or infinity where nothing is proven. */
  static double bound(CubicCoefficients q, CubicCoefficients p, double d) {
    double[] offX = {q.x0 - p.x0, q.x1 - p.x1, q.x2 - p.x2, q.x3 - p.x3};
    double[] offY = {q.y0 - p.y0, q.y1 - p.y1, q.y2 - p.y2, q.y3 - p.y3};
    double[] wayX = {3 * (p.x1 - p.x0), 3 * (p.x2 - p.x1), 3 * (p.x3 - p.x2)};
    double[] wayY = {3 * (p.y1 - p.y0), 3 * (p.y2 - p.y1), 3 * (p.y3 - p.y2)};
    double[] f = new double[6];
    double[] g = new double[6];
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 3; j++) {
        double weight = CHOOSE3[i] * CHOOSE2[j] / CHOOSE5[i + j];
        f[i + j] += weight * (offX[i] * wayY[j] - offY[i] * wayX[j]);
        g[i + j] += weight * (offX[i] * wayX[j] + offY[i] * wayY[j]);
      }
    }
    CurvatureRange range = CurvatureRange.of(p);
    double least = range.leastSquareSpeed();
    if (!(least > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double slip = 0;
    for (int k = 0; k < 6; k++) {
      if (!(f[k] * d > 0)) {
        return Double.POSITIVE_INFINITY;
      }
      slip = Math.max(slip, Math.abs(g[k]));
    }
    slip /= Math.sqrt(least);
    double square = greatestDifference(f, wayX, wayY, d) / least;
    if (!(square < d * d)) {
      return Double.POSITIVE_INFINITY;
    }
    double normal = square / (Math.abs(d) + Math.sqrt(d * d - square));
    return normal + sideways(slip, range, d);
  }

  private static double sideways(double slip, CurvatureRange range, double d) {
    double factor = range.leastSpeedFactor(d);
    double bend = factor > 0 ? range.strongest() / factor : Double.POSITIVE_INFINITY;
    return bend * slip <= 0.5 ? Math.min(slip, 0.54 * bend * slip * slip) : slip;
  }

  /** The greatest Bernstein coefficient of |f² - d² h| in degree 10. */
  private static double greatestDifference(double[] f, double[] wayX, double[] wayY, double d) {
    double[] h = new double[5];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double weight = CHOOSE2[i] * CHOOSE2[j] / CHOOSE4[i + j];
        h[i + j] += weight * (wayX[i] * wayX[j] + wayY[i] * wayY[j]);
      }
    }
    double greatest = 0;
    for (int k = 0; k <= 10; k++) {
      double sum = 0;
      for (int i = Math.max(0, k - 5); i <= Math.min(5, k); i++) {
        sum += CHOOSE5[i] * CHOOSE5[k - i] * f[i] * f[k - i];
      }
      sum /= CHOOSE10[k];
      for (int j = Math.max(0, k - 6); j <= Math.min(4, k); j++) {
        sum -= d * d * RAISED[k][j] * h[j];
      }
      greatest = Math.max(greatest, Math.abs(sum));
    }
    return greatest;
  }

  private static final double[] CHOOSE2 = {1, 2, 1};
  private static final double[] CHOOSE3 = {1, 3, 3, 1};
  private static final double[] CHOOSE4 = {1, 4, 6, 4, 1};
  private static final double[] CHOOSE5 = {1, 5, 10, 10, 5, 1};
  private static final double[] CHOOSE10 = {1, 10, 45, 120, 210, 252, 210, 120, 45, 10, 1};

  /** Degree 4 raised to degree 10. */
  private static double[][] raised() {
    double[] choose4 = {1, 4, 6, 4, 1};
    double[] choose6 = {1, 6, 15, 20, 15, 6, 1};
    double[] choose10 = {1, 10, 45, 120, 210, 252, 210, 120, 45, 10, 1};
    double[][] raised = new double[11][5];
    for (int k = 0; k <= 10; k++) {
      for (int j = Math.max(0, k - 6); j <= Math.min(4, k); j++) {
        raised[k][j] = choose4[j] * choose6[k - j] / choose10[k];
      }
    }
    return raised;
  }
}
