package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;

class BoxTest {
  private static final Box BOX = Box.of(p(110, -20), p(10, 40));

  @Test
  void isMeasuredFromSideToSide() {
    assertEquals(Length.mm(100), BOX.width());
    assertEquals(Length.mm(60), BOX.height());
    assertEquals(p(60, 10), BOX.centre());
  }

  @Test
  void theCentreOfAHugeBoxIsNoFurtherOffThanItsCorners() {
    double far = Double.MAX_VALUE;
    assertEquals(p(far, 0), Box.of(p(far, far), p(far, -far)).centre());
  }

  @Test
  void holdsItsSidesAndCorners() {
    for (double x : new double[] {10, 60, 110}) {
      for (double y : new double[] {-20, 10, 40}) {
        assertTrue(BOX.contains(p(x, y)), x + ", " + y);
      }
    }
    assertFalse(BOX.contains(p(Math.nextDown(10.0), 10)));
    assertFalse(BOX.contains(p(Math.nextUp(110.0), 10)));
    assertFalse(BOX.contains(p(60, Math.nextDown(-20.0))));
    assertFalse(BOX.contains(p(60, Math.nextUp(40.0))));
  }

  @Test
  void widenedAllRound() {
    Box wider = BOX.widened(Length.mm(5));
    assertEquals(Box.of(p(5, -25), p(115, 45)), wider);
    assertEquals(BOX.centre(), wider.centre());
  }

  @Test
  void theUnionJustHoldsBoth() {
    assertEquals(Box.of(p(0, -20), p(110, 90)), BOX.union(Box.of(p(0, 50), p(5, 90))));
    assertEquals(BOX, BOX.union(Box.of(p(20, 0), p(30, 10))));
  }

  @Test
  void printsTwoCorners() {
    assertEquals("Box((10, -20) to (110, 40))", BOX.toString());
  }
}
