package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.io.Serializable;

/**
 * A place on paper, in millimetres, x to the right and y up.
 *
 * <pre>{@code
 * new Point(12.5, 30).mirrored();  // => (-12.5, 30)
 * new Point(0, 0).distanceTo(new Point(30, 40));  // => 50 mm
 * }</pre>
 *
 * @param x millimetres to the right of the fold, finite; -0.0 becomes 0.0
 * @param y millimetres upwards, finite; -0.0 becomes 0.0
 * @since 0.1
 */
@Stable
public record Point(double x, double y) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * A place on paper.
   *
   * @param x millimetres to the right
   * @param y millimetres upwards
   * @throws dev.drafting.core.finding.DraftingException if a coordinate is not a finite number
   */
  public Point {
    x = Coordinates.checked(x, "the x of a point");
    y = Coordinates.checked(y, "the y of a point");
  }

  /**
   * The point reached by going a way from here.
   *
   * @param way how far to the right and up
   * @return the point at its end
   */
  public Point plus(Vector way) {
    return new Point(x + way.dx(), y + way.dy());
  }

  /**
   * The way from another point to this one.
   *
   * @param from where the way starts
   * @return the difference
   */
  public Vector minus(Point from) {
    return new Vector(x - from.x, y - from.y);
  }

  /**
   * The distance to another point in a straight line.
   *
   * @param other the other point
   * @return zero or more
   * @throws dev.drafting.core.finding.DraftingException if it is over 100 m
   */
  public Length distanceTo(Point other) {
    return Length.mm(gap(other));
  }

  double gap(Point other) {
    return Coordinates.norm(x - other.x, y - other.y);
  }

  /**
   * The point halfway to another.
   *
   * @param other the other point
   * @return the middle of the two
   */
  public Point midpoint(Point other) {
    return new Point(x / 2 + other.x / 2, y / 2 + other.y / 2);
  }

  /**
   * The point some share of the way to another.
   *
   * @param other the other point
   * @param t 0 gives this point exactly, 1 the other exactly; outside 0 to 1 the line goes on
   * @return the point between
   */
  public Point between(Point other, double t) {
    if (t == 1) {
      return other;
    }
    return new Point(x + (other.x - x) * t, y + (other.y - y) * t);
  }

  /**
   * The mirror image in the fold, exact to the last bit.
   *
   * @return the point with x negated
   */
  public Point mirrored() {
    return new Point(-x, y);
  }

  /** Both coordinates in millimetres, rounded to 1e-9 mm. */
  @Override
  public String toString() {
    return Coordinates.pair(x, y);
  }
}
