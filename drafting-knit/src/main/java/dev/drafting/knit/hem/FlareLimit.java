package dev.drafting.knit.hem;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * How deep a hem can be turned up on an edge that curves outward, like that of a flared skirt or a
 * rounded tail. The cut edge lies on a wider curve than the cloth it is turned onto, and the excess
 * has to be eased in.
 *
 * <p>On a hem line of radius R turned up by h, the cut edge on R + h comes to lie on R - h: it is
 * longer by 2h / (R - h). A knit eases in 5 % (common practice, no source).
 *
 * <pre>{@code
 * FlareLimit limit = FlareLimit.ofRadius(Length.cm(60));
 * Wording.percent(limit.excess(Length.cm(2)));  // => 6.9 %
 * Wording.fine(limit.greatestDepth());  // => 14.6 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class FlareLimit implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double EASED_IN = 0.05;

  private final Length radius;

  private FlareLimit(Length radius) {
    this.radius = radius;
  }

  /**
   * The limit on a curve of this radius.
   *
   * @param radius of the hem line where it curves most, over nothing
   * @return the limit
   * @throws DraftingException if the radius is not over nothing
   */
  public static FlareLimit ofRadius(Length radius) {
    if (!radius.isPositive()) {
      throw DraftingException.of("the radius of a hem line is nothing")
          .value(radius)
          .accepted("more than 0");
    }
    return new FlareLimit(radius);
  }

  /**
   * The radius of the hem line where it curves most.
   *
   * @return the radius
   */
  public Length radius() {
    return radius;
  }

  /**
   * How much longer the cut edge is than the line it is turned onto.
   *
   * @param depth how deep the hem is turned up, from 0
   * @return a share, 0.05 for 5 %; infinite when the hem is as deep as the radius
   */
  public double excess(Length depth) {
    double room = radius.toMm() - depth.toMm();
    return room <= 0 ? Double.POSITIVE_INFINITY : 2 * depth.toMm() / room;
  }

  /**
   * How much longer the cut edge is than the line it is turned onto, along an arc: 2h times the
   * angle, whatever the radius.
   *
   * @param depth how deep the hem is turned up, from 0
   * @param arc the angle by which the hem line turns outward
   * @return the length that has to be eased in
   */
  public static Length excess(Length depth, Angle arc) {
    return depth.times(2 * Math.max(0, arc.toRadians()));
  }

  /**
   * The deepest hem whose excess a knit eases in.
   *
   * @return the depth at which the excess is 5 %
   */
  public Length greatestDepth() {
    return radius.times(EASED_IN / (2 + EASED_IN));
  }

  /**
   * Tells whether a hem can be turned up so deep.
   *
   * @param depth how deep it is turned up
   * @return true up to {@link #greatestDepth()}
   */
  public boolean allows(Length depth) {
    return depth.compareTo(greatestDepth()) <= 0;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Length radius) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return ofRadius(radius);
    }
  }

  private Object writeReplace() {
    return new Kept(radius);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a limit of flare is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FlareLimit && ((FlareLimit) other).radius.equals(radius);
  }

  @Override
  public int hashCode() {
    return Objects.hashCode(radius);
  }

  @Override
  public String toString() {
    return "curve of radius "
        + Wording.amount(radius)
        + ": turn up "
        + Wording.fine(greatestDepth())
        + " at most";
  }
}
