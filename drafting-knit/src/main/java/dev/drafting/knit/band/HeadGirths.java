package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.util.Optional;

/**
 * Head girths by age, where nobody has measured: the medians of the growth charts of the United
 * States ("CDC Growth Charts: United States, 2000", public domain), the larger of boys' and girls'.
 *
 * <p>The charts' head girths end at three years; of what this library may hand on, nothing covers
 * infants under one, children from three years on, or adults. Half of all children have a larger
 * head than the median: measure whenever you can.
 *
 * <pre>{@code
 * HeadGirths.atMonths(36).get();  // => 496.8 mm
 * HeadGirths.atMonths(48).isPresent();  // => false
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class HeadGirths {
  /** Boys at 24 months, between the charts' rows of 23.5 and 24.5 months. */
  private static final Length AT_24_MONTHS = Length.cm(48.66);

  /** Boys at 36.0 months. */
  private static final Length AT_36_MONTHS = Length.cm(49.68);

  private HeadGirths() {}

  /**
   * The median head girth at an age.
   *
   * @param months the age in months
   * @return the girth at 24 and at 36 months, straight between them, and empty at any other age
   */
  public static Optional<Length> atMonths(int months) {
    if (months < 24 || months > 36) {
      return Optional.empty();
    }
    double share = (months - 24) / 12.0;
    return Optional.of(AT_24_MONTHS.times(1 - share).plus(AT_36_MONTHS.times(share)));
  }

  /**
   * The head girth to draft for at an age in completed years: that at the end of the year.
   *
   * @param years completed years
   * @return that of 24 months for a child of one, of 36 for a child of two, and empty at any other
   *     age
   */
  public static Optional<Length> forYears(int years) {
    return atMonths(12 * years + 12);
  }
}
