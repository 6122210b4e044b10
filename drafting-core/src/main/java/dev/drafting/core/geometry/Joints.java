package dev.drafting.core.geometry;

import dev.drafting.core.finding.DraftingException;
import java.util.ArrayList;
import java.util.List;

/** Makes segments meet exactly, or says where they do not. */
final class Joints {
  /** Ends that are no further apart than this, in millimetres, are one point. */
  static final double SNAP = 1e-9;

  private Joints() {}

  static List<Segment> joined(List<Segment> segments) {
    if (segments.size() > Curve.MOST) {
      throw DraftingException.of("a curve has too many segments")
          .value(segments.size())
          .accepted("a million at most");
    }
    if (segments.isEmpty()) {
      throw DraftingException.of("a curve has no segments").accepted("one or more");
    }
    List<Segment> joined = new ArrayList<>(segments.size());
    Point wanted = segments.get(0).start();
    Point end = wanted;
    for (int i = 0; i < segments.size(); i++) {
      meet(wanted, segments.get(i).start(), i);
      wanted = segments.get(i).end();
      Segment segment = withEnds(segments.get(i), end, wanted);
      if (!isPoint(segment)) {
        joined.add(segment);
        end = wanted;
      }
    }
    if (joined.isEmpty()) {
      throw DraftingException.of("a curve has no length")
          .value(segments.get(0))
          .accepted("at least one segment that is longer than 1e-9 mm");
    }
    close(joined);
    return List.copyOf(joined);
  }

  private static void meet(Point end, Point start, int index) {
    if (end.equals(start)) {
      return;
    }
    double gap = end.gap(start);
    if (gap > SNAP) {
      throw DraftingException.of("a curve has a gap before segment " + (index + 1))
          .value(Coordinates.text(gap, 12) + " mm from " + end + " to " + start)
          .accepted("segments that meet within 1e-9 mm");
    }
  }

  private static void close(List<Segment> joined) {
    int last = joined.size() - 1;
    Point start = joined.get(0).start();
    Segment closing = joined.get(last);
    if (last > 0 && closing.end().gap(start) <= SNAP) {
      joined.set(last, withEnds(closing, closing.start(), start));
    }
  }

  private static boolean isPoint(Segment segment) {
    if (segment instanceof Cubic cubic) {
      return near(cubic.start(), cubic.control1())
          && near(cubic.start(), cubic.control2())
          && near(cubic.start(), cubic.end());
    }
    return segment instanceof Arc arc
        ? arc.arcLength() <= SNAP
        : near(segment.start(), segment.end());
  }

  private static boolean near(Point a, Point b) {
    return a.gap(b) <= SNAP;
  }

  private static Segment withEnds(Segment segment, Point start, Point end) {
    if (segment.start().equals(start) && segment.end().equals(end)) {
      return segment;
    }
    if (segment instanceof Cubic cubic) {
      return new Cubic(
          start,
          moved(cubic.control1(), cubic.start(), start),
          moved(cubic.control2(), cubic.end(), end),
          end);
    }
    return segment instanceof Arc arc ? arc.withEnds(start, end) : new Line(start, end);
  }

  /** A handle of no length stays one. */
  private static Point moved(Point control, Point before, Point after) {
    return control.equals(before) ? after : control;
  }
}
