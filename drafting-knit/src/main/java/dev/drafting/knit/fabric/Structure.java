package dev.drafting.knit.fabric;

/**
 * How a knit is made, as far as sewing notices.
 *
 * <pre>{@code
 * Structure.RIB.plainName();  // => rib
 * Structure.JERSEY.curls();  // => true
 * }</pre>
 *
 * @since 0.1
 */
public enum Structure {
  /** Single jersey: smooth face, purl back, curls at cut edges. */
  JERSEY("single jersey", true),
  /** Two ribs knitted into each other: both sides smooth, steady. */
  INTERLOCK("interlock", false),
  /** Face and back wales in turn: gives most, comes back best. */
  RIB("rib", false),
  /** Tuck stitches in a pattern: firm, gives little. */
  PIQUE("pique", false),
  /** Any other knit. */
  OTHER("knit", false);

  private final String plainName;
  private final boolean curls;

  Structure(String plainName, boolean curls) {
    this.plainName = plainName;
    this.curls = curls;
  }

  /**
   * The name in a sentence.
   *
   * @return for instance "single jersey"
   */
  public String plainName() {
    return plainName;
  }

  /**
   * Tells whether cut edges roll up by themselves. Single jersey's do: cut ends to the face, side
   * edges to the back; rib and interlock lie flat (knit-structure course notes).
   *
   * @return true for single jersey
   */
  public boolean curls() {
    return curls;
  }
}
