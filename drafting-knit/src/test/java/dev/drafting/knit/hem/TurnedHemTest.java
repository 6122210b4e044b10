package dev.drafting.knit.hem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurnedHemTest {
  private static Length mm(double millimetres) {
    return Length.mm(millimetres);
  }

  @Test
  void turnedOnceIsCutByItsDepthAndStitchedInsideItsCutEdge() {
    TurnedHem hem = TurnedHem.once(mm(20));
    assertEquals("CUT +20 mm, FOLD 0 mm, TOPSTITCH -18 mm", hem.profile().toString());
    assertEquals("hem turned once, 20 mm deep", hem.toString());
    assertFalse(hem.isTurnedTwice());
    assertEquals(
        "CUT +20 mm, FOLD 0 mm, TOPSTITCH -17 mm",
        hem.withTopstitchMargin(mm(3)).profile().toString());
  }

  /** CV-39: a hem of 2.5 cm turns once by 1 and again by 1.5 (common practice, no source). */
  @Test
  void aHemOfTwentyFiveTurnsByTenAndAgainByFifteen() {
    TurnedHem hem = TurnedHem.twice(mm(10), mm(15));
    assertEquals("CUT +25 mm, FOLD 0 mm, FOLD +15 mm, TOPSTITCH -13 mm", hem.profile().toString());
    assertTrue(hem.isTurnedTwice());
    assertEquals("hem turned twice, 15 mm deep with 10 mm tucked under", hem.toString());
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(DraftingException.class, () -> TurnedHem.once(Length.ZERO));
    assertThrows(DraftingException.class, () -> TurnedHem.once(mm(301)));
    assertThrows(DraftingException.class, () -> TurnedHem.twice(mm(16), mm(15)));
    assertThrows(DraftingException.class, () -> TurnedHem.once(mm(20)).withTopstitchMargin(mm(20)));
  }

  @Test
  void isAValue() {
    assertEquals(TurnedHem.once(mm(20)), TurnedHem.once(mm(20)));
    assertEquals(TurnedHem.once(mm(20)).hashCode(), TurnedHem.once(mm(20)).hashCode());
    assertNotEquals(TurnedHem.once(mm(20)), TurnedHem.twice(mm(5), mm(20)));
    assertEquals(
        "{turn-in=10 mm, depth=15 mm, topstitch margin=2 mm}",
        TurnedHem.twice(mm(10), mm(15)).settings().toString());
  }

  /** CV-21: excess 2h / (R - h), arithmetic of arcs; the last row is the limit itself. */
  @ParameterizedTest
  @CsvSource({"80,2,0.0513", "40,2,0.105", "82,2,0.05"})
  void excessOfACutEdge(double radius, double depth, double excess) {
    assertEquals(excess, FlareLimit.ofRadius(Length.cm(radius)).excess(Length.cm(depth)), 5e-4);
  }

  /** CV-21: on a quarter circle of radius 80 turned up by 2 the excess is 2h phi = 6.28 cm. */
  @Test
  void excessOnAQuarterCircle() {
    double seat = (80 - 2) * Math.PI / 2;
    double share = FlareLimit.ofRadius(Length.cm(80)).excess(Length.cm(2));
    assertEquals(6.28, seat * share, 5e-3);
  }

  /** CV-21: at R 60 the greatest depth is 1.46; easing in 5 % is common practice, no source. */
  @Test
  void greatestDepthThatAKnitEasesIn() {
    FlareLimit limit = FlareLimit.ofRadius(Length.cm(60));
    assertEquals(1.46, limit.greatestDepth().toCm(), 5e-3);
    assertEquals(0.05, limit.excess(limit.greatestDepth()), 1e-12);
    assertTrue(limit.allows(Length.cm(1.46)));
    assertFalse(limit.allows(Length.cm(1.47)));
    assertEquals("curve of radius 60 cm: turn up 14.6 mm at most", limit.toString());
    assertEquals(Double.POSITIVE_INFINITY, FlareLimit.ofRadius(Length.cm(2)).excess(Length.cm(2)));
    assertThrows(DraftingException.class, () -> FlareLimit.ofRadius(Length.ZERO));
  }
}
