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
        "{showing=13 mm, allowance=7 mm, cloth=rib, topstitch=2 mm}",
        FoldedBand.of(mm(13), mm(7)).settings().toString());
    assertEquals(
        "{showing=10 mm, turn of cloth=2.5 mm, cloth=rib}",
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
