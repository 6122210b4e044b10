package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How many cubics a parallel takes, against the fewest that bisection finds for the same bound. */
class ParallelCountTest {
  private static final List<Cubic> CURVES =
      List.of(
          Outlines.cubic(0, 0, 0, 80, 60, 140, 140, 180),
          Outlines.cubic(232, 360, 190, 370, 160, 430, 168, 560),
          Outlines.cubic(96, 588, 80, 500, 50, 470, 0, 470),
          Outlines.cubic(0, 0, 80, 0, 160, 4, 240, 12),
          Outlines.cubic(0, 0, 100, 0, 0, 100, 100, 100));

  private static int count(Cubic cubic, double distance, double tolerance) {
    return Parallels.of(cubic, 0, 0, distance, tolerance).size();
  }

  /** From the start as far as one cubic reaches, found by bisection, and so on. */
  private static int fewest(Cubic cubic, double distance, double tolerance) {
    int fewest = 0;
    double from = 0;
    while (from < 1) {
      double reached = from;
      double missed = 1;
      if (isOne(cubic, from, 1, distance, tolerance)) {
        reached = 1;
      }
      while (reached < 1 && missed - reached > 1e-4) {
        double middle = (reached + missed) / 2;
        if (isOne(cubic, from, middle, distance, tolerance)) {
          reached = middle;
        } else {
          missed = middle;
        }
      }
      fewest++;
      from = reached;
    }
    return fewest;
  }

  private static boolean isOne(
      Cubic cubic, double from, double to, double distance, double tolerance) {
    return count(cubic.between(from, to), distance, tolerance) == 1;
  }

  @Test
  void theCountIsWithinOneAndAHalfTimesTheFewest() {
    int all = 0;
    int fewestOfAll = 0;
    for (Cubic cubic : CURVES) {
      for (double distance : new double[] {10, -10, 25, -18}) {
        for (double tolerance : new double[] {0.1, 0.01, 1e-3, 1e-4, 1e-6}) {
          if (isTurnedBack(cubic, distance, tolerance)) {
            continue;
          }
          int ours = count(cubic, distance, tolerance);
          int fewest = fewest(cubic, distance, tolerance);
          String which = cubic + " at " + distance + ", " + tolerance;
          assertTrue(ours <= 1.5 * fewest, () -> which + ": " + ours + " for " + fewest);
          all += ours;
          fewestOfAll += fewest;
        }
      }
    }
    assertTrue(all <= 1.5 * fewestOfAll, all + " for " + fewestOfAll);
  }

  private static boolean isTurnedBack(Cubic cubic, double distance, double tolerance) {
    return Parallels.of(cubic, 0, 0, distance, tolerance).stream().anyMatch(Strand::turnedBack);
  }
}
