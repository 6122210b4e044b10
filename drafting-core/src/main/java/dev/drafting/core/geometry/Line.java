package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.Objects;

/**
 * A straight stretch.
 *
 * <pre>{@code
 * new Line(new Point(0, 0), new Point(30, 40)).length();  // => 50 mm
 * }</pre>
 *
 * @param start where it starts
 * @param end where it ends
 * @since 0.1
 */
@Stable
public record Line(Point start, Point end) implements Segment {
  private static final long serialVersionUID = 1L;

  /**
   * A straight stretch. Two equal points are allowed; a curve drops such a line.
   *
   * @param start where it starts
   * @param end where it ends
   */
  public Line {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
  }

  @Override
  public Point pointAt(double t) {
    Coordinates.checkParameter(t);
    return start.between(end, t);
  }

  @Override
  public Vector derivativeAt(double t) {
    Coordinates.checkParameter(t);
    return end.minus(start);
  }

  @Override
  public Vector directionAt(double t) {
    return derivativeAt(t).unit();
  }

  @Override
  public double curvatureAt(double t) {
    Coordinates.checkParameter(t);
    return 0;
  }

  @Override
  public Length length() {
    return start.distanceTo(end);
  }

  @Override
  public double parameterAt(Length along) {
    double length = start.gap(end);
    double on = SegmentLength.checked(along, length);
    return length == 0 ? 0 : Math.min(1, on / length);
  }

  @Override
  public Length lengthTo(double t) {
    Coordinates.checkParameter(t);
    return length().times(t);
  }

  @Override
  public Angle turning() {
    return Angle.ZERO;
  }

  @Override
  public Line reversed() {
    return new Line(end, start);
  }

  @Override
  public Line map(Transform transform) {
    return new Line(transform.apply(start), transform.apply(end));
  }

  @Override
  public Line between(double from, double to) {
    SegmentLength.checkedRange(from, to);
    return new Line(pointAt(from), pointAt(to));
  }

  @Override
  public Box bounds() {
    return Box.of(start, end);
  }

  /** Both ends in millimetres. */
  @Override
  public String toString() {
    return "Line " + start + " to " + end;
  }
}
