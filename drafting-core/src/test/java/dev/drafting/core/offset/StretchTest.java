package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The hulls of stretches of segments, by hand, and against points along them. */
class StretchTest {
  private static final double QUARTER = Math.PI / 2;

  private static Stretch line(double x0, double y0, double x1, double y1) {
    return Stretch.of(new Line(new Point(x0, y0), new Point(x1, y1)));
  }

  @Test
  void theHullOfAQuarterCircleIsTheTriangleWithItsCorner() {
    Stretch quarter = Stretch.of(Outlines.arc(100, 200, 10, 0, 90));
    assertEquals(10, quarter.size(), 1e-12);
    assertArrayEquals(new double[] {QUARTER, 2 * QUARTER}, quarter.directions(), 1e-12);
    assertTrue(quarter.reaches(new Point(109.999, 200.001)));
    assertFalse(quarter.reaches(new Point(110.001, 205)));
    assertFalse(quarter.reaches(new Point(100, 210.001)));
    assertFalse(quarter.isRightOf(new Point(100.001, 205)));
    assertTrue(quarter.isRightOf(new Point(99.999, 205)));
  }

  /** Its top: the crossing of the end tangents is at 10 / cos 30 degrees. */
  @Test
  void theHullOfASixthOfACircleReachesToTheCrossingOfItsEndTangents() {
    Stretch top = Stretch.of(Outlines.arc(3, -7, 10, 60, 60));
    double height = -7 + 10 / Math.cos(Math.PI / 6);
    assertTrue(top.reaches(new Point(0, height - 1e-9)));
    assertFalse(top.reaches(new Point(0, height + 1e-9)));
    double[] expected = {Math.toRadians(150), Math.toRadians(210)};
    assertArrayEquals(expected, top.directions(), 1e-12);
  }

  @Test
  void partsOfAnArcHaveHullsOfTheirOwn() {
    Stretch half = Stretch.of(Outlines.arc(0, 0, 10, 0, 180));
    assertEquals(20, half.size(), 1e-12);
    assertTrue(half.reaches(new Point(0, -9.999)), "so wide an arc has the square of its circle");
    Stretch first = half.half(true);
    assertEquals(10, first.size(), 1e-12);
    assertArrayEquals(new double[] {QUARTER, 2 * QUARTER}, first.directions(), 1e-12);
    assertFalse(first.reaches(new Point(0, -0.001)));
    Stretch second = half.half(false);
    assertArrayEquals(new double[] {2 * QUARTER, 3 * QUARTER}, second.directions(), 1e-12);
    assertEquals(-10, second.end().x(), 1e-12);
    assertEquals(10, second.start().y(), 1e-12);
  }

  @Test
  void anArcMostOfTheWayRoundTakesEveryDirection() {
    for (double sweep : new double[] {200, -300, 360}) {
      Stretch wide = Stretch.of(Outlines.arc(40, 30, 10, 20, sweep));
      assertEquals(20, wide.size(), 1e-12);
      for (int degrees = 0; degrees < 360; degrees += 45) {
        double angle = Math.toRadians(degrees);
        assertFalse(wide.advances(Math.cos(angle), Math.sin(angle)));
      }
      double[] directions = wide.directions();
      assertTrue(directions[1] - directions[0] > Math.PI);
      assertTrue(wide.reaches(new Point(49.999, 39.999)));
      assertTrue(wide.reaches(new Point(30, 20.001)));
      assertFalse(wide.reaches(new Point(30, 19.999)));
      assertFalse(wide.reaches(new Point(30, 40.001)));
      assertTrue(wide.isRightOf(new Point(29.999, 30)));
      assertFalse(wide.isRightOf(new Point(30.001, 30)));
    }
  }

  @Test
  void theHullHoldsTheCurve() {
    Cubic sleeveHead = Outlines.cubic(0, 0, 60, 10, 20, 120, 90, 130);
    Arc hem = Outlines.arc(20, -30, 80, 100, -70);
    for (Segment segment : List.of(sleeveHead, hem, Outlines.arc(-5, 3, 12, 10, 250))) {
      holds(segment, Stretch.of(segment));
      holds(segment, Stretch.of(segment).half(true));
      holds(segment, Stretch.of(segment).half(false).half(true));
    }
  }

  private static void holds(Segment segment, Stretch stretch) {
    double[] directions = stretch.directions();
    boolean narrow = directions[1] - directions[0] < Math.PI;
    for (int i = 0; i <= 20; i++) {
      double t = stretch.from + (stretch.to - stretch.from) * i / 20;
      Point at = segment.pointAt(t);
      assertTrue(stretch.reaches(new Point(at.x() - 1e-9, at.y())) || i == 0 || i == 20);
      assertFalse(stretch.isRightOf(new Point(at.x() + 1e-9, at.y())));
      if (narrow) {
        Vector way = segment.directionAt(t);
        double angle = Math.atan2(way.dy(), way.dx());
        double past = Math.IEEEremainder(angle - directions[0], 2 * Math.PI);
        assertTrue(past >= -1e-9 && past <= directions[1] - directions[0] + 1e-9);
      }
    }
  }

  @Test
  void aRayReachesAStretchAtItsOwnHeightsAndAsFarAsItsRightEnd() {
    Stretch seam = line(10, 20, 40, 50);
    assertTrue(seam.reaches(new Point(0, 20)));
    assertTrue(seam.reaches(new Point(0, 50)));
    assertTrue(seam.reaches(new Point(40, 30)));
    assertFalse(seam.reaches(new Point(0, 19.9)));
    assertFalse(seam.reaches(new Point(0, 50.1)));
    assertFalse(seam.reaches(new Point(40.1, 30)));
  }

  @Test
  void aStretchThatBeginsAtThePointIsNotRightOfIt() {
    assertFalse(line(10, 20, 40, 50).isRightOf(new Point(10, 30)));
    assertTrue(line(10, 20, 40, 50).isRightOf(new Point(9.9, 30)));
  }

  @Test
  void stretchesThatTouchAreNotApart() {
    Stretch middle = line(10, 20, 40, 50);
    assertFalse(middle.apartFrom(line(40, 20, 60, 50)));
    assertFalse(middle.apartFrom(line(0, 20, 10, 50)));
    assertFalse(middle.apartFrom(line(10, 50, 40, 70)));
    assertFalse(middle.apartFrom(line(10, 0, 40, 20)));
    assertTrue(middle.apartFrom(line(40.1, 20, 60, 50)));
    assertTrue(middle.apartFrom(line(0, 20, 9.9, 50)));
    assertTrue(middle.apartFrom(line(10, 50.1, 40, 70)));
    assertTrue(middle.apartFrom(line(10, 0, 40, 19.9)));
  }

  @Test
  void theSizeIsTheLongerSideOfTheBox() {
    assertEquals(30, line(10, 20, 40, 25).size());
    assertEquals(45, line(-10, -20, 10, 25).size());
    assertEquals(7, line(-12, -3, -5, -1).size());
  }

  /** Legs (30, 0), (0, 40) and (30, 0). */
  @Test
  void aStepAdvancesToTheRightAndUpwardsButNotBack() {
    Stretch step = Stretch.of(Outlines.cubic(10, 5, 40, 5, 40, 45, 70, 45));
    assertTrue(step.advances(1, 0));
    assertTrue(step.advances(0, 1));
    assertTrue(step.advances(1, 1));
    assertFalse(step.advances(-1, 0));
    assertFalse(step.advances(0, -1));
    assertFalse(step.advances(4, -1));
    assertFalse(step.advances(-1, 4));
  }

  @Test
  void onlyTheLastLegTurnsBack() {
    Stretch hook = Stretch.of(Outlines.cubic(0, 0, 30, 0, 60, 0, 50, 30));
    assertFalse(hook.advances(1, 0));
    assertTrue(hook.advances(1, 1));
    Stretch firstBack = Stretch.of(Outlines.cubic(0, 0, -10, 3, 60, 0, 90, 30));
    assertFalse(firstBack.advances(1, 0));
  }

  @Test
  void directionsReachFromTheLeastToTheGreatestOfTheLegs() {
    Stretch s = Stretch.of(Outlines.cubic(10, 0, 40, 30, 70, 0, 100, 0));
    assertArrayEquals(new double[] {-QUARTER / 2, QUARTER / 2}, s.directions(), 1e-12);
    Stretch left = Stretch.of(Outlines.cubic(10, 7, 40, 7, 40, 47, 10, 77));
    assertArrayEquals(new double[] {0, 1.5 * QUARTER}, left.directions(), 1e-12);
    Stretch right = Stretch.of(Outlines.cubic(10, 7, 40, 7, 40, -33, 10, -63));
    assertArrayEquals(new double[] {-1.5 * QUARTER, 0}, right.directions(), 1e-12);
  }

  /** From upper left to lower left: 135 and 225 degrees, not 135 and -135. */
  @Test
  void directionsGoOnAcrossTheHalfTurn() {
    Stretch bow = Stretch.of(Outlines.cubic(0, 0, -30, 30, -60, 30, -90, 0));
    double[] expected = {1.5 * QUARTER, 2.5 * QUARTER};
    assertArrayEquals(expected, bow.directions(), 1e-12);
  }

  @Test
  void legsOfNoLengthHaveNoDirection() {
    Stretch late = Stretch.of(Outlines.cubic(3, 4, 3, 4, 3, 54, -47, 104));
    assertArrayEquals(new double[] {QUARTER, 1.5 * QUARTER}, late.directions(), 1e-12);
    Stretch level = Stretch.of(Outlines.cubic(3, 4, 3, 4, -30, 4, -80, 4));
    assertArrayEquals(new double[] {2 * QUARTER, 2 * QUARTER}, level.directions(), 1e-12);
    Stretch point = line(3, 4, 3, 4);
    assertTrue(point.directions()[1] - point.directions()[0] > Math.PI);
  }
}
