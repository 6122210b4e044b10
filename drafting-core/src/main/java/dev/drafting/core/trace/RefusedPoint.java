package dev.drafting.core.trace;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A traced point that was taken for a slip of the pencil and left out.
 *
 * <pre>{@code
 * RefusedPoint slip = Truing.of(Tracing.of("pocket", Extent.HALF_ON_FOLD, List.of(TracedEdge.of("bottom", 0, 0, 30, 0, 60, 0), TracedEdge.of("side", 60, 0, 60, 10, 60, 20, 60, 30, 72, 40, 60, 50, 60, 60, 60, 70, 60, 80), TracedEdge.of("top", 60, 80, 30, 80, 0, 80)))).result().report().edge("side").refused().get(0);
 * slip.distance().text(LengthUnit.MM);  // => 12 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class RefusedPoint implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Point traced;
  private final Point placed;
  private final Length distance;

  private RefusedPoint(Point traced, Point placed, Length distance) {
    this.traced = traced;
    this.placed = placed;
    this.distance = distance;
  }

  static RefusedPoint of(Point traced, Point placed, Length distance) {
    return new RefusedPoint(traced, placed, distance);
  }

  /**
   * Where it was drawn, in the coordinates of the tracing.
   *
   * @return the point in millimetres
   */
  public Point traced() {
    return traced;
  }

  /**
   * Where it lies in the frame of the trued piece; on the left half at x below 0.
   *
   * @return the point in millimetres
   */
  public Point placed() {
    return placed;
  }

  /**
   * How far it stands off the edge that the other points make.
   *
   * @return more than zero
   */
  public Length distance() {
    return distance;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Point traced, Point placed, Length distance) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (distance.isNegative()) {
        throw DraftingException.of("a point lies nearer than nothing")
            .at(traced.toString())
            .value(distance)
            .accepted("0 mm or more");
      }
      return new RefusedPoint(
          Objects.requireNonNull(traced, "traced"),
          Objects.requireNonNull(placed, "placed"),
          Objects.requireNonNull(distance, "distance"));
    }
  }

  private Object writeReplace() {
    return new Kept(traced, placed, distance);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a refused point is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RefusedPoint
        && ((RefusedPoint) other).traced.equals(traced)
        && ((RefusedPoint) other).placed.equals(placed)
        && ((RefusedPoint) other).distance.equals(distance);
  }

  @Override
  public int hashCode() {
    return Objects.hash(traced, placed, distance);
  }

  @Override
  public String toString() {
    return traced + ", " + distance.text(LengthUnit.MM) + " off";
  }
}
