package dev.drafting.knit;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.Serializable;
import java.util.Objects;

/**
 * A measure of the finished garment, lying flat.
 *
 * <pre>{@code
 * new Measure("front, length at the centre", Length.cm(56));  // => front, length at the centre: 56 cm
 * }</pre>
 *
 * @param name what is measured, such as "chest, all round"
 * @param length how long it is
 * @since 0.1
 */
@Stable
public record Measure(String name, Length length) implements Serializable {

  /**
   * Refuses nulls.
   *
   * @param name what is measured
   * @param length how long it is
   */
  public Measure {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(length, "length");
  }

  @Override
  public String toString() {
    return name + ": " + Wording.amount(length);
  }
}
