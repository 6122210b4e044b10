package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * The point of a curve that is nearest to another point.
 *
 * <pre>{@code
 * Curve.line(new Point(0, 0), new Point(10, 0)).nearest(new Point(4, 3));  // => (4, 0) at 4 mm, 3 mm away
 * }</pre>
 *
 * @param point the nearest point of the curve
 * @param along its length from the start of the curve
 * @param distance how far it is from the other point
 * @since 0.1
 */
@Stable
public record Nearest(Point point, Length along, Length distance) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * The nearest point of a curve.
   *
   * @param point the nearest point of the curve
   * @param along its length from the start of the curve
   * @param distance how far it is from the other point
   */
  public Nearest {
    Objects.requireNonNull(point, "point");
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(distance, "distance");
  }

  /** The point, its place along the curve and the distance, to 0.001 mm. */
  @Override
  public String toString() {
    return Coordinates.pair(point.x(), point.y(), 3)
        + " at "
        + Coordinates.text(along.toMm(), 3)
        + " mm, "
        + Coordinates.text(distance.toMm(), 3)
        + " mm away";
  }
}
