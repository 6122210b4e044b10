package dev.drafting.core.lay;

import dev.drafting.core.Experimental;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.Serializable;

/**
 * A rectangle of cloth that is left over.
 *
 * <pre>{@code
 * new Remnant(Length.ZERO, Length.cm(40), Length.cm(60), Length.cm(30));  // => 60 cm long, 30 cm wide, 0 cm from the cut end, 40 cm from the side
 * }</pre>
 *
 * @param fromEnd how far along the cloth it begins, from the cut end
 * @param fromSide how far across it begins, from the fold of folded cloth, else from the selvage
 * @param along how long it is
 * @param across how wide it is
 * @since 0.1
 */
@Experimental
public record Remnant(Length fromEnd, Length fromSide, Length along, Length across)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  @Override
  public String toString() {
    return along.text(LengthUnit.CM)
        + " long, "
        + across.text(LengthUnit.CM)
        + " wide, "
        + fromEnd.text(LengthUnit.CM)
        + " from the cut end, "
        + fromSide.text(LengthUnit.CM)
        + " from the side";
  }
}
