package dev.drafting.core.pattern;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * An edge whose ends are moved. What lies between follows by a share that goes from one end to the
 * other as 3u² - 2u³ of the length, so that the edge keeps its directions at both ends; joints that
 * were smooth stay smooth. Straight lines alone stay straight lines.
 */
final class EdgeBending {
  /** What an arc may be off by when it becomes cubics. */
  private static final Length FITTING = Length.mm(0.001);

  private final Vector atStart;
  private final Vector difference;
  private final double length;

  private EdgeBending(Vector atStart, Vector difference, double length) {
    this.atStart = atStart;
    this.difference = difference;
    this.length = length;
  }

  static Curve of(Curve curve, Vector atStart, Vector atEnd) {
    if (atStart.equals(atEnd)) {
      return atStart.equals(CornerMoves.NONE) ? curve : curve.map(Transform.translation(atStart));
    }
    Vector difference = atEnd.minus(atStart);
    EdgeBending bending = new EdgeBending(atStart, difference, curve.length().toMm());
    List<Segment> bent = bending.bent(cubicsAndLines(curve));
    return withEnd(bent, curve.end().plus(atEnd));
  }

  /**
   * The same with the directions at both ends turned, in radians; a straight edge whose end is
   * turned becomes a curve.
   */
  static Curve of(Curve curve, Vector atStart, Vector atEnd, double turnAtStart, double turnAtEnd) {
    Curve moved = of(curve, atStart, atEnd);
    if (turnAtStart == 0 && turnAtEnd == 0) {
      return moved;
    }
    List<Segment> segments = cubicsAndLines(moved);
    int last = segments.size() - 1;
    if (turnAtStart != 0) {
      Cubic first = cubic(segments.get(0));
      Point control = turned(first.start(), first.control1(), turnAtStart);
      segments.set(0, new Cubic(first.start(), control, first.control2(), first.end()));
    }
    if (turnAtEnd != 0) {
      Cubic arriving = cubic(segments.get(last));
      Point control = turned(arriving.end(), arriving.control2(), turnAtEnd);
      segments.set(last, new Cubic(arriving.start(), arriving.control1(), control, arriving.end()));
    }
    return Curve.of(segments);
  }

  private static Point turned(Point about, Point point, double angle) {
    return Transform.rotation(about, Angle.radians(angle)).apply(point);
  }

  /** The end is the moved end to the last bit. */
  private static Curve withEnd(List<Segment> segments, Point end) {
    int last = segments.size() - 1;
    Segment arriving = segments.get(last);
    segments.set(
        last,
        arriving instanceof Cubic cubic
            ? new Cubic(cubic.start(), cubic.control1(), cubic.control2(), end)
            : new Line(arriving.start(), end));
    return Curve.of(segments);
  }

  private static List<Segment> cubicsAndLines(Curve curve) {
    List<Segment> segments = new ArrayList<>();
    for (Segment segment : curve.segments()) {
      if (segment instanceof Arc arc) {
        segments.addAll(arc.toCubics(FITTING));
      } else {
        segments.add(segment);
      }
    }
    return segments;
  }

  private List<Segment> bent(List<Segment> segments) {
    boolean straight = segments.stream().allMatch(Line.class::isInstance);
    List<Segment> bent = new ArrayList<>();
    double from = 0;
    for (Segment segment : segments) {
      double to = from + segment.length().toMm();
      bent.add(
          straight
              ? new Line(moved(segment.start(), share(from)), moved(segment.end(), share(to)))
              : bent(cubic(segment), from, to));
      from = to;
    }
    return bent;
  }

  private static Cubic cubic(Segment segment) {
    if (segment instanceof Cubic cubic) {
      return cubic;
    }
    Point start = segment.start();
    Vector third = segment.end().minus(start).times(1.0 / 3);
    return new Cubic(start, start.plus(third), segment.end().plus(third.negated()), segment.end());
  }

  /** The handles follow the slope of the share, which keeps smooth joints smooth. */
  private Cubic bent(Cubic cubic, double from, double to) {
    double firstHandle = cubic.control1().distanceTo(cubic.start()).toMm();
    double secondHandle = cubic.end().distanceTo(cubic.control2()).toMm();
    return new Cubic(
        moved(cubic.start(), share(from)),
        moved(cubic.control1(), share(from) + slope(from) * firstHandle),
        moved(cubic.control2(), share(to) - slope(to) * secondHandle),
        moved(cubic.end(), share(to)));
  }

  private double share(double along) {
    double u = Math.min(1, along / length);
    return u * u * (3 - 2 * u);
  }

  private double slope(double along) {
    double u = Math.min(1, along / length);
    return 6 * u * (1 - u) / length;
  }

  private Point moved(Point point, double share) {
    return point.plus(atStart.plus(difference.times(share)));
  }
}
