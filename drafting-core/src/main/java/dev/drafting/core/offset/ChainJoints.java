package dev.drafting.core.offset;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Makes the strands of a chain fit end to end. */
final class ChainJoints {
  private static final double SNAP = 2 * CornerPlanner.TOUCHING;
  private static final double SAME_POINT = 1e-9;

  private ChainJoints() {}

  /** A line and its straight continuation become one line. */
  static List<Strand> merged(List<Strand> chain) {
    List<Strand> merged = new ArrayList<>();
    for (Strand strand : chain) {
      if (isPoint(strand.segment())) {
        continue;
      }
      Strand last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      Strand both = last == null ? null : together(last, strand);
      if (both == null) {
        merged.add(strand);
      } else {
        merged.set(merged.size() - 1, both);
      }
    }
    return merged;
  }

  private static boolean isPoint(Segment segment) {
    return segment instanceof Line line && near(line.start(), line.end(), SAME_POINT);
  }

  private static @Nullable Strand together(Strand one, Strand two) {
    Origin a = one.origin();
    Origin b = two.origin();
    boolean continued =
        a != null
            && b != null
            && one.edge() == two.edge()
            && a.index() == b.index()
            && (a.from() == a.to() || b.from() == b.to())
            && !one.turnedBack()
            && !two.turnedBack()
            && one.segment() instanceof Line
            && two.segment() instanceof Line
            && a.segment() instanceof Line;
    if (!continued || a == null || b == null) {
      return null;
    }
    Origin whole =
        new Origin(
            a.segment(),
            a.index(),
            a.from() == a.to() ? b.from() : a.from(),
            b.from() == b.to() ? a.to() : b.to());
    return Strand.parallel(new Line(one.start(), two.end()), one.edge(), whole);
  }

  /** Neighbours that meet but for rounding are made to meet exactly. */
  static List<Strand> snapped(List<Strand> chain, boolean closed) {
    int n = chain.size();
    Point[] starts = new Point[n];
    Point[] ends = new Point[n];
    for (int i = 0; i < n; i++) {
      Strand one = chain.get(i);
      Strand two = chain.get((i + 1) % n);
      if (!closed && i + 1 == n) {
        ends[i] = one.end();
        starts[0] = two.start();
        continue;
      }
      boolean fixed = two.segment() instanceof Arc;
      boolean bothFixed = fixed && one.segment() instanceof Arc;
      Point joint = fixed ? two.start() : one.end();
      ends[i] = bothFixed ? one.end() : joint;
      starts[(i + 1) % n] = joint;
      if (!near(one.end(), two.start(), SNAP)) {
        throw new IllegalStateException("parallels do not join up at " + one + " and " + two);
      }
    }
    List<Strand> joined = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      joined.add(chain.get(i).withEnds(starts[i], ends[i]));
      Point next = closed || i + 1 < n ? starts[(i + 1) % n] : ends[i];
      if (!near(ends[i], next, SAME_POINT)) {
        Strand strand = chain.get(i);
        Origin origin = strand.origin();
        Line line = new Line(ends[i], next);
        joined.add(
            new Strand(
                line,
                strand.tag(),
                strand.edge(),
                origin == null ? null : origin.endOnly(true),
                false));
      }
    }
    return joined;
  }

  private static boolean near(Point a, Point b, double within) {
    double dx = a.x() - b.x();
    double dy = a.y() - b.y();
    return dx * dx + dy * dy <= within * within;
  }
}
