package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import org.junit.jupiter.api.Test;

/** Points in bulk: bounds, closing, long sums, and how many there may be. */
class PolylineTest {
  @Test
  void isClosedWhenBothCoordinatesComeBack() {
    assertTrue(Polyline.of(1, 2, 30, 2, 30, 40, 1, 2).isClosed());
    assertFalse(Polyline.of(1, 2, 30, 2, 30, 40, 1, 3).isClosed());
    assertFalse(Polyline.of(1, 2, 30, 2, 30, 40, 2, 2).isClosed());
    assertFalse(Polyline.of(1, 2, 30, 2).isClosed());
    assertTrue(Polyline.of(7, 7, 7, 7).isClosed());
  }

  @Test
  void theBoundsJustHoldAllPoints() {
    assertEquals(Box.of(p(-5, -7), p(9, 8)), Polyline.of(0, 8, 9, 1, -5, 2, 3, -7).bounds());
    assertEquals(Box.of(p(4, 1), p(5, 90)), Polyline.of(5, 1, 4, 90).bounds());
    assertEquals(Box.of(p(4, 1), p(5, 9)), Polyline.of(4, 9, 5, 1).bounds());
  }

  /** A tenth has no exact double: added up one by one, 100 000 of them are 1.9e-8 off. */
  @Test
  void longSumsKeepTheirDigits() {
    double[] xy = new double[2 * 100_001];
    for (int i = 1; i < xy.length / 2; i += 2) {
      xy[2 * i] = 0.1;
    }
    assertEquals(10_000, Polyline.of(xy).length().toMm(), 2e-12);
  }

  @Test
  void aMillionPointsAreTheMost() {
    assertEquals(1_000_000, Polyline.of(new double[2_000_000]).size());
    DraftingException refused =
        assertThrows(DraftingException.class, () -> Polyline.of(new double[2_000_002]));
    assertEquals(
        "a polyline has too many points. Found: 1000001. Accepted: a million at most.",
        refused.getMessage());
  }

  @Test
  void isAValue() {
    Polyline one = Polyline.of(0, 0, 30, 40);
    assertEquals(Polyline.of(0, 0, 30, 40), one);
    assertEquals(Polyline.of(0, 0, 30, 40).hashCode(), one.hashCode());
    assertNotEquals(Polyline.of(0, 0, 30, 41), one);
    assertNotEquals(Polyline.of(0, 0, 30, 40, 50, 60), one);
    assertNotEquals(Polyline.of(0, 0, 30, 41).hashCode(), one.hashCode());
    assertEquals("Polyline of 2 points, 50 mm, open, (0, 0) to (30, 40)", one.toString());
    assertEquals(
        "Polyline of 3 points, 100 mm, closed, (0, 0) to (0, 0)",
        Polyline.of(0, 0, 30, 40, 0, 0).toString());
  }
}
