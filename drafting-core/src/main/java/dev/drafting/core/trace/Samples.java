package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The points of one edge in order, with the share of the way (0 to 1) at which each lies. Points
 * closer together than a hand can wobble say the same thing: they count as fewer.
 */
final class Samples {
  /** Nearer points than this follow the same movement of the hand. */
  private static final double WOBBLE_MM = 5;

  final double[] x;
  final double[] y;
  final double[] share;

  /** How many points count as observations of their own. */
  final double independent;

  Samples(double[] x, double[] y, double[] share, double independent) {
    this.x = x;
    this.y = y;
    this.share = share;
    this.independent = independent;
  }

  /** Points in the order in which they were traced. */
  static Samples traced(double[] x, double[] y) {
    Samples samples = new Samples(x, y, new double[x.length], thinned(x, y).length);
    return samples.withShares(null, null);
  }

  int size() {
    return x.length;
  }

  /** The points that are kept, at their shares. */
  Samples keep(boolean[] kept) {
    int[] index = new int[size()];
    int count = 0;
    for (int i = 0; i < size(); i++) {
      if (kept[i]) {
        index[count++] = i;
      }
    }
    if (count == size()) {
      return this;
    }
    double[][] rest = new double[3][count];
    for (int i = 0; i < count; i++) {
      rest[0][i] = x[index[i]];
      rest[1][i] = y[index[i]];
      rest[2][i] = share[index[i]];
    }
    return new Samples(rest[0], rest[1], rest[2], independent * count / size());
  }

  /** Shares of the way from one corner, along the points, to the other corner. */
  Samples withShares(@Nullable Point from, @Nullable Point to) {
    int[] stops = thinned(x, y);
    double[] along = new double[size()];
    double done = from == null ? 0 : Math.hypot(x[0] - from.x(), y[0] - from.y());
    along[0] = done;
    for (int k = 1; k < stops.length; k++) {
      int a = stops[k - 1];
      int b = stops[k];
      double dx = x[b] - x[a];
      double dy = y[b] - y[a];
      double step = Math.hypot(dx, dy);
      for (int i = a + 1; i <= b; i++) {
        double part = (x[i] - x[a]) * dx + (y[i] - y[a]) * dy;
        along[i] = step == 0 ? done : done + Math.min(Math.max(part / step, 0), step);
      }
      done += step;
    }
    int last = size() - 1;
    double whole = to == null ? done : done + Math.hypot(to.x() - x[last], to.y() - y[last]);
    double[] shares = new double[size()];
    for (int i = 0; i < size(); i++) {
      shares[i] = Math.min(along[i] / whole, 1);
    }
    return new Samples(x, y, shares, independent);
  }

  /** Points at least a wobble apart, the first and the last among them. */
  static int[] thinned(double[] x, double[] y) {
    int[] stops = new int[x.length];
    int count = 1;
    for (int i = 1; i < x.length; i++) {
      int before = stops[count - 1];
      if (Math.hypot(x[i] - x[before], y[i] - y[before]) >= WOBBLE_MM) {
        stops[count++] = i;
      }
    }
    int last = x.length - 1;
    if (stops[count - 1] != last) {
      boolean room = count == 1;
      stops[room ? count++ : count - 1] = last;
    }
    return Arrays.copyOf(stops, count);
  }
}
