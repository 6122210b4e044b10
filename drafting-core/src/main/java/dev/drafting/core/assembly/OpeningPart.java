package dev.drafting.core.assembly;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.EdgeRef;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * One edge of one copy of a piece, as a part of an opening.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * Assembly.of(top).opening("neck").parts().get(0);  // => front / neck, 144.9 mm from 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class OpeningPart implements Serializable {
  private static final long serialVersionUID = 1L;

  private final EdgeRef edge;
  private final boolean mirrored;
  private final Curve curve;
  private final Length from;

  OpeningPart(EdgeRef edge, boolean mirrored, Curve curve, Length from) {
    this.edge = edge;
    this.mirrored = mirrored;
    this.curve = curve;
    this.from = from;
  }

  /**
   * Which edge it is.
   *
   * @return the names of piece and edge
   */
  public EdgeRef edge() {
    return edge;
  }

  /**
   * Tells which copy of the piece it belongs to.
   *
   * @return true for the mirrored half or the mirrored one of a pair
   */
  public boolean mirrored() {
    return mirrored;
  }

  /**
   * The finished edge in the order of the loop, mirrored where that is needed to have the cloth on
   * the left.
   *
   * @return the curve, in the coordinates of its piece or of its mirror image
   */
  public Curve curve() {
    return curve;
  }

  /**
   * Where the part begins along the loop.
   *
   * @return the distance from the start of the loop
   */
  public Length from() {
    return from;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(EdgeRef edge, boolean mirrored, Curve curve, Length from)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (from.isNegative()) {
        throw DraftingException.of("a part begins before its opening")
            .at(edge.toString())
            .value(from)
            .accepted("0 mm or more");
      }
      return new OpeningPart(
          Objects.requireNonNull(edge, "edge"),
          mirrored,
          Objects.requireNonNull(curve, "curve"),
          Objects.requireNonNull(from, "from"));
    }
  }

  private Object writeReplace() {
    return new Kept(edge, mirrored, curve, from);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a part of an opening is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OpeningPart
        && ((OpeningPart) other).edge.equals(edge)
        && ((OpeningPart) other).mirrored == mirrored
        && ((OpeningPart) other).curve.equals(curve)
        && ((OpeningPart) other).from.equals(from);
  }

  @Override
  public int hashCode() {
    return Objects.hash(edge, mirrored, curve, from);
  }

  @Override
  public String toString() {
    return edge
        + (mirrored ? " (mirrored), " : ", ")
        + curve.length().text(LengthUnit.MM)
        + " from "
        + from.text(LengthUnit.MM);
  }
}
