package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The points of one edge in order, with the share of the way (0 to 1) at which each lies. Points
 * closer together than a hand can wobble say the same thing: they count as fewer. Not for sharing
 * between threads.
 */
final class Samples {
  /** Nearer points than this follow the same movement of the hand. */
  private static final double WOBBLE_MM = 5;

  /** More points than this to a wobble are a line that was drawn in one with its slips. */
  private static final int DENSE = 8;

  final double[] x;
  final double[] y;
  final double[] share;

  /** How many points count as observations of their own. */
  final double independent;

  /** Where both sides of a whole piece start and end in the middle; null for a single stroke. */
  private final @Nullable Point start;

  private final @Nullable Point end;

  /** Whether its first point is where it starts without a doubt, and its last where it ends. */
  private final boolean sureStart;

  private final boolean sureEnd;

  private final int[] stops;
  private double @Nullable [] differences;
  private int order;
  private boolean @Nullable [] likely;
  private double likelyNoise;

  private Samples(
      double[] x,
      double[] y,
      double[] share,
      double independent,
      int[] stops,
      @Nullable Point start,
      @Nullable Point end,
      boolean sureStart,
      boolean sureEnd) {
    this.x = x;
    this.y = y;
    this.share = share;
    this.independent = independent;
    this.stops = stops;
    this.start = start;
    this.end = end;
    this.sureStart = sureStart;
    this.sureEnd = sureEnd;
  }

  /** Points in the order in which they were traced. */
  static Samples traced(double[] x, double[] y) {
    int[] stops = stops(x, y);
    double independent = independent(x, y, stops);
    return new Samples(x, y, shares(x, y, stops), independent, stops, null, null, false, false);
  }

  /** Points of both sides of a whole piece, laid on each other. */
  static Samples averaged(
      double[] x, double[] y, double[] share, double independent, Point start, Point end) {
    return new Samples(x, y, share, independent, new int[0], start, end, false, false);
  }

  /** The same points, of which the first or the last are no slips. */
  Samples withSureEnds(boolean first, boolean last) {
    return new Samples(x, y, share, independent, stops, start, end, first, last);
  }

  /** Whether a point is known to be no slip. */
  boolean isSure(int point) {
    return (sureStart && point == 0) || (sureEnd && point == size() - 1);
  }

  int size() {
    return x.length;
  }

  /** From each point straight to the next, in mm. */
  double way() {
    return way(0, size() - 1);
  }

  /** The same between two of them. */
  double way(int from, int to) {
    double way = 0;
    for (int i = from + 1; i <= to; i++) {
      double dx = x[i] - x[i - 1];
      double dy = y[i] - y[i - 1];
      way += Math.sqrt(dx * dx + dy * dy);
    }
    return way;
  }

  /** Where the pencil was set down, this being the first point that counts. */
  Point start(int first) {
    return start == null ? new Point(x[first], y[first]) : start;
  }

  /** Where the pencil was lifted, this being the last point that counts. */
  Point end(int last) {
    return end == null ? new Point(x[last], y[last]) : end;
  }

  /** The same points turned or moved. */
  Samples map(Transform transform) {
    double[] mappedX = new double[size()];
    double[] mappedY = new double[size()];
    for (int i = 0; i < size(); i++) {
      Point point = transform.apply(new Point(x[i], y[i]));
      mappedX[i] = point.x();
      mappedY[i] = point.y();
    }
    return new Samples(mappedX, mappedY, share, independent, stops, start, end, sureStart, sureEnd);
  }

  /** What the noise is judged from, see {@link Noise}. */
  double[] differences(int wanted) {
    double[] found = differences;
    if (found == null || order != wanted) {
      found = Noise.differences(this, stops, wanted);
      differences = found;
      order = wanted;
    }
    return found;
  }

  /**
   * Which points belong to the line, as far as their neighbours tell, see {@link Slips}; all of
   * them where so many follow one movement of the hand that a few of them are no slip.
   */
  boolean[] withoutSlips(double noise) {
    boolean[] found = likely;
    if (found == null || likelyNoise != noise) {
      boolean dense = size() > DENSE * stops.length;
      found = dense ? EdgeFit.all(size()) : Slips.kept(this, noise);
      likely = found;
      likelyNoise = noise;
    }
    return found;
  }

  /** Shares of the way along the points. */
  private static double[] shares(double[] x, double[] y, int[] stops) {
    double[] along = new double[x.length];
    double done = 0;
    for (int k = 1; k < stops.length; k++) {
      int a = stops[k - 1];
      int b = stops[k];
      double dx = x[b] - x[a];
      double dy = y[b] - y[a];
      double step = Math.sqrt(dx * dx + dy * dy);
      for (int i = a + 1; i <= b; i++) {
        double part = (x[i] - x[a]) * dx + (y[i] - y[a]) * dy;
        along[i] = step == 0 ? done : done + Math.min(Math.max(part / step, 0), step);
      }
      done += step;
    }
    for (int i = 0; i < along.length; i++) {
      along[i] = Math.min(along[i] / done, 1);
    }
    return along;
  }

  /** Of the points from one stop to the next no more count than wobbles have room. */
  private static double independent(double[] x, double[] y, int[] stops) {
    double count = 1;
    for (int k = 1; k < stops.length; k++) {
      int a = stops[k - 1];
      int b = stops[k];
      double wobbles = Math.hypot(x[b] - x[a], y[b] - y[a]) / WOBBLE_MM;
      count += Math.min(b - a, Math.max(1, wobbles));
    }
    return count;
  }

  /** Points at least a wobble apart, the first and the last among them. */
  private static int[] stops(double[] x, double[] y) {
    int[] stops = new int[x.length];
    int count = 1;
    for (int i = 1; i < x.length; i++) {
      double dx = x[i] - x[stops[count - 1]];
      double dy = y[i] - y[stops[count - 1]];
      if (dx * dx + dy * dy >= WOBBLE_MM * WOBBLE_MM) {
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
