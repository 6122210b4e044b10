package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.Serializable;
import java.util.Objects;

/**
 * From where to where a girth may lie.
 *
 * <pre>{@code
 * new GirthBounds(Length.cm(80), Length.cm(96));  // => 80 cm to 96 cm
 * }</pre>
 *
 * @param least the lower end
 * @param most the upper end
 * @since 0.1
 */
@Stable
public record GirthBounds(Length least, Length most) implements Serializable {

  /**
   * Refuses nulls.
   *
   * @param least the lower end
   * @param most the upper end
   */
  public GirthBounds {
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(most, "most");
  }

  @Override
  public String toString() {
    return Wording.amount(least) + " to " + Wording.amount(most);
  }
}
