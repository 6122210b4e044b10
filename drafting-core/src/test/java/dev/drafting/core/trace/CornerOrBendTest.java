package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Lines of 100 mm to either side of a turn, with a point every so many millimetres. */
class CornerOrBendTest {
  private static final double FAR = 100;

  /**
   * Two straight lines that turn by this angle, evenly over a length: on an arc of a circle whose
   * middle lies this far behind the middle of the line.
   */
  private static Walk bent(double degrees, double over, double aside, double step) {
    int half = (int) Math.round(FAR / step);
    double[] x = new double[2 * half + 1];
    double[] y = new double[2 * half + 1];
    double turn = Math.toRadians(degrees);
    for (int i = 0; i < x.length; i++) {
      double way = (i - half) * step - aside;
      double curved = Math.min(Math.max(way, -over / 2), over / 2);
      double direction = over == 0 ? 0 : turn * curved / over;
      double radius = over / turn;
      double rest = way - curved;
      double heading = way < 0 ? -turn / 2 : turn / 2;
      x[i] = rest * Math.cos(heading) + (over == 0 ? 0 : radius * Math.sin(direction));
      y[i] = rest * Math.sin(heading) + (over == 0 ? 0 : radius * (1 - Math.cos(direction)));
    }
    return Walk.of(x, y, 0);
  }

  private static boolean isCorner(Walk walk, boolean straightBefore, boolean straightAfter) {
    int last = walk.size() - 1;
    double at = walk.way[last / 2];
    return new CornerOrBend(walk, 0, last, at, FAR, straightBefore, straightAfter).isCorner();
  }

  /** Whether it is one whatever is known of its neighbours. */
  private static void assertCorner(boolean expected, Walk walk) {
    assertEquals(expected, isCorner(walk, true, true), "straight before and after");
    assertEquals(expected, isCorner(walk, false, true), "straight after");
    assertEquals(expected, isCorner(walk, true, false), "straight before");
    assertEquals(expected, isCorner(walk, false, false), "curved before and after");
  }

  @Test
  void twoLinesThatTurnAtOnceMeetAtACorner() {
    for (double degrees : new double[] {-90, -30, 12, 30, 60, 90, 120}) {
      assertCorner(true, bent(degrees, 0, 0, 5));
    }
  }

  @Test
  void aTurnOfLessThanTenDegreesIsNone() {
    assertCorner(false, bent(9.8, 0, 0, 5));
    assertCorner(true, bent(10.2, 0, 0, 5));
    assertCorner(false, bent(-9.8, 0, 0, 5));
    assertCorner(false, bent(0.001, 0, 0, 5));
  }

  @Test
  void aStraightLineHasNoCorner() {
    double[] x = new double[41];
    for (int i = 0; i < x.length; i++) {
      x[i] = 5 * i;
    }
    assertCorner(false, Walk.of(x, new double[41], 0));
  }

  @Test
  void aTurnOverTenCentimetresIsABend() {
    for (double degrees : new double[] {-40, 20, 40, 60}) {
      assertCorner(false, bent(degrees, 100, 0, 5));
    }
  }

  /** A corner explains a turn over 30 mm better than the shortest bend of 54 mm does. */
  @Test
  void aTurnOverThreeCentimetresIsACornerToAMaker() {
    assertCorner(true, bent(40, 30, 0, 5));
    assertCorner(false, bent(40, 54, 0, 5));
  }

  @Test
  void theBendMayLieAside() {
    for (double aside : new double[] {-20, 20}) {
      assertCorner(false, bent(40, 80, aside, 5));
    }
  }

  @Test
  void theCornerMayLieABlockAside() {
    for (double aside : new double[] {-5, -2.5, 2.5, 5}) {
      assertCorner(true, bent(40, 0, aside, 5));
    }
  }

  @Test
  void pointsFartherApartThanABendTellNothing() {
    assertCorner(true, bent(40, 80, 0, 30));
    assertCorner(false, bent(40, 80, 0, 20));
  }

  /** Curvature that jumps belongs to a smooth run, as where an arc goes over into a line. */
  @Test
  void anArcThatRunsOutIntoALineHasNoCorner() {
    for (boolean before : new boolean[] {false, true}) {
      double[] x = new double[41];
      double[] y = new double[41];
      for (int i = 0; i < x.length; i++) {
        double way = 5 * (before ? 20 - i : i - 20);
        double turn = Math.max(way, 0) / 150;
        x[i] = (before ? -1 : 1) * (Math.min(way, 0) + 150 * Math.sin(turn));
        y[i] = 150 * (1 - Math.cos(turn));
      }
      Walk walk = Walk.of(x, y, 0);
      assertFalse(isCorner(walk, false, false));
      assertFalse(isCorner(walk, !before, before));
    }
  }

  @Property(tries = 40)
  void whereItLiesAndHowItIsTurnedSaysNothingAboutATurn(
      @ForAll @DoubleRange(min = 10.5, max = 90) double degrees,
      @ForAll @DoubleRange(min = 0, max = 120) double over,
      @ForAll boolean straightBefore,
      @ForAll boolean straightAfter) {
    Walk walk = bent(degrees, over, 0, 5);
    int size = walk.size();
    double[] x = new double[size];
    double[] y = new double[size];
    double[] backX = new double[size];
    double[] backY = new double[size];
    Random random = new Random(Double.hashCode(degrees));
    double turn = 7 * random.nextDouble();
    for (int i = 0; i < size; i++) {
      double wandering = walk.y[i] + 0.3 * random.nextGaussian();
      x[i] = walk.x[i];
      y[i] = wandering;
      backX[size - 1 - i] = 800 + x[i] * Math.cos(turn) - y[i] * Math.sin(turn);
      backY[size - 1 - i] = x[i] * Math.sin(turn) + y[i] * Math.cos(turn) - 300;
    }
    assertEquals(
        isCorner(Walk.of(x, y, 0), straightBefore, straightAfter),
        isCorner(Walk.of(backX, backY, 0), straightAfter, straightBefore));
  }

  /** A corner within a longer line, of which the stretch that is looked at is a part. */
  @Test
  void whatLiesBeyondTheStretchSaysNothing() {
    Walk corner = bent(40, 0, 0, 5);
    double at = corner.way[20];
    assertTrue(new CornerOrBend(corner, 8, 33, at, 60, true, true).isCorner());
    assertTrue(new CornerOrBend(corner, 8, 33, at, 60, false, false).isCorner());
    assertFalse(new CornerOrBend(corner, 21, 40, corner.way[30], 50, true, true).isCorner());
    Walk bend = bent(40, 80, 0, 5);
    assertFalse(new CornerOrBend(bend, 8, 33, bend.way[20], 60, true, true).isCorner());
  }
}
