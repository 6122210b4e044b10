package dev.drafting.core.trace;

import dev.drafting.core.Stable;

/**
 * How much of a piece was traced.
 *
 * <pre>{@code
 * Tracing pocket = Tracing.of("pocket", Extent.HALF_ON_FOLD, List.of(TracedEdge.of("bottom", 0, 0, 20, 0.2, 40, -0.1, 60, 0), TracedEdge.of("side", 60, 0, 60.2, 30, 59.9, 60, 60, 80), TracedEdge.of("top", 60, 80, 40, 80.2, 20, 79.9, 0, 80)));
 * pocket.extent();  // => HALF_ON_FOLD
 * }</pre>
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
