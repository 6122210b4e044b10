package dev.drafting.core.trace;

import dev.drafting.core.finding.DraftingException;

/**
 * How often the points of one edge may still be looked at. What a pencil traces is settled after
 * some ten looks at each point; points that lie along no edge would be looked at for minutes.
 */
final class Effort {
  private static final long LOOKS = 2_000_000;
  private static final long LOOKS_FOR_EACH = 200;

  private final String edge;
  private final int points;
  private long left;

  Effort(String edge, int points) {
    this.edge = edge;
    this.points = points;
    this.left = LOOKS + LOOKS_FOR_EACH * points;
  }

  /** Refuses an edge that was looked at too often. */
  void spend(long looks) {
    left -= looks;
    if (left < 0) {
      throw DraftingException.of("the points lie along no edge, however it is bent")
          .at(edge)
          .value(points + " points")
          .accepted("points along one edge, as steadily as a pencil sets them, or fewer of them");
    }
  }
}
