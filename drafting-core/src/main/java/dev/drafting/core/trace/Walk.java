package dev.drafting.core.trace;

import java.util.Arrays;

/**
 * A line drawn round a piece in one go, as points that say something new: neighbours nearer than a
 * hand can wobble are taken together, and so are points beyond a few hundred.
 */
final class Walk {
  private static final double SHORTEST_MM = 2.5;
  private static final int MOST_BLOCKS = 400;

  /** Over so many deviations the direction of the line is told from the wandering. */
  private static final double SURE_OF_DIRECTION = 8;

  /** Of each point: how far along the line it lies, in mm. */
  final double[] along;

  /** Of each block: where it lies, how far along, its first point. */
  final double[] x;

  final double[] y;
  final double[] way;
  final int[] first;

  private Walk(double[] along, int blocks) {
    this.along = along;
    this.x = new double[blocks];
    this.y = new double[blocks];
    this.way = new double[blocks];
    this.first = new int[blocks + 1];
  }

  /** Walks along these points, from which the pencil wandered so far. */
  static Walk of(double[] x, double[] y, double wander) {
    double[] along = along(x, y, SURE_OF_DIRECTION * wander);
    double block = Math.max(SHORTEST_MM, along[along.length - 1] / MOST_BLOCKS);
    int[] number = new int[along.length];
    double end = block;
    for (int i = 1; i < number.length; i++) {
      boolean starts = along[i] >= end;
      number[i] = number[i - 1] + (starts ? 1 : 0);
      end = starts ? Math.max(end, Math.floor(along[i] / block) * block) + block : end;
    }
    Walk walk = new Walk(along, number[number.length - 1] + 1);
    walk.fill(x, y, number);
    return walk;
  }

  private void fill(double[] pointX, double[] pointY, int[] number) {
    int[] count = new int[size()];
    for (int i = along.length - 1; i >= 0; i--) {
      int b = number[i];
      first[b] = i;
      count[b]++;
      x[b] += pointX[i];
      y[b] += pointY[i];
      way[b] += along[i];
    }
    first[size()] = along.length;
    for (int b = 0; b < size(); b++) {
      x[b] /= count[b];
      y[b] /= count[b];
      way[b] /= count[b];
    }
  }

  /** Every step counts along the direction of the line there, so that wandering adds nothing. */
  private static double[] along(double[] x, double[] y, double sure) {
    double[] along = new double[x.length];
    int back = 0;
    int ahead = 0;
    for (int i = 1; i < along.length; i++) {
      while (back < i - 1 && distance(x, y, back + 1, i) >= sure) {
        back++;
      }
      ahead = Math.max(ahead, i);
      while (ahead < along.length - 1 && distance(x, y, ahead, i - 1) < sure) {
        ahead++;
      }
      double wayX = x[ahead] - x[back];
      double wayY = y[ahead] - y[back];
      double far = Math.hypot(wayX, wayY);
      double stepX = x[i] - x[i - 1];
      double stepY = y[i] - y[i - 1];
      along[i] = along[i - 1] + (far == 0 ? 0 : (stepX * wayX + stepY * wayY) / far);
    }
    return along;
  }

  private static double distance(double[] x, double[] y, int one, int other) {
    return Math.hypot(x[other] - x[one], y[other] - y[one]);
  }

  int size() {
    return x.length;
  }

  /** How far the blocks wander. */
  double wander() {
    return Noise.ofRound(Samples.traced(x, y)).mm;
  }

  /** The middle distance between neighbours, in mm. */
  double spacing() {
    double[] gaps = new double[size() - 1];
    for (int i = 0; i < gaps.length; i++) {
      gaps[i] = way[i + 1] - way[i];
    }
    Arrays.sort(gaps);
    return gaps.length == 0 ? 0 : gaps[gaps.length / 2];
  }

  /** Sums over the blocks from one to another, both counted. */
  Moments moments(int from, int to) {
    Moments moments = new Moments(way[from], x[from], y[from]);
    for (int i = from; i <= to; i++) {
      moments.add(way[i], x[i], y[i]);
    }
    return moments;
  }
}
