package dev.drafting.core.trace;

import dev.drafting.core.geometry.Curve;
import java.util.Arrays;

/** One edge as it was fitted: what it is, where it runs, and which points it refuses. */
final class EdgeFit {
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

  /** The same kind of edge through the same points, with other ends. */
  EdgeFit between(Ends ends) {
    Samples placed = samples.withShares(ends.start().corner(), ends.end().corner());
    double rms = Math.sqrt(squares() / observations());
    Fitted again = form.fit(placed, weights(kept), ends, Math.min(noise.mm, rms));
    return new EdgeFit(placed, form, again, kept, noise);
  }

  /** The same fit, turned and moved: its points are these. */
  EdgeFit placed(Samples moved) {
    return new EdgeFit(moved, form, fitted, kept, noise);
  }

  Curve curve() {
    return Curve.of(fitted.segments());
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

  /** How many independent observations count. */
  double observations() {
    return samples.independent * keptCount() / samples.size();
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
