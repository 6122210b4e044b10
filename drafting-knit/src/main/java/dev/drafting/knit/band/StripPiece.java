package dev.drafting.knit.band;

import dev.drafting.core.Experimental;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.Serializable;

/**
 * What is cut for a strip: as a rule one length, several where it is pieced, and one for each edge
 * where edges are bound before they lap.
 *
 * <pre>{@code
 * Draft baby = Draft.of(Templates.installed().get("baby-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * baby.strips().get(0).pieces();  // => [neck binding, front / neck: 28 cm, neck binding, back / neck: 25 cm]
 * }</pre>
 *
 * @param name the strip, and the edge where there are several
 * @param length how long it is cut
 * @param count how often
 * @since 0.1
 */
@Experimental
public record StripPiece(String name, Length length, int count) implements Serializable {
  @Override
  public String toString() {
    return name + ": " + (count == 1 ? "" : count + " x ") + Wording.amount(length);
  }
}
