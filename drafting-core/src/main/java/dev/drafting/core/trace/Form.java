package dev.drafting.core.trace;

import org.jspecify.annotations.Nullable;

/** What an edge is taken to be: a straight line, or a chain of cubics with these joints. */
final class Form {
  static final Form STRAIGHT = new Form(Knots.straight());

  final Knots knots;

  private Form(Knots knots) {
    this.knots = knots;
  }

  static Form curved(Knots knots) {
    return new Form(knots);
  }

  boolean isStraight() {
    return knots.isStraight();
  }

  int cubics() {
    return isStraight() ? 0 : knots.parts();
  }

  Fitted fit(Samples samples, double[] weights, Ends ends, double noise, @Nullable Fitted near) {
    return isStraight()
        ? new LineFit(samples, weights, ends)
        : SplineFit.of(samples, weights, knots, ends, noise, near);
  }

  /** How many numbers decide how the edge lies, sideways. */
  int freedom(Ends ends) {
    int level = (ends.start().isLevel() ? 1 : 0) + (ends.end().isLevel() ? 1 : 0);
    int free = isStraight() ? 2 : knots.controls() + 2;
    return Math.max(free - level, 1);
  }
}
