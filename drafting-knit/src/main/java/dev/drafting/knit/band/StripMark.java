package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.Serializable;
import java.util.Objects;

/**
 * A mark on a strip, to be laid on the same place of its opening.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.strips().get(0).marks().get(0).label();  // => join: side
 * }</pre>
 *
 * @param along how far from the strip's join, along the relaxed loop as it is cut; add the
 *     allowance at the join on a strip that is still flat
 * @param onEdge how far from the place of the join, along the seam line of the cut pieces, which
 *     are larger than the finished garment where their cloth has still to be washed
 * @param label what it meets, such as "half: centre front" or "shoulder"
 * @since 0.1
 */
@Stable
public record StripMark(Length along, Length onEdge, String label) implements Serializable {

  /**
   * Refuses nulls.
   *
   * @param along how far from the strip's join
   * @param onEdge how far from there along the seam line
   * @param label what it meets
   */
  public StripMark {
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(onEdge, "onEdge");
    Objects.requireNonNull(label, "label");
  }

  @Override
  public String toString() {
    return label + " at " + along.text(LengthUnit.CM, 1);
  }
}
