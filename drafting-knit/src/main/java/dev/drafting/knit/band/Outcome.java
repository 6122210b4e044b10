package dev.drafting.knit.band;

import dev.drafting.core.Stable;

/**
 * What a strip does on its edge.
 *
 * <pre>{@code
 * Outcome.LIES_FLAT.plainName();  // => lies flat
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum Outcome {
  /** Longer than its edge: waves and stands away. */
  GAPES("gapes"),
  /** Neither waves nor puckers. */
  LIES_FLAT("lies flat"),
  /** A little shorter than what lies flat: holds the edge closer, and is meant to. */
  HUGS("hugs"),
  /** Much shorter than its edge: gathers it in, and is meant to. */
  DRAWS_IN("draws in"),
  /** Shorter than it is meant to be: gathers the cloth it is sewn to. */
  PUCKERS("puckers"),
  /** Has to stretch further than its fabric gives to reach its seam: cannot be sewn on. */
  CANNOT_STRETCH("cannot stretch so far");

  private final String plainName;

  Outcome(String plainName) {
    this.plainName = plainName;
  }

  /**
   * The outcome in words.
   *
   * @return for instance "lies flat"
   */
  public String plainName() {
    return plainName;
  }
}
