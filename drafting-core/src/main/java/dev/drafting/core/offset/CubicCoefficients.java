package dev.drafting.core.offset;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Point;

/** A cubic as eight numbers, with what the offset needs to know of it at a parameter. */
final class CubicCoefficients {
  private static final double[] CHOOSE3 = {1, 3, 3, 1};
  private static final double[] CHOOSE6 = {1, 6, 15, 20, 15, 6, 1};

  final double x0;
  final double y0;
  final double x1;
  final double y1;
  final double x2;
  final double y2;
  final double x3;
  final double y3;

  CubicCoefficients(Cubic cubic) {
    this(
        cubic.start().x(),
        cubic.start().y(),
        cubic.control1().x(),
        cubic.control1().y(),
        cubic.control2().x(),
        cubic.control2().y(),
        cubic.end().x(),
        cubic.end().y());
  }

  CubicCoefficients(
      double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
    this.x0 = x0;
    this.y0 = y0;
    this.x1 = x1;
    this.y1 = y1;
    this.x2 = x2;
    this.y2 = y2;
    this.x3 = x3;
    this.y3 = y3;
  }

  /** The stretch from one parameter to another, by blossoming. */
  CubicCoefficients between(double a, double b) {
    if (a == 0 && b == 1) {
      return this;
    }
    return new CubicCoefficients(
        blossom(x0, x1, x2, x3, a, a, a),
        blossom(y0, y1, y2, y3, a, a, a),
        blossom(x0, x1, x2, x3, a, a, b),
        blossom(y0, y1, y2, y3, a, a, b),
        blossom(x0, x1, x2, x3, a, b, b),
        blossom(y0, y1, y2, y3, a, b, b),
        blossom(x0, x1, x2, x3, b, b, b),
        blossom(y0, y1, y2, y3, b, b, b));
  }

  private static double blossom(
      double p0, double p1, double p2, double p3, double r, double s, double t) {
    double a = p0 + (p1 - p0) * r;
    double b = p1 + (p2 - p1) * r;
    double c = p2 + (p3 - p2) * r;
    double ab = a + (b - a) * s;
    double bc = b + (c - b) * s;
    return ab + (bc - ab) * t;
  }

  double x(double t) {
    return blossom(x0, x1, x2, x3, t, t, t);
  }

  double y(double t) {
    return blossom(y0, y1, y2, y3, t, t, t);
  }

  double dx(double t) {
    return slope(x0, x1, x2, x3, t);
  }

  double dy(double t) {
    return slope(y0, y1, y2, y3, t);
  }

  private static double slope(double p0, double p1, double p2, double p3, double t) {
    double s = 1 - t;
    return 3 * (s * s * (p1 - p0) + 2 * s * t * (p2 - p1) + t * t * (p3 - p2));
  }

  double ddx(double t) {
    return 6 * ((1 - t) * (x2 - 2 * x1 + x0) + t * (x3 - 2 * x2 + x1));
  }

  double ddy(double t) {
    return 6 * ((1 - t) * (y2 - 2 * y1 + y0) + t * (y3 - 2 * y2 + y1));
  }

  /**
   * A lower bound of the square of the distance from a point: the least Bernstein coefficient, of
   * degree 6.
   */
  double leastSquareDistance(Point from) {
    double[] x = {x0 - from.x(), x1 - from.x(), x2 - from.x(), x3 - from.x()};
    double[] y = {y0 - from.y(), y1 - from.y(), y2 - from.y(), y3 - from.y()};
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k <= 6; k++) {
      double sum = 0;
      for (int i = Math.max(0, k - 3); i <= Math.min(3, k); i++) {
        sum += CHOOSE3[i] * CHOOSE3[k - i] * (x[i] * x[k - i] + y[i] * y[k - i]);
      }
      least = Math.min(least, sum / CHOOSE6[k]);
    }
    return least;
  }

  double curvature(double t) {
    double dx = dx(t);
    double dy = dy(t);
    double square = dx * dx + dy * dy;
    return (dx * ddy(t) - dy * ddx(t)) / (square * Math.sqrt(square));
  }

  /**
   * An upper bound of the length of the parallel: the control polygon's length plus the distance
   * times its turning, both of which a cubic never exceeds.
   */
  double longestParallel(double distance) {
    double[] legs = {x1 - x0, y1 - y0, x2 - x1, y2 - y1, x3 - x2, y3 - y2};
    double length = 0;
    double turning = 0;
    double lastX = 0;
    double lastY = 0;
    for (int i = 0; i < 6; i += 2) {
      double leg = Math.hypot(legs[i], legs[i + 1]);
      if (leg > 0) {
        if (length > 0) {
          double cross = lastX * legs[i + 1] - lastY * legs[i];
          double dot = lastX * legs[i] + lastY * legs[i + 1];
          turning += Math.abs(Math.atan2(cross, dot));
        }
        length += leg;
        lastX = legs[i];
        lastY = legs[i + 1];
      }
    }
    return length + Math.abs(distance) * turning;
  }
}
