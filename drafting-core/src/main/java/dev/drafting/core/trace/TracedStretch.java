package dev.drafting.core.trace;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * What was traced between two corners: an edge that has no name yet.
 *
 * <pre>{@code
 * TracedStretch bottom = UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, Polyline.of(0, 0, 20, 0, 40, 0, 60, 0, 60, 20, 60, 40, 60, 60, 60, 80, 40, 80, 20, 80, 0, 80)).stretches().get(0);
 * bottom.to();  // => (60, 0)
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class TracedStretch implements Serializable {
  private static final long serialVersionUID = 1L;

  private final int number;
  private final Polyline points;
  private final boolean reordered;

  TracedStretch(int number, Polyline points, boolean reordered) {
    this.number = number;
    this.points = points;
    this.reordered = reordered;
  }

  /** This stretch under the name of its edge. */
  TracedEdge named(String name) {
    TracedEdge edge = TracedEdge.of(name, points);
    return reordered ? edge.reordered() : edge;
  }

  /**
   * Its number among the stretches of its piece, counter-clockwise.
   *
   * @return 1 for the first
   */
  public int number() {
    return number;
  }

  /**
   * The first of its points.
   *
   * @return a point in millimetres
   */
  public Point from() {
    return points.point(0);
  }

  /**
   * The last of its points.
   *
   * @return a point in millimetres
   */
  public Point to() {
    return points.point(points.size() - 1);
  }

  /**
   * Its traced points.
   *
   * @return the points in millimetres, counter-clockwise
   */
  public Polyline points() {
    return points;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(int number, Polyline points, boolean reordered) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (number < 1) {
        throw DraftingException.of("stretches are counted from 1")
            .value(number)
            .accepted("1 or more");
      }
      return new TracedStretch(number, Objects.requireNonNull(points, "points"), reordered);
    }
  }

  private Object writeReplace() {
    return new Kept(number, points, reordered);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a traced stretch is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TracedStretch that
        && number == that.number
        && reordered == that.reordered
        && points.equals(that.points);
  }

  @Override
  public int hashCode() {
    return Objects.hash(number, points, reordered);
  }

  @Override
  public String toString() {
    Length straight = from().distanceTo(to());
    return number + ": " + from() + " to " + to() + ", " + straight.text(LengthUnit.MM) + " apart";
  }
}
