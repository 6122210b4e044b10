package dev.drafting.core.trace;

import java.util.Arrays;

/**
 * Where the cubics of a smooth edge join, as shares 0 to 1 of the way along it. A clamped cubic
 * B-spline on these knots runs through every joint without a break in direction or curvature.
 */
final class Knots {
  private static final int DEGREE = 3;

  private final double[] full;

  private Knots(double[] full) {
    this.full = full;
  }

  /** One cubic from end to end. */
  static Knots single() {
    return new Knots(new double[] {0, 0, 0, 0, 1, 1, 1, 1});
  }

  /** The same cubics, but this one cut in two at its middle. */
  Knots split(int cubic) {
    double[] more = Arrays.copyOf(full, full.length + 1);
    more[full.length] = (from(cubic) + to(cubic)) / 2;
    Arrays.sort(more);
    return new Knots(more);
  }

  int cubics() {
    return full.length - 2 * DEGREE - 1;
  }

  int controls() {
    return full.length - DEGREE - 1;
  }

  double from(int cubic) {
    return full[cubic + DEGREE];
  }

  double to(int cubic) {
    return full[cubic + DEGREE + 1];
  }

  /** The share at which a control point has its say. */
  double centre(int control) {
    return (full[control + 1] + full[control + 2] + full[control + 3]) / 3;
  }

  int cubicAt(double share) {
    int cubic = 0;
    while (cubic < cubics() - 1 && share >= to(cubic)) {
      cubic++;
    }
    return cubic;
  }

  /**
   * The weights of the four control points that rule this cubic at this share, and how fast the
   * weights change (de Boor's recurrence).
   */
  void weights(int cubic, double share, double[] value, double[] slope) {
    int span = cubic + DEGREE;
    double[] left = new double[DEGREE + 1];
    double[] right = new double[DEGREE + 1];
    double[] quadratic = new double[DEGREE];
    value[0] = 1;
    for (int degree = 1; degree <= DEGREE; degree++) {
      left[degree] = share - full[span + 1 - degree];
      right[degree] = full[span + degree] - share;
      if (degree == DEGREE) {
        System.arraycopy(value, 0, quadratic, 0, DEGREE);
      }
      double saved = 0;
      for (int r = 0; r < degree; r++) {
        double part = value[r] / (right[r + 1] + left[degree - r]);
        value[r] = saved + right[r + 1] * part;
        saved = left[degree - r] * part;
      }
      value[degree] = saved;
    }
    double before = 0;
    for (int r = 0; r < DEGREE; r++) {
      int first = span - DEGREE + 1 + r;
      double rate = DEGREE * quadratic[r] / (full[first + DEGREE] - full[first]);
      slope[r] = before - rate;
      before = rate;
    }
    slope[DEGREE] = before;
  }

  /** One coordinate of the four control points of this cubic in its own right (the polar form). */
  double[] cubicControls(int cubic, double[] controls) {
    double a = from(cubic);
    double b = to(cubic);
    return new double[] {
      polar(cubic, controls, a, a, a),
      polar(cubic, controls, a, a, b),
      polar(cubic, controls, a, b, b),
      polar(cubic, controls, b, b, b)
    };
  }

  private double polar(int cubic, double[] controls, double... shares) {
    double[] d = Arrays.copyOfRange(controls, cubic, cubic + DEGREE + 1);
    for (int r = 1; r <= DEGREE; r++) {
      for (int j = DEGREE; j >= r; j--) {
        double low = full[j + cubic];
        double high = full[j + 1 + DEGREE - r + cubic];
        double t = (shares[r - 1] - low) / (high - low);
        d[j] = d[j - 1] + (d[j] - d[j - 1]) * t;
      }
    }
    return d[DEGREE];
  }
}
