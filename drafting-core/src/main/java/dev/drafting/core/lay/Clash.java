package dev.drafting.core.lay;

import java.util.Arrays;

/**
 * How deep two shapes lie in each other: the sum, over their convex parts, of the shortest way by
 * which one part would have to move to leave the other. It is 0 where they do not overlap.
 *
 * <p>A part of the one lies in a part of the other where the way from the first's origin to the
 * second's is inside their Minkowski difference, a convex polygon kept as half planes.
 */
final class Clash {
  /** Half planes nx*x + ny*y < c, part after part. */
  private final double[] planes;

  /** Where each part's half planes begin, one more than there are parts. */
  private final int[] starts;

  /** The bounds of each part: least x, least y, largest x, largest y. */
  private final double[] boxes;

  private final double minX;
  private final double minY;
  private final double maxX;
  private final double maxY;

  Clash(TurnedShape a, TurnedShape b, double touching) {
    int count = a.parts.size() * b.parts.size();
    starts = new int[count + 1];
    boxes = new double[4 * count];
    double[] all = new double[0];
    int part = 0;
    double[] bounds = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (double[] one : a.parts) {
      for (double[] other : b.parts) {
        double[] sum = difference(one, other);
        double[] half = halfPlanes(sum, touching);
        int before = all.length;
        all = Arrays.copyOf(all, before + half.length);
        System.arraycopy(half, 0, all, before, half.length);
        box(sum, part, bounds);
        starts[++part] = all.length;
      }
    }
    planes = all;
    minX = bounds[0];
    minY = bounds[1];
    maxX = bounds[2];
    maxY = bounds[3];
  }

  /**
   * The depth with the second shape's origin this far from the first's.
   *
   * @param limit where the sum may stop, since more makes no difference
   */
  double depth(double x, double y, double limit) {
    if (x <= minX || x >= maxX || y <= minY || y >= maxY) {
      return 0;
    }
    double sum = 0;
    for (int part = 0; part < starts.length - 1; part++) {
      int box = 4 * part;
      if (x > boxes[box] && y > boxes[box + 1] && x < boxes[box + 2] && y < boxes[box + 3]) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = starts[part]; i < starts[part + 1]; i += 3) {
          double inside = planes[i + 2] - planes[i] * x - planes[i + 1] * y;
          if (inside < least) {
            least = inside;
            if (least <= 0) {
              break;
            }
          }
        }
        if (least > 0) {
          sum += least;
          if (sum >= limit) {
            return sum;
          }
        }
      }
    }
    return sum;
  }

  private void box(double[] sum, int part, double[] bounds) {
    double[] box = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (int i = 0; i < sum.length; i += 2) {
      box[0] = Math.min(box[0], sum[i]);
      box[1] = Math.min(box[1], sum[i + 1]);
      box[2] = Math.max(box[2], sum[i]);
      box[3] = Math.max(box[3], sum[i + 1]);
    }
    System.arraycopy(box, 0, boxes, 4 * part, 4);
    bounds[0] = Math.min(bounds[0], box[0]);
    bounds[1] = Math.min(bounds[1], box[1]);
    bounds[2] = Math.max(bounds[2], box[2]);
    bounds[3] = Math.max(bounds[3], box[3]);
  }

  /** The points of one convex part less those of another: their edges by direction. */
  private static double[] difference(double[] one, double[] other) {
    double[] minus = new double[other.length];
    for (int i = 0; i < other.length; i++) {
      minus[i] = -other[i];
    }
    int n = one.length / 2;
    int m = minus.length / 2;
    int i = lowest(one);
    int j = lowest(minus);
    double[] sum = new double[2 * (n + m)];
    double x = one[2 * i] + minus[2 * j];
    double y = one[2 * i + 1] + minus[2 * j + 1];
    int takenI = 0;
    int takenJ = 0;
    for (int k = 0; k < n + m; k++) {
      sum[2 * k] = x;
      sum[2 * k + 1] = y;
      double ax = one[2 * ((i + 1) % n)] - one[2 * i];
      double ay = one[2 * ((i + 1) % n) + 1] - one[2 * i + 1];
      double bx = minus[2 * ((j + 1) % m)] - minus[2 * j];
      double by = minus[2 * ((j + 1) % m) + 1] - minus[2 * j + 1];
      boolean first = takenJ == m || (takenI < n && before(ax, ay, bx, by));
      x += first ? ax : bx;
      y += first ? ay : by;
      if (first) {
        i = (i + 1) % n;
        takenI++;
      } else {
        j = (j + 1) % m;
        takenJ++;
      }
    }
    return sum;
  }

  /** By angle, from that of the x axis upwards. */
  private static boolean before(double ax, double ay, double bx, double by) {
    boolean lowA = ay > 0 || (ay == 0 && ax > 0);
    boolean lowB = by > 0 || (by == 0 && bx > 0);
    return lowA != lowB ? lowA : ax * by - ay * bx >= 0;
  }

  private static int lowest(double[] xy) {
    int best = 0;
    for (int i = 1; i < xy.length / 2; i++) {
      if (xy[2 * i + 1] < xy[2 * best + 1]
          || (xy[2 * i + 1] == xy[2 * best + 1] && xy[2 * i] < xy[2 * best])) {
        best = i;
      }
    }
    return best;
  }

  private static double[] halfPlanes(double[] sum, double touching) {
    int n = sum.length / 2;
    double[] half = new double[3 * n];
    int count = 0;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      double dx = sum[2 * j] - sum[2 * i];
      double dy = sum[2 * j + 1] - sum[2 * i + 1];
      double length = Math.hypot(dx, dy);
      if (length > touching) {
        double nx = dy / length;
        double ny = -dx / length;
        half[3 * count] = nx;
        half[3 * count + 1] = ny;
        half[3 * count + 2] = nx * sum[2 * i] + ny * sum[2 * i + 1] - touching;
        count++;
      }
    }
    return Arrays.copyOf(half, 3 * count);
  }
}
