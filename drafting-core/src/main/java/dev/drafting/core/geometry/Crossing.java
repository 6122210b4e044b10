package dev.drafting.core.geometry;

import dev.drafting.core.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A point where a curve meets another curve or itself.
 *
 * @param point where they meet
 * @param along its length from the start of the first curve
 * @param alongOther its length from the start of the other curve, or the later place of the same
 *     one
 * @since 0.1
 */
public record Crossing(Point point, Length along, Length alongOther) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * A point where two curves meet.
   *
   * @param point where they meet
   * @param along its length from the start of the first curve
   * @param alongOther its length from the start of the other curve
   */
  public Crossing {
    Objects.requireNonNull(point, "point");
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(alongOther, "alongOther");
  }
}
