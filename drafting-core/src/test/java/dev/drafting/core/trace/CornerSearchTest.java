package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class CornerSearchTest {
  private static Samples samples(double... xy) {
    double[] x = new double[xy.length / 2];
    double[] y = new double[xy.length / 2];
    for (int i = 0; i < x.length; i++) {
      x[i] = xy[2 * i];
      y[i] = xy[2 * i + 1];
    }
    return Samples.traced(x, y);
  }

  private static List<Corner> of(double[] xy, double wander) {
    return CornerSearch.of(samples(xy), wander);
  }

  private static Corner on(int point) {
    return new Corner(point, point);
  }

  /** So many points along a line, one every so many millimetres of x and y. */
  private static double[] line(double x, double y, int count, double stepX, double stepY) {
    double[] xy = new double[2 * count];
    for (int i = 0; i < count; i++) {
      xy[2 * i] = x + i * stepX;
      xy[2 * i + 1] = y + i * stepY;
    }
    return xy;
  }

  private static double[] then(double[]... lines) {
    return Arrays.stream(lines).flatMapToDouble(Arrays::stream).toArray();
  }

  private static double[] wandering(double[] xy, double wander, long seed) {
    Random random = new Random(seed);
    return Arrays.stream(xy).map(value -> value + wander * random.nextGaussian()).toArray();
  }

  /** Ten degrees rise by 17.6 mm on 100. */
  @Test
  void whoGivesFewPointsGivesTheCorners() {
    assertEquals(
        List.of(on(1), on(3)), of(new double[] {0, 0, 50, 0, 50, 40, 50, 90, 10, 110}, 0.1));
    assertEquals(List.of(on(1)), of(new double[] {0, 0, 100, 0, 200, 17.7}, 0.1));
    assertEquals(List.of(), of(new double[] {0, 0, 100, 0, 200, 17.5}, 0.1));
    assertEquals(List.of(on(1)), of(new double[] {9, 8, 109, 8, 209, -9.7}, 0.1));
    // The products are 540 and 3,220, then 600 and 3,300: 9.5 and 10.3 degrees.
    assertEquals(List.of(), of(new double[] {0, 0, 30, 40, 60, 98}, 0.1));
    assertEquals(List.of(on(1)), of(new double[] {0, 0, 30, 40, 60, 100}, 0.1));
    assertEquals(List.of(on(1)), of(new double[] {9, 8, 109, 8, 59, 8.1}, 0.1));
    assertEquals(
        List.of(on(1), on(2), on(3), on(4), on(5), on(6), on(7)),
        of(new double[] {0, 0, 9, 9, 18, 0, 27, 9, 36, 0, 45, 9, 54, 0, 63, 9, 72, 0}, 0.1));
  }

  @Test
  void aTracedCornerIsFoundOnItsPoint() {
    double[] twoSides = then(line(0, 0, 20, 5, 0), line(100, 0, 21, 0, 5));
    assertEquals(List.of(on(20)), of(twoSides, 1e-6));
    double[] threeSides =
        then(line(0, 0, 20, 5, 0), line(100, 0, 10, 3, 4), line(130, 40, 30, -5, 0));
    assertEquals(List.of(on(20), on(30)), of(threeSides, 1e-6));
  }

  /** The lines y = 0 and x = 97 cross between the 20th point and the 21st. */
  @Test
  void aCornerThatWasNotTracedLiesBetweenTwoPoints() {
    double[] twoSides = then(line(0, 0, 20, 5, 0), line(97, 3, 20, 0, 5));
    assertEquals(List.of(new Corner(19, 20)), of(twoSides, 1e-6));
  }

  /** On a way of 17 mm cut off askew the corner lies on one of the two, as edges end there. */
  @Test
  void aCornerBetweenPointsFarApartIsOneOfThem() {
    assertEquals(
        List.of(new Corner(19, 20)), of(then(line(0, 0, 20, 5, 0), line(105, 10, 20, 0, 5)), 1e-6));
    Corner far = of(then(line(0, 0, 20, 5, 0), line(107, 12, 20, 0, 5)), 1e-6).get(0);
    assertEquals(far.last(), far.first());
  }

  /** 9 mm along and 12 mm up are 15 mm. */
  @Test
  void endsThatLieFifteenMillimetresApartMeetBetween() {
    for (double y : new double[] {0, 500}) {
      double[] sides = then(line(0, y, 20, 5, 0), line(104, y + 12, 20, 0, 5));
      assertEquals(List.of(new Corner(19, 20)), of(sides, 1e-6));
    }
  }

  @Test
  void aCornerCutShortByFiveMillimetresLiesBetweenThroughTheNoise() {
    double[] sides = then(line(0, 0, 20, 5, 0), line(99, 4, 20, 0, 5));
    int between = 0;
    for (long seed = 0; seed < 30; seed++) {
      List<Corner> found = of(wandering(sides, 0.2, seed), 0.2);
      between += found.equals(List.of(new Corner(19, 20))) ? 1 : 0;
    }
    assertTrue(between >= 28, "between " + between);
  }

  /** Two arcs of 80 mm; the second sets out where the first ends, turned by 57 degrees. */
  @Test
  void aCornerBetweenArcsIsFoundOnItsPoint() {
    double[] arcs = new double[82];
    for (int i = 0; i <= 40; i++) {
      double first = (i - 20) / 16.0;
      double turn = i <= 20 ? first : first + 1;
      double middleX = i <= 20 ? 0 : -80 * Math.sin(1);
      double middleY = i <= 20 ? 80 : 80 * Math.cos(1);
      arcs[2 * i] = middleX + 80 * Math.sin(turn);
      arcs[2 * i + 1] = middleY - 80 * Math.cos(turn);
    }
    assertEquals(List.of(on(20)), of(arcs, 1e-6));
  }

  /** As the first, the arcs meet between two points, 2.5 mm from either. */
  @Test
  void aCornerBetweenArcsThatWasNotTracedLiesBetweenPoints() {
    for (double beyond : new double[] {0.3, 0.5, 0.7}) {
      double[] arcs = new double[80];
      for (int i = 0; i < 40; i++) {
        double first = (i - 19 - beyond) / 10.0;
        double turn = first < 0 ? first : first + 1;
        double middleX = first < 0 ? 0 : -80 * Math.sin(1);
        double middleY = first < 0 ? 80 : 80 * Math.cos(1);
        arcs[2 * i] = middleX + 80 * Math.sin(turn);
        arcs[2 * i + 1] = middleY - 80 * Math.cos(turn);
      }
      assertEquals(List.of(new Corner(19, 20)), of(arcs, 1e-6), "" + beyond);
    }
  }

  /** The lines y = 0 and x = 118, or x = 102, with a point every 20 mm. */
  @Test
  void ofTwoPointsFarApartTheCornerIsThatNearerToTheOtherLine() {
    double[] side = line(0, 0, 12, 20, 0);
    assertEquals(List.of(on(12)), of(then(side, line(238, 2, 12, 0, 20)), 1e-6));
    assertEquals(List.of(on(11)), of(then(side, line(222, 18, 12, 0, 20)), 1e-6));
  }

  @Test
  void aPointMayMissItsLineByAHundredthOfTheSpacing() {
    for (double off : new double[] {0, 0.05, 0.1}) {
      double[] sides =
          then(line(0, 0, 20, 5, 0), new double[] {100 + off, -off}, line(100, 5, 20, 0, 5));
      assertEquals(List.of(on(20)), of(sides, 1e-6), "" + off);
    }
  }

  @Test
  void aCornerAmongDensePointsIsFoundOnItsPoint() {
    for (int count = 97; count <= 103; count++) {
      double[] sides = then(line(0, 0, count, 1, 0), line(count, 0, 101, 0, 1));
      assertEquals(List.of(on(count)), of(sides, 1e-6));
    }
  }

  /** A strap 24 mm wide with a point in the middle of its end. */
  @Test
  void aSideOfThreePointsHasItsEndsForCorners() {
    double[] strap = then(line(0, 0, 21, 12, 0), new double[] {240, 12}, line(240, 24, 21, -12, 0));
    assertEquals(List.of(on(20), on(22)), of(strap, 1e-6));
  }

  @Test
  void linesWithoutCornersHaveNone() {
    assertEquals(List.of(), of(line(0, 0, 40, 5, 1), 1e-6));
    double[] arc = new double[120];
    for (int i = 0; i < 60; i++) {
      arc[2 * i] = 150 * Math.cos(i / 30.0);
      arc[2 * i + 1] = 150 * Math.sin(i / 30.0);
    }
    assertEquals(List.of(), of(arc, 1e-6));
    for (long seed = 0; seed < 10; seed++) {
      assertEquals(List.of(), of(wandering(arc, 0.5, seed), 0.5));
      assertEquals(List.of(), of(wandering(line(0, 0, 60, 5, 1), 0.5, seed), 0.5));
    }
  }

  @Test
  void aSlipIsNoCornerAndBelongsToItsEdge() {
    double[] twoSides = then(line(0, 0, 20, 5, 0), line(100, 0, 21, 0, 5));
    twoSides[2 * 8 + 1] = 9;
    assertEquals(List.of(on(20)), of(twoSides, 1e-6));
    twoSides[2 * 9 + 1] = 9;
    assertEquals(List.of(on(20)), of(twoSides, 1e-6));
  }

  /** Of 80 corners on 40 lines, and as many places that look like one. */
  @Test
  void theCornersAreFoundThroughTheNoise() {
    double[] sides =
        then(line(0, 0, 25, 5, 0), line(125, 0, 25, 2, 4.6), line(175, 115, 25, -5, 0));
    int right = 0;
    int claimed = 0;
    for (long seed = 0; seed < 40; seed++) {
      for (Corner corner : of(wandering(sides, 0.4, seed), 0.4)) {
        int near = corner.last() < 37 ? 25 : 50;
        right +=
            Math.max(Math.abs(corner.last() - near), Math.abs(corner.first() - near)) < 2 ? 1 : 0;
        claimed++;
      }
    }
    assertTrue(right >= 78, "right " + right);
    assertTrue(claimed <= 82, "claimed " + claimed);
  }

  /** The split of the points near the corner that leaves least of a parabola to either side. */
  @Test
  void theCornerIsWhereBothSidesFitBest() {
    double[] sides = then(line(0, 0, 18, 6, 0), line(104, 2, 18, 1, 6));
    int alone = 0;
    for (long seed = 0; seed < 30; seed++) {
      Samples samples = samples(wandering(sides, 0.3, seed));
      List<Corner> found = CornerSearch.of(samples, 0.3);
      if (found.size() == 1) {
        int best = bestSplit(samples, 0.3);
        Corner corner = found.get(0);
        assertTrue(corner.last() == best || corner.first() == best + 1, best + " " + corner);
        alone++;
      }
    }
    assertTrue(alone >= 28, "alone " + alone);
  }

  private static int bestSplit(Samples samples, double wander) {
    Walk walk = Walk.of(samples.x, samples.y, wander);
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int at = 14; at <= 20; at++) {
      double left = left(walk, samples, 4, at) + left(walk, samples, at + 1, 31);
      best = left < least ? at : best;
      least = Math.min(left, least);
    }
    return best;
  }

  private static double left(Walk walk, Samples samples, int from, int to) {
    Moments moments = new Moments(walk.along[from], samples.x[from], samples.y[from]);
    for (int i = from; i <= to; i++) {
      moments.add(walk.along[i], samples.x[i], samples.y[i]);
    }
    return moments.left(2);
  }

  @Property(tries = 25)
  void aMirrorImageHasTheSameCorners(@ForAll @LongRange(min = 0, max = 10_000) long seed) {
    double[] sides =
        wandering(
            then(line(0, 0, 15, 5, 0), line(74, 4, 9, 1, 4), line(80, 40, 20, -5, 3)), 0.7, seed);
    double[] mirrored = sides.clone();
    for (int i = 0; i < mirrored.length; i += 2) {
      mirrored[i] = -mirrored[i];
    }
    assertEquals(of(sides, 0.7), of(mirrored, 0.7));
  }
}
