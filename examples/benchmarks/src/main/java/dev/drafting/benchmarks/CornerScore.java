package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** How many of the true corners are found, and how many that are found are true. */
final class CornerScore {
  private static final double NEAR_MM = 15;

  private final List<Point> truth = new ArrayList<>();
  private int missed;
  private int found;
  private int wrong;

  /** The corners between edges; the ends of a half on the fold are none. */
  CornerScore(TrueGarment garment) {
    garment.edges.forEach(edge -> truth.add(edge.start()));
    if (!garment.isClosed()) {
      truth.remove(0);
    }
  }

  void add(List<Point> corners) {
    for (Point corner : truth) {
      if (isNear(corner, corners)) {
        found++;
      } else {
        missed++;
      }
    }
    wrong += (int) corners.stream().filter(corner -> !isNear(corner, truth)).count();
  }

  private static boolean isNear(Point corner, List<Point> others) {
    return others.stream().anyMatch(other -> corner.distanceTo(other).toMm() <= NEAR_MM);
  }

  double recall() {
    return (double) found / (found + missed);
  }

  double precision() {
    return (double) found / (found + wrong);
  }
}
