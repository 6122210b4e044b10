package dev.drafting.core.geometry;

import java.util.Arrays;

/**
 * The first derivative of a cubic, a quadratic in t. Read as a complex number it is a product of
 * two linear factors, and both the length and the turning follow from the two roots.
 *
 * <p>Length: most curves are gentle enough for the quick choice of nodes in {@link SquaredSpeed}.
 * Else the speed is the square root of a polynomial whose roots are these and their conjugates, so
 * it is analytic in every ellipse with foci at the ends of an interval that holds none of them. The
 * number of nodes is chosen from the size of that ellipse ({@link GaussRule}), and where no rule is
 * enough the interval is cut beside the root.
 *
 * <p>Turning: the argument of a product is the sum of the arguments, and over an interval the
 * argument of t - r turns by the angle under which the interval is seen from r.
 */
final class Hodograph {
  private static final double RELATIVE = 2e-11;
  private static final double OF_EXTENT = 1e-12;
  private static final double ON_AXIS = 1e-13;
  private static final double WIDEST = 40;
  private static final int DEEPEST = 60;
  private static final int MOST_STEPS = 100;

  // a t^2 + b t + c
  private final double ax;
  private final double ay;
  private final double bx;
  private final double by;
  private final double cx;
  private final double cy;
  private boolean knowsRoots;
  private double root1x;
  private double root1y;
  private double root2x;
  private double root2y;

  Hodograph(Cubic cubic) {
    double h0x = 3 * (cubic.control1().x() - cubic.start().x());
    double h0y = 3 * (cubic.control1().y() - cubic.start().y());
    double h1x = 3 * (cubic.control2().x() - cubic.control1().x());
    double h1y = 3 * (cubic.control2().y() - cubic.control1().y());
    double h2x = 3 * (cubic.end().x() - cubic.control2().x());
    double h2y = 3 * (cubic.end().y() - cubic.control2().y());
    ax = (h2x - h1x) - (h1x - h0x);
    ay = (h2y - h1y) - (h1y - h0y);
    bx = 2 * (h1x - h0x);
    by = 2 * (h1y - h0y);
    cx = h0x;
    cy = h0y;
  }

  /** The length of the control polygon. */
  private double extent() {
    double first = norm(cx, cy);
    double second = norm(cx + bx / 2, cy + by / 2);
    return (first + second + norm(cx + bx + ax, cy + by + ay)) / 3;
  }

  double dx(double t) {
    return (ax * t + bx) * t + cx;
  }

  double dy(double t) {
    return (ay * t + by) * t + cy;
  }

  double ddx(double t) {
    return 2 * ax * t + bx;
  }

  double ddy(double t) {
    return 2 * ay * t + by;
  }

  double speed(double t) {
    return norm(dx(t), dy(t));
  }

  double curvature(double t) {
    double speed = speed(t);
    double cross = dx(t) * ddy(t) - dy(t) * ddx(t);
    if (speed > OF_EXTENT * extent()) {
      return cross / (speed * speed * speed);
    }
    double bend = 2 * (ddx(t) * ay - ddy(t) * ax);
    return bend == 0 ? 0 : Math.copySign(Double.POSITIVE_INFINITY, bend);
  }

  private static double norm(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  /**
   * The stable quadratic formula in complex numbers; roots that are not there are NaN or infinite.
   */
  private void findRoots() {
    if (knowsRoots) {
      return;
    }
    knowsRoots = true;
    double discX = bx * bx - by * by - 4 * (ax * cx - ay * cy);
    double discY = 2 * bx * by - 4 * (ax * cy + ay * cx);
    double size = norm(discX, discY);
    double sx = Math.sqrt(Math.max(0, (size + discX) / 2));
    double sy = Math.copySign(Math.sqrt(Math.max(0, (size - discX) / 2)), discY);
    if (bx * sx + by * sy < 0) {
      sx = -sx;
      sy = -sy;
    }
    double wx = -(bx + sx) / 2;
    double wy = -(by + sy) / 2;
    double aa = ax * ax + ay * ay;
    double ww = wx * wx + wy * wy;
    root1x = (wx * ax + wy * ay) / aa;
    root1y = (wy * ax - wx * ay) / aa;
    if (ww == 0) {
      root2x = root1x;
      root2y = root1y;
    } else {
      root2x = (cx * wx + cy * wy) / ww;
      root2y = (cy * wx - cx * wy) / ww;
    }
  }

  /** The turning from t = 0 to 1, right to within whole turns of the angle between the ends. */
  double turning() {
    findRoots();
    double first = seenFrom(root1x, root1y);
    double second = seenFrom(root2x, root2y);
    if (isCusp(root1x, root1y)) {
      first = Math.copySign(Math.PI, second);
    } else if (isCusp(root2x, root2y)) {
      second = Math.copySign(Math.PI, first);
    }
    return first + second;
  }

  private static boolean isCusp(double x, double y) {
    return Math.abs(y) <= ON_AXIS && x > ON_AXIS && x < 1 - ON_AXIS;
  }

  /** By what angle the argument of t - r turns while t goes from 0 to 1. */
  private static double seenFrom(double x, double y) {
    boolean atEnd = norm(x, y) <= ON_AXIS || norm(1 - x, y) <= ON_AXIS;
    if (atEnd || !Double.isFinite(x) || !Double.isFinite(y)) {
      return 0;
    }
    return Math.atan2(-y, 1 - x) - Math.atan2(-y, -x);
  }

  double length(double from, double to) {
    return from < to ? length(from, to, DEEPEST) : 0;
  }

  /** What is not gentle as a whole often is in two halves. */
  private double length(double from, double to, int deeper) {
    double middle = (from + to) / 2;
    double half = (to - from) / 2;
    SquaredSpeed square = square(middle, half);
    GaussRule rule = square.rule();
    if (rule != null) {
      return square.integralOfRoot(rule);
    }
    return deeper == DEEPEST
        ? length(from, middle, deeper - 1) + length(middle, to, deeper - 1)
        : lengthNearRoot(from, to, deeper);
  }

  private SquaredSpeed square(double middle, double half) {
    double curve = half * half * half;
    double bend = half * half;
    return new SquaredSpeed(
        ax * curve,
        ay * curve,
        ddx(middle) * bend,
        ddy(middle) * bend,
        dx(middle) * half,
        dy(middle) * half);
  }

  private double lengthNearRoot(double from, double to, int deeper) {
    findRoots();
    double middle = (from + to) / 2;
    double half = (to - from) / 2;
    double ellipse = ellipse(middle, half);
    double speed = speed(middle);
    double most =
        speed
            + norm(ddx(middle), ddy(middle)) * half * ellipse
            + norm(ax, ay) * half * half * ellipse * ellipse;
    double allowed = Math.max(OF_EXTENT * extent(), RELATIVE * speed * 2 * half);
    GaussRule rule = GaussRule.within(ellipse, half * most, allowed);
    if (rule != null || deeper == 0) {
      return integrate(rule == null ? GaussRule.greatest() : rule, middle, half);
    }
    double cut = cutBeside(from, to);
    return length(from, cut, deeper - 1) + length(cut, to, deeper - 1);
  }

  private double integrate(GaussRule rule, double middle, double half) {
    double sum = 0;
    for (int i = 0; i < rule.pairs(); i++) {
      double off = half * rule.node(i);
      sum += rule.weight(i) * (speed(middle - off) + speed(middle + off));
    }
    return sum * half;
  }

  /**
   * The sum of the half axes' leading one: the ellipse round the interval that meets the first
   * root.
   */
  private double ellipse(double middle, double half) {
    double one = ellipse(root1x, root1y, middle, half);
    double two = ellipse(root2x, root2y, middle, half);
    return Math.min(one, two);
  }

  private static double ellipse(double x, double y, double middle, double half) {
    double zx = (x - middle) / half;
    double zy = y / half;
    if (Math.abs(y) <= ON_AXIS && Math.abs(zx) >= 1) {
      return WIDEST; // the speed is |t - r| times a smooth factor, and t - r keeps its sign
    }
    double major = (norm(zx - 1, zy) + norm(zx + 1, zy)) / 2;
    return major < WIDEST ? major : WIDEST;
  }

  private double cutBeside(double from, double to) {
    double middle = (from + to) / 2;
    double half = (to - from) / 2;
    boolean firstIsNearer =
        ellipse(root1x, root1y, middle, half) <= ellipse(root2x, root2y, middle, half);
    double cut = firstIsNearer ? root1x : root2x;
    double margin = 0.05 * half;
    return cut > from + margin && cut < to - margin ? cut : middle;
  }

  /** Newton's method on the length, kept inside a bracket that shrinks at every step. */
  double parameterAt(double along, double length) {
    double low = 0;
    double high = 1;
    double lengthToLow = 0;
    double close = 1e-14 * extent();
    double t = along / length;
    for (int step = 0; step < MOST_STEPS; step++) {
      double here = lengthToLow + length(low, t);
      double over = here - along;
      if (Math.abs(over) <= close || high - low <= Math.ulp(t)) {
        return t;
      }
      if (over > 0) {
        high = t;
      } else {
        low = t;
        lengthToLow = here;
      }
      double next = t - over / speed(t);
      t = next > low && next < high ? next : (low + high) / 2;
    }
    return t;
  }

  /** Where the cubic is furthest left, right, up or down, in no order. */
  double[] turningPoints() {
    double[] found = new double[4];
    int count = realRoots(ax, bx, cx, found, 0);
    count = realRoots(ay, by, cy, found, count);
    return Arrays.copyOf(found, count);
  }

  private static int realRoots(double a, double b, double c, double[] found, int count) {
    double disc = b * b - 4 * a * c;
    if (disc < 0) {
      return count;
    }
    double w = -(b + Math.copySign(Math.sqrt(disc), b)) / 2;
    int after = count;
    for (double t : new double[] {w / a, c / w}) {
      if (t > 0 && t < 1) {
        found[after++] = t;
      }
    }
    return after;
  }
}
