package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;

/**
 * Something about a garment that calls for cautions.
 *
 * <pre>{@code
 * Detail.NIGHTWEAR;  // => nightwear
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum Detail {
  /** It is slept in. */
  NIGHTWEAR("nightwear"),
  /** It has a cord, drawstring or tie. */
  CORD("a cord"),
  /** It has a hood. */
  HOOD("a hood"),
  /** It has buttons, snaps, beads or anything else that can come off. */
  SMALL_PARTS("small parts"),
  /** It has elastic. */
  ELASTIC("elastic");

  private final String plainName;

  Detail(String plainName) {
    this.plainName = plainName;
  }

  @Override
  public String toString() {
    return plainName;
  }
}
