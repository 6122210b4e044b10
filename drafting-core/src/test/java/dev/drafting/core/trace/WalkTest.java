package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class WalkTest {
  /** Along the x axis, past these places. */
  private static Walk straight(double... x) {
    return Walk.of(x, new double[x.length], 0);
  }

  private static double[] everyMm(int count) {
    return IntStream.range(0, count).mapToDouble(i -> i).toArray();
  }

  @Test
  void pointsWithinTwoAndAHalfMillimetresAreTakenTogether() {
    Walk walk = straight(everyMm(11));
    assertArrayEquals(everyMm(11), walk.along, 1e-12);
    assertArrayEquals(new int[] {0, 3, 5, 8, 10, 11}, walk.first);
    assertArrayEquals(new double[] {1, 3.5, 6, 8.5, 10}, walk.x, 1e-12);
    assertArrayEquals(new double[] {1, 3.5, 6, 8.5, 10}, walk.way, 1e-12);
    assertArrayEquals(new double[5], walk.y, 0.0);
    assertEquals(5, walk.size());
  }

  @Test
  void aBlockLiesInTheMiddleOfItsPoints() {
    Walk walk = Walk.of(new double[2], new double[] {0, 2}, 0);
    assertEquals(1, walk.size());
    assertEquals(0, walk.x[0], 0.0);
    assertEquals(1, walk.y[0], 0.0);
    assertEquals(1, walk.way[0], 0.0);
    assertEquals(0, walk.spacing(), 0.0);
  }

  @Test
  void aGapDoesNotMoveWhereBlocksBegin() {
    Walk walk = straight(0, 1, 11, 12, 13, 15, 16);
    assertArrayEquals(new int[] {0, 2, 4, 5, 7}, walk.first);
  }

  @Test
  void aLongLineHasFourHundredBlocks() {
    Walk walk = straight(everyMm(4001));
    assertEquals(401, walk.size());
    assertEquals(10, walk.first[1]);
    assertEquals(10, walk.spacing(), 1e-12);
  }

  @Test
  void theSpacingIsTheMiddleGap() {
    assertEquals(6, straight(0, 3, 9, 13, 20, 40).spacing(), 1e-12);
    assertEquals(7, straight(0, 3, 10, 90, 93, 163).spacing(), 1e-12);
    assertEquals(10, straight(0, 5, 15).spacing(), 1e-12);
  }

  /** The pencil goes up and down by 1 mm on every 3 mm; each step counts along the line. */
  @Test
  void wanderingAddsNothingToTheWay() {
    double[] x = {0, 3, 6, 9, 12};
    double[] y = {0, 1, 0, 1, 0};
    double bent = 26 / Math.sqrt(82);
    double[] wandering = {0, 3, 3 + bent, 3 + 2 * bent, 6 + 2 * bent};
    assertArrayEquals(wandering, Walk.of(x, y, 0.5).along, 1e-12);
    double step = Math.sqrt(10);
    double[] meant = {0, step, 2 * step, 3 * step, 4 * step};
    assertArrayEquals(meant, Walk.of(x, y, 0).along, 1e-12);
    // Neighbours lie 8 deviations apart, which is far enough.
    assertArrayEquals(meant, Walk.of(x, y, step / 8).along, 1e-12);
  }

  /** Of a zigzag through 40 mm, looked at over 8 mm, no more than the length of the line. */
  @Test
  void theDirectionIsThatOfTheLineAtThatPlace() {
    double[] x = new double[81];
    double[] y = new double[81];
    for (int i = 0; i < x.length; i++) {
      x[i] = Math.min(i, 40) + (i > 40 && i % 2 == 1 ? 0.2 : 0);
      y[i] = Math.max(i - 40, 0) + (i < 40 && i % 2 == 1 ? 0.2 : 0);
    }
    Walk walk = Walk.of(x, y, 0.5);
    // Past the corner the direction turns over 4 mm to either side.
    assertEquals(30, walk.along[30], 0.2);
    assertEquals(30, walk.along[80] - walk.along[50], 0.2);
    assertTrue(walk.along[50] - walk.along[30] < 20);
    assertTrue(walk.along[50] - walk.along[30] > 10 * Math.sqrt(2));
  }

  @Test
  void aLineThatComesBackToItsPointStandsStill() {
    Walk walk = Walk.of(new double[] {0, 3, 0}, new double[3], 1);
    assertArrayEquals(new double[3], walk.along, 0.0);
  }

  @Property(tries = 30)
  void theWayIsAsLongFromTheOtherEnd(@ForAll @LongRange(min = 0, max = 10_000) long seed) {
    Random random = new Random(seed);
    int count = 30;
    double[] x = new double[count];
    double[] y = new double[count];
    double[] backX = new double[count];
    double[] backY = new double[count];
    for (int i = 0; i < count; i++) {
      x[i] = 3 * i + 0.5 * random.nextGaussian();
      y[i] = 0.5 * random.nextGaussian();
      backX[count - 1 - i] = x[i];
      backY[count - 1 - i] = y[i];
    }
    Walk there = Walk.of(x, y, 0.5);
    Walk back = Walk.of(backX, backY, 0.5);
    for (int i = 0; i < count; i++) {
      double left = there.along[count - 1] - there.along[count - 1 - i];
      assertEquals(left, back.along[i], 1e-9);
    }
  }

  @Test
  void blocksWanderLikeTheirPoints() {
    Random random = new Random(3);
    double[] x = new double[60];
    double[] y = new double[60];
    for (int i = 0; i < x.length; i++) {
      x[i] = 6 * i;
      y[i] = 0.5 * random.nextGaussian();
    }
    double points = Noise.ofRound(Samples.traced(x, y)).mm;
    assertEquals(points, Walk.of(x, y, 0).wander(), 1e-12);
    assertEquals(0.5, points, 0.2);
    assertEquals(Noise.LEAST_MM, straight(x).wander(), 1e-9);
  }

  @Test
  void sumsAreThoseOfBothBlocksAndAllBetween() {
    Walk walk = Walk.of(new double[] {0, 5, 10, 15, 20}, new double[] {0, 0, 3, 0, 4}, 0);
    Moments three = walk.moments(1, 3);
    assertEquals(3, three.count());
    // Even steps of the way; heights 0, 3, 0 miss their mean of 1 by 1, 2, 1.
    assertEquals(6, three.left(1), 1e-9);
    assertEquals(1, walk.moments(4, 4).count());
    assertEquals(16, walk.moments(4, 4).off(0, walk.way[4], 20, 0), 1e-12);
  }
}
