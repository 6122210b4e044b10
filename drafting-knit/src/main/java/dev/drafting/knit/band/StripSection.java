package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.Serializable;
import java.util.Objects;

/**
 * A part of a strip between two marks, and the part of the seam that it is sewn to.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.strips().get(0).sections().size();  // => 4
 * }</pre>
 *
 * @param from the mark at its start
 * @param to the mark at its end
 * @param onEdge how long the seam is there
 * @param onStrip how long the relaxed strip is there
 * @since 0.1
 */
@Stable
public record StripSection(String from, String to, Length onEdge, Length onStrip)
    implements Serializable {

  /**
   * Refuses nulls.
   *
   * @param from the mark at its start
   * @param to the mark at its end
   * @param onEdge how long the seam is there
   * @param onStrip how long the relaxed strip is there
   */
  public StripSection {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(onEdge, "onEdge");
    Objects.requireNonNull(onStrip, "onStrip");
  }

  /**
   * How far the strip is stretched while it is sewn there.
   *
   * @return a share, 0.1 for 10 %; negative where it is eased in
   */
  public double stretch() {
    return onEdge.ratioTo(onStrip) - 1;
  }

  @Override
  public String toString() {
    return from
        + " to "
        + to
        + ": "
        + Wording.amount(onStrip)
        + " on "
        + Wording.amount(onEdge)
        + ", stretched "
        + Wording.percent(stretch());
  }
}
