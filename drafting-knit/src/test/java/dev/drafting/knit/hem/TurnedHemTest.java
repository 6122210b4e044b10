package dev.drafting.knit.hem;

import static dev.drafting.knit.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Vest;
import dev.drafting.knit.band.FoldedBand;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
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

  private static String accepted(Executable refused) {
    return assertThrows(DraftingException.class, refused).accepted();
  }

  @Test
  void aHemIsThreeToThreeHundredMillimetresDeep() {
    assertEquals(mm(3), TurnedHem.once(mm(3)).depth());
    assertEquals(mm(300), TurnedHem.twice(mm(300), mm(300)).turnIn());
    assertEquals("3 mm to 300 mm", accepted(() -> TurnedHem.once(mm(2.9))));
    assertEquals("3 mm to 300 mm", accepted(() -> TurnedHem.twice(mm(2.9), mm(20))));
    assertEquals("up to 15 mm", accepted(() -> TurnedHem.twice(mm(15.1), mm(15))));
  }

  @Test
  void theStitchingLiesOnTheHem() {
    TurnedHem hem = TurnedHem.once(mm(20));
    assertEquals(List.of(mm(-0.5)), hem.withTopstitchMargin(mm(19.5)).profile().topstitch());
    assertEquals("over 0, less than 20 mm", accepted(() -> hem.withTopstitchMargin(mm(20))));
    assertThrows(DraftingException.class, () -> hem.withTopstitchMargin(Length.ZERO));
    assertThrows(DraftingException.class, () -> hem.withTopstitchMargin(mm(-1)));
  }

  @Test
  void theRowsOfATwinNeedleAreOneAndAHalfToEightMillimetresApart() {
    TurnedHem hem = TurnedHem.once(mm(20));
    assertEquals(mm(1.5), hem.withTwinNeedle(mm(1.5)).twinGap());
    assertEquals(mm(8), hem.withTwinNeedle(mm(8)).twinGap());
    assertEquals("1.5 mm to 8 mm", accepted(() -> hem.withTwinNeedle(mm(8.1))));
    assertFalse(hem.takesTwinNeedle(mm(1.4)));
    TurnedHem narrow = TurnedHem.once(mm(5)); // 2 mm of margin, and half a millimetre to the fold
    assertTrue(narrow.takesTwinNeedle(mm(2.5)));
    assertEquals("1.5 mm to 2.5 mm", accepted(() -> narrow.withTwinNeedle(mm(2.6))));
  }

  @Test
  void everySettingCounts() {
    TurnedHem hem = TurnedHem.twice(mm(10), mm(15));
    assertEquals("turned-hem", hem.id());
    differ(
        hem,
        TurnedHem.twice(mm(10), mm(15)),
        TurnedHem.once(mm(15)),
        TurnedHem.twice(mm(9), mm(15)),
        TurnedHem.twice(mm(10), mm(16)),
        hem.withTopstitchMargin(mm(3)),
        hem.withTwinNeedle(mm(2)));
    assertThrows(UnsupportedOperationException.class, () -> hem.settings().clear());
  }

  @Test
  void tellsItsSettings() {
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
    assertTrue(limit.allows(limit.greatestDepth()));
    assertEquals(FlareLimit.ofRadius(Length.mm(600)), limit);
    assertNotEquals(FlareLimit.ofRadius(Length.mm(601)), limit);
    assertNotEquals(FlareLimit.ofRadius(Length.mm(601)).hashCode(), limit.hashCode());
    assertEquals(Length.ZERO, FlareLimit.excess(mm(20), Angle.degrees(-90)));
    assertTrue(limit.allows(Length.cm(1.46)));
    assertFalse(limit.allows(Length.cm(1.47)));
    assertEquals("curve of radius 60 cm: turn up 14.6 mm at most", limit.toString());
    assertEquals(Double.POSITIVE_INFINITY, FlareLimit.ofRadius(Length.cm(2)).excess(Length.cm(2)));
    assertThrows(DraftingException.class, () -> FlareLimit.ofRadius(Length.ZERO));
  }

  /** A gap of 4.0 mm: sewing magazine, "T-shirt and Knit Fabric Hems", 2018. */
  @Test
  void aTwinNeedleSewsTwoRows() {
    TurnedHem twin = TurnedHem.once(mm(20)).withTwinNeedle(mm(4));
    assertEquals(List.of(mm(-18), mm(-14)), twin.profile().topstitch());
    assertEquals(mm(4), twin.twinGap());
    assertEquals(
        "hem turned once, 20 mm deep, stitched with a twin needle of 4 mm", twin.describe());
    assertEquals("4 mm", twin.settings().get("twin needle"));
    assertNotEquals(twin, TurnedHem.once(mm(20)));
    assertThrows(DraftingException.class, () -> TurnedHem.once(mm(5)).withTwinNeedle(mm(3)));
    assertThrows(DraftingException.class, () -> TurnedHem.once(mm(20)).withTwinNeedle(mm(1)));
    assertThrows(DraftingException.class, () -> twin.withTopstitchMargin(mm(16)));
    assertEquals(mm(4), twin.withTopstitchMargin(mm(15.5)).twinGap());
    assertEquals(
        "less than 15.5 mm",
        assertThrows(DraftingException.class, () -> twin.withTopstitchMargin(mm(15.6)))
            .accepted()
            .replace("over 0, ", ""));
  }

  /**
   * Calibration against one recorded garment, common practice with no source, not a validation: a
   * hem of 2.5 cm turns once by 1 and again by 1.5. The finished edge is its fold; nothing is drawn
   * beyond the 25 mm.
   */
  @Test
  void theRecordedHemTurnsByOneAndAgainByOneAndAHalf() {
    TurnedHem hem = TurnedHem.twice(Length.cm(1), Length.cm(1.5));
    assertEquals(Length.cm(2.5), hem.profile().cut().orElseThrow());
    assertEquals(List.of(Length.ZERO, Length.cm(1.5)), hem.profile().folds());
  }

  /**
   * The same recorded garment: its traced edge is trimmed by 6 mm for a band that shows 13 mm and
   * is sewn with 7, and the finished edge stays where it was. A hem and a band agree on that: the
   * finished edge is the line at 0, the cut line moves.
   */
  @Test
  void trimmingTheTracedEdgeLeavesTheFinishedEdge() {
    FoldedBand band = FoldedBand.of(mm(13), mm(7));
    assertEquals(mm(-6), band.profile().cut().orElseThrow());
    Vest vest = Vest.plain();
    assertEquals(
        vest.neck(band).pattern().piece("front").edge("neck").curve(),
        vest.neck(FoldedBand.of(mm(25), mm(7))).pattern().piece("front").edge("neck").curve());
    Draft narrow = Draft.of(vest.neck(band).pattern());
    Draft wide = Draft.of(vest.neck(FoldedBand.of(mm(25), mm(7))).pattern());
    assertEquals(narrow.measures(), wide.measures());
  }
}
