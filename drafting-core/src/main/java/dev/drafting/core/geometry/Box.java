package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.Serializable;

/**
 * The upright rectangle that just holds a shape.
 *
 * <pre>{@code
 * Curve.line(new Point(0, 5), new Point(30, 25)).bounds();  // => Box((0, 5) to (30, 25))
 * }</pre>
 *
 * @param minX left side, millimetres
 * @param minY lower side, millimetres
 * @param maxX right side, millimetres, not less than minX
 * @param maxY upper side, millimetres, not less than minY
 * @since 0.1
 */
@Stable
public record Box(double minX, double minY, double maxX, double maxY) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * A rectangle from its sides.
   *
   * @param minX left side, millimetres
   * @param minY lower side, millimetres
   * @param maxX right side, millimetres
   * @param maxY upper side, millimetres
   * @throws DraftingException if a side is not a finite number or the sides are the wrong way round
   */
  public Box {
    minX = Coordinates.checked(minX, "the left side of a box");
    minY = Coordinates.checked(minY, "the lower side of a box");
    maxX = Coordinates.checked(maxX, "the right side of a box");
    maxY = Coordinates.checked(maxY, "the upper side of a box");
    if (minX > maxX || minY > maxY) {
      throw DraftingException.of("the sides of a box are the wrong way round")
          .value(Coordinates.pair(minX, minY) + " to " + Coordinates.pair(maxX, maxY))
          .accepted("the lower left corner first");
    }
  }

  /**
   * The rectangle with two opposite corners.
   *
   * @param corner one corner
   * @param opposite the corner across
   * @return the rectangle between them
   */
  public static Box of(Point corner, Point opposite) {
    return new Box(
        Math.min(corner.x(), opposite.x()),
        Math.min(corner.y(), opposite.y()),
        Math.max(corner.x(), opposite.x()),
        Math.max(corner.y(), opposite.y()));
  }

  /**
   * The width.
   *
   * @return zero or more
   * @throws DraftingException if it is over 100 m
   */
  public Length width() {
    return Length.mm(maxX - minX);
  }

  /**
   * The height.
   *
   * @return zero or more
   * @throws DraftingException if it is over 100 m
   */
  public Length height() {
    return Length.mm(maxY - minY);
  }

  /**
   * The point in the middle.
   *
   * @return the centre
   */
  public Point centre() {
    return new Point(minX / 2 + maxX / 2, minY / 2 + maxY / 2);
  }

  /**
   * The rectangle that just holds this one and another.
   *
   * @param other the other rectangle
   * @return the smallest rectangle round both
   */
  public Box union(Box other) {
    return new Box(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /**
   * Tells whether a point lies in the rectangle or on its sides.
   *
   * @param point the point
   * @return true in or on the rectangle
   */
  public boolean contains(Point point) {
    return point.x() >= minX && point.x() <= maxX && point.y() >= minY && point.y() <= maxY;
  }

  /**
   * The rectangle with some room on every side.
   *
   * @param margin the room, zero or more
   * @return the wider rectangle
   */
  public Box widened(Length margin) {
    double m = margin.toMm();
    return new Box(minX - m, minY - m, maxX + m, maxY + m);
  }

  /** Two opposite corners in millimetres. */
  @Override
  public String toString() {
    return "Box(" + Coordinates.pair(minX, minY) + " to " + Coordinates.pair(maxX, maxY) + ")";
  }
}
