package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * A stretch of a circle, at most once round.
 *
 * <pre>{@code
 * Arc cap = Arc.of(new Point(0, 0), Length.mm(50), Angle.degrees(0), Angle.degrees(90));
 * cap.end();  // => (0, 50)
 * cap.turning();  // => 90°
 * cap.length().text(LengthUnit.MM);  // => 78.5 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Arc implements Segment {
  private static final long serialVersionUID = 1L;
  private static final double ONCE_ROUND = 2 * Math.PI;
  private static final double HAIR = 1e-12;

  private final Point centre;
  private final Point start;
  private final Point end;
  private final double radius;
  private final double sweep;

  private Arc(Point centre, Point start, Point end, double radius, double sweep) {
    this.centre = centre;
    this.start = start;
    this.end = end;
    this.radius = radius;
    this.sweep = sweep;
  }

  /**
   * An arc from its circle.
   *
   * @param centre the centre of the circle
   * @param radius above zero
   * @param from where it starts, counter-clockwise from the x axis
   * @param sweep how far it goes round, counter-clockwise positive, at most once; not zero
   * @return the arc
   * @throws DraftingException if the radius or the sweep is out of range
   */
  public static Arc of(Point centre, Length radius, Angle from, Angle sweep) {
    Objects.requireNonNull(centre, "centre");
    if (!radius.isPositive()) {
      throw DraftingException.of("the radius of an arc is not above zero")
          .value(radius)
          .accepted("a length above 0 mm");
    }
    double round = sweep.toRadians();
    if (round == 0 || Math.abs(round) > ONCE_ROUND + HAIR) {
      throw DraftingException.of("the sweep of an arc is out of range")
          .value(sweep)
          .accepted("-360 to 360 degrees, but not 0");
    }
    Vector out = spoke(from).times(radius.toMm());
    Point start = centre.plus(out);
    boolean full = Math.abs(round) >= ONCE_ROUND - HAIR;
    Point end = full ? start : centre.plus(spoke(from.plus(sweep)).times(radius.toMm()));
    return new Arc(
        centre, start, end, radius.toMm(), full ? Math.copySign(ONCE_ROUND, round) : round);
  }

  /**
   * An arc from the numbers that {@link #toArray} gives, to the last bit.
   *
   * @param numbers centre, start and end as x and y, and the radius, in millimetres; the sweep in
   *     radians, counter-clockwise positive
   * @return the arc
   * @throws DraftingException if these are not the eight numbers of an arc: start and end lie off
   *     the circle or the sweep does not lead from the one to the other, by more than 1e-6 of the
   *     radius
   */
  public static Arc of(double... numbers) {
    if (numbers.length != 8) {
      throw DraftingException.of("an arc has another number of numbers")
          .value(numbers.length)
          .accepted("eight: centre, start and end, radius and sweep");
    }
    Arc arc =
        new Arc(
            new Point(numbers[0], numbers[1]),
            new Point(numbers[2], numbers[3]),
            new Point(numbers[4], numbers[5]),
            numbers[6],
            numbers[7]);
    double most = 1e-6 * arc.radius;
    boolean fits =
        arc.radius > 0
            && Double.isFinite(arc.radius)
            && arc.sweep != 0
            && Math.abs(arc.sweep) <= ONCE_ROUND
            && Math.abs(arc.centre.gap(arc.start) - arc.radius) <= most
            && Transform.rotation(arc.centre, Angle.radians(arc.sweep))
                    .apply(arc.start)
                    .gap(arc.end)
                <= most;
    if (!fits) {
      throw DraftingException.of("these are not the numbers of an arc")
          .value(Arrays.toString(numbers))
          .accepted("ends on the circle, a radius over 0 and a sweep from the start to the end");
    }
    return arc;
  }

  /**
   * The arc as numbers, for {@link #of(double...)}.
   *
   * @return centre, start and end as x and y, and the radius, in millimetres; the sweep in radians
   */
  public double[] toArray() {
    return new double[] {
      centre.x(), centre.y(), start.x(), start.y(), end.x(), end.y(), radius, sweep
    };
  }

  private static Vector spoke(Angle angle) {
    return Transform.rotation(new Point(0, 0), angle).apply(new Vector(1, 0));
  }

  /**
   * The arc from one point through a second to a third.
   *
   * @param start where it starts
   * @param middle any point on the way
   * @param end where it ends
   * @return the arc
   * @throws DraftingException if the three points lie on a line
   */
  public static Arc through(Point start, Point middle, Point end) {
    Vector a = middle.minus(start);
    Vector b = end.minus(start);
    double cross = a.cross(b);
    double span = Math.max(a.norm(), Math.max(b.norm(), end.gap(middle)));
    if (!(Math.abs(cross) > HAIR * span * span)) {
      throw DraftingException.of("three points of an arc lie on a line")
          .value(start + ", " + middle + ", " + end)
          .accepted("three points that are not in line");
    }
    double aa = a.dot(a);
    double bb = b.dot(b);
    Vector toCentre =
        new Vector(
            (aa * b.dy() - bb * a.dy()) / (2 * cross), (bb * a.dx() - aa * b.dx()) / (2 * cross));
    Point centre = start.plus(toCentre);
    double round = toCentre.negated().turnInRadians(end.minus(centre));
    boolean left = cross > 0;
    if (left != round > 0) {
      round += left ? ONCE_ROUND : -ONCE_ROUND;
    }
    return new Arc(centre, start, end, toCentre.norm(), round);
  }

  /**
   * The centre of the circle.
   *
   * @return a point
   */
  public Point centre() {
    return centre;
  }

  /**
   * The radius of the circle.
   *
   * @return above zero
   * @throws DraftingException if it is over 100 m
   */
  public Length radius() {
    return Length.mm(radius);
  }

  double radiusMm() {
    return radius;
  }

  double sweepRadians() {
    return sweep;
  }

  double arcLength() {
    return radius * Math.abs(sweep);
  }

  /**
   * Where the arc starts, as seen from the centre.
   *
   * @return from -180 (exclusive) to 180 degrees, counter-clockwise from the x axis
   */
  public Angle from() {
    return start.minus(centre).angle();
  }

  /**
   * How far the arc goes round.
   *
   * @return counter-clockwise positive, at most 360 degrees either way
   */
  public Angle sweep() {
    return Angle.radians(sweep);
  }

  @Override
  public Point start() {
    return start;
  }

  @Override
  public Point end() {
    return end;
  }

  @Override
  public Point pointAt(double t) {
    Coordinates.checkParameter(t);
    if (t == 0) {
      return start;
    }
    return t == 1 ? end : centre.plus(spokeAt(t));
  }

  private Vector spokeAt(double t) {
    if (t == 1) {
      return end.minus(centre);
    }
    double cos = Math.cos(sweep * t);
    double sin = Math.sin(sweep * t);
    double x = start.x() - centre.x();
    double y = start.y() - centre.y();
    return new Vector(x * cos - y * sin, x * sin + y * cos);
  }

  @Override
  public Vector derivativeAt(double t) {
    Coordinates.checkParameter(t);
    return spokeAt(t).left().times(sweep);
  }

  @Override
  public Vector directionAt(double t) {
    Coordinates.checkParameter(t);
    Vector forward = spokeAt(t).left().unit();
    return sweep > 0 ? forward : forward.negated();
  }

  @Override
  public double curvatureAt(double t) {
    Coordinates.checkParameter(t);
    return Math.copySign(1 / radius, sweep);
  }

  @Override
  public Length length() {
    return Length.mm(arcLength());
  }

  @Override
  public double parameterAt(Length along) {
    double length = arcLength();
    return Math.min(1, SegmentLength.checked(along, length) / length);
  }

  @Override
  public Length lengthTo(double t) {
    Coordinates.checkParameter(t);
    return Length.mm(arcLength() * t);
  }

  @Override
  public Angle turning() {
    return Angle.radians(sweep);
  }

  @Override
  public Arc reversed() {
    return new Arc(centre, end, start, radius, -sweep);
  }

  @Override
  public Arc map(Transform transform) {
    return new Arc(
        transform.apply(centre),
        transform.apply(start),
        transform.apply(end),
        radius * transform.scale(),
        transform.reversesOrientation() ? -sweep : sweep);
  }

  @Override
  public Arc between(double from, double to) {
    SegmentLength.checkedRange(from, to);
    return new Arc(centre, pointAt(from), pointAt(to), radius, sweep * (to - from));
  }

  /** The same arc with its ends moved by less than the tolerance of joints. */
  Arc withEnds(Point newStart, Point newEnd) {
    return new Arc(centre, newStart, newEnd, radius, sweep);
  }

  @Override
  public Box bounds() {
    Box box = Box.of(start, end);
    double first = Math.atan2(start.y() - centre.y(), start.x() - centre.x());
    double quarter = Math.PI / 2;
    double low = Math.min(first, first + sweep);
    double high = Math.max(first, first + sweep);
    for (double k = Math.ceil(low / quarter); k * quarter <= high; k++) {
      Point extreme = centre.plus(spoke(Angle.degrees(90 * k)).times(radius));
      box = box.union(Box.of(extreme, extreme));
    }
    return box;
  }

  /**
   * The arc as cubics, for drawing formats that know no arcs. Ends and directions are kept; the
   * radius is exceeded by R (sqrt(1 + 4/27 sin^6(s/4) / cos^2(s/4)) - 1) at most, for a sweep s of
   * each cubic (Riskus, "Approximation of a cubic Bezier curve by circular arcs and vice versa",
   * 2006, gives the same handles).
   *
   * @param tolerance the greatest distance from the arc, above zero
   * @return the fewest equal cubics within the tolerance
   * @throws DraftingException if the tolerance is not above zero
   */
  public List<Cubic> toCubics(Length tolerance) {
    double allowed = Flattening.checked(tolerance);
    int count = (int) Math.ceil(Math.abs(sweep) / (Math.PI / 2) - HAIR);
    while (cubicError(sweep / count) > allowed && count < 1000) {
      count++;
    }
    List<Cubic> cubics = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      cubics.add(cubicBetween(i / (double) count, (i + 1) / (double) count));
    }
    return List.copyOf(cubics);
  }

  private double cubicError(double part) {
    double sine = Math.sin(part / 4);
    double cosine = Math.cos(part / 4);
    double excess = 4.0 / 27 * Math.pow(sine, 6) / (cosine * cosine);
    return radius * excess / (Math.sqrt(1 + excess) + 1);
  }

  private Cubic cubicBetween(double from, double to) {
    double handle = 4.0 / 3 * Math.tan(sweep * (to - from) / 4);
    Point first = pointAt(from);
    Point last = pointAt(to);
    return new Cubic(
        first,
        first.plus(spokeAt(from).left().times(handle)),
        last.plus(spokeAt(to).left().times(-handle)),
        last);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("ArrayRecordComponent") // nobody compares it
  private record Kept(double[] numbers) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return Arc.of(numbers);
    }
  }

  private Object writeReplace() {
    return new Kept(toArray());
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an arc is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Arc that
        && centre.equals(that.centre)
        && start.equals(that.start)
        && end.equals(that.end)
        && radius == that.radius
        && sweep == that.sweep;
  }

  @Override
  public int hashCode() {
    return Objects.hash(centre, start, end, radius, sweep);
  }

  /** The radius, the sweep and both ends. */
  @Override
  public String toString() {
    return "Arc of radius "
        + Coordinates.text(radius)
        + " mm and "
        + sweep()
        + ", "
        + start
        + " to "
        + end;
  }
}
