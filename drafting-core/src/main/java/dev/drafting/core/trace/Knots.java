package dev.drafting.core.trace;

import java.util.Arrays;

/**
 * Where the parts of an edge join, as shares 0 to 1 of the way along it. A clamped cubic B-spline
 * on these knots runs through every joint without a break in direction or curvature; a straight
 * edge is the spline of degree one with a single part.
 */
final class Knots {
  private static final int CUBIC = 3;
  private static final Knots STRAIGHT = new Knots(1, new double[] {0, 0, 1, 1});
  private static final Knots SINGLE = new Knots(CUBIC, new double[] {0, 0, 0, 0, 1, 1, 1, 1});

  /** How many control points rule a part, less one. */
  final int degree;

  private final double[] full;

  /** For each part, one over its share of the way. */
  private final double[] rates;

  /** For each part and each of its control points: the powers of its weight. */
  private final double[][][] powers;

  private Knots(int degree, double[] full) {
    this.degree = degree;
    this.full = full;
    this.rates = new double[parts()];
    this.powers = new double[parts()][degree + 1][];
    for (int part = 0; part < parts(); part++) {
      rates[part] = 1 / (to(part) - from(part));
      for (int k = 0; k <= degree; k++) {
        double[] unit = new double[controls()];
        unit[part + k] = 1;
        powers[part][k] = powers(partControls(part, unit));
      }
    }
  }

  static Knots straight() {
    return STRAIGHT;
  }

  /** One cubic from end to end. */
  static Knots single() {
    return SINGLE;
  }

  /** The same cubics, but this one cut in two at its middle. */
  Knots split(int part) {
    double[] more = Arrays.copyOf(full, full.length + 1);
    more[full.length] = (from(part) + to(part)) / 2;
    Arrays.sort(more);
    return new Knots(degree, more);
  }

  /** The control points of the same spline when one of its cubics is cut in two (Boehm). */
  double[] splitControls(int part, double[] controls) {
    double at = (from(part) + to(part)) / 2;
    int span = part + degree;
    double[] more = new double[controls.length + 1];
    for (int i = 0; i < more.length; i++) {
      if (i <= span - degree) {
        more[i] = controls[i];
      } else if (i > span) {
        more[i] = controls[i - 1];
      } else {
        double t = (at - full[i]) / (full[i + degree] - full[i]);
        more[i] = (1 - t) * controls[i - 1] + t * controls[i];
      }
    }
    return more;
  }

  boolean isStraight() {
    return degree == 1;
  }

  int parts() {
    return full.length - 2 * degree - 1;
  }

  int controls() {
    return full.length - degree - 1;
  }

  double from(int part) {
    return full[part + degree];
  }

  double to(int part) {
    return full[part + degree + 1];
  }

  /** By how much u in the part grows for each share of the way. */
  double rate(int part) {
    return rates[part];
  }

  int partAt(double share) {
    int part = 0;
    while (part < parts() - 1 && share >= to(part)) {
      part++;
    }
    return part;
  }

  /** The weights of the part's control points, at u from 0 to 1 in the part. */
  void weights(int part, double u, double[] into) {
    double[][] p = powers[part];
    if (degree == 1) {
      into[0] = 1 - u;
      into[1] = u;
      return;
    }
    for (int k = 0; k <= CUBIC; k++) {
      double[] c = p[k];
      into[k] = c[0] + u * (c[1] + u * (c[2] + u * c[3]));
    }
  }

  /** How fast the weights change with the share of the way. */
  void slopes(int part, double u, double[] into) {
    for (int k = 0; k <= degree; k++) {
      double[] c = powers[part][k];
      into[k] = (degree == 1 ? c[1] : c[1] + u * (2 * c[2] + 3 * u * c[3])) * rates[part];
    }
  }

  /** The powers of one coordinate along each part, four to a part, from its control points. */
  void sum(double[] controls, double[] into) {
    Arrays.fill(into, 0);
    for (int part = 0; part < powers.length; part++) {
      for (int k = 0; k <= degree; k++) {
        double[] p = powers[part][k];
        for (int j = 0; j <= degree; j++) {
          into[4 * part + j] += controls[part + k] * p[j];
        }
      }
    }
  }

  private double[] powers(double[] b) {
    return degree == 1
        ? new double[] {b[0], b[1] - b[0]}
        : new double[] {
          b[0], 3 * (b[1] - b[0]), 3 * (b[0] - 2 * b[1] + b[2]), b[3] - 3 * b[2] + 3 * b[1] - b[0]
        };
  }

  /** One coordinate of the control points of this part in its own right (the polar form). */
  double[] partControls(int part, double[] controls) {
    double a = from(part);
    double b = to(part);
    double[] own = new double[degree + 1];
    for (int k = 0; k <= degree; k++) {
      double[] shares = new double[degree];
      Arrays.fill(shares, 0, degree - k, a);
      Arrays.fill(shares, degree - k, degree, b);
      own[k] = polar(part, controls, shares);
    }
    return own;
  }

  private double polar(int part, double[] controls, double[] shares) {
    double[] d = Arrays.copyOfRange(controls, part, part + degree + 1);
    for (int r = 1; r <= degree; r++) {
      for (int j = degree; j >= r; j--) {
        double low = full[j + part];
        double high = full[j + 1 + degree - r + part];
        double t = (shares[r - 1] - low) / (high - low);
        d[j] = d[j - 1] + (d[j] - d[j - 1]) * t;
      }
    }
    return d[degree];
  }
}
