package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;

/**
 * How openings are finished: as closed loops, or while one of their seams is still open.
 *
 * <pre>{@code
 * Construction.FLAT;  // => flat
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum Construction {
  /** All seams of an opening first, then its band as a loop: neater (common practice). */
  IN_THE_ROUND("in the round"),
  /** The band while the last seam is open, which then runs through it: faster. */
  FLAT("flat");

  private final String plainName;

  Construction(String plainName) {
    this.plainName = plainName;
  }

  @Override
  public String toString() {
    return plainName;
  }
}
