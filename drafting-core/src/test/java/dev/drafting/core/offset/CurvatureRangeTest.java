package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Bounds of speed and curvature of a line and of parabolas, worked out by hand. */
class CurvatureRangeTest {
  /**
   * y = x² from 0 to 1: |P'|² has the coefficients 1, 1, 5/3, 3, 5, and P' x P'' is 2 throughout.
   */
  private static final CurvatureRange PARABOLA =
      CurvatureRange.of(new CubicCoefficients(0, 0, 1 / 3.0, 0, 2 / 3.0, 1 / 3.0, 1, 1));

  @Test
  void aLineDoesNotBend() {
    CurvatureRange line = CurvatureRange.of(new CubicCoefficients(5, 5, 11, 13, 17, 21, 23, 29));
    assertEquals(900, line.leastSquareSpeed(), 1e-9);
    assertEquals(900, line.greatestSquareSpeed(), 1e-9);
    assertEquals(0, line.strongest(), 1e-15);
    assertEquals(1, line.leastSpeedFactor(40), 1e-12);
    assertEquals(1, line.greatestSpeedFactor(-40), 1e-12);
    assertEquals(30, line.longestParallel(40), 1e-9);
  }

  @Test
  void theParabolaIsBoundedByItsCoefficients() {
    double weakest = 2 / Math.pow(5, 1.5);
    assertEquals(1, PARABOLA.leastSquareSpeed(), 1e-12);
    assertEquals(5, PARABOLA.greatestSquareSpeed(), 1e-12);
    assertEquals(weakest, PARABOLA.least(), 1e-12);
    assertEquals(2, PARABOLA.greatest(), 1e-12);
    assertEquals(2, PARABOLA.strongest(), 1e-12);
  }

  @Test
  void outsideTheParallelIsFasterAndInsideSlower() {
    double weakest = 2 / Math.pow(5, 1.5);
    assertEquals(1 + 3 * weakest, PARABOLA.leastSpeedFactor(3), 1e-12);
    assertEquals(7, PARABOLA.greatestSpeedFactor(3), 1e-12);
    assertEquals(-5, PARABOLA.leastSpeedFactor(-3), 1e-12);
    assertEquals(1 - 3 * weakest, PARABOLA.greatestSpeedFactor(-3), 1e-12);
    assertEquals(7 * Math.sqrt(5), PARABOLA.longestParallel(3), 1e-12);
    assertEquals(5 * Math.sqrt(5), PARABOLA.longestParallel(-3), 1e-12);
  }

  @Test
  void upsideDownItBendsToTheOtherSide() {
    CurvatureRange down =
        CurvatureRange.of(new CubicCoefficients(0, 0, 1 / 3.0, 0, 2 / 3.0, -1 / 3.0, 1, -1));
    assertEquals(-2, down.least(), 1e-12);
    assertEquals(-PARABOLA.least(), down.greatest(), 1e-12);
    assertEquals(PARABOLA.leastSpeedFactor(3), down.leastSpeedFactor(-3), 1e-12);
  }

  /** Where the curve may stand still nothing bounds its bend, unless it is straight. */
  @Test
  void aPauseLeavesTheBendWithoutBound() {
    CurvatureRange paused = CurvatureRange.of(new CubicCoefficients(0, 0, 0, 0, 10, 0, 10, 10));
    assertEquals(0, paused.leastSquareSpeed());
    assertEquals(Double.POSITIVE_INFINITY, paused.greatest());
    CurvatureRange straight = CurvatureRange.of(new CubicCoefficients(0, 0, 0, 0, 10, 0, 20, 0));
    assertEquals(0, straight.strongest());
  }
}
