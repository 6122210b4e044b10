package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.Objects;

/**
 * A cubic Bezier stretch: it leaves its start towards the first control point and arrives at its
 * end from the second. The way from an end to its control point is the handle.
 *
 * <pre>{@code
 * Cubic neck = new Cubic(new Point(0, 0), new Point(40, 0), new Point(75, 35), new Point(80, 110));
 * neck.directionAt(0);  // => Vector(1, 0)
 * neck.turning();  // => 86.19°
 * }</pre>
 *
 * @param start where it starts
 * @param control1 where the handle at the start points
 * @param control2 where the handle at the end points
 * @param end where it ends
 * @since 0.1
 */
@Stable
public record Cubic(Point start, Point control1, Point control2, Point end) implements Segment {
  private static final long serialVersionUID = 1L;

  /**
   * A cubic stretch. Handles may have no length; four equal points are allowed, and a curve drops
   * such a cubic.
   *
   * @param start where it starts
   * @param control1 where the handle at the start points
   * @param control2 where the handle at the end points
   * @param end where it ends
   */
  public Cubic {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(control1, "control1");
    Objects.requireNonNull(control2, "control2");
    Objects.requireNonNull(end, "end");
  }

  @Override
  public Point pointAt(double t) {
    Coordinates.checkParameter(t);
    if (t == 1) {
      return end;
    }
    double s = 1 - t;
    double w0 = s * s * s;
    double w1 = 3 * s * s * t;
    double w2 = 3 * s * t * t;
    double w3 = t * t * t;
    return new Point(
        w0 * start.x() + w1 * control1.x() + w2 * control2.x() + w3 * end.x(),
        w0 * start.y() + w1 * control1.y() + w2 * control2.y() + w3 * end.y());
  }

  @Override
  public Vector derivativeAt(double t) {
    Coordinates.checkParameter(t);
    Hodograph hodograph = new Hodograph(this);
    return new Vector(hodograph.dx(t), hodograph.dy(t));
  }

  @Override
  public Vector directionAt(double t) {
    Coordinates.checkParameter(t);
    double tiny = tiny();
    if (t == 0) {
      return startDirection(tiny);
    }
    if (t == 1) {
      return endDirection(tiny);
    }
    Hodograph hodograph = new Hodograph(this);
    Vector first = new Vector(hodograph.dx(t), hodograph.dy(t));
    if (first.norm() > tiny) {
      return first.unit();
    }
    Vector second = new Vector(hodograph.ddx(t), hodograph.ddy(t));
    return second.norm() > tiny ? second.unit() : endDirection(tiny);
  }

  private Vector startDirection(double tiny) {
    return firstLonger(tiny, control1.minus(start), control2.minus(start), end.minus(start));
  }

  private Vector endDirection(double tiny) {
    return firstLonger(tiny, end.minus(control2), end.minus(control1), end.minus(start));
  }

  private Vector firstLonger(double tiny, Vector a, Vector b, Vector c) {
    Vector chosen = a.norm() > tiny ? a : b.norm() > tiny ? b : c;
    if (chosen.norm() == 0) {
      throw DraftingException.of("a cubic of no length has no direction")
          .value(this)
          .accepted("a cubic with two different points");
    }
    return chosen.unit();
  }

  /** Handles shorter than this point nowhere. */
  private double tiny() {
    return 1e-12 * (start.gap(control1) + control1.gap(control2) + control2.gap(end));
  }

  @Override
  public double curvatureAt(double t) {
    Coordinates.checkParameter(t);
    return new Hodograph(this).curvature(t);
  }

  @Override
  public Length length() {
    return Length.mm(SegmentLength.of(this));
  }

  @Override
  public double parameterAt(Length along) {
    double length = SegmentLength.of(this);
    return SegmentLength.parameter(this, SegmentLength.checked(along, length), length);
  }

  @Override
  public Length lengthTo(double t) {
    Coordinates.checkParameter(t);
    return Length.mm(SegmentLength.to(this, t));
  }

  @Override
  public Angle turning() {
    double tiny = tiny();
    if (tiny == 0) {
      return Angle.ZERO;
    }
    double ends = startDirection(tiny).turnInRadians(endDirection(tiny));
    double rough = new Hodograph(this).turning();
    double turns = Math.rint((rough - ends) / (2 * Math.PI));
    return Angle.radians(ends + turns * 2 * Math.PI);
  }

  @Override
  public Cubic reversed() {
    return new Cubic(end, control2, control1, start);
  }

  @Override
  public Cubic map(Transform transform) {
    return new Cubic(
        transform.apply(start),
        transform.apply(control1),
        transform.apply(control2),
        transform.apply(end));
  }

  @Override
  public Cubic between(double from, double to) {
    SegmentLength.checkedRange(from, to);
    Cubic part = to == 1 ? this : firstPart(to);
    if (from > 0) {
      part = part.reversed().firstPart(1 - from / to).reversed();
    }
    return new Cubic(pointAt(from), part.control1, part.control2, pointAt(to));
  }

  /** De Casteljau's construction. */
  private Cubic firstPart(double t) {
    Point a = start.between(control1, t);
    Point b = control1.between(control2, t);
    Point c = control2.between(end, t);
    Point ab = a.between(b, t);
    Point bc = b.between(c, t);
    return new Cubic(start, a, ab, ab.between(bc, t));
  }

  @Override
  public Box bounds() {
    Hodograph hodograph = new Hodograph(this);
    Box box = Box.of(start, end);
    for (double t : hodograph.turningPoints()) {
      Point extreme = pointAt(t);
      box = box.union(Box.of(extreme, extreme));
    }
    return box;
  }

  /** The four points in millimetres. */
  @Override
  public String toString() {
    return "Cubic " + start + ", " + control1 + ", " + control2 + " to " + end;
  }
}
