package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * One line that follows an edge at a distance.
 *
 * <pre>{@code
 * new ProfileLine(LineRole.CUT, Length.mm(7));  // => CUT +7 mm
 * }</pre>
 *
 * @param role what the line is for
 * @param distance how far it lies from the finished edge; outward, away from the piece, is positive
 * @since 0.1
 */
@Stable
public record ProfileLine(LineRole role, Length distance) implements Serializable {

  /**
   * Refuses nulls.
   *
   * @param role what the line is for
   * @param distance how far it lies from the finished edge, outward positive
   */
  public ProfileLine {
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(distance, "distance");
  }

  @Override
  public String toString() {
    return role + " " + (distance.isPositive() ? "+" : "") + distance;
  }
}
