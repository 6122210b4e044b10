package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import org.junit.jupiter.api.Test;

/** What the proof of a parallel says of lines and circles, where the deviation is plain to see. */
class ParallelBoundTest {
  private static final double UNPROVEN = Double.POSITIVE_INFINITY;

  /** A straight seam in the direction (3, 4), 30 mm long. */
  private static final CubicCoefficients SEAM = along(0, 0, 0, 0, 0);

  /** Beside the seam: at four distances to its right, and shifted along it. */
  private static CubicCoefficients along(double a, double b, double c, double d, double shift) {
    double[] right = {a, b, c, d};
    double[] xy = new double[8];
    for (int i = 0; i < 4; i++) {
      xy[2 * i] = 5 + 0.6 * (10 * i + shift) + 0.8 * right[i];
      xy[2 * i + 1] = -9 + 0.8 * (10 * i + shift) - 0.6 * right[i];
    }
    return new CubicCoefficients(xy[0], xy[1], xy[2], xy[3], xy[4], xy[5], xy[6], xy[7]);
  }

  private static double bound(CubicCoefficients fit, double distance) {
    return ParallelBound.bound(fit, SEAM, distance);
  }

  @Test
  void aParallelOfAStraightSeamDeviatesByNothing() {
    assertEquals(0, bound(along(10, 10, 10, 10, 0), 10), 1e-12);
    assertEquals(0, bound(along(-10, -10, -10, -10, 0), -10), 1e-12);
  }

  @Test
  void besideAStraightSeamTheBoundIsHowMuchTooNearTheFitIs() {
    for (double off : new double[] {0.01, 0.5, 3, 9}) {
      double near = 10 - off;
      assertEquals(off, bound(along(near, near, near, near, 0), 10), 1e-9);
      assertEquals(off, bound(along(-near, -near, -near, -near, 0), -10), 1e-9);
    }
  }

  @Test
  void aFitThatComesNearerTowardsAnEndIsJudgedByThatEnd() {
    assertEquals(0.6, bound(along(10, 9.8, 9.6, 9.4, 0), 10), 1e-9);
    assertEquals(0.6, bound(along(9.4, 9.6, 9.8, 10, 0), 10), 1e-9);
  }

  /** (10.5² - 10²) is bounded as if it were on the near side: 10 - √(100 - 10.25). */
  @Test
  void tooFarIsJudgedByTheSquareOfTheDistance() {
    assertEquals(10 - Math.sqrt(89.75), bound(along(10.5, 10.5, 10.5, 10.5, 0), 10), 1e-9);
  }

  @Test
  void alongAStraightSeamAShiftDoesNotMatter() {
    assertEquals(0.5, bound(along(9.5, 9.5, 9.5, 9.5, 4), 10), 1e-9);
    assertEquals(0.5, bound(along(9.5, 9.5, 9.5, 9.5, -4), 10), 1e-9);
  }

  @Test
  void onTheOtherSideNothingIsProven() {
    assertEquals(UNPROVEN, bound(along(-10, -10, -10, -10, 0), 10));
    assertEquals(UNPROVEN, bound(along(10, 10, 10, -1, 0), 10));
    assertEquals(UNPROVEN, bound(along(10, 10, 10, 10, 0), -10));
    assertFalse(ParallelBound.within(0.1, along(-10, -10, -10, -10, 0), SEAM, 10));
  }

  @Test
  void moreThanTheRootOfTwoTimesAsFarAwayNothingIsProven() {
    assertEquals(UNPROVEN, bound(along(14.2, 14.2, 14.2, 14.2, 0), 10));
    assertTrue(bound(along(14.1, 14.1, 14.1, 14.1, 0), 10) < 10);
  }

  @Test
  void besideASourceThatPausesNothingIsProven() {
    CubicCoefficients paused = new CubicCoefficients(0, 0, 0, 0, 20, 0, 30, 0);
    CubicCoefficients fit = new CubicCoefficients(0, -10, 0, -10, 20, -10, 30, -10);
    assertEquals(UNPROVEN, ParallelBound.bound(fit, paused, 10));
  }

  /** A tenth of a radian of a circle about the origin, counter-clockwise. */
  private static CubicCoefficients tenth(double radius, double turned) {
    double handle = radius * 4 / 3 * Math.tan(0.1 / 4);
    Vector from = new Vector(radius, 0);
    Vector to = new Vector(radius * Math.cos(0.1), radius * Math.sin(0.1));
    Point start = new Point(from.dx(), from.dy());
    Point end = new Point(to.dx(), to.dy());
    Cubic arc =
        new Cubic(
            start,
            start.plus(from.left().times(handle / radius)),
            end.plus(to.left().times(-handle / radius)),
            end);
    Transform round = Transform.rotation(new Point(0, 0), Angle.radians(turned));
    return new CubicCoefficients(arc.map(round));
  }

  /**
   * A fit that is the concentric circle itself, of 120 mm beside 100, but turned: seen from the
   * source it is 120 sin q ahead and 120 (1 - cos q) too near.
   */
  @Test
  void besideACircleAShiftCountsWithItsSquareAndTheBend() {
    for (double turned : new double[] {0.002, 0.01, -0.01, 0.05}) {
      double slip = 120 * Math.sin(Math.abs(turned));
      double normal = 120 * (1 - Math.cos(turned));
      double expected = normal + 0.54 * slip * slip / 120;
      double found = ParallelBound.bound(tenth(120, turned), tenth(100, 0), 20);
      assertEquals(expected, found, expected / 50 + 1e-5);
    }
  }

  @Test
  void onTheInsideOfACircleTheParallelBendsMore() {
    for (double turned : new double[] {0.01, -0.02}) {
      double slip = 60 * Math.sin(Math.abs(turned));
      double expected = 60 * (1 - Math.cos(turned)) + 0.54 * slip * slip / 60;
      double found = ParallelBound.bound(tenth(60, turned), tenth(100, 0), -40);
      assertEquals(expected, found, expected / 50 + 1e-5);
    }
  }

  /** A shift of more than half the radius of the parallel counts in full. */
  @Test
  void aLongShiftCountsInFull() {
    double slip = 102 * Math.sin(0.6);
    double near = 102 * (1 - Math.cos(0.6));
    double found = ParallelBound.bound(tenth(102, 0.6), tenth(2, 0), 100);
    assertEquals(near + slip, found, (near + slip) / 50);
  }

  /** Beyond the radius the parallel's own bend is not bounded; the shift counts in full. */
  @Test
  void beyondTheRadiusAShiftCountsInFull() {
    CubicCoefficients source = tenth(10, 0);
    CubicCoefficients fit = tenth(-20, 0.01);
    double slip = 20 * Math.sin(0.01);
    double near = 20 * (1 - Math.cos(0.01));
    assertEquals(near + slip, ParallelBound.bound(fit, source, -30), (near + slip) / 50);
  }

  /** A third of the way along the fit is 0.04 mm too near; halving never comes to a third. */
  @Test
  void aHairTooMuchBetweenTheJointsIsNotProven() {
    // 27/4 u (1 - u)² is 1 at a third
    CubicCoefficients fit = along(10, 10 - 0.04 * 9 / 4, 10, 10, 0);
    double atJoints = 0;
    for (int i = 0; i <= 256; i++) {
      double u = i / 256.0;
      atJoints = Math.max(atJoints, 0.04 * 27 / 4 * u * (1 - u) * (1 - u));
    }
    assertTrue(atJoints < 0.04 - 1e-8);
    assertFalse(ParallelBound.within((atJoints + 0.04) / 2, fit, SEAM, 10));
    assertTrue(ParallelBound.within(0.04 + 1e-5, fit, SEAM, 10));
    assertFalse(ParallelBound.within(0.039, fit, SEAM, 10));
  }

  @Test
  void aFitJustWithinTheToleranceIsProvenAndOneJustBeyondIsNot() {
    CubicCoefficients fit = along(9.75, 9.75, 9.75, 9.75, 0);
    assertTrue(ParallelBound.within(0.2501, fit, SEAM, 10));
    assertFalse(ParallelBound.within(0.2499, fit, SEAM, 10));
  }

  /** The fit goes faster where the source goes slower; on the same line that is no deviation. */
  @Test
  void speedsOfTheirOwnAreNoDeviation() {
    CubicCoefficients source = tenth(100, 0);
    CubicCoefficients fit = tenth(120, 0);
    assertTrue(ParallelBound.within(1e-5, fit, source, 20));
    Cubic slow = Outlines.cubic(0, 0, 4, 0, 14, 0, 30, 0);
    CubicCoefficients quick = new CubicCoefficients(0, -10, 16, -10, 26, -10, 30, -10);
    assertTrue(ParallelBound.within(1e-6, quick, new CubicCoefficients(slow), 10));
  }

  /**
   * At its middle the pointed one is at (43.5, 43.5), 61.5 mm from the centre: 1.8 by its square.
   */
  @Test
  void ofTwoBowsWithTheSameEndsOnlyTheParallelOneIsProven() {
    double k = 0.5522847498307935;
    CubicCoefficients bow = new CubicCoefficients(50, 0, 50, 50 * k, 50 * k, 50, 0, 50);
    CubicCoefficients round = new CubicCoefficients(60, 0, 60, 60 * k, 60 * k, 60, 0, 60);
    CubicCoefficients pointed = new CubicCoefficients(60, 0, 60, 36, 36, 60, 0, 60);
    assertTrue(ParallelBound.within(0.05, round, bow, 10));
    assertFalse(ParallelBound.within(1.5, pointed, bow, 10));
    assertTrue(ParallelBound.within(1.9, pointed, bow, 10));
  }
}
