package dev.drafting.core.trace;

import java.util.Arrays;

/**
 * Sums over points of a stretch that say at once how well a polynomial along the way fits them
 * (least squares), point after point, without looking at the points again.
 */
final class Moments {
  private static final int TERMS = 4;

  private final double originWay;
  private final double originX;
  private final double originY;
  private final double[] powers = new double[2 * TERMS - 1];
  private final double[] xs = new double[TERMS];
  private final double[] ys = new double[TERMS];
  private double squares;
  private double reach;
  private int count;

  // The triangular system of the points so far, its right sides solved forwards, row by row.
  private final double[][] root = new double[TERMS][TERMS];
  private final double[] scales = new double[TERMS];
  private final double[] halfX = new double[TERMS];
  private final double[] halfY = new double[TERMS];
  private int decomposed;

  /** No points yet; ways and places are best taken from near where the points lie. */
  Moments(double originWay, double originX, double originY) {
    this.originWay = originWay;
    this.originX = originX;
    this.originY = originY;
  }

  /** Adds a point that lies this far along the way. */
  void add(double way, double x, double y) {
    double s = way - originWay;
    double dx = x - originX;
    double dy = y - originY;
    double power = 1;
    for (int k = 0; k < powers.length; k++) {
      powers[k] += power;
      if (k < TERMS) {
        xs[k] += power * dx;
        ys[k] += power * dy;
      }
      power *= s;
    }
    squares += dx * dx + dy * dy;
    reach = Math.max(reach, Math.abs(s));
    count++;
    decomposed = 0;
  }

  int count() {
    return count;
  }

  /** The squares that a polynomial of this degree leaves over; none if it runs through all. */
  double left(int degree) {
    if (count <= degree + 1 || reach == 0) {
      return 0;
    }
    decompose(degree);
    return Math.max(0, squares - taken(halfX, degree) - taken(halfY, degree));
  }

  /** How far a point lies off the polynomial, squared. */
  double off(int degree, double way, double x, double y) {
    int used = Math.min(degree, count - 1);
    decompose(used);
    double[] ofX = solution(halfX, used);
    double[] ofY = solution(halfY, used);
    double u = (way - originWay) / reach;
    double dx = x - originX;
    double dy = y - originY;
    double power = 1;
    for (int k = 0; k <= used; k++) {
      dx -= ofX[k] * power;
      dy -= ofY[k] * power;
      power *= u;
    }
    return dx * dx + dy * dy;
  }

  /** In which direction the polynomial runs at this place, in radians. */
  double direction(int degree, double way) {
    int used = Math.min(degree, count - 1);
    decompose(used);
    double[] ofX = solution(halfX, used);
    double[] ofY = solution(halfY, used);
    double u = (way - originWay) / reach;
    double dx = 0;
    double dy = 0;
    double power = 1;
    for (int k = 1; k <= used; k++) {
      dx += k * ofX[k] * power;
      dy += k * ofY[k] * power;
      power *= u;
    }
    return Math.atan2(dy, dx);
  }

  /** Cholesky, with the way in shares of the reach; a row for each degree, as far as wanted. */
  private void decompose(int degree) {
    for (; decomposed <= degree; decomposed++) {
      int i = decomposed;
      double[] row = root[i];
      scales[i] = i == 0 ? 1 : scales[i - 1] / reach;
      for (int j = 0; j <= i; j++) {
        double sum = powers[i + j] * scales[i] * scales[j];
        for (int k = 0; k < j; k++) {
          sum -= row[k] * root[j][k];
        }
        row[j] = i == j ? Math.sqrt(Math.max(sum, Double.MIN_NORMAL)) : sum / root[j][j];
      }
      halfX[i] = forward(xs[i] * scales[i], row, halfX, i);
      halfY[i] = forward(ys[i] * scales[i], row, halfY, i);
    }
  }

  private static double forward(double right, double[] row, double[] half, int i) {
    double sum = right;
    for (int k = 0; k < i; k++) {
      sum -= row[k] * half[k];
    }
    return sum / row[i];
  }

  private static double taken(double[] half, int degree) {
    double taken = 0;
    for (int i = 0; i <= degree; i++) {
      taken += half[i] * half[i];
    }
    return taken;
  }

  private double[] solution(double[] half, int degree) {
    double[] found = Arrays.copyOf(half, degree + 1);
    for (int i = degree; i >= 0; i--) {
      for (int k = i + 1; k <= degree; k++) {
        found[i] -= root[k][i] * found[k];
      }
      found[i] /= root[i][i];
    }
    return found;
  }
}
