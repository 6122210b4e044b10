package dev.drafting.knit.band;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.StretchClass;

/** The loops that do what a strip is meant to do, and what all other loops do instead. */
final class Wanted {
  /** The shortest loop that hugs, as a share of the finished edge (common practice, no source). */
  private static final double CLOSEST_HUG = 0.90;

  private final Intent intent;
  private final FlatWindow flat;
  private final LoopRange range;

  Wanted(Intent intent, FlatWindow flat, Length finishedEdge, StretchClass cloth) {
    this.intent = intent;
    this.flat = flat;
    this.range =
        switch (intent) {
          case LIES_FLAT -> flat.loops();
          case HUGS -> shorter(finishedEdge, CLOSEST_HUG, 1);
          case DRAWS_IN ->
              switch (cloth) {
                case STABLE -> shorter(finishedEdge, 0.90, 0.95);
                case MODERATE -> shorter(finishedEdge, 0.85, 0.90);
                case STRETCHY -> shorter(finishedEdge, 0.80, 0.88);
                case SUPER -> shorter(finishedEdge, 0.60, 0.78);
              };
        };
  }

  /** Shares of the finished edge, never longer than what still lies flat. */
  private LoopRange shorter(Length finishedEdge, double least, double most) {
    Length longest = finishedEdge.times(most).min(flat.shortest());
    return new LoopRange(finishedEdge.times(least).min(longest), longest);
  }

  LoopRange range() {
    return range;
  }

  Outcome judge(Length loop) {
    if (loop.compareTo(range.shortest()) < 0) {
      return Outcome.PUCKERS;
    }
    if (range.contains(loop)) {
      return switch (intent) {
        case LIES_FLAT -> Outcome.LIES_FLAT;
        case HUGS -> Outcome.HUGS;
        case DRAWS_IN -> Outcome.DRAWS_IN;
      };
    }
    return loop.compareTo(flat.shortest()) < 0 ? Outcome.HUGS : flat.judge(loop);
  }
}
