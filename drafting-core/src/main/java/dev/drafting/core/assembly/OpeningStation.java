package dev.drafting.core.assembly;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.Serializable;
import java.util.Objects;

/**
 * A place on an opening where its edges meet: at a seam, or on the fold of a piece.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * Assembly.of(top).opening("neck").stations().get(0);  // => shoulder at 0 mm, 180°
 * }</pre>
 *
 * @param at the distance from the start of the loop
 * @param label what a maker calls the place: "shoulder", "centre front"
 * @param angle the angle of the garment there, all pieces together; 180 degrees where the edge runs
 *     on smoothly
 * @since 0.1
 */
@Stable
public record OpeningStation(Length at, String label, Angle angle) implements Serializable {

  /**
   * Refuses nulls.
   *
   * @param at the distance from the start of the loop
   * @param label what a maker calls the place
   * @param angle the angle of the garment there
   */
  public OpeningStation {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(angle, "angle");
  }

  @Override
  public String toString() {
    return label + " at " + at.text(LengthUnit.MM) + ", " + angle;
  }
}
