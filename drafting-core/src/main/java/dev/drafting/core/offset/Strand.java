package dev.drafting.core.offset;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import org.jspecify.annotations.Nullable;

/**
 * One segment of the raw parallel chain together with the tag that rides on it.
 *
 * @param segment the segment
 * @param tag what it is
 * @param edge the edge it belongs to, or the edge before its corner
 * @param origin what it is parallel to; null for joins and steps
 * @param turnedBack whether it stands for a stretch beyond the radius of curvature, where the
 *     parallel runs backwards; such a strand closes the chain but never becomes part of a result
 */
record Strand(
    Segment segment, OffsetTag tag, int edge, @Nullable Origin origin, boolean turnedBack) {

  static Strand parallel(Segment segment, int edge, Origin origin) {
    return new Strand(segment, OffsetTag.EDGE, edge, origin, false);
  }

  static Strand join(Segment segment, int edge) {
    return new Strand(segment, OffsetTag.JOIN, edge, null, false);
  }

  static Strand step(Segment segment, int edge) {
    return new Strand(segment, OffsetTag.STEP, edge, null, false);
  }

  Point start() {
    return segment.start();
  }

  Point end() {
    return segment.end();
  }

  Strand between(double u0, double u1) {
    if (u0 == 0 && u1 == 1) {
      return this;
    }
    Segment cut = segment.between(u0, u1);
    Origin part = origin == null ? null : origin.between(u0, cut.start(), u1, cut.end());
    return new Strand(cut, tag, edge, part, turnedBack);
  }

  /** The same strand with its ends moved by next to nothing, so that it meets its neighbours. */
  Strand withEnds(Point start, Point end) {
    if (start.equals(segment.start()) && end.equals(segment.end())) {
      return this;
    }
    Segment moved = segment;
    if (segment instanceof Line) {
      moved = new Line(start, end);
    } else if (segment instanceof Cubic cubic) {
      Vector first = start.minus(cubic.start());
      Vector last = end.minus(cubic.end());
      moved = new Cubic(start, cubic.control1().plus(first), cubic.control2().plus(last), end);
    }
    return new Strand(moved, tag, edge, origin, turnedBack);
  }
}
