package dev.drafting.core.trace;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Puts the points of a stroke in order that was written down in another, or drawn there and back:
 * from an end always on to the nearest point that is left. A stroke that is in order stays as it
 * is, to the last bit.
 */
final class StrokeOrder {
  private static final double WOBBLE_MM = 5;
  private static final int MOST_POINTS = 3_000;

  /** A way so much shorter than the one drawn is the one that was meant. */
  private static final double SHORTER = 0.7;

  private StrokeOrder() {}

  /** The numbers of the points in the order along the edge; null if they are in order. */
  static int @Nullable [] of(double[] x, double[] y, boolean closed) {
    int n = x.length;
    if (n < 4 || n > MOST_POINTS) {
      return null;
    }
    int[] drawn = new int[n];
    Arrays.setAll(drawn, i -> i);
    double longest = SHORTER * length(x, y, drawn);
    if (Math.max(extent(x), extent(y)) - 2 * WOBBLE_MM > longest) {
      return null; // a way in any other order has to reach as far
    }
    int[] nearest = shortest(x, y);
    int first = nearest[0];
    int last = nearest[n - 1];
    double home = closed ? Math.hypot(x[first] - x[last], y[first] - y[last]) : 0;
    return length(x, y, nearest) + home < longest ? nearest : null;
  }

  private static double extent(double[] values) {
    return Arrays.stream(values).max().orElseThrow() - Arrays.stream(values).min().orElseThrow();
  }

  /** What is farthest from the middle may lie at a corner: the way begins at an end then. */
  private static int[] shortest(double[] x, double[] y) {
    int[] outermost = nearestNext(x, y, farthestFromMiddle(x, y));
    int[] fromEnd = nearestNext(x, y, outermost[longestStep(x, y, outermost)]);
    return length(x, y, fromEnd) < length(x, y, outermost) ? fromEnd : outermost;
  }

  /** The place in the order from which the farthest step is taken: there the line has an end. */
  private static int longestStep(double[] x, double[] y, int[] order) {
    int longest = 0;
    double most = 0;
    for (int k = 0; k + 1 < order.length; k++) {
      double step = square(x[order[k + 1]] - x[order[k]], y[order[k + 1]] - y[order[k]]);
      if (step > most) {
        most = step;
        longest = k;
      }
    }
    return longest;
  }

  private static int[] nearestNext(double[] x, double[] y, int first) {
    int n = x.length;
    int[] order = new int[n];
    int[] left = new int[n];
    Arrays.setAll(left, i -> i);
    int next = first;
    for (int k = 0; k < n; k++) {
      int here = left[next];
      order[k] = here;
      int count = n - 1 - k;
      System.arraycopy(left, next + 1, left, next, count - next);
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < count; i++) {
        double away = square(x[left[i]] - x[here], y[left[i]] - y[here]);
        if (away < least) {
          least = away;
          next = i;
        }
      }
    }
    return order;
  }

  private static int farthestFromMiddle(double[] x, double[] y) {
    double middleX = Arrays.stream(x).average().orElseThrow();
    double middleY = Arrays.stream(y).average().orElseThrow();
    int farthest = 0;
    for (int i = 1; i < x.length; i++) {
      double here = square(x[i] - middleX, y[i] - middleY);
      double most = square(x[farthest] - middleX, y[farthest] - middleY);
      farthest = here > most ? i : farthest;
    }
    return farthest;
  }

  private static double square(double dx, double dy) {
    return dx * dx + dy * dy;
  }

  /** The way in this order, without the wobbles of the hand. */
  private static double length(double[] x, double[] y, int[] order) {
    double length = 0;
    int last = order[0];
    for (int i : order) {
      double step = square(x[i] - x[last], y[i] - y[last]);
      if (step >= WOBBLE_MM * WOBBLE_MM) {
        length += Math.sqrt(step);
        last = i;
      }
    }
    return length;
  }
}
