package dev.drafting.core.trace;

import java.util.Arrays;

/** One edge as it was fitted: what it is, where it runs, and which points it refuses. */
final class EdgeFit {
  private static final double PATTERN = 0.5;

  /** No edge is so much longer than the chords from one of its points to the next. */
  private static final double WOUND = 1.3;

  /** By so many times the noise may it be longer besides. */
  private static final double WANDERS = 5;

  final Samples samples;
  final Form form;
  final Fitted fitted;

  /** Which points count; the others are slips of the pencil. */
  final boolean[] kept;

  /** What the edge was fitted against. */
  final Noise noise;

  EdgeFit(Samples samples, Form form, Fitted fitted, boolean[] kept, Noise noise) {
    this.samples = samples;
    this.form = form;
    this.fitted = fitted;
    this.kept = kept;
    this.noise = noise;
  }

  /** The same fit, turned and moved: its points are these. */
  EdgeFit placed(Samples moved) {
    return new EdgeFit(moved, form, fitted, kept, noise);
  }

  Track track() {
    return fitted.track();
  }

  /** Whether it doubles back on itself, or winds to and fro between its points. */
  boolean isAstray() {
    return track().isFolded() || isWound();
  }

  /**
   * Whether one of its cubics is much longer than the chords between the points beside it, or runs
   * on beyond the first point or the last.
   */
  private boolean isWound() {
    Knots knots = form.knots;
    for (int part = 0; part < knots.parts(); part++) {
      int from = 0;
      while (from + 2 < kept.length && fitted.share(from + 1) <= knots.from(part)) {
        from++;
      }
      int to = from + 1;
      while (to + 1 < kept.length && fitted.share(to) < knots.to(part)) {
        to++;
      }
      double start = from == 0 ? 0 : fitted.share(from);
      double end = to == kept.length - 1 ? 1 : fitted.share(to);
      if (isMuchLonger(track().length(start, end), samples.way(from, to), noise)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a length in mm is much more than it ought to be, even where the pencil wandered. */
  static boolean isMuchLonger(double length, double ought, Noise noise) {
    return length > WOUND * ought + WANDERS * noise.mm;
  }

  /** The squares of the distances of the points that count, as independent observations. */
  double squares() {
    double sum = 0;
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        sum += fitted.distance(i) * fitted.distance(i);
      }
    }
    return sum * samples.independent / samples.size();
  }

  /**
   * Whether neighbouring points tend to lie on one side (the correlation of distances that follow
   * each other, against half of the deviation that it has by chance). If they do not, there is
   * nothing left that another cubic could follow.
   */
  boolean hasPattern() {
    double products = 0;
    double squares = 0;
    double before = 0;
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        double off = fitted.distance(i);
        products += before * off;
        squares += off * off;
        before = off;
      }
    }
    return products > squares * PATTERN / Math.sqrt(keptCount());
  }

  double rms() {
    return Math.sqrt(squares() / observations());
  }

  /** How many independent observations count. */
  double observations() {
    return samples.independent * keptCount() / samples.size();
  }

  int firstKept() {
    int i = 0;
    while (!kept[i]) {
      i++;
    }
    return i;
  }

  int lastKept() {
    int i = kept.length - 1;
    while (!kept[i]) {
      i--;
    }
    return i;
  }

  /** Whether so many points where the stroke sets down, or where it lifts, are all refused. */
  boolean endsShort(int points) {
    return endsShort(kept, points);
  }

  static boolean endsShort(boolean[] kept, int points) {
    boolean start = true;
    boolean end = true;
    for (int i = 0; i < Math.min(points, kept.length); i++) {
      start &= !kept[i];
      end &= !kept[kept.length - 1 - i];
    }
    return start || end;
  }

  int keptCount() {
    int count = 0;
    for (boolean one : kept) {
      count += one ? 1 : 0;
    }
    return count;
  }

  static double[] weights(boolean[] kept) {
    double[] weights = new double[kept.length];
    for (int i = 0; i < kept.length; i++) {
      weights[i] = kept[i] ? 1 : 0;
    }
    return weights;
  }

  static boolean[] all(int size) {
    boolean[] kept = new boolean[size];
    Arrays.fill(kept, true);
    return kept;
  }
}
