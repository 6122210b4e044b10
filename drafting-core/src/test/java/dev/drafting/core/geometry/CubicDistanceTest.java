package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The foot of a point on a cubic: known feet, ends, and what is equally near. */
class CubicDistanceTest {
  private static final Cubic WAVE = new Cubic(p(0, 0), p(100, 150), p(200, -50), p(300, 100));
  private static final Cubic SLEEVE_HEAD = new Cubic(p(-150, 0), p(-40, 0), p(-90, 140), p(0, 140));

  private static double foot(Cubic cubic, Point point) {
    return new CubicDistance(cubic, point).nearest();
  }

  /**
   * What lies straight off the cubic comes back to its foot, well below half of the digits: beside
   * places where the search cuts the cubic too, where the distance cannot tell the foot from the
   * cut.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-12, -1e-10, 1e-9, -3e-9, 1e-8, -2e-7, 1e-5, 0.01, -0.0123})
  void whatLiesStraightOffComesBackToItsFoot(double beside) {
    for (Cubic cubic : new Cubic[] {WAVE, SLEEVE_HEAD}) {
      for (int i = 1; i < 16; i++) {
        double t = i / 16.0 + beside;
        for (double off : new double[] {-12, -0.5, -1e-3, 0, 1e-6, 0.3, 9}) {
          Point point = cubic.pointAt(t).plus(cubic.directionAt(t).left().times(off));
          assertEquals(t, foot(cubic, point), 1e-14, t + ", " + off + " mm off");
        }
      }
    }
  }

  /** Of places that are equally near the first counts. */
  @Test
  void ofEndsThatAreEquallyNearTheStartCounts() {
    Cubic neck = new Cubic(p(-50, 0), p(-50, 300), p(50, 300), p(50, 0));
    assertEquals(0, foot(neck, p(0, -20)), 0);
    assertEquals(0, foot(neck.reversed(), p(0, -20)), 0);
    Cubic drop = new Cubic(p(0, 0), p(100, 100), p(-100, 100), p(0, 0));
    assertEquals(0, foot(drop, p(0, -10)), 0);
    assertEquals(0, foot(drop, p(0, 0)), 0);
  }

  @Test
  void beyondAnEndTheEndIsNearest() {
    assertEquals(0, foot(WAVE, p(-30, -40)), 0);
    assertEquals(1, foot(WAVE, p(310, 120)), 0);
    assertEquals(1, foot(WAVE.reversed(), p(-30, -40)), 0);
  }

  /** The parabola y = x^2 and a point (0, h) on its axis: x^2 = h - 1/2 is nearest, above 1/2. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3, 0.49, 0.51, 0.6, 0.75, 1, 1.3})
  void parabola(double h) {
    Cubic parabola = new Cubic(p(-1, 1), p(-1 / 3.0, -1 / 3.0), p(1 / 3.0, -1 / 3.0), p(1, 1));
    double x = Math.sqrt(Math.max(0, h - 0.5));
    double t = foot(parabola, p(0, h));
    assertEquals(x, Math.abs(2 * t - 1), 1e-12);
    assertEquals(Math.hypot(x, h - x * x), parabola.pointAt(t).gap(p(0, h)), 1e-15);
  }

  /** At the centre of its bend a parabola is as good as a circle: no worse than any sample. */
  @Test
  void atTheCentreOfABendHardlyAnythingIsNearer() {
    Cubic parabola = new Cubic(p(-1, 1), p(-1 / 3.0, -1 / 3.0), p(1 / 3.0, -1 / 3.0), p(1, 1));
    double t = foot(parabola, p(0, 0.5));
    assertTrue(parabola.pointAt(t).gap(p(0, 0.5)) <= 0.5 + 1e-15, "" + t);
  }
}
