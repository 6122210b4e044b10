package dev.drafting.knit.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;

class WordingTest {
  @Test
  void smallAmountsAreMillimetresAndLongOnesCentimetres() {
    assertEquals("9 mm", Wording.amount(Length.mm(9.4)));
    assertEquals("99 mm", Wording.amount(Length.mm(99.4)));
    assertEquals("10 cm", Wording.amount(Length.mm(100)));
    assertEquals("59.2 cm", Wording.amount(Length.mm(591.6)));
    assertEquals("-7 mm", Wording.amount(Length.mm(-7)));
    assertEquals("2.5 mm", Wording.fine(Length.mm(2.5)));
  }

  @Test
  void rangesAreRoundedInwards() {
    assertEquals("48.1 to 51 cm", Wording.range(Length.mm(480.01), Length.mm(510.99)));
    assertEquals("48 to 51 cm", Wording.range(Length.mm(480), Length.mm(510)));
    assertEquals("48 to 51 cm", Wording.range(Length.mm(480 + 1e-9), Length.mm(510 - 1e-9)));
    assertEquals("48 cm", Wording.range(Length.mm(480), Length.mm(480.5)));
  }

  @Test
  void sharesArePerCentWithoutIdleZeros() {
    assertEquals("7.5 %", Wording.percent(0.075));
    assertEquals("30 %", Wording.percent(0.3));
    assertEquals("0 %", Wording.percent(0));
    assertEquals("-6.1 %", Wording.percent(-0.0612));
  }
}
