package dev.drafting.core.trace;

/** What is asked of an edge where it ends. */
final class End {
  /** Nothing: the edge ends where its points end. */
  static final End FREE = new End(false, false, Double.NaN);

  /** It ends on the fold and crosses it squarely. */
  static final End SQUARE_ON_FOLD = new End(true, true, Double.NaN);

  /** It ends on the fold at a point, as a V neck does. */
  static final End POINTED_ON_FOLD = new End(true, false, Double.NaN);

  private final boolean onFold;
  private final boolean level;
  private final double handle;

  private End(boolean onFold, boolean level, double handle) {
    this.onFold = onFold;
    this.level = level;
    this.handle = handle;
  }

  /** The same level end, running level for this long, in mm. */
  End withHandle(double newHandle) {
    return new End(onFold, level, newHandle);
  }

  boolean hasHandle() {
    return !Double.isNaN(handle);
  }

  boolean isOnFold() {
    return onFold;
  }

  /** Whether the edge runs level, square to the fold, as it ends. */
  boolean isLevel() {
    return level;
  }

  /** Asks this of the last control point of an edge and of the one beside it. */
  void ask(Unknowns unknowns, int edge, int corner, int beside) {
    if (onFold) {
      unknowns.giveX(edge, corner, 0);
    }
    if (level) {
      unknowns.level(edge, corner, beside);
    }
    if (hasHandle()) {
      unknowns.giveX(edge, beside, handle);
    }
  }
}
