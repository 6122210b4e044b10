package dev.drafting.core.offset;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Finds all places where a closed chain of strands crosses itself. */
final class StrandCrossings {
  private static final double JOINT = 1e-6;

  private final List<Strand> chain;
  private final Box[] boxes;
  private final List<StrandCrossing> found = new ArrayList<>();

  private StrandCrossings(List<Strand> chain) {
    this.chain = chain;
    this.boxes = new Box[chain.size()];
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] = chain.get(i).segment().bounds();
    }
  }

  static List<StrandCrossing> of(List<Strand> chain) {
    StrandCrossings crossings = new StrandCrossings(chain);
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
    for (Crossing crossing : Curve.of(segment).selfCrossings()) {
      add(crossing, strand, segment, strand, segment);
    }
  }

  private void between(int i, int j) {
    Segment one = chain.get(i).segment();
    Segment two = chain.get(j).segment();
    if (onlyJoin(i, j)) {
      return;
    }
    for (Crossing crossing : Curve.of(one).intersections(Curve.of(two))) {
      boolean joint =
          (j == i + 1 && isAt(crossing, one.end()))
              || (i == 0 && j == chain.size() - 1 && isAt(crossing, one.start()));
      if (!joint) {
        add(crossing, i, one, j, two);
      }
    }
  }

  /** Two lines that follow each other meet nowhere else. */
  private boolean onlyJoin(int i, int j) {
    boolean neighbours = j == i + 1 || (i == 0 && j == chain.size() - 1);
    return neighbours
        && chain.get(i).segment() instanceof dev.drafting.core.geometry.Line
        && chain.get(j).segment() instanceof dev.drafting.core.geometry.Line;
  }

  private static boolean isAt(Crossing crossing, Point joint) {
    return Math.hypot(crossing.point().x() - joint.x(), crossing.point().y() - joint.y()) < JOINT;
  }

  private void add(Crossing crossing, int i, Segment one, int j, Segment two) {
    double u = one.parameterAt(crossing.along());
    double v = two.parameterAt(crossing.alongOther());
    found.add(new StrandCrossing(crossing.point(), i, u, j, v));
  }
}
