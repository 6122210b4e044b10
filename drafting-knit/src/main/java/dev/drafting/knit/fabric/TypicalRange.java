package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import java.io.Serializable;

/**
 * From where to where a figure usually lies (common practice, no source).
 *
 * <pre>{@code
 * Structure.RIB.typicalStretch();  // => 40 % to 150 %
 * }</pre>
 *
 * @param least the lower end, included
 * @param most the upper end, included
 * @param words both ends with their unit
 * @since 0.1
 */
@Stable
public record TypicalRange(double least, double most, String words) implements Serializable {

  static TypicalRange percent(int least, int most) {
    return new TypicalRange(least / 100.0, most / 100.0, least + " % to " + most + " %");
  }

  static TypicalRange gramsPerSquareMetre(int least, int most) {
    return new TypicalRange(least, most, least + " to " + most + " g/m2");
  }

  /**
   * Tells whether a figure lies within.
   *
   * @param figure in the unit of the range
   * @return true at both ends too
   */
  public boolean holds(double figure) {
    return figure >= least && figure <= most;
  }

  /** Both ends with their unit. */
  @Override
  public String toString() {
    return words;
  }
}
