package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;

/**
 * How a knit is made, as far as sewing notices, and what is typical of it. The ranges of stretch
 * across and of weight are common practice without a source; those of weight agree with what trade
 * pages say of jersey and interlock. They serve to notice a slip of the pen, not to replace a
 * reading.
 *
 * <pre>{@code
 * Structure.RIB.plainName();  // => rib
 * Structure.JERSEY.curls();  // => true
 * Structure.JERSEY.typicalStretch();  // => 15 % to 60 %
 * Structure.PONTE.typicalMass();  // => 250 to 380 g/m2
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum Structure {
  /** Single jersey: smooth face, purl back, curls at cut edges. */
  JERSEY("single jersey", true, 15, 60, 120, 220),
  /** Two ribs knitted into each other: both sides smooth, steady. */
  INTERLOCK("interlock", false, 15, 70, 120, 250),
  /** Face and back wales in turn: gives most, comes back best. */
  RIB("rib", false, 40, 150, 180, 260),
  /** Tuck stitches in a pattern: firm, gives little. */
  PIQUE("pique", false, 5, 35, 160, 260),
  /** Jersey with loops on its back. */
  TERRY("french terry", false, 10, 50, 220, 300),
  /** Loops that were brushed to a pile. */
  FLEECE("fleece", false, 10, 50, 260, 350),
  /** A firm double knit. */
  PONTE("ponte", false, 10, 45, 250, 380),
  /** Warp or weft knit with much elastane, for swimming and leggings. */
  ELASTIC("swim and legging knit", false, 40, 150, 180, 280),
  /** Any other knit. */
  OTHER("knit", false, 0, 200, 50, 600);

  private final String plainName;
  private final boolean curls;
  private final int leastPercent;
  private final int mostPercent;
  private final int lightest;
  private final int heaviest;

  Structure(
      String plainName,
      boolean curls,
      int leastPercent,
      int mostPercent,
      int lightest,
      int heaviest) {
    this.plainName = plainName;
    this.curls = curls;
    this.leastPercent = leastPercent;
    this.mostPercent = mostPercent;
    this.lightest = lightest;
    this.heaviest = heaviest;
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

  /**
   * How far such a knit usually gives across.
   *
   * @return shares, 0.15 for 15 %
   */
  public TypicalRange typicalStretch() {
    return TypicalRange.percent(leastPercent, mostPercent);
  }

  /**
   * What such a knit usually weighs.
   *
   * @return grams per square metre
   */
  public TypicalRange typicalMass() {
    return TypicalRange.gramsPerSquareMetre(lightest, heaviest);
  }
}
