package dev.drafting.core.trace;

/** What is asked of an edge at its start and at its end. */
record Ends(End start, End end) {
  /** The same ends, but free to meet the fold at any angle. */
  Ends pointed() {
    return new Ends(
        start.isLevel() ? End.POINTED_ON_FOLD : start, end.isLevel() ? End.POINTED_ON_FOLD : end);
  }

  boolean hasLevel() {
    return start.isLevel() || end.isLevel();
  }
}
