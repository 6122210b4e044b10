package dev.drafting.core.trace;

/** What is asked of an edge at its start and at its end. */
record Ends(End start, End end) {
  boolean hasLevel() {
    return start.isLevel() || end.isLevel();
  }
}
