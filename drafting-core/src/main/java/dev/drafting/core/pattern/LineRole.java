package dev.drafting.core.pattern;

import dev.drafting.core.Stable;

/**
 * What a line that follows an edge is for.
 *
 * <pre>{@code
 * SeamFinish.of(Length.mm(7)).profile().lines().get(0).role();  // => CUT
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum LineRole {
  /** Where the cloth is cut. */
  CUT,
  /** Where the cloth is sewn to something else. */
  JOIN,
  /** Where the cloth, or the band on it, is folded. */
  FOLD,
  /** Where a row of stitching shows on the right side. */
  TOPSTITCH
}
