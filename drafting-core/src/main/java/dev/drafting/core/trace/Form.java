package dev.drafting.core.trace;

import org.jspecify.annotations.Nullable;

/** What an edge is taken to be: a straight line, or a chain of cubics with these joints. */
final class Form {
  static final Form STRAIGHT = new Form(null);

  private final @Nullable Knots knots;

  private Form(@Nullable Knots knots) {
    this.knots = knots;
  }

  static Form curved(Knots knots) {
    return new Form(knots);
  }

  boolean isStraight() {
    return knots == null;
  }

  int cubics() {
    return knots == null ? 0 : knots.cubics();
  }

  Fitted fit(Samples samples, double[] weights, Ends ends, double noise) {
    return knots == null
        ? new LineFit(samples, weights, ends)
        : SplineFit.of(samples, weights, knots, ends, noise);
  }

  /** How many numbers decide how the edge lies, sideways. */
  int freedom(Ends ends) {
    int level = (ends.start().isLevel() ? 1 : 0) + (ends.end().isLevel() ? 1 : 0);
    int free = knots == null ? 2 : knots.controls() + 2;
    return Math.max(free - level, 1);
  }
}
