package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stitches by ISO 4915 and the thread they take. */
class StitchTypeTest {
  private static final Length TEN_TO_THE_INCH = Length.mm(25.4 / 10);

  /** "The Technology of Clothing Manufacture", as reproduced in a thread-estimating note. */
  @ParameterizedTest
  @CsvSource({
    "LOCKSTITCH, 301, 2, 2.5",
    "ZIGZAG, 304, 2, 7",
    "CHAIN, 401, 2, 5.5",
    "COVER_TWO, 406, 3, 18",
    "OVERLOCK_THREE, 504, 3, 14",
    "OVERLOCK_FOUR, 514, 4, 18",
    "OVERLOCK_AND_CHAIN, 516, 5, 20",
    "FLAT_TWO, 602, 4, 25",
    "FLAT_THREE, 605, 5, 28"
  })
  void takeTheThreadOfTheTable(StitchType type, String number, int threads, double perMetre) {
    assertEquals(number, type.number().orElseThrow());
    assertEquals(threads, type.threads());
    assertEquals(perMetre, type.threadPerMetre().orElseThrow());
  }

  /** A textile-engineering converter's formulas, 1 mm of cloth, 10 stitches to the inch. */
  @ParameterizedTest
  @CsvSource({
    "LOCKSTITCH, 0, 2.79",
    "CHAIN, 0, 4.79",
    "COVER_TWO, 5, 11.7",
    "COVER_THREE, 5, 15.3",
    "OVERLOCK_THREE, 5, 14.45",
    "OVERLOCK_FOUR, 6, 16.8",
    "OVERLOCK_AND_CHAIN, 6, 20.8",
    "FLAT_TWO, 6, 21.4",
    "FLAT_THREE, 6, 21.8",
    "FLAT_FOUR, 6, 24.6"
  })
  void takeTheThreadOfTheFormula(StitchType type, double widthMm, double perMetre) {
    double thread =
        type.threadPerMetre(Length.mm(1), Length.mm(widthMm), TEN_TO_THE_INCH).orElseThrow();
    assertEquals(perMetre, thread, 0.05);
  }

  /** CV-26, printed in a course page: 301, cloth 0.01 in, 10 stitches to the inch. */
  @Test
  void theCoursePagesExampleComesOut() {
    double thread =
        StitchType.LOCKSTITCH
            .threadPerMetre(Length.inches(0.01), Length.ZERO, TEN_TO_THE_INCH)
            .orElseThrow();
    assertEquals(2.2, thread, 1e-12);
  }

  /** CV-27, measured on a 401 seam of 15 cm: 19.5 cm of needle and 62 cm of looper thread. */
  @Test
  void theTableIsNearAMeasuredChainStitch() {
    double measured = (19.5 + 62) / 15;
    assertEquals(5.43, measured, 0.005);
    assertEquals(measured, StitchType.CHAIN.threadPerMetre().orElseThrow(), 0.1);
  }

  @Test
  void aTwinNeedleHasTwoTopThreadsAndOneBobbin() {
    assertEquals(2, StitchType.TWIN_NEEDLE.needles());
    assertEquals(3, StitchType.TWIN_NEEDLE.threads());
    assertTrue(StitchType.TWIN_NEEDLE.number().isEmpty());
    assertEquals("twin needle", StitchType.TWIN_NEEDLE.toString());
  }

  /** 25.4 mm over 2.5 mm is 10.16 stitches to the inch. */
  @Test
  void theUsualStitchIsAboutTenToTheInch() {
    Length length = Stitch.of(StitchType.OVERLOCK_FOUR).length();
    assertEquals(10.16, 25.4 / length.toMm(), 1e-12);
  }

  @Test
  void stitchesHaveRanges() {
    Stitch zigzag = Stitch.of(StitchType.ZIGZAG);
    assertThrows(DraftingException.class, () -> zigzag.withLength(Length.ZERO));
    assertThrows(DraftingException.class, () -> zigzag.withLength(Length.mm(8.1)));
    assertThrows(DraftingException.class, () -> zigzag.withWidth(Length.mm(-0.1)));
    assertThrows(DraftingException.class, () -> zigzag.withWidth(Length.mm(12.1)));
    assertThrows(
        DraftingException.class,
        () -> StitchType.CHAIN.threadPerMetre(Length.mm(1), Length.ZERO, Length.ZERO));
    assertEquals(zigzag, Stitch.of(StitchType.ZIGZAG).withLength(Length.mm(1.4)));
    assertEquals("zigzag (304), 1.4 mm long, 3.5 mm wide", zigzag.toString());
  }
}
