package dev.drafting.core.cut;

import dev.drafting.core.Experimental;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.Serializable;
import java.util.Objects;

/**
 * A point to be chalked on the cloth, found with a tape and a set square.
 *
 * <pre>{@code
 * new ChalkPoint("side", Length.mm(420), Length.mm(230));  // => side: 420 mm up, 230 mm across
 * }</pre>
 *
 * @param line what runs from here to the next point: the edge; or what is marked here alone
 * @param up along the fold or the grain, from the lowest point of the piece; not below zero
 * @param across square to it, from the fold or from the line along the grain
 * @since 0.1
 */
@Experimental
public record ChalkPoint(String line, Length up, Length across) implements Serializable {
  /**
   * Refuses nulls.
   *
   * @param line what runs from here
   * @param up along the fold or the grain
   * @param across square to it
   */
  public ChalkPoint {
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(up, "up");
    Objects.requireNonNull(across, "across");
  }

  @Override
  public String toString() {
    return line + ": " + up.text(LengthUnit.MM) + " up, " + across.text(LengthUnit.MM) + " across";
  }
}
