package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How points count that follow each other at this and that distance. */
class SamplesTest {
  private static Samples along(double... x) {
    return Samples.traced(x, new double[x.length]);
  }

  private static double[] every(double step, int count) {
    return IntStream.range(0, count).mapToDouble(i -> i * step).toArray();
  }

  /** A hand that wanders does so once in 5 mm. */
  @Test
  void pointsNearerThanAWobbleCountTogether() {
    assertEquals(5, along(every(1, 21)).independent, 1e-12);
    assertEquals(5, along(every(5, 5)).independent, 1e-12);
    assertEquals(4, along(every(40, 4)).independent, 1e-12);
    assertEquals(2, along(0, 1).independent, 1e-12);
    assertEquals(1 + 7 / 5.0, along(0, 5, 7).independent, 1e-12);
  }

  @Test
  void sharesFollowTheWayAndNeverLeadBack() {
    assertArrayEquals(new double[] {0, 5 / 7.0, 1}, along(0, 5, 7).share, 1e-12);
    assertArrayEquals(new double[] {0, 0.4, 0.3, 1, 1}, along(0, 4, 3, 10, 10).share, 1e-12);
    Samples corner = Samples.traced(new double[] {0, 30, 30}, new double[] {0, 0, 40});
    assertArrayEquals(new double[] {0, 3 / 7.0, 1}, corner.share, 1e-12);
  }

  @Test
  void theWayIsMeasuredFromPointToPoint() {
    Samples corner = Samples.traced(new double[] {1, 4, 4, 9}, new double[] {2, 6, 3, -9});
    assertEquals(5 + 3 + 13, corner.way(), 1e-12);
    assertEquals(3, corner.way(1, 2), 1e-12);
    assertEquals(0, corner.way(2, 2), 1e-12);
  }

  @Test
  void anEndThatIsSureIsNoSlip() {
    Samples line = along(every(10, 4));
    assertFalse(line.isSure(0) || line.isSure(3));
    Samples first = line.withSureEnds(true, false);
    assertTrue(first.isSure(0));
    assertFalse(first.isSure(1) || first.isSure(3));
    Samples last = line.withSureEnds(false, true);
    assertTrue(last.isSure(3));
    assertFalse(last.isSure(0) || last.isSure(2));
  }

  /** A point 30 mm off its neighbours is a slip, unless hundreds follow one movement. */
  @Test
  void slipsAreSetAsideButNotOfALineDrawnInOne() {
    Samples line = Samples.traced(every(10, 12), new double[12]);
    line.y[5] = 30;
    boolean[] kept = line.withoutSlips(0.5);
    for (int i = 0; i < 12; i++) {
      assertEquals(i != 5, kept[i], "point " + i);
    }
    assertTrue(line.withoutSlips(40)[5]);
    assertFalse(line.withoutSlips(0.5)[5]);
    double[] y = new double[221];
    y[100] = 30;
    assertTrue(Samples.traced(every(0.5, 221), y).withoutSlips(0.5)[100]);
  }

  @Test
  void whereBothSidesStartAndEndInTheMiddleIsKept() {
    Point start = new Point(1, 2);
    Point end = new Point(3, 4);
    double[] share = {0, 1};
    Samples sides =
        Samples.averaged(new double[] {5, 6}, new double[] {7, 8}, share, 2, start, end);
    assertEquals(start, sides.start(0));
    assertEquals(end, sides.end(1));
    Samples moved = along(0, 10).map(Transform.translation(new Vector(100, 7)));
    assertEquals(new Point(100, 7), moved.start(0));
    assertEquals(new Point(110, 7), moved.end(1));
  }
}
