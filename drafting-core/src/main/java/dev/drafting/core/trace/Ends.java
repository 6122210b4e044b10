package dev.drafting.core.trace;

/** What is asked of an edge at its start and at its end. */
record Ends(End start, End end) {
  static final Ends FREE = new Ends(End.FREE, End.FREE);

  /** The same ends, but free to meet the fold at any angle. */
  Ends pointed() {
    return new Ends(
        start.isLevel() ? End.POINTED_ON_FOLD : start, end.isLevel() ? End.POINTED_ON_FOLD : end);
  }

  boolean hasLevel() {
    return start.isLevel() || end.isLevel();
  }

  /** Asks this of an edge with so many control points. */
  void ask(Unknowns unknowns, int edge, int controls) {
    start.ask(unknowns, edge, 0, 1);
    end.ask(unknowns, edge, controls - 1, controls - 2);
  }
}
