package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;

/**
 * What a length of cloth of one width comes to at another.
 *
 * <pre>{@code
 * Wording.amount(ClothLength.atWidth(Length.cm(400), Length.cm(45), Length.cm(54)));  // => 333.3 cm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class ClothLength {
  private ClothLength() {}

  /**
   * The length that has the same area: length x width / other width. Pieces do not lie by area, so
   * this is a first guess; tables of yardage differ a little from it.
   *
   * @param length of the cloth that is known
   * @param width of the cloth that is known
   * @param otherWidth of the cloth that is bought, over nothing
   * @return its length
   * @throws DraftingException if the other width is nothing
   */
  public static Length atWidth(Length length, Length width, Length otherWidth) {
    if (!otherWidth.isPositive()) {
      throw DraftingException.of("the cloth has no width").value(otherWidth).accepted("over 0");
    }
    return length.times(width.ratioTo(otherWidth));
  }
}
