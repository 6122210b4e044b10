package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;

/**
 * Which coordinates of the control points are free and which are given by what is asked of the
 * ends. A level end shares one height between its corner and the control point beside it.
 */
final class Controls {
  private static final int GIVEN = -1;

  private final int[] xs;
  private final int[] ys;
  private final double[] givenX;
  private final double[] givenY;
  private final int count;

  Controls(int controls, Ends ends) {
    xs = new int[controls];
    ys = new int[controls];
    givenX = new double[controls];
    givenY = new double[controls];
    give(ends.start(), 0, 1);
    give(ends.end(), controls - 1, controls - 2);
    int free = 0;
    for (int i = 0; i < controls; i++) {
      xs[i] = xs[i] == GIVEN ? GIVEN : free++;
      ys[i] = ys[i] == GIVEN ? GIVEN : free++;
    }
    free = shareHeight(ends.start(), 0, 1, free);
    count = shareHeight(ends.end(), controls - 1, controls - 2, free);
  }

  private void give(End end, int corner, int beside) {
    Point fixed = end.corner();
    if (fixed != null) {
      xs[corner] = GIVEN;
      ys[corner] = GIVEN;
      givenX[corner] = fixed.x();
      givenY[corner] = fixed.y();
      if (end.isLevel()) {
        ys[beside] = GIVEN;
        givenY[beside] = fixed.y();
      }
    } else if (end.isOnFold()) {
      xs[corner] = GIVEN;
    }
    if (end.hasHandle()) {
      xs[beside] = GIVEN;
      givenX[beside] = end.handle();
    }
  }

  private int shareHeight(End end, int corner, int beside, int free) {
    if (!end.isLevel() || ys[corner] == GIVEN) {
      return free;
    }
    int spare = ys[beside];
    ys[beside] = ys[corner];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = xs[i] > spare ? xs[i] - 1 : xs[i];
      ys[i] = ys[i] > spare ? ys[i] - 1 : ys[i];
    }
    return free - 1;
  }

  int count() {
    return count;
  }

  /** Where in the list of free numbers the x of a control point stands, or -1. */
  int x(int control) {
    return xs[control];
  }

  /** Where in the list of free numbers the y of a control point stands, or -1. */
  int y(int control) {
    return ys[control];
  }

  double[] xs(double[] free) {
    return spread(xs, givenX, free);
  }

  double[] ys(double[] free) {
    return spread(ys, givenY, free);
  }

  private static double[] spread(int[] index, double[] given, double[] free) {
    double[] all = new double[index.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = index[i] == GIVEN ? given[i] : free[index[i]];
    }
    return all;
  }

  /** The free numbers of these control points. */
  double[] free(double[] x, double[] y) {
    double[] free = new double[count];
    for (int i = 0; i < x.length; i++) {
      put(free, xs[i], x[i]);
      put(free, ys[i], y[i]);
    }
    return free;
  }

  private static void put(double[] free, int index, double value) {
    if (index != GIVEN) {
      free[index] = value;
    }
  }

  /** Adds the derivative of a point's coordinates along a direction to one row of equations. */
  void addRow(
      double[] row, int first, double[] weights, double towardsX, double towardsY, double scale) {
    for (int k = 0; k < weights.length; k++) {
      int atX = xs[first + k];
      int atY = ys[first + k];
      if (atX != GIVEN) {
        row[atX] += scale * towardsX * weights[k];
      }
      if (atY != GIVEN) {
        row[atY] += scale * towardsY * weights[k];
      }
    }
  }
}
