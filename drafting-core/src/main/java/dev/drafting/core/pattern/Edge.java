package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One named edge of a piece, drawn as it is seen on the finished garment, with the piece on its
 * left, and how it is finished.
 *
 * <pre>{@code
 * Edge hem = Edge.of("hem", Curve.line(new Point(0, 0), new Point(230, 0)));
 * hem.withFinish(SeamFinish.of(Length.mm(7)));  // => hem, 230 mm, seam with 7 mm allowance
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Edge implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The name of the edge on the fold. */
  static final String FOLD = "fold";

  private static final double FARTHEST_MM = 100_000;

  private final String name;
  private final Curve curve;
  private final Finish finish;

  private Edge(String name, Curve curve, Finish finish) {
    this.name = name;
    this.curve = curve;
    this.finish = finish;
  }

  /**
   * A raw edge.
   *
   * @param name what the maker calls it: "neck", "side", "hem"
   * @param curve its finished line, counter-clockwise round the piece
   * @return the edge
   * @throws DraftingException if the name cannot be used, or the curve is over 100 m long or away
   */
  public static Edge of(String name, Curve curve) {
    Names.check("an edge", name);
    try {
      checkExtent(curve);
      return new Edge(name, curve, RawEdge.of());
    } catch (DraftingException e) {
      throw e.at(name);
    }
  }

  /**
   * A raw edge of straight lines from point to point.
   *
   * @param name what the maker calls it
   * @param points where it passes, counter-clockwise round the piece
   * @return the edge
   * @throws DraftingException if the name cannot be used, or there are not two different points
   */
  public static Edge of(String name, List<Point> points) {
    Names.check("an edge", name);
    long different = points.stream().distinct().count();
    if (different < 2) {
      throw DraftingException.of(
              different == 0 ? "the edge has no points" : "the edge has one point")
          .at(name)
          .value(different)
          .accepted("two points or more");
    }
    try {
      return of(name, Curve.polyline(points.toArray(new Point[0])));
    } catch (DraftingException e) {
      throw e.where().isEmpty() ? e.at(name) : e;
    }
  }

  /**
   * The edge of a half piece that lies on the fold; it is called "fold".
   *
   * @param line from one end of the fold to the other, on x = 0, downwards
   * @return the edge, finished as a {@link FoldEdge}
   * @throws DraftingException if the line leaves x = 0
   */
  public static Edge onFold(Curve line) {
    return of(FOLD, line).withFinish(FoldEdge.of());
  }

  private void checkOnFold() {
    Box bounds = curve.bounds();
    if (Math.max(Math.abs(bounds.minX()), Math.abs(bounds.maxX())) > Piece.GAP_MM) {
      throw DraftingException.of("the fold leaves the line x = 0")
          .at(name)
          .value("x from " + bounds.minX() + " to " + bounds.maxX() + " mm")
          .accepted("a straight line on x = 0");
    }
  }

  private static void checkExtent(Curve curve) {
    Box bounds = curve.bounds();
    double farthest =
        Math.max(
            Math.max(Math.abs(bounds.minX()), Math.abs(bounds.maxX())),
            Math.max(Math.abs(bounds.minY()), Math.abs(bounds.maxY())));
    if (!(farthest <= FARTHEST_MM)) {
      throw DraftingException.of("the edge is over 100 m away")
          .value(farthest + " mm")
          .accepted("points within 100 m");
    }
    Objects.requireNonNull(curve.length()); // refused when it is over 100 m
  }

  /**
   * Gives the edge another finish.
   *
   * @param newFinish how it is finished
   * @return the edge with this finish
   * @throws DraftingException if it is a {@link FoldEdge} and the curve leaves x = 0
   */
  public Edge withFinish(Finish newFinish) {
    Edge changed = new Edge(name, curve, Objects.requireNonNull(newFinish, "newFinish"));
    if (changed.isOnFold()) {
      changed.checkOnFold();
    }
    return changed;
  }

  /** The same edge under another name, along another curve. */
  Edge turned(Angle atStart, Angle atEnd) {
    Vector none = CornerMoves.NONE;
    return redrawn(name, EdgeBending.of(curve, none, none, atStart.toRadians(), atEnd.toRadians()));
  }

  Edge redrawn(String newName, Curve newCurve) {
    return new Edge(newName, newCurve, finish);
  }

  /**
   * What the maker calls the edge.
   *
   * @return its name
   */
  public String name() {
    return name;
  }

  /**
   * The finished line.
   *
   * @return the curve, with the piece on its left
   */
  public Curve curve() {
    return curve;
  }

  /**
   * How the edge is finished.
   *
   * @return its finish
   */
  public Finish finish() {
    return finish;
  }

  /**
   * The length of the finished line.
   *
   * @return more than zero
   */
  public Length length() {
    return curve.length();
  }

  /**
   * Tells whether this is the edge on the fold of the cloth.
   *
   * @return true for a {@link FoldEdge}
   */
  public boolean isOnFold() {
    return finish instanceof FoldEdge;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String name, Curve curve, Finish finish) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return Edge.of(name, curve).withFinish(finish);
    }
  }

  private Object writeReplace() {
    return new Kept(name, curve, finish);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an edge is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Edge
        && ((Edge) other).name.equals(name)
        && ((Edge) other).curve.equals(curve)
        && ((Edge) other).finish.equals(finish);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, curve, finish);
  }

  @Override
  public String toString() {
    return name + ", " + Text.mm(length()) + ", " + finish.describe();
  }
}
