package dev.drafting.core.trace;

import dev.drafting.core.Stable;

/**
 * How much of a piece was traced.
 *
 * @since 0.1
 */
@Stable
public enum Extent {
  /** Half the piece, folded down its middle: the fold lies on x = 0, the half at x above 0. */
  HALF_ON_FOLD,
  /** The whole piece, lying anywhere: its fold line has to be found. */
  WHOLE,
  /**
   * The whole piece as it is cut, lying anywhere, its grain along y: a piece that has no fold line,
   * such as a sleeve or a side panel. It is not made symmetrical.
   */
  AS_IT_LIES
}
