package dev.drafting.knit.band;

/**
 * What a strip does on its edge.
 *
 * @since 0.1
 */
public enum Outcome {
  /** Longer than its edge: waves and stands away. */
  GAPES("gapes"),
  /** Neither waves nor puckers. */
  LIES_FLAT("lies flat"),
  /** Shorter than its edge: gathers the cloth it is sewn to. */
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
