package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A way to lay a shape elsewhere without bending it: move, turn, mirror, enlarge evenly, and any of
 * these one after the other. Straight stays straight and round stays round.
 *
 * <pre>{@code
 * Transform.mirrorInFold().apply(new Point(3, 4));  // => (-3, 4)
 * Transform.rotation(new Point(0, 0), Angle.degrees(90)).then(Transform.translation(new Vector(10, 0))).apply(new Point(3, 4));
 * // => (6, 3)
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Transform implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Transform IDENTITY = new Transform(1, 0, false, 0, 0);
  private static final Transform FOLD = new Transform(-1, 0, true, 0, 0);

  // With w = a + ib and t = tx + i ty: z becomes wz + t, or w times the conjugate of z, plus t.
  private final double a;
  private final double b;
  private final boolean mirrors;
  private final double tx;
  private final double ty;

  private Transform(double a, double b, boolean mirrors, double tx, double ty) {
    this.a = Coordinates.checked(a, "a factor of a transform");
    this.b = Coordinates.checked(b, "a factor of a transform");
    this.mirrors = mirrors;
    this.tx = Coordinates.checked(tx, "a shift of a transform");
    this.ty = Coordinates.checked(ty, "a shift of a transform");
  }

  /**
   * Leaves everything where it is.
   *
   * @return the identity
   */
  public static Transform identity() {
    return IDENTITY;
  }

  /**
   * Moves without turning.
   *
   * @param way how far
   * @return the move
   */
  public static Transform translation(Vector way) {
    return new Transform(1, 0, false, way.dx(), way.dy());
  }

  /**
   * Turns about a point.
   *
   * @param about the point that stays
   * @param angle how far, counter-clockwise; whole quarters are exact
   * @return the turn
   */
  public static Transform rotation(Point about, Angle angle) {
    double quarters = angle.toDegrees() / 90;
    double cos = Math.cos(angle.toRadians());
    double sin = Math.sin(angle.toRadians());
    if (quarters == Math.rint(quarters)) {
      cos = Math.rint(cos);
      sin = Math.rint(sin);
    }
    return fixing(about, cos, sin, false);
  }

  /**
   * Mirrors in the fold, the line x = 0, exactly to the last bit.
   *
   * @return the reflection
   */
  public static Transform mirrorInFold() {
    return FOLD;
  }

  /**
   * Mirrors in the line through two points, for instance a fold of a hem.
   *
   * @param from one point of the line
   * @param to another point of it
   * @return the reflection
   * @throws DraftingException if the two points are the same
   */
  public static Transform mirrorIn(Point from, Point to) {
    Vector line = to.minus(from).unit();
    double cos = line.dx() * line.dx() - line.dy() * line.dy();
    double sin = 2 * line.dx() * line.dy();
    return fixing(from, cos, sin, true);
  }

  /**
   * Enlarges or reduces evenly about the origin.
   *
   * @param factor above zero; 1 changes nothing
   * @return the scaling
   * @throws DraftingException if the factor is not above zero
   */
  public static Transform scaling(double factor) {
    if (!(factor > 0)) {
      throw DraftingException.of("a scale is not above zero")
          .value(factor)
          .accepted("a number above 0");
    }
    return new Transform(factor, 0, false, 0, 0);
  }

  private static Transform fixing(Point point, double a, double b, boolean mirrors) {
    Transform linear = new Transform(a, b, mirrors, 0, 0);
    double tx = point.x() - linear.x(point.x(), point.y());
    double ty = point.y() - linear.y(point.x(), point.y());
    return new Transform(a, b, mirrors, tx, ty);
  }

  double x(double x, double y) {
    return dx(x, y) + tx;
  }

  double y(double x, double y) {
    return dy(x, y) + ty;
  }

  private double dx(double x, double y) {
    return mirrors ? a * x + b * y : a * x - b * y;
  }

  private double dy(double x, double y) {
    return mirrors ? b * x - a * y : b * x + a * y;
  }

  /**
   * Does this first and another transform afterwards.
   *
   * @param next what is done afterwards
   * @return both in one
   */
  public Transform then(Transform next) {
    double turned = next.mirrors ? -b : b;
    return new Transform(
        next.a * a - next.b * turned,
        next.b * a + next.a * turned,
        mirrors != next.mirrors,
        next.x(tx, ty),
        next.y(tx, ty));
  }

  /**
   * Where a point comes to lie.
   *
   * @param point the point before
   * @return the point after
   */
  public Point apply(Point point) {
    return new Point(x(point.x(), point.y()), y(point.x(), point.y()));
  }

  /**
   * What becomes of a way or a direction: turned, mirrored and scaled, not moved.
   *
   * @param way the vector before
   * @return the vector after
   */
  public Vector apply(Vector way) {
    return new Vector(dx(way.dx(), way.dy()), dy(way.dx(), way.dy()));
  }

  /**
   * The transform that takes everything back.
   *
   * @return the inverse
   */
  public Transform inverse() {
    double square = a * a + b * b;
    double ia = a / square;
    double ib = (mirrors ? b : -b) / square;
    Transform linear = new Transform(ia, ib, mirrors, 0, 0);
    return new Transform(ia, ib, mirrors, -linear.x(tx, ty), -linear.y(tx, ty));
  }

  /**
   * Tells whether left becomes right: an outline that ran counter-clockwise runs clockwise
   * afterwards.
   *
   * @return true for reflections
   */
  public boolean reversesOrientation() {
    return mirrors;
  }

  /**
   * How many times longer everything becomes.
   *
   * @return the scale, 1 for moves, turns and reflections
   */
  public double scale() {
    return b == 0 ? Math.abs(a) : Math.hypot(a, b);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(double a, double b, boolean mirrors, double tx, double ty)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new Transform(a, b, mirrors, tx, ty);
    }
  }

  private Object writeReplace() {
    return new Kept(a, b, mirrors, tx, ty);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a transform is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Transform that
        && a == that.a
        && b == that.b
        && mirrors == that.mirrors
        && tx == that.tx
        && ty == that.ty;
  }

  @Override
  public int hashCode() {
    return Objects.hash(a, b, mirrors, tx, ty);
  }

  /** The turn, the scale and the move. */
  @Override
  public String toString() {
    return "Transform("
        + (mirrors ? "mirrored, " : "")
        + "turned "
        + Angle.radians(Math.atan2(b, a))
        + ", scaled "
        + Coordinates.text(scale())
        + ", moved "
        + Coordinates.pair(tx, ty)
        + ")";
  }
}
