package dev.drafting.core.trace;

import java.util.Arrays;

/**
 * The coordinates of the control points of one or more edges: which are free, which are given, and
 * which are one and the same because edges share a corner or run level as they end.
 */
final class Unknowns {
  private static final int GIVEN = -1;

  private final int[] offset;
  private final int[] same;
  private final double[] given;
  private int[] index = {};
  private int count;

  Unknowns(int... controls) {
    offset = new int[controls.length + 1];
    for (int i = 0; i < controls.length; i++) {
      offset[i + 1] = offset[i] + 2 * controls[i];
    }
    same = new int[offset[controls.length]];
    Arrays.setAll(same, i -> i);
    given = new double[same.length];
    Arrays.fill(given, Double.NaN);
  }

  private int x(int edge, int control) {
    return offset[edge] + 2 * control;
  }

  private int root(int coordinate) {
    int at = coordinate;
    while (same[at] != at) {
      at = same[at];
    }
    return at;
  }

  void giveX(int edge, int control, double value) {
    given[root(x(edge, control))] = value;
  }

  void giveY(int edge, int control, double value) {
    given[root(x(edge, control) + 1)] = value;
  }

  /** Two control points of one edge lie at one height. */
  void level(int edge, int control, int other) {
    tie(x(edge, control) + 1, x(edge, other) + 1);
  }

  /** The last control point of one edge is the first of another. */
  void join(int edge, int control, int other) {
    tie(x(edge, control), x(other, 0));
    tie(x(edge, control) + 1, x(other, 0) + 1);
  }

  private void tie(int one, int other) {
    int a = root(one);
    int b = root(other);
    if (a != b) {
      double value = Double.isNaN(given[a]) ? given[b] : given[a];
      same[Math.max(a, b)] = Math.min(a, b);
      given[Math.min(a, b)] = value;
    }
  }

  /** Numbers what is free; nothing may be given or tied after that. */
  Unknowns numbered() {
    index = new int[same.length];
    count = 0;
    for (int i = 0; i < same.length; i++) {
      int root = root(i);
      index[i] = root < i ? index[root] : Double.isNaN(given[i]) ? count++ : GIVEN;
    }
    return this;
  }

  int count() {
    return count;
  }

  /** Where each control point's x stands among the unknowns; -1 where it is given. */
  int[] xs(int edge) {
    return every(offset[edge], offset[edge + 1]);
  }

  /** Where each control point's y stands among the unknowns; -1 where it is given. */
  int[] ys(int edge) {
    return every(offset[edge] + 1, offset[edge + 1]);
  }

  private int[] every(int from, int to) {
    int[] found = new int[(to - from + 1) / 2];
    for (int i = 0; i < found.length; i++) {
      found[i] = index[from + 2 * i];
    }
    return found;
  }

  /** The free numbers that come nearest to these control points. */
  double[] gather(Track[] tracks) {
    double[] free = new double[count];
    int[] times = new int[count];
    for (int e = 0; e < tracks.length; e++) {
      for (int i = offset[e]; i < offset[e + 1]; i++) {
        if (index[i] != GIVEN) {
          int control = (i - offset[e]) / 2;
          free[index[i]] +=
              (i - offset[e]) % 2 == 0 ? tracks[e].cx[control] : tracks[e].cy[control];
          times[index[i]]++;
        }
      }
    }
    for (int i = 0; i < count; i++) {
      free[i] /= times[i];
    }
    return free;
  }

  /** Moves the control points to these free numbers. */
  void spread(double[] free, Track[] tracks) {
    for (int e = 0; e < tracks.length; e++) {
      for (int i = offset[e]; i < offset[e + 1]; i++) {
        double value = index[i] == GIVEN ? given[root(i)] : free[index[i]];
        int control = (i - offset[e]) / 2;
        if ((i - offset[e]) % 2 == 0) {
          tracks[e].cx[control] = value;
        } else {
          tracks[e].cy[control] = value;
        }
      }
      tracks[e].changed();
    }
  }
}
