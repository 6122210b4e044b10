package dev.drafting.core.grade;

import dev.drafting.core.Experimental;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.Serializable;

/**
 * By how much the two sides of a seam are longer in a size than in the base size.
 *
 * <pre>{@code
 * new SeamGrowth("side", "L", Length.mm(4), Length.mm(6));  // => side, size L: first side 4 mm longer, second side 6 mm longer
 * }</pre>
 *
 * @param seam the seam's name
 * @param size the size
 * @param first how much longer its first side is; negative if shorter
 * @param second how much longer its second side is
 * @since 0.1
 */
@Experimental
public record SeamGrowth(String seam, String size, Length first, Length second)
    implements Serializable {
  /** Common practice, no source. */
  private static final Length ALIKE = Length.mm(1);

  /**
   * How unequally the sides grow.
   *
   * @return the growth of the first side less that of the second
   */
  public Length difference() {
    return first.minus(second);
  }

  @Override
  public String toString() {
    return seam
        + ", size "
        + size
        + ": first side "
        + words(first)
        + ", second side "
        + words(second);
  }

  /** Whether the sides differ by more than may be sewn together without a thought. */
  boolean isUnequal() {
    return difference().abs().compareTo(ALIKE) > 0;
  }

  static String words(Length growth) {
    return growth.abs().text(LengthUnit.MM, 1) + (growth.isNegative() ? " shorter" : " longer");
  }
}
