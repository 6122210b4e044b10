package dev.drafting.core.geometry;

/**
 * The square of the distance of a point from a cubic: a polynomial of degree six in Bernstein form,
 * whose coefficients bound it from below on every part. Parts that cannot hold the nearest point
 * are left out; on a part where it is convex the least value is found by Newton's method in a
 * bracket. The control points are halved, not the coefficients: near the point they stay exact to
 * their own small size, where the coefficients would carry the rounding of the whole cubic.
 */
final class CubicDistance {
  private static final double[] BINOMIAL3 = {1, 3, 3, 1};
  private static final double[] BINOMIAL6 = {1, 6, 15, 20, 15, 6, 1};
  private static final int DEEPEST = 30;
  private static final int MOST_STEPS = 60;
  private static final int SQUARING_STEPS = 8;

  /** Rounding of a coefficient, in parts of the cubic's reach times that of the part at hand. */
  private static final double ROUNDING = 4e-15;

  private final Cubic cubic;
  private final Point point;
  private final Hodograph hodograph;
  private final double reach;
  private double parameter;
  private double best = Double.POSITIVE_INFINITY;

  CubicDistance(Cubic cubic, Point point) {
    this.cubic = cubic;
    this.point = point;
    this.hodograph = new Hodograph(cubic);
    this.reach = reach(across(), up());
  }

  /** The control points as seen from the point. */
  private double[] across() {
    return new double[] {
      cubic.start().x() - point.x(),
      cubic.control1().x() - point.x(),
      cubic.control2().x() - point.x(),
      cubic.end().x() - point.x()
    };
  }

  private double[] up() {
    return new double[] {
      cubic.start().y() - point.y(),
      cubic.control1().y() - point.y(),
      cubic.control2().y() - point.y(),
      cubic.end().y() - point.y()
    };
  }

  private static double reach(double[] x, double[] y) {
    double greatest = 0;
    for (int i = 0; i < 4; i++) {
      greatest = Math.max(greatest, x[i] * x[i] + y[i] * y[i]);
    }
    return Math.sqrt(greatest);
  }

  private static double[] squares(double[] x, double[] y) {
    double[] squares = new double[7];
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        double share = BINOMIAL3[i] * BINOMIAL3[j] / BINOMIAL6[i + j];
        squares[i + j] += share * (x[i] * x[j] + y[i] * y[j]);
      }
    }
    return squares;
  }

  double nearest() {
    offer(0);
    offer(1);
    search(across(), up(), 0, 1, DEEPEST);
    return parameter > 0 && parameter < 1 ? squared(parameter) : parameter;
  }

  /**
   * A parameter moved until the way to the point is square to the cubic. The distance alone tells
   * parameters apart only to half of the digits, and the search may have stopped at the end of a
   * part.
   */
  private double squared(double t) {
    double at = t;
    double slope = slope(at);
    for (int step = 0; step < SQUARING_STEPS; step++) {
      double next = at - slope / steepening(at);
      if (!(next > 0 && next < 1) || Math.abs(slope(next)) >= Math.abs(slope)) {
        return at;
      }
      at = next;
      slope = slope(at);
    }
    return at;
  }

  private void offer(double t) {
    double distance = cubic.pointAt(t).gap(point);
    if (distance < best || (distance == best && t < parameter)) {
      best = distance;
      parameter = t;
    }
  }

  private void search(double[] x, double[] y, double from, double to, int deeper) {
    double[] squares = squares(x, y);
    double least = squares[0];
    double most = squares[0];
    for (double coefficient : squares) {
      least = Math.min(least, coefficient);
      most = Math.max(most, coefficient);
    }
    double noise = ROUNDING * reach * reach(x, y);
    if (least > best * best + noise) {
      return;
    }
    if (isConvex(squares) || most - least <= noise || deeper == 0) {
      offer(leastBetween(from, to));
      return;
    }
    boolean firstIsNearer = squares[0] <= squares[6];
    double[] x2 = x.clone();
    double[] y2 = y.clone();
    double[] x1 = halved(x2);
    double[] y1 = halved(y2);
    double middle = (from + to) / 2;
    if (firstIsNearer) {
      search(x1, y1, from, middle, deeper - 1);
    }
    search(x2, y2, middle, to, deeper - 1);
    if (!firstIsNearer) {
      search(x1, y1, from, middle, deeper - 1);
    }
  }

  /** The coefficients of the first half; those of the second take the place of the whole's. */
  private static double[] halved(double[] whole) {
    double[] first = new double[4];
    for (int level = 0; level < 4; level++) {
      first[level] = whole[0];
      for (int i = 0; i < 3 - level; i++) {
        whole[i] = (whole[i] + whole[i + 1]) / 2;
      }
    }
    return first;
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
