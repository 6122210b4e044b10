package dev.drafting.core.template;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.Serializable;
import java.util.Objects;

/**
 * One dimension that a template takes.
 *
 * <pre>{@code
 * Templates.installed().get("straight-skirt").dimensions().get(0);  // => hip: all round at the hip and the hem, 60 cm to 160 cm, else 96 cm
 * }</pre>
 *
 * @param name what it is called: "chest"
 * @param meaning how it is measured at the finished garment
 * @param least the smallest that can be drawn
 * @param usual what is taken if nothing is said
 * @param most the largest that can be drawn
 * @param girth whether it is measured all round, so that more of it makes the pieces wider
 * @since 0.1
 */
@Experimental
public record Dimension(
    String name, String meaning, Length least, Length usual, Length most, boolean girth)
    implements Serializable {

  /** What misses a bound by a hair must not look as if it met it. */
  private static final int EXACT_DECIMALS = 9;

  private static final Length ROUNDED = Length.mm(1e-9);

  /**
   * Refuses bounds that are out of order.
   *
   * @param name what it is called
   * @param meaning how it is measured
   * @param least the smallest
   * @param usual the usual
   * @param most the largest
   * @param girth whether it is measured all round
   */
  public Dimension {
    Objects.requireNonNull(meaning, "meaning");
    if (name.isBlank()) {
      throw DraftingException.of("a dimension has no name").accepted("a name that is not blank");
    }
    if (least.compareTo(usual) > 0 || usual.compareTo(most) > 0) {
      throw DraftingException.of("the bounds of a dimension are out of order")
          .at(name)
          .value(words(least) + ", " + words(usual) + ", " + words(most))
          .accepted("the least, the usual, the most");
    }
  }

  /**
   * A dimension along the garment.
   *
   * @param name what it is called
   * @param meaning how it is measured
   * @param least the smallest that can be drawn
   * @param usual what is taken if nothing is said
   * @param most the largest that can be drawn
   * @return the dimension
   * @throws DraftingException if the bounds are out of order
   */
  public static Dimension length(
      String name, String meaning, Length least, Length usual, Length most) {
    return new Dimension(name, meaning, least, usual, most, false);
  }

  /**
   * A dimension all round the garment.
   *
   * @param name what it is called
   * @param meaning how it is measured
   * @param least the smallest that can be drawn
   * @param usual what is taken if nothing is said
   * @param most the largest that can be drawn
   * @return the dimension
   * @throws DraftingException if the bounds are out of order
   */
  public static Dimension girth(
      String name, String meaning, Length least, Length usual, Length most) {
    return new Dimension(name, meaning, least, usual, most, true);
  }

  /** What a computation misses a bound by in its last bits is on it. */
  void check(Length given) {
    if (given.plus(ROUNDED).compareTo(least) < 0 || given.minus(ROUNDED).compareTo(most) > 0) {
      throw DraftingException.of("the dimension is out of bounds")
          .at(name)
          .value(given.text(LengthUnit.CM, EXACT_DECIMALS))
          .accepted(words(least) + " to " + words(most));
    }
  }

  private static String words(Length length) {
    return length.text(LengthUnit.CM);
  }

  @Override
  public String toString() {
    return name
        + ": "
        + meaning
        + ", "
        + words(least)
        + " to "
        + words(most)
        + ", else "
        + words(usual);
  }
}
