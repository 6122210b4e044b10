package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BandFinishTest {
  private static Length mm(double millimetres) {
    return Length.mm(millimetres);
  }

  /**
   * CV-39 (common practice, no source): a strip 4 cm wide sewn folded with 7 mm shows 13 mm;
   * trimming the traced edge by 6 mm leaves the finished edge where it was.
   */
  @Test
  void theRecordedBandTrimsTheTracedEdgeBySixMillimetres() {
    FoldedBand band = FoldedBand.of(mm(13), mm(7));
    assertEquals(mm(40), band.cutWidth());
    assertEquals(mm(-6), band.profile().cut().orElseThrow());
    assertEquals(mm(-13), band.profile().join().orElseThrow());
    assertEquals(mm(-13), band.joinDistance());
    assertEquals("folded band showing 13 mm, sewn with 7 mm", band.toString());
  }

  /** CV-12: cut width 2 x (finished + allowance), common practice. */
  @Test
  void foldedBandsAreCutTwiceTheirWidthAndAllowance() {
    assertEquals(mm(60), FoldedBand.of(mm(20), mm(10)).cutWidth());
  }

  @Test
  void foldedBandsAreTopstitchedBeyondTheirSeam() {
    FoldedBand band = FoldedBand.of(mm(13), mm(7));
    assertEquals("CUT -6 mm, JOIN -13 mm, TOPSTITCH -15 mm", band.profile().toString());
    assertEquals(
        "CUT -6 mm, JOIN -13 mm, TOPSTITCH -14.5 mm, TOPSTITCH -20.5 mm",
        band.withTopstitch(mm(1.5), mm(7.5)).profile().toString());
    assertEquals("CUT -6 mm, JOIN -13 mm", band.withTopstitch().profile().toString());
  }

  /** CV-14: double-fold cut width 4 x finished + 2 to 3 mm turn of cloth, common practice. */
  @Test
  void wrappedBindingsAreCutFourTimesTheirWidthAndTheTurnOfCloth() {
    double width = WrappedBinding.of(mm(10)).cutWidth().toMm();
    assertTrue(width >= 42 && width <= 43, "cut width " + width);
    assertEquals(mm(43), WrappedBinding.of(mm(10)).withTurnOfCloth(mm(3)).cutWidth());
  }

  /** CV-14: doubled 6 x finished + turn, single fold 3 x finished + about 3 mm; common practice. */
  @Test
  void otherWrappedBindingsAreCutSixOrThreeTimesTheirWidth() {
    WrappedBinding binding = WrappedBinding.of(mm(10)).withTurnOfCloth(mm(3));
    assertEquals(mm(63), binding.doubled().cutWidth());
    assertEquals(mm(33), binding.overlockedInside().cutWidth());
    assertEquals(binding.profile(), binding.doubled().profile());
    assertTrue(binding.doubled().isDoubled());
    assertTrue(binding.overlockedInside().isOverlockedInside());
    assertEquals(
        "binding wrapped round the edge, showing 10 mm, overlocked inside",
        binding.overlockedInside().toString());
    assertNotEquals(binding, binding.doubled());
    assertNotEquals(binding, binding.withIntent(Intent.HUGS));
  }

  /** CV-14: allowance + depth + turn, none when overlocked; common practice. */
  @Test
  void stripsThatAreTurnedIn() {
    FacedStrip strip = FacedStrip.of(mm(12), mm(7));
    assertEquals(mm(19), strip.cutWidth());
    assertEquals(mm(25), strip.withTuck(mm(6)).cutWidth());
    assertEquals(Length.ZERO, strip.joinDistance());
    assertEquals(Intent.HUGS, strip.intent());
    assertEquals(Intent.LIES_FLAT, strip.withIntent(Intent.LIES_FLAT).intent());
    assertEquals("rib", strip.withCloth("rib").cloth());
    assertEquals(mm(7), strip.allowance());
    assertEquals(
        "strip turned in, 12 mm deep, sewn with 7 mm, 6 mm tucked under",
        strip.withTuck(mm(6)).toString());
    assertEquals(
        "{depth=12 mm, allowance=7 mm, tuck=0 mm, cloth=body, intent=hugs}",
        strip.settings().toString());
    assertEquals(strip, FacedStrip.of(mm(12), mm(7)));
    assertEquals(strip.hashCode(), FacedStrip.of(mm(12), mm(7)).hashCode());
    assertNotEquals(strip, strip.withTuck(mm(6)));
    assertThrows(DraftingException.class, () -> strip.withTuck(mm(13)));
    assertThrows(DraftingException.class, () -> FacedStrip.of(mm(12), mm(51)));
  }

  /** Ready-edged rib: finished + allowance (Ribbed Edges, a chapter of a sewing handbook). */
  @Test
  void cuffsAndWaistRibsDrawIn() {
    FoldedBand cuff = FoldedBand.cuff(mm(60), mm(7));
    assertEquals(mm(134), cuff.cutWidth());
    assertEquals(mm(67), cuff.readyEdged().cutWidth());
    assertEquals(Intent.DRAWS_IN, cuff.intent());
    assertEquals("folded cuff showing 60 mm, sewn with 7 mm", cuff.toString());
    assertEquals("ready-edged cuff showing 60 mm, sewn with 7 mm", cuff.readyEdged().toString());
    FoldedBand waist = FoldedBand.waistRib(mm(60), mm(7));
    assertEquals("waist rib", waist.noun());
    assertNotEquals(cuff, waist);
    assertNotEquals(cuff, cuff.withIntent(Intent.LIES_FLAT));
    assertEquals("CUT -53 mm, JOIN -60 mm", cuff.profile().toString());
  }

  @Test
  void wrappedBindingsKeepTheEdgeInsideThem() {
    assertEquals(
        "CUT -3 mm, JOIN -10 mm, FOLD 0 mm, TOPSTITCH -8 mm",
        WrappedBinding.of(mm(10)).withTurnOfCloth(mm(3)).profile().toString());
    assertEquals(
        "binding wrapped round the edge, showing 10 mm", WrappedBinding.of(mm(10)).toString());
  }

  @Test
  void theClothOfAStripIsRibUnlessSaid() {
    assertEquals("rib", FoldedBand.of(mm(13), mm(7)).cloth());
    assertEquals("body", FoldedBand.of(mm(13), mm(7)).withCloth("body").cloth());
    assertEquals("rib", WrappedBinding.of(mm(10)).cloth());
    assertEquals("body", WrappedBinding.of(mm(10)).withCloth("body").cloth());
    assertThrows(DraftingException.class, () -> WrappedBinding.of(mm(10)).withCloth(" "));
  }

  @Test
  void settingsNameEverythingThatWasChosen() {
    assertEquals(
        "{showing=13 mm, allowance=7 mm, cloth=rib, topstitch=2 mm, noun=band, intent=lies flat,"
            + " edge=folded}",
        FoldedBand.of(mm(13), mm(7)).settings().toString());
    assertEquals(
        "{showing=10 mm, turn of cloth=2.5 mm, cloth=rib, layers=both edges turned in,"
            + " intent=lies flat}",
        WrappedBinding.of(mm(10)).settings().toString());
    assertNotEquals(FoldedBand.of(mm(13), mm(7)).id(), WrappedBinding.of(mm(10)).id());
  }

  @ParameterizedTest
  @CsvSource({"2.9", "200.1", "0", "-13"})
  void widthsOutOfRangeAreRefused(double width) {
    assertThrows(DraftingException.class, () -> FoldedBand.of(mm(width), mm(7)));
    assertThrows(DraftingException.class, () -> WrappedBinding.of(mm(width)));
  }

  @Test
  void areValues() {
    assertEquals(FoldedBand.of(mm(13), mm(7)), FoldedBand.of(mm(13), mm(7)));
    assertNotEquals(FoldedBand.of(mm(13), mm(7)), FoldedBand.of(mm(13), mm(6)));
    assertEquals(WrappedBinding.of(mm(10)).hashCode(), WrappedBinding.of(mm(10)).hashCode());
    assertNotEquals(WrappedBinding.of(mm(10)), WrappedBinding.of(mm(10)).withTurnOfCloth(mm(3)));
  }
}
