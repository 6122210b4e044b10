package dev.drafting.core.assembly;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Seam;
import java.io.Serializable;

/**
 * The two sides of a seam measured against each other on the finished edges.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * Assembly.of(top).seamChecks().get(0);  // => shoulder: 55 mm to 55 mm, off by 0 mm
 * }</pre>
 *
 * @param seam the seam
 * @param first the length of its first side
 * @param second the length of its second side
 * @since 0.1
 */
@Stable
public record SeamCheck(Seam seam, Length first, Length second) implements Serializable {

  /**
   * By how much the first side is longer than it should be.
   *
   * @return first less second less ease; negative if the second side is the longer one
   */
  public Length difference() {
    return first.minus(second).minus(seam.ease());
  }

  /**
   * Tells whether the sides fit.
   *
   * @param tolerance how much they may differ
   * @return true if the difference is not greater than that
   */
  public boolean matches(Length tolerance) {
    return difference().abs().compareTo(tolerance) <= 0;
  }

  @Override
  public String toString() {
    return seam.name()
        + ": "
        + first.text(LengthUnit.MM)
        + " to "
        + second.text(LengthUnit.MM)
        + ", off by "
        + difference().text(LengthUnit.MM);
  }
}
