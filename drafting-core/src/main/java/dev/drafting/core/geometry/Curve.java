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
import org.jspecify.annotations.Nullable;

/**
 * A chain of lines, cubics and arcs, each starting where the one before ends: an edge, a seam line,
 * an outline.
 *
 * <p>Places on a curve are lengths from its start, as one measures with a tape. A curve that ends
 * exactly where it starts is closed.
 *
 * <pre>{@code
 * Curve side = Curve.polyline(new Point(0, 0), new Point(30, 0), new Point(30, 40));
 * side;  // => Curve of 2 lines, 70 mm, open, (0, 0) to (30, 40)
 * side.pointAt(Length.mm(45));  // => (30, 15)
 * side.turning();  // => 90°
 * side.split(Length.mm(20)).get(1).length();  // => 50 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Curve implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The most segments of a curve and the most points of a polyline. */
  static final int MOST = 1_000_000;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Segment> segments;

  private transient volatile double @Nullable [] lengths;
  private transient volatile @Nullable SegmentTree tree;

  private Curve(List<Segment> joined) {
    this.segments = joined;
  }

  /**
   * A curve from its segments in order of travel. Joints within 1e-9 mm are made exact; segments
   * that are shorter than that are dropped.
   *
   * @param segments one or more
   * @return the curve
   * @throws DraftingException if two segments do not meet, nothing is left, or there are over a
   *     million
   */
  public static Curve of(Segment... segments) {
    return of(Arrays.asList(segments));
  }

  /**
   * A curve from its segments in order of travel. Joints within 1e-9 mm are made exact; segments
   * that are shorter than that are dropped.
   *
   * @param segments one or more
   * @return the curve
   * @throws DraftingException if two segments do not meet, nothing is left, or there are over a
   *     million
   */
  public static Curve of(List<? extends Segment> segments) {
    return new Curve(Joints.joined(List.copyOf(segments)));
  }

  /**
   * A straight curve.
   *
   * @param start where it starts
   * @param end where it ends
   * @return the curve of one line
   * @throws DraftingException if the points are no more than 1e-9 mm apart
   */
  public static Curve line(Point start, Point end) {
    return of(new Line(start, end));
  }

  /**
   * Straight stretches from point to point; name the first point again at the end to close it.
   *
   * @param points two or more
   * @return the curve of lines
   * @throws DraftingException if there are fewer than two different points
   */
  public static Curve polyline(Point... points) {
    return from(Polyline.of(Arrays.asList(points)));
  }

  /**
   * Straight stretches from point to point. Points repeated within 1e-9 mm are left out.
   *
   * @param points the points
   * @return the curve of lines
   * @throws DraftingException if there are fewer than two different points
   */
  public static Curve from(Polyline points) {
    List<Segment> lines = new ArrayList<>(points.size());
    for (int i = 1; i < points.size(); i++) {
      lines.add(new Line(points.point(i - 1), points.point(i)));
    }
    return of(lines);
  }

  /**
   * The segments in order of travel.
   *
   * @return an unmodifiable list of one or more
   */
  public List<Segment> segments() {
    return segments;
  }

  /**
   * Where the curve starts.
   *
   * @return its first point
   */
  public Point start() {
    return segments.get(0).start();
  }

  /**
   * Where the curve ends.
   *
   * @return its last point
   */
  public Point end() {
    return segments.get(segments.size() - 1).end();
  }

  /**
   * Tells whether the curve ends where it starts.
   *
   * @return true if both points are equal, to the last bit
   */
  public boolean isClosed() {
    return start().equals(end());
  }

  /**
   * The length along the curve, to a billionth of itself: cubics by adaptive Gauss-Legendre
   * quadrature with a proven bound of its error, never by summing chords.
   *
   * @return above zero
   * @throws DraftingException if it is over 100 m
   */
  public Length length() {
    return Length.mm(total());
  }

  double total() {
    return lengthTo(segments.size());
  }

  /** The length from the start to the start of a segment. */
  double lengthTo(int segment) {
    double[] all = lengths;
    if (all == null) {
      all = new double[segments.size() + 1];
      double lost = 0;
      for (int i = 0; i < segments.size(); i++) {
        double stretch = SegmentLength.of(segments.get(i)) - lost;
        all[i + 1] = all[i] + stretch;
        lost = (all[i + 1] - all[i]) - stretch;
      }
      lengths = all;
    }
    return all[segment];
  }

  /** The segment that holds a length; at a joint the later one. */
  private int segmentAt(double along) {
    int low = 0;
    int high = segments.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (lengthTo(middle) <= along) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  private double parameterAt(int segment, double along) {
    double from = lengthTo(segment);
    double length = lengthTo(segment + 1) - from;
    return SegmentLength.parameter(segments.get(segment), along - from, length);
  }

  double alongAt(int segment, double t) {
    if (t == 1) {
      return lengthTo(segment + 1);
    }
    return Math.min(
        lengthTo(segment + 1), lengthTo(segment) + SegmentLength.to(segments.get(segment), t));
  }

  /**
   * The point at a length from the start.
   *
   * @param along from zero to the length of the curve
   * @return a point of the curve; joints and ends are exact
   * @throws DraftingException if the length is off the curve
   */
  public Point pointAt(Length along) {
    double on = SegmentLength.checked(along, total());
    int segment = segmentAt(on);
    return segments.get(segment).pointAt(parameterAt(segment, on));
  }

  /**
   * The direction of travel at a length from the start; at a corner the direction after it, at the
   * end the direction of arrival.
   *
   * @param along from zero to the length of the curve
   * @return a vector of length one
   * @throws DraftingException if the length is off the curve
   */
  public Vector directionAt(Length along) {
    double on = SegmentLength.checked(along, total());
    int segment = segmentAt(on);
    return segments.get(segment).directionAt(parameterAt(segment, on));
  }

  /**
   * How sharply the curve bends at a length from the start; at a joint how it bends after it.
   *
   * @param along from zero to the length of the curve
   * @return one over the radius in millimetres, positive where it bends to the left
   * @throws DraftingException if the length is off the curve
   */
  public double curvatureAt(Length along) {
    double on = SegmentLength.checked(along, total());
    int segment = segmentAt(on);
    return segments.get(segment).curvatureAt(parameterAt(segment, on));
  }

  /**
   * How far the direction turns along the curve: along its segments, at the joints between them
   * and, when it is closed, at the joint where it closes. A closed curve that does not cross itself
   * turns 360 degrees if it runs counter-clockwise and -360 if clockwise.
   *
   * @return positive to the left, not reduced; straight back at a joint counts as 180 degrees
   */
  public Angle turning() {
    double sum = 0;
    Vector arrival = isClosed() ? segments.get(segments.size() - 1).directionAt(1) : null;
    for (Segment segment : segments) {
      if (arrival != null) {
        sum += arrival.turnInRadians(segment.directionAt(0));
      }
      sum += segment.turning().toRadians();
      arrival = segment.directionAt(1);
    }
    return Angle.radians(sum);
  }

  /**
   * The parts between cuts.
   *
   * @param along where to cut: lengths from the start in ascending order, each inside the curve
   * @return one part more than there are cuts
   * @throws DraftingException if a cut is out of order or less than 1e-9 mm from an end or another
   *     cut
   */
  public List<Curve> split(Length... along) {
    List<Curve> parts = new ArrayList<>(along.length + 1);
    Length from = Length.ZERO;
    for (Length cut : along) {
      parts.add(between(from, cut));
      from = cut;
    }
    parts.add(between(from, length()));
    return List.copyOf(parts);
  }

  /**
   * The part between two lengths. On a closed curve the part may run over the start: then from is
   * the greater of the two.
   *
   * @param from where it starts, from zero to the length of the curve
   * @param to where it ends, likewise
   * @return the part
   * @throws DraftingException if a length is off the curve, the part would be no longer than 1e-9
   *     mm, or it would run backwards on an open curve
   */
  public Curve between(Length from, Length to) {
    double total = total();
    double start = SegmentLength.checked(from, total);
    double end = SegmentLength.checked(to, total);
    List<Segment> part = new ArrayList<>();
    if (start > end && isClosed()) {
      addBetween(part, start, total);
      addBetween(part, 0, end);
    } else {
      addBetween(part, start, end);
    }
    if (part.isEmpty()) {
      throw DraftingException.of("a part of a curve has no length")
          .value(from + " to " + to)
          .accepted("two lengths in order, from 0 to " + Length.mm(total));
    }
    return of(part);
  }

  private void addBetween(List<Segment> part, double from, double to) {
    if (!(from < to)) {
      return;
    }
    for (int i = segmentAt(from); i < segments.size() && lengthTo(i) < to; i++) {
      double start = from <= lengthTo(i) ? 0 : parameterAt(i, from);
      double end = to >= lengthTo(i + 1) ? 1 : parameterAt(i, to);
      if (start < end) {
        part.add(segments.get(i).between(start, end));
      }
    }
  }

  /**
   * The same curve travelled the other way.
   *
   * @return the curve from end to start; reversing it again gives this one, to the last bit
   */
  public Curve reversed() {
    List<Segment> back = new ArrayList<>(segments.size());
    for (int i = segments.size() - 1; i >= 0; i--) {
      back.add(segments.get(i).reversed());
    }
    return new Curve(List.copyOf(back));
  }

  /**
   * The mirror image in the fold, exact to the last bit, travelled in the mirrored order: an
   * outline that ran counter-clockwise runs clockwise, so {@link #reversed()} often follows.
   *
   * @return the mirror image; mirroring it again gives this curve
   */
  public Curve mirrored() {
    return map(Transform.mirrorInFold());
  }

  /**
   * This curve laid elsewhere.
   *
   * @param transform where it is laid
   * @return a curve of the same kinds of segments
   */
  public Curve map(Transform transform) {
    Objects.requireNonNull(transform, "transform");
    return new Curve(segments.stream().map(segment -> segment.map(transform)).toList());
  }

  /**
   * This curve and another one that starts where it ends.
   *
   * @param next the curve that follows
   * @return both as one
   * @throws DraftingException if they do not meet within 1e-9 mm
   */
  public Curve then(Curve next) {
    List<Segment> both = new ArrayList<>(segments);
    both.addAll(next.segments);
    return of(both);
  }

  /**
   * Straight stretches that stay within a tolerance of the curve everywhere, by a proven bound. All
   * points lie on the curve, all joints and ends are among them.
   *
   * @param tolerance the greatest distance, above zero
   * @return the polyline
   * @throws DraftingException if the tolerance is not above zero, or so fine that over a million
   *     points would be needed
   */
  public Polyline flatten(Length tolerance) {
    return Flattening.of(segments, tolerance);
  }

  /**
   * The point of the curve that is nearest to a point: the nearest of all, not of a neighbourhood.
   *
   * @param point any point
   * @return the nearest point; of several that are equally near the first on the way
   * @throws DraftingException if the distance is over 100 m
   */
  public Nearest nearest(Point point) {
    return NearestSearch.of(this, tree(), Objects.requireNonNull(point, "point"));
  }

  SegmentTree tree() {
    SegmentTree known = tree;
    if (known == null) {
      known = SegmentTree.of(segments);
      tree = known;
    }
    return known;
  }

  /**
   * All points where this curve meets another, ends included, to 1e-9 mm. Curves that touch without
   * crossing meet there too, once, where they are closest. Where two segments run along each other
   * for a stretch, both ends of the stretch are named and nothing between.
   *
   * @param other the other curve
   * @return the points in order along this curve, each once
   */
  public List<Crossing> intersections(Curve other) {
    return CurveCrossings.between(this, other);
  }

  /**
   * All points where this curve meets itself, to 1e-9 mm, each once with the earlier place first.
   * The joints of neighbouring segments, and the point where a closed curve closes, are none.
   *
   * @return the points in order of the earlier place
   */
  public List<Crossing> selfCrossings() {
    return CurveCrossings.within(this);
  }

  /**
   * The upright rectangle that just holds the curve.
   *
   * @return the bounds
   */
  public Box bounds() {
    Box box = segments.get(0).bounds();
    for (Segment segment : segments) {
      box = box.union(segment.bounds());
    }
    return box;
  }

  /**
   * The area inside a closed curve by Green's theorem, exact for lines, cubics and arcs but for
   * rounding.
   *
   * @return square millimetres, positive if the curve runs counter-clockwise
   * @throws DraftingException if the curve is open
   */
  public double areaSquareMm() {
    if (!isClosed()) {
      throw DraftingException.of("an open curve has no area")
          .value(this)
          .accepted("a curve that ends where it starts");
    }
    return Area.within(segments);
  }

  private Object writeReplace() {
    return new KeptCurve(segments);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a curve is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Curve that && segments.equals(that.segments);
  }

  @Override
  public int hashCode() {
    return segments.hashCode();
  }

  /** The kinds of segments, the length to 0.001 mm, and both ends. */
  @Override
  public String toString() {
    return "Curve of "
        + SegmentKinds.text(segments)
        + ", "
        + Coordinates.text(total(), 3)
        + " mm, "
        + (isClosed() ? "closed, " : "open, ")
        + start()
        + " to "
        + end();
  }
}
