package dev.drafting.core.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One edge of the outline before its corners are known, with the strokes it was fitted to.
 *
 * @param atFold the angle at which its points meet the fold, in degrees off square; 0 elsewhere
 */
record FittedEdge(
    String name,
    Ends ends,
    EdgeFit fit,
    List<TracedSide> sides,
    @Nullable Lopsidedness lopsidedness,
    double atFold) {

  FittedEdge(
      String name,
      Ends ends,
      EdgeFit fit,
      List<TracedSide> sides,
      @Nullable Lopsidedness lopsidedness) {
    this(name, ends, fit, sides, lopsidedness, 0);
  }

  /** Whether the curve has to hurry to meet the fold squarely, so that it may not be meant to. */
  boolean isPerhapsPointed() {
    Track track = fit.track();
    int last = track.cx.length - 1;
    double usual = Math.abs(track.cx[last] - track.cx[0]) / 3;
    double handle = Math.abs(ends.start().isLevel() ? track.cx[1] : track.cx[last - 1]);
    return ends.hasLevel()
        && (track.knots.isStraight() || track.knots.parts() > 1 || handle < usual);
  }

  /** The same edge, knowing how its points meet the fold when they need not meet it squarely. */
  FittedEdge comparedWith(EdgeFit unbound) {
    Track track = unbound.track();
    track.look(ends.start().isLevel() ? 0 : 1);
    double off = Math.toDegrees(Math.atan2(Math.abs(track.dy), Math.abs(track.dx)));
    return new FittedEdge(name, ends, fit, sides, lopsidedness, off);
  }
}
