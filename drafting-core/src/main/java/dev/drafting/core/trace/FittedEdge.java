package dev.drafting.core.trace;

import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
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

  /** The same edge, knowing how its points meet the fold when they need not meet it squarely. */
  FittedEdge comparedWith(EdgeFit unbound) {
    Segment segment =
        ends.start().isLevel()
            ? unbound.fitted.segments().get(0)
            : unbound.fitted.segments().get(unbound.fitted.segments().size() - 1);
    Vector way = segment.directionAt(ends.start().isLevel() ? 0 : 1);
    double off = Math.toDegrees(Math.atan2(Math.abs(way.dy()), Math.abs(way.dx())));
    return new FittedEdge(name, ends, fit, sides, lopsidedness, off);
  }
}
