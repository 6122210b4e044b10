package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;

class StripRuleTest {
  private static final Length EDGE = Length.cm(64);
  private static final FlatWindow WINDOW =
      FlatWindow.of(EDGE, Angle.degrees(280), Length.mm(13), 0.0075);
  private static final Length REACHES = EDGE.dividedBy(2);

  /** CV-12: edge 55, ratio 0.85: loop 46.75 (arithmetic on common practice). */
  @Test
  void aRatioIsOfTheJoinLine() {
    assertEquals(
        46.75, StripRule.ratio(0.85).loop(Length.cm(55), WINDOW.loops(), REACHES).toCm(), 1e-9);
  }

  /**
   * CV-39 (common practice, no source): a strip cut 5 cm short with no allowance added and sewn
   * with 1 cm at each end is 7 cm short.
   */
  @Test
  void aStripCutFiveShortAndJoinedWithOneAtEachEndIsSevenShort() {
    Length loop =
        StripRule.alreadyCut(EDGE.minus(Length.cm(5))).loop(EDGE, WINDOW.loops(), REACHES);
    assertEquals(7, EDGE.minus(loop).toCm(), 1e-9);
    assertEquals(Outcome.PUCKERS, WINDOW.judge(loop));
  }

  @Test
  void recommendedIsTheMiddleOrAsFarAsTheStripReaches() {
    assertEquals(WINDOW.middle(), StripRule.recommended().loop(EDGE, WINDOW.loops(), REACHES));
    double little = EDGE.ratioTo(WINDOW.middle()) - 1 - 0.01;
    Length longer = StripRule.recommended().loop(EDGE, WINDOW.loops(), EDGE.dividedBy(1 + little));
    assertEquals(EDGE.dividedBy(1 + little), longer);
    assertTrue(longer.compareTo(WINDOW.longest()) < 0);
    assertEquals(WINDOW.longest(), StripRule.recommended().loop(EDGE, WINDOW.loops(), EDGE));
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(DraftingException.class, () -> StripRule.ratio(0));
    assertThrows(DraftingException.class, () -> StripRule.ratio(Double.NaN));
    assertThrows(DraftingException.class, () -> StripRule.loop(Length.ZERO));
    assertThrows(DraftingException.class, () -> StripRule.alreadyCut(Length.mm(-1)));
    StripRule tooShort = StripRule.shorterBy(Length.cm(64));
    assertThrows(DraftingException.class, () -> tooShort.loop(EDGE, WINDOW.loops(), REACHES));
    StripRule allSewnIn = StripRule.alreadyCut(Length.mm(20));
    assertThrows(DraftingException.class, () -> allSewnIn.loop(EDGE, WINDOW.loops(), REACHES));
    assertThrows(
        DraftingException.class, () -> StripRule.recommended().withJoinAllowance(Length.mm(51)));
  }

  @Test
  void sayWhatTheyAre() {
    assertEquals(
        "as recommended, 10 mm at each end for the join", StripRule.recommended().toString());
    assertEquals(
        "already cut 59 cm long, 6 mm at each end for the join",
        StripRule.alreadyCut(Length.cm(59)).withJoinAllowance(Length.mm(6)).toString());
    assertEquals(StripRule.ratio(0.85), StripRule.ratio(0.85));
    assertNotEquals(StripRule.ratio(0.85), StripRule.ratio(0.86));
  }
}
