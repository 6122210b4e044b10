package dev.drafting.core.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where two segments meet. Ends that lie on the other segment come first. Then both are halved
 * again and again as long as their slanting boxes come together; once the directions of two parts
 * are apart, they meet at most once, and Newton's method goes there.
 *
 * <p>Where segments run beside each other at hardly any distance, neither boxes nor directions come
 * apart before the parts are tiny. Once too many pairs of parts are open at a time, each is settled
 * by looking for the place where it is closest; so the work is bounded whatever the segments are.
 */
final class SegmentCrossings {
  /** Points no further apart than this, in millimetres, are one. */
  static final double MEET = 1e-9;

  /** Parts smaller than this are not halved any more: here the segments touch, or pass by. */
  private static final double SMALLEST = 1e-6;

  private static final double SMALL_WHERE_STRAIGHT = 5e-4;
  private static final int TOUCH_SAMPLES = 7;
  private static final int TOUCH_ROUNDS = 8;

  /** More pairs of parts than this are not halved any more. Nine crossings leave some dozens. */
  private static final int MOST_OPEN = 1000;

  private static final double PARAMETER_SLACK = 1e-9;
  private static final int MOST_STEPS = 16;
  private static final int SAMPLES = 12;

  private final Segment first;
  private final Segment second;
  private final List<Meeting> found = new ArrayList<>();
  private int pairs;

  private SegmentCrossings(Segment first, Segment second) {
    this.first = first;
    this.second = second;
  }

  /** Parameters on the first and the second segment at which they meet. */
  record Meeting(double s, double t) {}

  /** Two parts that may meet. */
  private record Pair(Span one, Span other) {}

  /** All meetings, in no order, perhaps with some twice. */
  static List<Meeting> of(Segment first, Segment second) {
    return between(first, second).found;
  }

  /** How many pairs of parts are compared to find all meetings. */
  static int pairsCompared(Segment first, Segment second) {
    return between(first, second).pairs;
  }

  private static SegmentCrossings between(Segment first, Segment second) {
    SegmentCrossings crossings = new SegmentCrossings(first, second);
    Span one = new Span(first, 0, 1);
    Span other = new Span(second, 0, 1);
    if (one.comesWithin(MEET, other)) {
      crossings.addEnds();
      if (!crossings.runTogether()) {
        crossings.search(one, other);
      }
    }
    return crossings;
  }

  /**
   * The places where a cubic meets itself: one at most. Joints of parts that were cut may be among
   * them, with the same parameter twice.
   */
  static List<Meeting> within(Cubic cubic) {
    List<Span> parts = new ArrayList<>();
    cutUntilNarrow(new Span(cubic, 0, 1), parts);
    SegmentCrossings crossings = new SegmentCrossings(cubic, cubic);
    for (int i = 0; i < parts.size(); i++) {
      for (int j = i + 1; j < parts.size(); j++) {
        if (j > i + 1 || !parts.get(i).advancesWith(parts.get(j))) {
          crossings.search(parts.get(i), parts.get(j));
        }
      }
    }
    return crossings.found;
  }

  private static void cutUntilNarrow(Span span, List<Span> parts) {
    if (span.isWide() && span.extent() > SMALLEST) {
      cutUntilNarrow(span.firstHalf(), parts);
      cutUntilNarrow(span.secondHalf(), parts);
    } else {
      parts.add(span);
    }
  }

  private void addEnds() {
    for (int end = 0; end <= 1; end++) {
      double t = NearestSearch.onSegment(second, first.pointAt(end));
      addIfMet(end, t);
      double s = NearestSearch.onSegment(first, second.pointAt(end));
      addIfMet(s, end);
    }
  }

  private boolean meetAt(double s, double t) {
    return gap(s, t) <= MEET;
  }

  private boolean meetAt(Meeting meeting) {
    return meetAt(meeting.s(), meeting.t());
  }

  private double gap(Meeting meeting) {
    return gap(meeting.s(), meeting.t());
  }

  private double gap(double s, double t) {
    return first.pointAt(s).gap(second.pointAt(t));
  }

  private void addIfMet(double s, double t) {
    if (meetAt(s, t)) {
      found.add(new Meeting(s, t));
    }
  }

  /** True when a stretch of one lies on the other; such a stretch is bounded by ends. */
  private boolean runTogether() {
    found.sort(Comparator.comparingDouble(Meeting::s));
    for (int i = 1; i < found.size(); i++) {
      if (runTogether(found.get(i - 1).s(), found.get(i).s())) {
        return true;
      }
    }
    return false;
  }

  private boolean runTogether(double from, double to) {
    double stretch = first.pointAt(from).gap(first.pointAt(to));
    if (to - from <= PARAMETER_SLACK || (stretch <= SMALLEST && to - from < 0.5)) {
      return false;
    }
    for (int i = 1; i <= SAMPLES; i++) {
      Point at = first.pointAt(from + (to - from) * i / (SAMPLES + 1));
      if (second.pointAt(NearestSearch.onSegment(second, at)).gap(at) > 2 * MEET) {
        return false;
      }
    }
    return true;
  }

  private void search(Span one, Span other) {
    List<Pair> touches = new ArrayList<>();
    List<Pair> open = List.of(new Pair(one, other));
    while (!open.isEmpty()) {
      List<Pair> halves = new ArrayList<>();
      for (Pair pair : open) {
        if (!isSettled(pair)) {
          if (open.size() > MOST_OPEN || (isSmall(pair.one) && isSmall(pair.other))) {
            touches.add(pair);
          } else {
            halve(pair, halves);
          }
        }
      }
      open = halves;
    }
    addTouches(touches);
  }

  /** True when two parts cannot meet, or meet once only and where is found. */
  private boolean isSettled(Pair pair) {
    pairs++;
    return !pair.one.comesWithin(MEET, pair.other)
        || (pair.one.isTransversalTo(pair.other) && findsOnly(pair.one, pair.other))
        || (first instanceof Line && second instanceof Line); // what parallels share has ends
  }

  private static void halve(Pair pair, List<Pair> halves) {
    if (pair.one.extent() >= pair.other.extent()) {
      halves.add(new Pair(pair.one.firstHalf(), pair.other));
      halves.add(new Pair(pair.one.secondHalf(), pair.other));
    } else {
      halves.add(new Pair(pair.one, pair.other.firstHalf()));
      halves.add(new Pair(pair.one, pair.other.secondHalf()));
    }
  }

  /** Goes to the one place where two parts can meet; false when it is not found in both. */
  private boolean findsOnly(Span one, Span other) {
    Vector chord = one.end().minus(one.start());
    Vector otherChord = other.end().minus(other.start());
    Vector apart = other.start().minus(one.start());
    double area = chord.cross(otherChord);
    double s = one.from + (one.to - one.from) * clamped(apart.cross(otherChord) / area);
    double t = other.from + (other.to - other.from) * clamped(apart.cross(chord) / area);
    for (int step = 0; step < MOST_STEPS; step++) {
      Vector gap = second.pointAt(t).minus(first.pointAt(s));
      Vector way = first.derivativeAt(s);
      Vector otherWay = second.derivativeAt(t);
      double determinant = way.cross(otherWay);
      if (determinant == 0) {
        return false;
      }
      double nextS = clamped(s + gap.cross(otherWay) / determinant);
      double nextT = clamped(t + gap.cross(way) / determinant);
      boolean still = Math.abs(nextS - s) + Math.abs(nextT - t) <= 4 * Math.ulp(1.0);
      s = nextS;
      t = nextT;
      if (still) {
        break;
      }
    }
    boolean isHere = holds(one, s) && holds(other, t) && meetAt(s, t);
    if (isHere) {
      found.add(new Meeting(s, t));
    }
    return isHere;
  }

  private static boolean holds(Span span, double t) {
    return t >= span.from - PARAMETER_SLACK && t <= span.to + PARAMETER_SLACK;
  }

  private static double clamped(double t) {
    return t > 0 ? Math.min(1, t) : 0;
  }

  /** Small enough to be a point, or short and as good as straight. */
  private static boolean isSmall(Span span) {
    return span.extent() <= SMALLEST
        || (span.extent() <= SMALL_WHERE_STRAIGHT && span.width() <= MEET / 4);
  }

  /** Neighbouring parts that touch are one stretch, which is named where it is closest. */
  private void addTouches(List<Pair> touches) {
    touches.sort(
        Comparator.comparingDouble((Pair pair) -> pair.one.from)
            .thenComparingDouble(pair -> pair.other.from));
    Pair last = null;
    Meeting best = null;
    for (Pair pair : touches) {
      Meeting closest = closest(pair.one, pair.other);
      if (closest == null) {
        continue;
      }
      if (best != null && last != null && pair.one.from <= last.one.to && areNext(last, pair)) {
        best = gap(closest) < gap(best) ? closest : best;
      } else {
        if (best != null) {
          found.add(best);
        }
        best = closest;
      }
      last = pair;
    }
    if (best != null) {
      found.add(best);
    }
  }

  private static boolean areNext(Pair last, Pair pair) {
    return pair.other.from <= last.other.to && last.other.from <= pair.other.to;
  }

  /**
   * Where two parts that come together are closest, or null if that is too far apart for a touch.
   * Between places on the way the gap changes no faster than the directions differ; round the best
   * place they are laid closer and closer.
   */
  private @Nullable Meeting closest(Span one, Span other) {
    double from = one.from;
    double to = one.to;
    Meeting closest = new Meeting(one.halfway(), other.halfway());
    for (int round = 0; round < TOUCH_ROUNDS && !meetAt(closest); round++) {
      double step = (to - from) / (TOUCH_SAMPLES - 1);
      for (int i = 0; i < TOUCH_SAMPLES; i++) {
        double s = from + step * i;
        double t = within(other, NearestSearch.onSegment(second, first.pointAt(s)));
        s = within(one, NearestSearch.onSegment(first, second.pointAt(t)));
        if (gap(s, t) < gap(closest)) {
          closest = new Meeting(s, t);
        }
      }
      double way = one.extent() * step / (one.to - one.from);
      if (gap(closest) > MEET + way * one.greatestSineTo(other)) {
        return null;
      }
      from = Math.max(one.from, closest.s() - step);
      to = Math.min(one.to, closest.s() + step);
    }
    return meetAt(closest) ? closest : null;
  }

  private static double within(Span span, double t) {
    return Math.max(span.from, Math.min(span.to, t));
  }
}
