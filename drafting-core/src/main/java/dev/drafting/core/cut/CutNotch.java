package dev.drafting.core.cut;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.Serializable;
import java.util.Objects;

/**
 * A notch where it is cut: a short slit from the cut line inwards.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * Piece marked = top.piece("front").withNotch(Notch.of("side", Length.mm(100), "waist"));
 * CutPlan.of(top.withPiece(marked)).pieces().get(0).notches().get(0).label();  // => waist
 * }</pre>
 *
 * @param at the point on the cut line
 * @param inward the direction of the slit, of length one
 * @param depth how deep it is cut: 3 mm at most, half the allowance at most; zero where there is no
 *     allowance to slit, and the place is marked with chalk instead
 * @param label what it is matched with
 * @since 0.1
 */
@Stable
public record CutNotch(Point at, Vector inward, Length depth, String label)
    implements Serializable {

  /**
   * Refuses nulls.
   *
   * @param at the point on the cut line
   * @param inward the direction of the slit, of length one
   * @param depth how deep it is cut
   * @param label what it is matched with
   */
  public CutNotch {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(inward, "inward");
    Objects.requireNonNull(depth, "depth");
    Objects.requireNonNull(label, "label");
  }

  @Override
  public String toString() {
    return "notch " + label + " at " + at + ", " + depth.text(LengthUnit.MM) + " deep";
  }
}
