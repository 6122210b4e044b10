package dev.drafting.core.offset;

import dev.drafting.core.Stable;

/**
 * One of the two edges that meet at a corner, seen in the direction in which the outline runs.
 *
 * <pre>{@code
 * CornerTreatment.squareTo(CornerSide.AFTER);  // => square to the edge after
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum CornerSide {
  /** The edge that arrives at the corner. */
  BEFORE,
  /** The edge that leaves the corner. */
  AFTER
}
