package dev.drafting.core.lay;

import java.util.Arrays;

/**
 * How deep the items of a layout lie in each other and in flaws, and the weight of each pair. What
 * overlaps for long weighs more and more, so that the search leaves places where it is stuck
 * (guided local search, Voudouris and Tsang 1999; for overlaps Egeblad, Nielsen and Odgaard 2007).
 */
final class Overlaps {
  private static final double LEAST_RISE = 1.2;
  private static final double MORE_RISE = 0.8;
  private static final double FALL = 0.95;
  private static final double HEAVIEST = 1e12;

  private final StripProblem problem;
  private final Layout layout;
  private final int n;
  private final int all;
  private final double[] lowX;
  private final double[] lowY;
  private final double[] highX;
  private final double[] highY;
  private final int[] number;
  private final double[][] depth;
  private final double[][] weight;
  private final double[][] lightest;

  Overlaps(StripProblem problem, Layout layout) {
    this.problem = problem;
    this.layout = layout;
    n = problem.count();
    all = n + problem.flaws().size();
    lowX = new double[all];
    lowY = new double[all];
    highX = new double[all];
    highY = new double[all];
    number = new int[n];
    depth = new double[n][all];
    weight = new double[n][all];
    lightest = new double[n][all];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < all; j++) {
        double other = j < n ? area(j) : area(i);
        lightest[i][j] = Math.sqrt(Math.sqrt(area(i) * other)) / problem.height();
      }
    }
  }

  private double area(int item) {
    return problem.shape(item, 0).area;
  }

  /** Looks at the whole layout anew and forgets all weights. */
  void reset() {
    for (int i = 0; i < n; i++) {
      System.arraycopy(lightest[i], 0, weight[i], 0, all);
    }
    refresh();
  }

  /** Looks at the whole layout anew. */
  void refresh() {
    for (int j = 0; j < all; j++) {
      bound(j);
    }
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < all; j++) {
        setDepth(
            i, j, depth(i, layout.turn[i], layout.x[i], layout.y[i], j, Double.POSITIVE_INFINITY));
      }
    }
  }

  private void bound(int j) {
    TurnedShape shape;
    double x;
    double y;
    if (j < n) {
      shape = problem.shape(j, layout.turn[j]);
      x = layout.x[j];
      y = layout.y[j];
      number[j] = problem.number(j, layout.turn[j]);
    } else {
      StripProblem.Flaw flaw = problem.flaws().get(j - n);
      shape = flaw.shape();
      x = flaw.x();
      y = flaw.y();
    }
    lowX[j] = x + shape.minX;
    lowY[j] = y + shape.minY;
    highX[j] = x + shape.maxX;
    highY[j] = y + shape.maxY;
  }

  private void setDepth(int i, int j, double found) {
    depth[i][j] = found;
    if (j < n) {
      depth[j][i] = found;
    }
  }

  private double depth(int i, int turn, double x, double y, int j, double limit) {
    int own = problem.number(i, turn);
    if (j < n) {
      return problem.clash(own, number[j]).depth(layout.x[j] - x, layout.y[j] - y, limit);
    }
    StripProblem.Flaw flaw = problem.flaws().get(j - n);
    return problem.clash(own, flaw).depth(flaw.x() - x, flaw.y() - y, limit);
  }

  /** What an item would weigh in a place, or some number no less than the bound. */
  double at(int i, int turn, double x, double y, double bound) {
    TurnedShape shape = problem.shape(i, turn);
    double left = x + shape.minX;
    double right = x + shape.maxX;
    double foot = y + shape.minY;
    double head = y + shape.maxY;
    double[] weights = weight[i];
    double sum = 0;
    for (int j = 0; j < all; j++) {
      if (highX[j] <= left || lowX[j] >= right || highY[j] <= foot || lowY[j] >= head || j == i) {
        continue;
      }
      double found = depth(i, turn, x, y, j, (bound - sum) / weights[j]);
      if (found > 0) {
        sum += weights[j] * found;
        if (sum >= bound) {
          return sum;
        }
      }
    }
    return sum;
  }

  /** What an item weighs where it is. */
  double of(int i) {
    double sum = 0;
    for (int j = 0; j < all; j++) {
      sum += weight[i][j] * depth[i][j];
    }
    return sum;
  }

  boolean isFree(int i) {
    for (int j = 0; j < all; j++) {
      if (depth[i][j] > 0) {
        return false;
      }
    }
    return true;
  }

  void move(int i, int turn, double x, double y) {
    layout.turn[i] = turn;
    layout.x[i] = x;
    layout.y[i] = y;
    bound(i);
    for (int j = 0; j < all; j++) {
      if (j != i) {
        setDepth(i, j, depth(i, turn, x, y, j, Double.POSITIVE_INFINITY));
      }
    }
  }

  /** All depths together, without weights. */
  double total() {
    double total = 0;
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < all; j++) {
        total += depth[i][j];
      }
    }
    return total;
  }

  /** Makes what overlaps heavier, the deepest most, and the rest lighter. */
  void reweigh() {
    double deepest = 0;
    for (double[] row : depth) {
      deepest = Math.max(deepest, Arrays.stream(row).max().orElse(0));
    }
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < all; j++) {
        double factor = depth[i][j] > 0 ? LEAST_RISE + MORE_RISE * depth[i][j] / deepest : FALL;
        double changed = Math.max(lightest[i][j], Math.min(HEAVIEST, weight[i][j] * factor));
        weight[i][j] = changed;
        if (j < n) {
          weight[j][i] = changed;
        }
      }
    }
  }
}
