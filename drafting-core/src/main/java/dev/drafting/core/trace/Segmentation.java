package dev.drafting.core.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Cuts a line into the straight and curved stretches that explain its points best with the fewest
 * numbers, by looking at every way of cutting it (dynamic programming; what a number must explain
 * is Schwarz's criterion, "Estimating the dimension of a model", 1978).
 */
final class Segmentation {
  private static final int STRAIGHT = 1;
  private static final int CUBIC = 3;

  /** Fewer points than this do not say how a stretch curves. */
  private static final int FEWEST_CURVED = 5;

  /**
   * Fewer points than this do not say where a stretch ends; it ends on points of its neighbours.
   */
  private static final int FEWEST_APART = 3;

  private final Walk walk;
  private final double variance;

  /** What a number of a model must explain, in variances. */
  private final double number;

  private final int size;

  // Best cost of everything up to this block; and of that with a last stretch of enough points.
  private final double[] best;
  private final double[] bestLong;
  private final int[] from;
  private final int[] fromLong;

  private Segmentation(Walk walk, double noise) {
    this.walk = walk;
    this.variance = noise * noise;
    this.size = walk.size();
    this.number = Math.log(2 * size);
    this.best = filled();
    this.bestLong = filled();
    this.from = new int[size];
    this.fromLong = new int[size];
  }

  private double[] filled() {
    double[] all = new double[size];
    Arrays.fill(all, Double.POSITIVE_INFINITY);
    return all;
  }

  /** A stretch from one block to another, both counted. */
  record Part(int from, int to) {}

  static List<Part> of(Walk walk, double noise) {
    Segmentation segmentation = new Segmentation(walk, noise);
    for (int start = 0; start < segmentation.size - 1; start++) {
      segmentation.extend(start);
    }
    return segmentation.parts();
  }

  /** Tries every stretch that starts at this block. */
  private void extend(int start) {
    double shared = start == 0 ? 0 : best[start];
    double apart = start == 0 ? 0 : Math.min(shared, bestLong[start - 1]);
    Moments moments = new Moments(walk.way[start], walk.x[start], walk.y[start]);
    moments.add(walk.way[start], walk.x[start], walk.y[start]);
    for (int end = start + 1; end < size; end++) {
      moments.add(walk.way[end], walk.x[end], walk.y[end]);
      double own = cost(moments);
      boolean isLong = end - start + 1 >= FEWEST_APART;
      double before = isLong ? apart : shared;
      if (before + own < best[end]) {
        best[end] = before + own;
        from[end] = start;
      }
      if (isLong && before + own < bestLong[end]) {
        bestLong[end] = before + own;
        fromLong[end] = start;
      }
    }
  }

  /** What a stretch costs, as the straight line or the cubic that costs less. */
  private double cost(Moments moments) {
    double line = moments.left(STRAIGHT) / variance + 2 * (STRAIGHT + 1) * number;
    if (moments.count() < FEWEST_CURVED) {
      return line;
    }
    return Math.min(line, moments.left(CUBIC) / variance + 2 * (CUBIC + 1) * number);
  }

  private List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    int end = size - 1;
    boolean enough = false;
    while (end > 0) {
      int start = enough ? fromLong[end] : from[end];
      parts.add(new Part(start, end));
      enough = start > 0 && end - start + 1 >= FEWEST_APART && bestLong[start - 1] < best[start];
      end = enough ? start - 1 : start;
    }
    Collections.reverse(parts);
    return parts;
  }
}
