package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A point where a curve meets another curve or itself.
 *
 * <pre>{@code
 * Curve edge = Curve.line(new Point(0, 0), new Point(100, 0));
 * edge.intersections(Curve.line(new Point(30, 0), new Point(30, 40)));  // => [(30, 0) at 30 mm and 0 mm]
 * }</pre>
 *
 * @param point where they meet
 * @param along its length from the start of the first curve
 * @param alongOther its length from the start of the other curve, or the later place of the same
 *     one
 * @since 0.1
 */
@Stable
public record Crossing(Point point, Length along, Length alongOther) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * A point where two curves meet.
   *
   * @param point where they meet
   * @param along its length from the start of the first curve
   * @param alongOther its length from the start of the other curve
   */
  public Crossing {
    Objects.requireNonNull(point, "point");
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(alongOther, "alongOther");
  }

  /** The point and its place along both curves, to 0.001 mm. */
  @Override
  public String toString() {
    return Coordinates.pair(point.x(), point.y(), 3)
        + " at "
        + Coordinates.text(along.toMm(), 3)
        + " mm and "
        + Coordinates.text(alongOther.toMm(), 3)
        + " mm";
  }
}
