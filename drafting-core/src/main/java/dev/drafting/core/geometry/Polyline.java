package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;

/**
 * Many points joined by straight stretches, kept in one array: a tracing, or a curve made flat for
 * drawing.
 *
 * <pre>{@code
 * Polyline.of(0, 0, 30, 0, 30, 40);  // => Polyline of 3 points, 70 mm, open, (0, 0) to (30, 40)
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Polyline implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] xy;

  private Polyline(double[] xy) {
    if (xy.length < 4 || xy.length % 2 != 0) {
      throw DraftingException.of("a polyline has too few coordinates or an odd number")
          .value(xy.length)
          .accepted("x and y of two points or more");
    }
    if (xy.length / 2 > Curve.MOST) {
      throw DraftingException.of("a polyline has too many points")
          .value(xy.length / 2)
          .accepted("a million at most");
    }
    for (int i = 0; i < xy.length; i++) {
      xy[i] = Coordinates.checked(xy[i], "coordinate " + i + " of a polyline");
    }
    this.xy = xy;
  }

  /**
   * A polyline from coordinates.
   *
   * @param xy x and y of every point in turn, millimetres; copied
   * @return the polyline
   * @throws DraftingException if there are fewer than two points, over a million, an odd number of
   *     coordinates, or one that is not finite
   */
  public static Polyline of(double... xy) {
    return new Polyline(xy.clone());
  }

  /**
   * A polyline from points.
   *
   * @param points two points or more, a million at most
   * @return the polyline
   * @throws DraftingException if there are too few or too many points
   */
  public static Polyline of(List<Point> points) {
    double[] xy = new double[2 * points.size()];
    int i = 0;
    for (Point point : points) {
      xy[i++] = point.x();
      xy[i++] = point.y();
    }
    return new Polyline(xy);
  }

  /** Takes the array over without a copy. */
  static Polyline owning(double[] xy) {
    return new Polyline(xy);
  }

  /**
   * The number of points; a closed polyline counts its first point again at the end.
   *
   * @return two or more
   */
  public int size() {
    return xy.length / 2;
  }

  /**
   * The x of a point.
   *
   * @param i its number, from 0
   * @return millimetres
   */
  public double x(int i) {
    return xy[2 * i];
  }

  /**
   * The y of a point.
   *
   * @param i its number, from 0
   * @return millimetres
   */
  public double y(int i) {
    return xy[2 * i + 1];
  }

  /**
   * A point.
   *
   * @param i its number, from 0
   * @return the point
   */
  public Point point(int i) {
    return new Point(x(i), y(i));
  }

  /**
   * All coordinates.
   *
   * @return a new array of x and y of every point in turn, millimetres
   */
  public double[] toArray() {
    return xy.clone();
  }

  /**
   * The length along all straight stretches.
   *
   * @return zero or more
   * @throws DraftingException if it is over 100 m
   */
  public Length length() {
    return Length.mm(lengthMm());
  }

  private double lengthMm() {
    double sum = 0;
    double lost = 0;
    for (int i = 2; i < xy.length; i += 2) {
      double stretch = Coordinates.norm(xy[i] - xy[i - 2], xy[i + 1] - xy[i - 1]) - lost;
      double next = sum + stretch;
      lost = (next - sum) - stretch;
      sum = next;
    }
    return sum;
  }

  /**
   * Tells whether the last point is the first one again.
   *
   * @return true if it is, to the last bit
   */
  public boolean isClosed() {
    int last = xy.length - 2;
    return xy[0] == xy[last] && xy[1] == xy[last + 1];
  }

  /**
   * This polyline laid elsewhere.
   *
   * @param transform where it is laid
   * @return the polyline there
   */
  public Polyline map(Transform transform) {
    double[] mapped = new double[xy.length];
    for (int i = 0; i < xy.length; i += 2) {
      mapped[i] = transform.x(xy[i], xy[i + 1]);
      mapped[i + 1] = transform.y(xy[i], xy[i + 1]);
    }
    return new Polyline(mapped);
  }

  /**
   * The upright rectangle that just holds all points.
   *
   * @return the bounds
   */
  public Box bounds() {
    double minX = xy[0];
    double minY = xy[1];
    double maxX = minX;
    double maxY = minY;
    for (int i = 2; i < xy.length; i += 2) {
      minX = Math.min(minX, xy[i]);
      minY = Math.min(minY, xy[i + 1]);
      maxX = Math.max(maxX, xy[i]);
      maxY = Math.max(maxY, xy[i + 1]);
    }
    return new Box(minX, minY, maxX, maxY);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("ArrayRecordComponent") // nobody compares it
  private record Kept(double[] xy) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return Polyline.of(xy);
    }
  }

  private Object writeReplace() {
    return new Kept(xy);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a polyline is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Polyline that && Arrays.equals(xy, that.xy);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(xy);
  }

  /** The number of points, the length, and both ends. */
  @Override
  public String toString() {
    return "Polyline of "
        + size()
        + " points, "
        + Coordinates.text(lengthMm(), 3)
        + " mm, "
        + (isClosed() ? "closed, " : "open, ")
        + point(0)
        + " to "
        + point(size() - 1);
  }
}
