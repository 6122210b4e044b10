package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A sort of stitch, by its number in ISO 4915, with its plain name, the thread it takes and how far
 * a seam of it follows the cloth.
 *
 * <p>Thread to a metre of seam is that of the table in the textbook "The Technology of Clothing
 * Manufacture" as reproduced in a thread-estimating note; buy by it. Another guide gives 5.5
 * instead of 7 for 304, and 20 instead of 18 is also seen for 514 (from memory). The formulas are
 * those of a textile-engineering converter; use them for what-if. A course page has 3 instead of 5
 * at the start of the one for 504. The stretch that a seam stands is common practice, no source.
 *
 * <pre>{@code
 * StitchType.OVERLOCK_FOUR;  // => four-thread overlock (514)
 * StitchType.OVERLOCK_FOUR.threadPerMetre().getAsDouble();  // => 18.0
 * StitchType.LOCKSTITCH.threadPerMetre(Length.mm(1), Length.ZERO, Length.mm(2.54)).getAsDouble() < 2.8;  // => true
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum StitchType {
  /** Straight stitch of a domestic machine: only where nothing stretches. */
  LOCKSTITCH("301", "straight stitch", 1, 2, 0.10, 2.5, ThreadFormula.of(2, 2, 1, 0)),
  /** Zigzag of a domestic machine: its stretch seam. */
  ZIGZAG("304", "zigzag", 1, 2, 0.60, 7.0, null),
  /** Two rows of straight stitch with one bobbin thread that goes to and fro under them. */
  TWIN_NEEDLE("", "twin needle", 2, 3, 0.40, 7.5, null),
  /** Two-thread chain: seams with elastic. */
  CHAIN("401", "two-thread chain stitch", 1, 2, 0.40, 5.5, ThreadFormula.of(4, 2, 1, 0)),
  /** Cover stitch with two needles: hems and bindings. */
  COVER_TWO("406", "two-needle cover stitch", 2, 3, 0.90, 18.0, ThreadFormula.of(7, 2, 1, 1)),
  /** Cover stitch with three needles. */
  COVER_THREE("407", "three-needle cover stitch", 3, 4, 0.90, null, ThreadFormula.of(9, 2, 3, 1)),
  /** Three-thread overlock: seams of light cloth, edges. */
  OVERLOCK_THREE("504", "three-thread overlock", 1, 3, 1.00, 14.0, ThreadFormula.of(5, 4, 1, 1)),
  /** Four-thread overlock: the main seam of knits. */
  OVERLOCK_FOUR("514", "four-thread overlock", 2, 4, 1.00, 18.0, ThreadFormula.of(5, 2, 3, 2)),
  /** Overlock and chain side by side: stable knits. */
  OVERLOCK_AND_CHAIN("516", "overlock and chain", 2, 5, 0.40, 20.0, ThreadFormula.of(9, 2, 3, 2)),
  /** Cover stitch above and below with two needles: flat trims. */
  FLAT_TWO("602", "two-needle flat seam", 2, 4, 1.20, 25.0, ThreadFormula.of(8, 1, 4, 5)),
  /** Cover stitch above and below with three needles. */
  FLAT_THREE("605", "three-needle flat seam", 3, 5, 1.20, 28.0, ThreadFormula.of(10, 2, 3, 2)),
  /** Flat seam with four needles: underwear, sport. */
  FLAT_FOUR("607", "four-needle flat seam", 4, 6, 1.20, null, ThreadFormula.of(12, 4, 2, 1));

  private final String number;
  private final String plainName;
  private final int needles;
  private final int threads;
  private final double stretch;
  private final @Nullable Double threadPerMetre;

  @SuppressWarnings("ImmutableEnumChecker") // a record of numbers
  private final @Nullable ThreadFormula formula;

  StitchType(
      String number,
      String plainName,
      int needles,
      int threads,
      double stretch,
      @Nullable Double threadPerMetre,
      @Nullable ThreadFormula formula) {
    this.number = number;
    this.plainName = plainName;
    this.needles = needles;
    this.threads = threads;
    this.stretch = stretch;
    this.threadPerMetre = threadPerMetre;
    this.formula = formula;
  }

  /**
   * Its number in ISO 4915.
   *
   * @return such as "514"; empty for the twin needle of a domestic machine
   */
  public Optional<String> number() {
    return number.isEmpty() ? Optional.empty() : Optional.of(number);
  }

  /**
   * The name in a sentence.
   *
   * @return for instance "four-thread overlock"
   */
  public String plainName() {
    return plainName;
  }

  /**
   * How many needles it has.
   *
   * @return 1 to 4
   */
  public int needles() {
    return needles;
  }

  /**
   * How many threads it takes, those of loopers and bobbins included.
   *
   * @return 2 to 6
   */
  public int threads() {
    return threads;
  }

  /**
   * How far a seam of it can be pulled before a thread breaks, as a share of its length; common
   * practice, no source.
   *
   * @return a share, 0.1 for 10 %
   */
  public double stretch() {
    return stretch;
  }

  /**
   * Metres of thread to a metre of seam by the table, for buying.
   *
   * @return metres, or empty where the table has no value
   */
  public OptionalDouble threadPerMetre() {
    return threadPerMetre == null ? OptionalDouble.empty() : OptionalDouble.of(threadPerMetre);
  }

  /**
   * Metres of thread to a metre of seam by formula, for another cloth or stitch length.
   *
   * @param thickness of the cloth at the seam, all layers together
   * @param width of the stitch
   * @param stitchLength more than zero
   * @return metres, or empty where there is no formula
   */
  public OptionalDouble threadPerMetre(Length thickness, Length width, Length stitchLength) {
    return formula == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(formula.perMetre(thickness, width, stitchLength));
  }

  @Override
  public String toString() {
    return number.isEmpty() ? plainName : plainName + " (" + number + ")";
  }
}
