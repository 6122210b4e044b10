package dev.drafting.core.trace;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One stroke of the pencil along one edge of a garment: its name and its points, in the order in
 * which they were drawn. Either direction will do; a point drawn twice counts once. Truing puts up
 * to 3000 points in order that were written down in another, or drawn there and back, and says so.
 *
 * <pre>{@code
 * TracedEdge.of("shoulder", List.of(new Point(95, 610), new Point(130, 596)));  // => shoulder, 2 points
 * TracedEdge.of("shoulder", 95, 610, 130, 596);  // => shoulder, 2 points
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class TracedEdge implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double FARTHEST_MM = 100_000;

  private final String name;
  private final Polyline points;
  private final boolean reordered;

  private TracedEdge(String name, Polyline points, boolean reordered) {
    this.name = name;
    this.points = points;
    this.reordered = reordered;
  }

  /**
   * A stroke through these points.
   *
   * @param name the edge's name in the maker's words: "neck", "side"
   * @param points two or more different points in millimetres
   * @return the traced edge
   * @throws DraftingException if the name is blank, fewer than two different points are given, or a
   *     point is over 100 m away
   */
  public static TracedEdge of(String name, List<Point> points) {
    double[] xy = new double[2 * points.size()];
    int at = 0;
    for (Point point : points) {
      xy[at++] = point.x();
      xy[at++] = point.y();
    }
    return of(name, xy);
  }

  /**
   * A stroke through the points of a polyline.
   *
   * @param name the edge's name
   * @param points two or more different points in millimetres
   * @return the traced edge
   * @throws DraftingException as {@link #of(String, List)} does
   */
  public static TracedEdge of(String name, Polyline points) {
    return of(name, points.toArray());
  }

  /**
   * A stroke through points that are written in a row: {@code TracedEdge.of("hem", 0, 0, 250, 0)}.
   *
   * @param name the edge's name
   * @param xy x and y of one point after the other, in millimetres; two or more different points
   * @return the traced edge
   * @throws DraftingException as {@link #of(String, List)} does, and if the last point has no y
   */
  public static TracedEdge of(String name, double... xy) {
    if (name.isBlank()) {
      throw DraftingException.of("a traced edge has no name")
          .accepted("a name such as neck or side");
    }
    checkPoints(name, xy);
    try {
      return new TracedEdge(name, Polyline.of(xy), false);
    } catch (DraftingException e) {
      throw e.at(name);
    }
  }

  private static void checkPoints(String name, double[] xy) {
    boolean differ = false;
    for (int i = 0; i < xy.length; i++) {
      if (Math.abs(xy[i]) > FARTHEST_MM) {
        throw DraftingException.of("a point is over 100 m away")
            .at(name)
            .value(xy[i] + " mm")
            .accepted("points within 100 m");
      }
      differ |= xy[i] != xy[i % 2];
    }
    if (!differ) {
      int count = xy.length / 2;
      String what =
          count == 0
              ? "a traced edge has no points"
              : count == 1 ? "a traced edge has one point" : "the points of a traced edge coincide";
      throw DraftingException.of(what).at(name).value(count).accepted("two points or more");
    }
  }

  /**
   * The name of the edge.
   *
   * @return the name as given
   */
  public String name() {
    return name;
  }

  /**
   * The points as drawn.
   *
   * @return the points in millimetres
   */
  public Polyline points() {
    return points;
  }

  /**
   * Says that the points were drawn in another order, or more than once, and have been put in order
   * since; truing tells the maker.
   *
   * <pre>{@code
   * TracedEdge.of("hem", 0, 0, 250, 0).reordered().isReordered();  // => true
   * }</pre>
   *
   * @return the same points, with this said of them
   */
  @Experimental
  public TracedEdge reordered() {
    return new TracedEdge(name, points, true);
  }

  /**
   * Tells whether the points were put in order.
   *
   * @return false if they are as they were drawn, or nothing was said
   */
  @Experimental
  public boolean isReordered() {
    return reordered;
  }

  /** The same edge through other points. */
  TracedEdge through(Polyline others) {
    TracedEdge edge = of(name, others);
    return reordered ? edge.reordered() : edge;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String name, Polyline points, boolean reordered) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      TracedEdge edge = TracedEdge.of(name, points);
      return reordered ? edge.reordered() : edge;
    }
  }

  private Object writeReplace() {
    return new Kept(name, points, reordered);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a traced edge is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TracedEdge
        && ((TracedEdge) other).name.equals(name)
        && ((TracedEdge) other).reordered == reordered
        && ((TracedEdge) other).points.equals(points);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, points, reordered);
  }

  @Override
  public String toString() {
    return name + ", " + points.size() + " points" + (reordered ? ", put in order" : "");
  }
}
