package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.io.Serializable;

/**
 * A way on paper: how far to the right and how far up, in millimetres; or a direction, when its
 * length is one.
 *
 * <pre>{@code
 * new Vector(3, 4).length();  // => 5 mm
 * new Vector(3, 4).left();  // => Vector(-4, 3)
 * new Vector(0, 7).angle();  // => 90°
 * }</pre>
 *
 * @param dx millimetres to the right, finite; -0.0 becomes 0.0
 * @param dy millimetres upwards, finite; -0.0 becomes 0.0
 * @since 0.1
 */
@Stable
public record Vector(double dx, double dy) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * A way on paper.
   *
   * @param dx millimetres to the right
   * @param dy millimetres upwards
   * @throws DraftingException if a component is not a finite number
   */
  public Vector {
    dx = Coordinates.checked(dx, "the dx of a vector");
    dy = Coordinates.checked(dy, "the dy of a vector");
  }

  /**
   * The direction at an angle.
   *
   * @param angle counter-clockwise from the x axis
   * @return a vector of length one
   */
  public static Vector at(Angle angle) {
    return new Vector(Math.cos(angle.toRadians()), Math.sin(angle.toRadians()));
  }

  /**
   * How long the way is.
   *
   * @return zero or more
   * @throws DraftingException if it is over 100 m
   */
  public Length length() {
    return Length.mm(norm());
  }

  double norm() {
    return Coordinates.norm(dx, dy);
  }

  /**
   * The direction of this way.
   *
   * @return the vector of length one that points the same way
   * @throws DraftingException if this way has no length
   */
  public Vector unit() {
    double norm = norm();
    if (norm == 0) {
      throw DraftingException.of("a way of no length has no direction")
          .value(this)
          .accepted("two different points");
    }
    return new Vector(dx / norm, dy / norm);
  }

  /**
   * The dot product: the length of one times what the other shows along it.
   *
   * @param other the other vector
   * @return square millimetres; zero when they are square to each other
   */
  public double dot(Vector other) {
    return dx * other.dx + dy * other.dy;
  }

  /**
   * The cross product: the area of the parallelogram of the two.
   *
   * @param other the other vector
   * @return square millimetres, positive when the other points to the left of this one
   */
  public double cross(Vector other) {
    return dx * other.dy - dy * other.dx;
  }

  /**
   * This vector turned a quarter to the left, exactly.
   *
   * @return the vector square to this one on its left
   */
  public Vector left() {
    return new Vector(-dy, dx);
  }

  /**
   * The way back.
   *
   * @return the opposite vector
   */
  public Vector negated() {
    return new Vector(-dx, -dy);
  }

  /**
   * This way a number of times.
   *
   * @param factor any finite number
   * @return the product
   */
  public Vector times(double factor) {
    return new Vector(dx * factor, dy * factor);
  }

  /**
   * This way and another one after it.
   *
   * @param other the other vector
   * @return the sum
   */
  public Vector plus(Vector other) {
    return new Vector(dx + other.dx, dy + other.dy);
  }

  /**
   * What must be added to another vector to get this one.
   *
   * @param other the other vector
   * @return the difference
   */
  public Vector minus(Vector other) {
    return new Vector(dx - other.dx, dy - other.dy);
  }

  /**
   * The direction as an angle from the x axis.
   *
   * @return from -180 (exclusive) to 180 degrees, counter-clockwise; 0 for a vector of no length
   */
  public Angle angle() {
    return Angle.radians(Math.atan2(dy, dx));
  }

  /**
   * How far one must turn to go from this direction to another.
   *
   * @param other the direction afterwards
   * @return from -180 (exclusive) to 180 degrees, positive to the left; straight back is 180
   */
  public Angle turnTo(Vector other) {
    return Angle.radians(turnInRadians(other));
  }

  double turnInRadians(Vector other) {
    double turn = Math.atan2(cross(other), dot(other));
    return turn == -Math.PI ? Math.PI : turn;
  }

  /** Both components in millimetres, rounded to 1e-9 mm. */
  @Override
  public String toString() {
    return "Vector" + Coordinates.pair(dx, dy);
  }
}
