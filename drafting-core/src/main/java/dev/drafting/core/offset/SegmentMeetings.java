package dev.drafting.core.offset;

import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Where two segments cross, as pairs of parameters. Both are halved until their hulls are apart, or
 * until no direction of the one is a direction of the other, so that they can cross once at most,
 * and Newton's method finds or rules out that crossing. Places where they merely touch without
 * crossing are left out: they divide nothing. Segments that run beside each other at hardly any
 * distance leave too many pairs; the search of {@link Curve#intersections} takes over there.
 */
final class SegmentMeetings {
  private static final double SMALLEST = 1e-7;
  private static final double STILL = 1e-11;

  /** Far from the origin and at a narrow angle rounding alone moves the crossing by this much. */
  private static final double ROUNDED = 1e-8;

  private static final double ANGLE_BETWEEN = 1e-6;
  private static final int MOST_PAIRS = 4000;
  private static final int NEWTON_STEPS = 10;

  private final List<double[]> found = new ArrayList<>();
  private int pairs;

  private SegmentMeetings() {}

  /** All crossings of two segments. */
  static List<double[]> of(Segment a, Segment b) {
    return between(a, Stretch.of(a), b, Stretch.of(b));
  }

  /** All crossings of two segments of which the second begins where the first ends. */
  static List<double[]> following(Segment a, Segment b) {
    Stretch one = Stretch.of(a);
    Stretch two = Stretch.of(b);
    Vector way = a.directionAt(1);
    if (one.advances(way.dx(), way.dy()) && two.advances(way.dx(), way.dy())) {
      return List.of();
    }
    return between(a, one, b, two);
  }

  /** All crossings of a segment with itself. */
  static List<double[]> within(Segment segment) {
    SegmentMeetings meetings = new SegmentMeetings();
    meetings.within(Stretch.of(segment));
    return meetings.isUnfinished()
        ? thorough(Curve.of(segment).selfCrossings(), segment, segment)
        : meetings.found;
  }

  private static List<double[]> between(Segment a, Stretch one, Segment b, Stretch two) {
    SegmentMeetings meetings = new SegmentMeetings();
    meetings.meet(one, two);
    return meetings.isUnfinished()
        ? thorough(Curve.of(a).intersections(Curve.of(b)), a, b)
        : meetings.found;
  }

  private boolean isUnfinished() {
    return pairs > MOST_PAIRS;
  }

  /** The general search of curves, touching places among its results: slower, but bounded. */
  private static List<double[]> thorough(List<Crossing> crossings, Segment a, Segment b) {
    return crossings.stream()
        .map(
            crossing ->
                new double[] {
                  parameterAt(crossing.along(), a), parameterAt(crossing.alongOther(), b)
                })
        .toList();
  }

  private static double parameterAt(Length along, Segment segment) {
    return segment.parameterAt(along.min(segment.length()));
  }

  private void within(Stretch stretch) {
    double[] directions = stretch.directions();
    if (directions[1] - directions[0] < Math.PI || stretch.size() < SMALLEST) {
      return;
    }
    Stretch one = stretch.half(true);
    Stretch two = stretch.half(false);
    within(one);
    within(two);
    int before = found.size();
    meet(one, two);
    found.subList(before, found.size()).removeIf(met -> met[1] - met[0] < 1e-6);
  }

  private void meet(Stretch one, Stretch two) {
    if (one.apartFrom(two) || ++pairs > MOST_PAIRS) {
      return;
    }
    if (one.whole() instanceof Line && two.whole() instanceof Line) {
      lines(one, two);
      return;
    }
    if (crossOnceAtMost(one, two) && settled(one, two)) {
      return;
    }
    if (Math.max(one.size(), two.size()) < SMALLEST) {
      return;
    }
    if (one.size() >= two.size()) {
      meet(one.half(true), two);
      meet(one.half(false), two);
    } else {
      meet(one, two.half(true));
      meet(one, two.half(false));
    }
  }

  /**
   * Two lines cross at whatever angle, but for none. Where the angle is narrow the crossing is
   * known across the lines and hardly along them; so its place on the second is the one beside the
   * first.
   */
  private void lines(Stretch one, Stretch two) {
    Vector alongOne = one.end().minus(one.start());
    Vector alongTwo = two.end().minus(two.start());
    Vector off = two.start().minus(one.start());
    double cross = alongOne.cross(alongTwo);
    double u = off.cross(alongTwo) / cross;
    if (cross == 0 || !inside(u, one)) {
      return;
    }
    Vector beside = one.start().plus(alongOne.times(u)).minus(two.start());
    double v = beside.dot(alongTwo) / alongTwo.dot(alongTwo);
    if (inside(v, two)) {
      add(clamp(u, 0, 1), clamp(v, 0, 1), one, two);
    }
  }

  private static boolean crossOnceAtMost(Stretch one, Stretch two) {
    double[] a = one.directions();
    double[] b = two.directions();
    if (a[1] - a[0] > 1 || b[1] - b[0] > 1) {
      return false;
    }
    double low = b[0] - a[1] - ANGLE_BETWEEN;
    double high = b[1] - a[0] + ANGLE_BETWEEN;
    return Math.floor(low / Math.PI) == Math.floor(high / Math.PI);
  }

  /** Whether Newton's method came to rest, and so found the one crossing or found it elsewhere. */
  private boolean settled(Stretch one, Stretch two) {
    double u = (one.from + one.to) / 2;
    double v = (two.from + two.to) / 2;
    double widthU = one.to - one.from;
    double widthV = two.to - two.from;
    for (int i = 0; i < NEWTON_STEPS; i++) {
      Vector off = two.whole().pointAt(v).minus(one.whole().pointAt(u));
      Vector alongOne = one.whole().derivativeAt(u);
      Vector alongTwo = two.whole().derivativeAt(v);
      double cross = alongOne.cross(alongTwo);
      if (cross == 0) {
        return false;
      }
      double nextU = u + off.cross(alongTwo) / cross;
      double nextV = v + off.cross(alongOne) / cross;
      double moved =
          Math.max(
              Math.abs(nextU - u) * (Math.abs(alongOne.dx()) + Math.abs(alongOne.dy())),
              Math.abs(nextV - v) * (Math.abs(alongTwo.dx()) + Math.abs(alongTwo.dy())));
      double clampedU = clamp(nextU, one.from - widthU / 4, one.to + widthU / 4);
      double clampedV = clamp(nextV, two.from - widthV / 4, two.to + widthV / 4);
      boolean still = moved < STILL || (i == NEWTON_STEPS - 1 && moved < ROUNDED);
      if (still) {
        if (inside(u, one) && inside(v, two)) {
          add(clamp(u, one.from, one.to), clamp(v, two.from, two.to), one, two);
        }
        return true;
      }
      u = clampedU;
      v = clampedV;
    }
    return false;
  }

  private static double clamp(double t, double low, double high) {
    return Math.max(Math.max(0, low), Math.min(Math.min(1, high), t));
  }

  private static boolean inside(double t, Stretch stretch) {
    double margin = 1e-12;
    return t >= stretch.from - margin && t <= stretch.to + margin;
  }

  private void add(double u, double v, Stretch one, Stretch two) {
    Point a = one.whole().pointAt(u);
    Point b = two.whole().pointAt(v);
    if (Math.hypot(a.x() - b.x(), a.y() - b.y()) > 1e-8) {
      return;
    }
    for (double[] met : found) {
      if (Math.abs(met[0] - u) < 1e-10 && Math.abs(met[1] - v) < 1e-10) {
        return;
      }
    }
    found.add(new double[] {u, v});
  }
}
