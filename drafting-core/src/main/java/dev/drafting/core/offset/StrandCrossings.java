package dev.drafting.core.offset;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Finds all places where a chain of strands crosses itself. */
final class StrandCrossings {
  private static final double JOINT = 1e-6;

  private final List<Strand> chain;
  private final boolean closed;
  private final Box[] boxes;
  private final List<StrandCrossing> found = new ArrayList<>();

  private StrandCrossings(List<Strand> chain, boolean closed) {
    this.chain = chain;
    this.closed = closed;
    this.boxes = new Box[chain.size()];
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] = chain.get(i).segment().bounds();
    }
  }

  static List<StrandCrossing> of(List<Strand> chain, boolean closed) {
    StrandCrossings crossings = new StrandCrossings(chain, closed);
    crossings.sweep();
    return crossings.found;
  }

  /** Strands in the order of their left ends; each meets those that begin before it ends. */
  private void sweep() {
    int n = chain.size();
    Integer[] order = new Integer[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    Arrays.sort(order, Comparator.comparingDouble(i -> boxes[i].minX()));
    for (int i = 0; i < n; i++) {
      within(order[i]);
      for (int j = i + 1; j < n && boxes[order[j]].minX() <= boxes[order[i]].maxX(); j++) {
        Box one = boxes[order[i]];
        Box two = boxes[order[j]];
        if (one.minY() <= two.maxY() && two.minY() <= one.maxY()) {
          between(Math.min(order[i], order[j]), Math.max(order[i], order[j]));
        }
      }
    }
  }

  private void within(int strand) {
    Segment segment = chain.get(strand).segment();
    if (segment instanceof Cubic) {
      for (double[] met : SegmentMeetings.within(segment)) {
        found.add(new StrandCrossing(segment.pointAt(met[0]), strand, met[0], strand, met[1]));
      }
    }
  }

  private void between(int i, int j) {
    int last = chain.size() - 1;
    boolean follows = j == i + 1;
    boolean closes = closed && i == 0 && j == last;
    Segment one = chain.get(i).segment();
    Segment two = chain.get(j).segment();
    if ((follows || closes) && one instanceof Line && two instanceof Line) {
      return;
    }
    List<double[]> meetings =
        follows && !closes ? SegmentMeetings.following(one, two) : SegmentMeetings.of(one, two);
    for (double[] met : meetings) {
      Point point = one.pointAt(met[0]);
      boolean joint = (follows && near(point, one.end())) || (closes && near(point, one.start()));
      if (!joint) {
        found.add(new StrandCrossing(point, i, met[0], j, met[1]));
      }
    }
  }

  private static boolean near(Point a, Point b) {
    double dx = a.x() - b.x();
    double dy = a.y() - b.y();
    return dx * dx + dy * dy < JOINT * JOINT;
  }
}
