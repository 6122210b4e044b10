package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Directions where a cubic stands still, parts of it, and how it reads. */
class CubicTest {
  private static void assertDirection(double x, double y, Vector found) {
    assertEquals(x, found.dx(), 1e-12);
    assertEquals(y, found.dy(), 1e-12);
  }

  /** At a cusp a cubic turns back; the direction is that in which it leaves. */
  @Test
  void atACuspTheDirectionIsThatAfterIt() {
    Cubic cusp = new Cubic(p(0, 0), p(1, 1), p(0, 1), p(1, 0));
    assertDirection(0, -1, cusp.directionAt(0.5));
    assertDirection(0, -1, cusp.reversed().directionAt(0.5));
    Vector after = cusp.directionAt(0.5001);
    assertTrue(after.dot(cusp.directionAt(0.5)) > 0.99, after.toString());
  }

  /** (u^3, 2 u^3) with u = 2t - 1 stands still in the middle with no bend, and goes on. */
  @Test
  void whereEvenTheBendStandsStillItGoesOnToTheEnd() {
    Cubic still = new Cubic(p(-1, -2), p(1, 2), p(-1, -2), p(1, 2));
    assertDirection(1 / Math.sqrt(5), 2 / Math.sqrt(5), still.directionAt(0.5));
  }

  /** Handles under 1e-12 of the control polygon, here of 300 mm, point nowhere. */
  @Test
  void aHandleOfNextToNoLengthPointsNowhere() {
    Cubic none = new Cubic(p(0, 0), p(0, 2.9e-10), p(200, 0), p(300, 0));
    assertDirection(1, 0, none.directionAt(0));
    Cubic some = new Cubic(p(0, 0), p(0, 3.1e-10), p(200, 0), p(300, 0));
    assertDirection(0, 1, some.directionAt(0));
    assertDirection(0, -1, some.reversed().directionAt(1));
    assertDirection(-1, 0, none.reversed().directionAt(1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
  void directionsOffTheCubicAreRefused(double t) {
    Cubic cubic = new Cubic(p(0, 0), p(10, 0), p(20, 5), p(30, 5));
    assertThrows(DraftingException.class, () -> cubic.directionAt(t));
    assertThrows(DraftingException.class, () -> cubic.derivativeAt(t));
    assertThrows(DraftingException.class, () -> cubic.curvatureAt(t));
  }

  @Test
  void boundsGoOutToWhereItTurns() {
    // y = 120 t (1 - t), 30 at most; x = 300 t
    Cubic arch = new Cubic(p(0, 0), p(100, 40), p(200, 40), p(300, 0));
    assertEquals(new Box(0, 0, 300, 30), arch.bounds());
  }

  @Test
  void printsItsFourPoints() {
    assertEquals(
        "Cubic (0, 0), (10, 0.5), (20, 5) to (30, 5)",
        new Cubic(p(0, 0), p(10, 0.5), p(20, 5), p(30, 5)).toString());
    assertEquals("Line (0, 0.25) to (30, 5)", new Line(p(0, 0.25), p(30, 5)).toString());
  }
}
