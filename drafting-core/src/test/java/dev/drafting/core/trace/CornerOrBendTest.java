package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
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

  private static boolean isCorner(DoubleUnaryOperator rise, int from, int to, boolean... straight) {
    double[] x = new double[41];
    double[] y = new double[41];
    for (int i = 0; i < x.length; i++) {
      x[i] = 5 * (i - 20);
      y[i] = rise.applyAsDouble(x[i] / FAR);
    }
    Walk walk = Walk.of(x, y, 0);
    return new CornerOrBend(walk, from, to, walk.way[20], FAR, straight[0], straight[1]).isCorner();
  }

  /** A corner of 22 degrees between lines that curve as a cubic does, or bend on one side more. */
  @Test
  void aCornerIsSeenOnLinesThatCurve() {
    for (int from : new int[] {0, 8}) {
      for (int to : new int[] {32, 40}) {
        for (double rise : new double[] {-15, -8, 8, 15}) {
          assertTrue(
              isCorner(t -> 20 * Math.abs(t) + rise * t * t * t, from, to, false, false), "twist");
          assertTrue(
              isCorner(t -> 20 * Math.abs(t) + rise * t * Math.abs(t), from, to, false, false),
              "jump");
          assertTrue(isCorner(t -> 20 * Math.abs(t) + rise * t * t, from, to, false, false));
        }
      }
    }
  }

  @Test
  void aCornerIsSeenBetweenAStraightLineAndOneThatCurves() {
    for (double rise : new double[] {-15, -8, 8, 15}) {
      for (int power = 2; power <= 3; power++) {
        int degree = power;
        assertTrue(
            isCorner(
                t -> 20 * Math.abs(t) + rise * Math.pow(Math.max(t, 0), degree),
                0,
                40,
                true,
                false));
        assertTrue(
            isCorner(
                t -> 20 * Math.abs(t) + rise * Math.pow(Math.max(-t, 0), degree),
                0,
                40,
                false,
                true));
      }
    }
  }

  /** How far a line rises that turns by this angle in its middle. */
  private static double turning(double degrees, double t) {
    return FAR * Math.tan(Math.toRadians(degrees / 2)) * Math.abs(t);
  }

  /** Ten degrees are ten degrees whatever the lines do farther off. */
  @Test
  void theTurnIsThatOfTheCornerAlone() {
    for (int from : new int[] {0, 8}) {
      for (int to : new int[] {30, 40}) {
        for (double rise : new double[] {-4, 4}) {
          assertTurn(from, to, t -> rise * t * t, false, false);
          assertTurn(from, to, t -> rise * t * t * t, false, false);
          assertTurn(from, to, t -> rise * t * Math.abs(t), false, false);
          assertTurn(from, to, t -> rise * Math.pow(Math.max(t, 0), 2), true, false);
          assertTurn(from, to, t -> rise * Math.pow(Math.max(t, 0), 3), true, false);
          assertTurn(from, to, t -> rise * Math.pow(Math.max(-t, 0), 2), false, true);
          assertTurn(from, to, t -> rise * Math.pow(Math.max(-t, 0), 3), false, true);
        }
      }
    }
  }

  private static void assertTurn(int from, int to, DoubleUnaryOperator curve, boolean... straight) {
    assertTrue(
        isCorner(t -> turning(10.3, t) + curve.applyAsDouble(t), from, to, straight), "10.3");
    assertFalse(isCorner(t -> turning(9.7, t) + curve.applyAsDouble(t), from, to, straight), "9.7");
  }

  /** Somewhere between two points, where the stretches beside it end. */
  private static boolean isCornerOff(double blocks, boolean straight) {
    Walk corner = bent(40, 0, 0, 5);
    double at = corner.way[20] + 5 * blocks;
    return new CornerOrBend(corner, 0, 40, at, FAR, straight, straight).isCorner();
  }

  @Test
  void aCornerLiesWithinABlockOfWhereStretchesEnd() {
    for (double blocks : new double[] {-1.5, -1, -0.5, 0.5, 1, 1.5}) {
      assertTrue(isCornerOff(blocks, false), "" + blocks);
    }
    for (double blocks : new double[] {-4, 4}) {
      assertFalse(isCornerOff(blocks, false), "" + blocks);
    }
  }

  @Test
  void besideAStraightStretchItLiesWithinTwo() {
    for (double blocks : new double[] {-2.5, -2, 2, 2.5}) {
      assertTrue(isCornerOff(blocks, true), "" + blocks);
    }
    for (double blocks : new double[] {-7, 7}) {
      assertFalse(isCornerOff(blocks, true), "" + blocks);
    }
  }

  /** Of a turn over 54 mm no more than the middle 40 mm are looked at. */
  @Test
  void theShortestBendIsLookedForOnShortStretchesToo() {
    Walk bend = bent(60, 54, 0, 5);
    assertFalse(new CornerOrBend(bend, 16, 24, bend.way[20], 20, true, true).isCorner());
  }

  @Test
  void aCornerAmongPointsFarApartLiesOnOneOfTheNearest() {
    Walk corner = bent(40, 0, 0, 20);
    for (double blocks : new double[] {-1.5, -1, 0, 0.5, 1, 1.5}) {
      double at = corner.way[5] + 20 * blocks;
      assertTrue(new CornerOrBend(corner, 0, 10, at, FAR, false, false).isCorner(), "" + blocks);
    }
  }

  /** Two points and a half off it is seen only beside a stretch that is straight. */
  @Test
  void aStraightStretchOnEitherSideTellsMoreSurelyWhereItEnds() {
    Walk corner = bent(40, 0, 0, 20);
    for (double blocks : new double[] {-2.5, 2.5}) {
      double at = corner.way[5] + 20 * blocks;
      assertTrue(new CornerOrBend(corner, 0, 10, at, FAR, true, true).isCorner());
      assertTrue(new CornerOrBend(corner, 0, 10, at, FAR, true, false).isCorner());
      assertTrue(new CornerOrBend(corner, 0, 10, at, FAR, false, true).isCorner());
      assertFalse(new CornerOrBend(corner, 0, 10, at, FAR, false, false).isCorner());
    }
  }

  @Test
  void aCornerMayLieHalfwayBetweenPointsFarApart() {
    assertCorner(true, bent(40, 0, 10, 20));
    assertCorner(true, bent(40, 0, -10, 20));
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
    double[] turnedX = new double[size];
    double[] turnedY = new double[size];
    Random random = new Random(Double.hashCode(degrees));
    double turn = 7 * random.nextDouble();
    for (int i = 0; i < size; i++) {
      double wandering = walk.y[i] + 0.3 * random.nextGaussian();
      x[i] = walk.x[i];
      y[i] = wandering;
      turnedX[i] = 800 + x[i] * Math.cos(turn) - y[i] * Math.sin(turn);
      turnedY[i] = x[i] * Math.sin(turn) + y[i] * Math.cos(turn) - 300;
    }
    assertEquals(
        isCorner(Walk.of(x, y, 0), straightBefore, straightAfter),
        isCorner(Walk.of(turnedX, turnedY, 0), straightBefore, straightAfter));
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
