package dev.drafting.core.geometry;

/**
 * The square of the distance of a point from a cubic: a polynomial of degree six in Bernstein form,
 * whose coefficients bound it from below on every part. Parts that cannot hold the nearest point
 * are left out; on a part where it is convex the least value is found by Newton's method in a
 * bracket.
 */
final class CubicDistance {
  private static final double[] BINOMIAL3 = {1, 3, 3, 1};
  private static final double[] BINOMIAL6 = {1, 6, 15, 20, 15, 6, 1};
  private static final int DEEPEST = 30;
  private static final int MOST_STEPS = 60;

  private final Cubic cubic;
  private final Point point;
  private final Hodograph hodograph;
  private final double[] squares;
  private final double noise;
  private double parameter;
  private double best = Double.POSITIVE_INFINITY;

  CubicDistance(Cubic cubic, Point point) {
    this.cubic = cubic;
    this.point = point;
    this.hodograph = new Hodograph(cubic);
    double[] x = {
      cubic.start().x() - point.x(),
      cubic.control1().x() - point.x(),
      cubic.control2().x() - point.x(),
      cubic.end().x() - point.x()
    };
    double[] y = {
      cubic.start().y() - point.y(),
      cubic.control1().y() - point.y(),
      cubic.control2().y() - point.y(),
      cubic.end().y() - point.y()
    };
    squares = new double[7];
    double greatest = 0;
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        double share = BINOMIAL3[i] * BINOMIAL3[j] / BINOMIAL6[i + j];
        squares[i + j] += share * (x[i] * x[j] + y[i] * y[j]);
      }
      greatest = Math.max(greatest, x[i] * x[i] + y[i] * y[i]);
    }
    noise = 1e-14 * greatest;
  }

  double nearest() {
    offer(0);
    offer(1);
    search(squares, 0, 1, DEEPEST);
    return parameter;
  }

  private void offer(double t) {
    double distance = cubic.pointAt(t).gap(point);
    if (distance < best || (distance == best && t < parameter)) {
      best = distance;
      parameter = t;
    }
  }

  private void search(double[] part, double from, double to, int deeper) {
    double least = part[0];
    double most = part[0];
    for (double coefficient : part) {
      least = Math.min(least, coefficient);
      most = Math.max(most, coefficient);
    }
    if (least > best * best + noise) {
      return;
    }
    if (isConvex(part) || most - least <= noise || deeper == 0) {
      offer(leastBetween(from, to));
      return;
    }
    double[] first = new double[7];
    double[] second = part.clone();
    for (int level = 0; level < 7; level++) {
      first[level] = second[0];
      for (int i = 0; i < 6 - level; i++) {
        second[i] = (second[i] + second[i + 1]) / 2;
      }
    }
    double middle = (from + to) / 2;
    boolean firstIsNearer = first[0] <= second[6];
    if (firstIsNearer) {
      search(first, from, middle, deeper - 1);
    }
    search(second, middle, to, deeper - 1);
    if (!firstIsNearer) {
      search(first, from, middle, deeper - 1);
    }
  }

  private static boolean isConvex(double[] part) {
    for (int i = 2; i < part.length; i++) {
      if (part[i] - 2 * part[i - 1] + part[i - 2] < 0) {
        return false;
      }
    }
    return true;
  }

  /** Half the derivative of the square of the distance. */
  private double slope(double t) {
    Point at = cubic.pointAt(t);
    return (at.x() - point.x()) * hodograph.dx(t) + (at.y() - point.y()) * hodograph.dy(t);
  }

  private double leastBetween(double from, double to) {
    if (slope(from) >= 0) {
      return from;
    }
    if (slope(to) <= 0) {
      return to;
    }
    double low = from;
    double high = to;
    double t = (from + to) / 2;
    for (int step = 0; step < MOST_STEPS && high - low > Math.ulp(high); step++) {
      double slope = slope(t);
      if (slope == 0) {
        return t;
      }
      if (slope > 0) {
        high = t;
      } else {
        low = t;
      }
      double next = t - slope / steepening(t);
      if (next == t) {
        return t;
      }
      t = next > low && next < high ? next : (low + high) / 2;
    }
    return t;
  }

  /** The derivative of the slope. */
  private double steepening(double t) {
    Point at = cubic.pointAt(t);
    double dx = hodograph.dx(t);
    double dy = hodograph.dy(t);
    return dx * dx
        + dy * dy
        + (at.x() - point.x()) * hodograph.ddx(t)
        + (at.y() - point.y()) * hodograph.ddy(t);
  }
}
