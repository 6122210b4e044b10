package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Point;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.junit.jupiter.api.Test;

/** What the offset asks of a cubic, against hand-computed curves and polynomials in powers of t. */
class CubicCoefficientsTest {
  /** y = x² from x = 0 to 1, at even speed along x. */
  private static final CubicCoefficients PARABOLA =
      new CubicCoefficients(0, 0, 1 / 3.0, 0, 2 / 3.0, 1 / 3.0, 1, 1);

  private static final CubicCoefficients BODICE_SIDE =
      new CubicCoefficients(12, 5, 31, 44, 8, 95, 57, 121);

  @Test
  void theParabolaBendsAsTheTextbookSays() {
    for (double x : new double[] {0, 0.25, 0.5, 0.8, 1}) {
      assertEquals(2 / Math.pow(1 + 4 * x * x, 1.5), PARABOLA.curvature(x), 1e-13);
    }
  }

  @Test
  void theMirroredParabolaBendsTheOtherWay() {
    CubicCoefficients mirrored = new CubicCoefficients(0, 0, 0, 1 / 3.0, 1 / 3.0, 2 / 3.0, 1, 1);
    assertEquals(-2, mirrored.curvature(0), 1e-13);
    assertEquals(-2 / Math.pow(5, 1.5), mirrored.curvature(1), 1e-13);
  }

  /** (30 t + 3)² + 4² grows all along, so that its coefficients do. */
  @Test
  void fromBehindTheStartTheLeastSquareDistanceIsThatOfTheStart() {
    CubicCoefficients seam = new CubicCoefficients(0, 0, 10, 0, 20, 0, 30, 0);
    assertEquals(25, seam.leastSquareDistance(new Point(-3, 4)), 1e-9);
    assertEquals(25, seam.leastSquareDistance(new Point(33, -4)), 1e-9);
  }

  /** In degree 6 the coefficients of (30 t - 15)² are 30 k² - 180 k + 225; the fourth is -45. */
  @Test
  void fromBesideTheMiddleTheLeastSquareDistanceIsTheMiddleCoefficient() {
    CubicCoefficients seam = new CubicCoefficients(0, 0, 10, 0, 20, 0, 30, 0);
    assertEquals(400 - 45, seam.leastSquareDistance(new Point(15, 20)), 1e-9);
    CubicCoefficients upright = new CubicCoefficients(0, 0, 0, 10, 0, 20, 0, 30);
    assertEquals(400 - 45, upright.leastSquareDistance(new Point(20, 15)), 1e-9);
  }

  @Test
  void theLeastSquareDistanceIsTheLeastCoefficientOfThePolynomial() {
    for (double[] at :
        new double[][] {{0, 0}, {70, 10}, {-40, 60}, {20, 70}, {57, 160}, {90, 90}}) {
      double expected = leastCoefficient(BODICE_SIDE, at[0], at[1]);
      double found = BODICE_SIDE.leastSquareDistance(new Point(at[0], at[1]));
      assertEquals(expected, found, 1e-9 * (1 + Math.abs(expected)));
    }
  }

  @Test
  void noPlaceIsNearerThanTheLeastSquareDistance() {
    for (double x = -50; x <= 120; x += 17) {
      for (double y = -40; y <= 160; y += 19) {
        double least = BODICE_SIDE.leastSquareDistance(new Point(x, y));
        for (int i = 0; i <= 100; i++) {
          double dx = BODICE_SIDE.x(i / 100.0) - x;
          double dy = BODICE_SIDE.y(i / 100.0) - y;
          assertTrue(dx * dx + dy * dy >= least - 1e-9);
        }
      }
    }
  }

  /** The squared distance multiplied out in powers of t, and those turned into degree 6. */
  private static double leastCoefficient(CubicCoefficients c, double x, double y) {
    PolynomialFunction along = powers(c.x0 - x, c.x1 - x, c.x2 - x, c.x3 - x);
    PolynomialFunction up = powers(c.y0 - y, c.y1 - y, c.y2 - y, c.y3 - y);
    double[] square = along.multiply(along).add(up.multiply(up)).getCoefficients();
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k <= 6; k++) {
      double sum = 0;
      for (int i = 0; i <= Math.min(k, square.length - 1); i++) {
        sum +=
            square[i]
                * CombinatoricsUtils.binomialCoefficient(k, i)
                / CombinatoricsUtils.binomialCoefficient(6, i);
      }
      least = Math.min(least, sum);
    }
    return least;
  }

  private static PolynomialFunction powers(double a, double b, double c, double d) {
    return new PolynomialFunction(
        new double[] {a, 3 * (b - a), 3 * (a - 2 * b + c), d - 3 * c + 3 * b - a});
  }

  /** Legs of 30, 40 and 30 mm, square to each other. */
  @Test
  void theLongestParallelIsTheLegsAndTheDistanceTimesTheirTurning() {
    CubicCoefficients bow = new CubicCoefficients(0, 0, 30, 0, 30, 40, 0, 40);
    assertEquals(100, bow.longestParallel(0), 1e-12);
    assertEquals(100 + 10 * Math.PI, bow.longestParallel(10), 1e-12);
    assertEquals(100 + 10 * Math.PI, bow.longestParallel(-10), 1e-12);
  }

  /** An S turns left and right by as much; the turnings do not cancel. */
  @Test
  void turningsToEitherSideAreAddedUp() {
    CubicCoefficients s = new CubicCoefficients(0, 0, 30, 0, 50, 20, 90, 20);
    double legs = 30 + 20 * Math.sqrt(2) + 40;
    assertEquals(legs + 8 * Math.PI / 2, s.longestParallel(8), 1e-12);
  }

  /** Legs in the directions (3, 4), (4, 3) and (-3, 4): the cosines between are 24/25 and 0. */
  @Test
  void legsAtAnySlantTurnByTheAngleBetween() {
    CubicCoefficients bow = new CubicCoefficients(0, 0, 3, 4, 11, 10, 2, 22);
    double turning = Math.acos(24 / 25.0) + Math.PI / 2;
    assertEquals(5 + 10 + 15 + 2 * turning, bow.longestParallel(2), 1e-12);
  }

  @Test
  void aLegThatGoesStraightBackTurnsByHalfACircle() {
    CubicCoefficients back = new CubicCoefficients(0, 0, 30, 0, 10, 0, 50, 0);
    assertEquals(90 + 5 * 2 * Math.PI, back.longestParallel(5), 1e-12);
  }

  @Test
  void legsOfNoLengthDoNotTurn() {
    CubicCoefficients late = new CubicCoefficients(5, 5, 5, 5, 35, 5, 35, 45);
    assertEquals(70 + 10 * Math.PI / 2, late.longestParallel(10), 1e-12);
    CubicCoefficients paused = new CubicCoefficients(0, 0, 30, 0, 30, 0, 30, 40);
    assertEquals(70 + 10 * Math.PI / 2, paused.longestParallel(10), 1e-12);
    CubicCoefficients point = new CubicCoefficients(5, 5, 5, 5, 5, 5, 5, 5);
    assertEquals(0, point.longestParallel(10));
  }

  /** Only the turn between legs counts, whichever way the first of them goes. */
  @Test
  void turnedHalfRoundTheLongestParallelIsTheSame() {
    CubicCoefficients there = new CubicCoefficients(0, 0, 3, 4, 11, 10, 2, 22);
    CubicCoefficients round = new CubicCoefficients(0, 0, -3, -4, -11, -10, -2, -22);
    assertEquals(there.longestParallel(2), round.longestParallel(2), 1e-12);
  }
}
