package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.io.Serializable;

/**
 * One smooth stretch of a curve: a line, a cubic or an arc of a circle.
 *
 * <p>The parameter t runs from 0 at the start to 1 at the end. It is not a share of the length; ask
 * {@link #parameterAt(Length)} for the parameter at a length.
 *
 * <pre>{@code
 * Segment seam = new Line(new Point(0, 0), new Point(30, 40));
 * seam.length();  // => 50 mm
 * seam.pointAt(seam.parameterAt(Length.mm(10)));  // => (6, 8)
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public sealed interface Segment extends Serializable permits Line, Cubic, Arc {
  /**
   * Where the segment starts.
   *
   * @return the point at t = 0
   */
  Point start();

  /**
   * Where the segment ends.
   *
   * @return the point at t = 1
   */
  Point end();

  /**
   * The point at a parameter; the ends are exact.
   *
   * @param t 0 to 1
   * @return a point of the segment
   * @throws dev.drafting.core.finding.DraftingException if t is not from 0 to 1
   */
  Point pointAt(double t);

  /**
   * How the point moves as t grows.
   *
   * @param t 0 to 1
   * @return millimetres per unit of t; no length at a cusp and at a handle of no length
   * @throws dev.drafting.core.finding.DraftingException if t is not from 0 to 1
   */
  Vector derivativeAt(double t);

  /**
   * The direction of travel, also where a handle has no length. At a cusp it is the direction after
   * it.
   *
   * @param t 0 to 1
   * @return a vector of length one
   * @throws dev.drafting.core.finding.DraftingException if t is not from 0 to 1, or the segment is
   *     a single point
   */
  Vector directionAt(double t);

  /**
   * How sharply the segment bends.
   *
   * @param t 0 to 1
   * @return one over the radius in millimetres, positive where it bends to the left; infinite at a
   *     cusp and at a handle of no length that bends
   * @throws dev.drafting.core.finding.DraftingException if t is not from 0 to 1
   */
  double curvatureAt(double t);

  /**
   * The length along the segment, to a billionth of itself.
   *
   * @return zero or more
   * @throws dev.drafting.core.finding.DraftingException if it is over 100 m
   */
  Length length();

  /**
   * The parameter of the point at a length from the start.
   *
   * @param along from zero to the length of the segment
   * @return 0 to 1
   * @throws dev.drafting.core.finding.DraftingException if the length is off the segment
   */
  double parameterAt(Length along);

  /**
   * The length from the start to a parameter.
   *
   * @param t 0 to 1
   * @return zero to the length of the segment
   * @throws dev.drafting.core.finding.DraftingException if t is not from 0 to 1
   */
  Length lengthTo(double t);

  /**
   * How far the direction turns from start to end: the integral of the curvature. A cusp counts as
   * half a turn to the side to which the rest bends, to the left where nothing bends.
   *
   * @return positive to the left, not reduced
   */
  Angle turning();

  /**
   * The same stretch travelled the other way.
   *
   * @return the segment from end to start; reversing it again gives this one, to the last bit
   */
  Segment reversed();

  /**
   * This segment laid elsewhere.
   *
   * @param transform where it is laid
   * @return a segment of the same kind
   */
  Segment map(Transform transform);

  /**
   * A part of the segment.
   *
   * @param from parameter where it starts, 0 to 1
   * @param to parameter where it ends, more than from, at most 1
   * @return a segment of the same kind; with 0 and 1 this one
   * @throws dev.drafting.core.finding.DraftingException if the parameters are out of range or order
   */
  Segment between(double from, double to);

  /**
   * The upright rectangle that just holds the segment.
   *
   * @return the bounds
   */
  Box bounds();
}
