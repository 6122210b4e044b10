package dev.drafting.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
  private static String refused(Executable work) {
    return String.valueOf(assertThrows(DraftingException.class, work).getMessage());
  }

  /** The inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
  @ParameterizedTest
  @CsvSource({
    "3/8, 9.525",
    "1 1/4, 31.75",
    "1-1/4, 31.75",
    "1/16 in, 1.5875",
    "2, 50.8",
    "1.5 inches, 38.1",
    "-5/8, -15.875",
    "+1/2 inch, 12.7",
    "0, 0",
    "10 0/8, 254"
  })
  void inchesAreReadOffATape(String text, double millimetres) {
    assertEquals(millimetres, Length.inches(text).toMm(), 0);
  }

  @ParameterizedTest
  @CsvSource({
    "6 mm, 6",
    "2.5 cm, 25",
    "0.7cm, 7",
    "3/8 in, 9.525",
    "1 1/4 in, 31.75",
    "' 12 MM ', 12",
    "-0.3 mm, -0.3",
    "1e2 mm, 100",
    ".5 cm, 5"
  })
  void lengthsAreReadWithTheirUnit(String text, double millimetres) {
    assertEquals(millimetres, Length.parse(text).toMm(), 0);
  }

  /** Tenths of centimetres and fractions of inches are rounded once, from the decimal number. */
  @Test
  void unitsAreExact() {
    for (int i = -2000; i <= 2000; i++) {
      double tenth = i / 10.0;
      assertEquals(i, Length.cm(tenth).toMm(), 0);
      assertEquals(Length.mm(i), Length.parse(tenth + " cm"));
      assertEquals(Math.rint(i * 254.0) / 10 / 64, Length.inches(i + "/64").toMm(), 1e-12);
    }
    assertEquals(Length.mm(2.54), Length.inches(0.1));
    assertEquals(Length.mm(25.4), Length.inches(1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "mm",
        "6",
        "6 px",
        "six mm",
        "6 mm mm",
        "NaN mm",
        "Infinity cm",
        "1/0 in",
        "1/2 mm",
        "1 2 3/4 in",
        "0x10 mm",
        "1e mm",
        "--1 mm",
        "6,5 mm",
        "1;2 in"
      })
  void whatIsNoLengthIsRefusedWithWhatWouldBeAccepted(String text) {
    String said = refused(() -> Length.parse(text));
    assertTrue(said.contains("Accepted: "), said);
  }

  @Test
  void refusalsSayWhatIsWrong() {
    assertEquals(
        "a length has a decimal comma. Found: 2,5 cm. "
            + "Accepted: a number and mm, cm or in, such as \"6 mm\", \"2.5 cm\" or \"1 1/4 in\".",
        refused(() -> Length.parse("2,5 cm")));
    assertEquals(
        "a length is not a number. Found: NaN mm. Accepted: a length from -100 m to 100 m.",
        refused(() -> Length.mm(Double.NaN)));
    assertTrue(refused(() -> Length.inches("1/0")).contains("divided by zero"));
    assertTrue(refused(() -> Length.parse("7".repeat(500) + " mm")).length() < 300);
  }

  @Test
  void moreThanAHundredMetresIsRefused() {
    assertEquals(100_000, Length.mm(100_000).toMm());
    assertTrue(refused(() -> Length.mm(100_000.001)).contains("over 100 m"));
    assertTrue(refused(() -> Length.cm(-1e300)).contains("over 100 m"));
    assertTrue(refused(() -> Length.mm(Double.POSITIVE_INFINITY)).contains("over 100 m"));
    assertTrue(refused(() -> Length.inches(Double.NEGATIVE_INFINITY)).contains("over 100 m"));
    assertTrue(refused(() -> Length.mm(60_000).plus(Length.mm(60_000))).contains("over 100 m"));
    assertTrue(refused(() -> Length.mm(1).dividedBy(0)).contains("over 100 m"));
    assertTrue(refused(() -> Length.ZERO.dividedBy(0)).contains("not a number"));
  }

  @ParameterizedTest
  @CsvSource({
    "34.925, 8, 1 3/8 in",
    "35, 8, 1 3/8 in",
    "35, 16, 1 3/8 in",
    "35, 32, 1 3/8 in",
    "35, 64, 1 3/8 in",
    "12.7, 8, 1/2 in",
    "25.4, 16, 1 in",
    "0, 16, 0 in",
    "1, 8, 0 in",
    "-1, 8, 0 in",
    "-12.7, 8, -1/2 in",
    "-31.75, 4, -1 1/4 in",
    "25.3, 16, 1 in",
    "1.6, 2, 0 in"
  })
  void fractionsAreTheNearestOfTheTapeAndReduced(double mm, int denominator, String text) {
    assertEquals(text, Length.mm(mm).toFraction(denominator));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3, 10, 128, -8})
  void tapesWithoutSuchADivisionAreRefused(int denominator) {
    assertTrue(refused(() -> Length.mm(10).toFraction(denominator)).contains("2, 4, 8, 16, 32"));
  }

  @ParameterizedTest
  @CsvSource({
    "13, MM, 13 mm",
    "13, CM, 1.3 cm",
    "38.1, INCH, 1.5 in",
    "13, INCH, 0.512 in",
    "12.96, MM, 13 mm",
    "-0.04, MM, 0 mm",
    "1234.56, CM, 123.46 cm"
  })
  void textIsRoundedAndHasNoIdleZeros(double mm, LengthUnit unit, String text) {
    assertEquals(text, Length.mm(mm).text(unit));
  }

  @Test
  void textTakesTheDecimalsAskedFor() {
    assertEquals("13 mm", Length.mm(12.5).text(LengthUnit.MM, 0));
    assertEquals("12.3457 mm", Length.mm(12.345678).text(LengthUnit.MM, 4));
    assertEquals("12.345678 mm", Length.mm(12.345678).text(LengthUnit.MM, 9));
    assertThrows(DraftingException.class, () -> Length.mm(1).text(LengthUnit.MM, 10));
    assertThrows(DraftingException.class, () -> Length.mm(1).text(LengthUnit.MM, -1));
  }

  @Test
  void arithmetic() {
    Length six = Length.mm(6);
    assertEquals(Length.mm(13), six.plus(Length.mm(7)));
    assertEquals(Length.mm(-1), six.minus(Length.mm(7)));
    assertEquals(Length.mm(15), six.times(2.5));
    assertEquals(Length.mm(1.5), six.dividedBy(4));
    assertEquals(1.5, six.ratioTo(Length.mm(4)), 0);
    assertEquals(Length.mm(-6), six.negated());
    assertEquals(six, six.negated().abs());
    assertEquals(six, six.min(Length.mm(7)));
    assertEquals(Length.mm(7), six.max(Length.mm(7)));
    assertTrue(six.isPositive() && six.negated().isNegative() && Length.ZERO.isZero());
    assertFalse(six.isNegative() || six.isZero() || Length.ZERO.isPositive());
    assertFalse(Length.ZERO.isNegative());
    assertTrue(six.hashCode() != Length.ZERO.hashCode(), "lengths spread over hash tables");
    assertEquals(Length.ZERO, Length.ZERO.negated());
    assertEquals(Length.ZERO, Length.mm(-0.0));
    assertEquals(Length.ZERO.hashCode(), Length.mm(-0.0).hashCode());
    assertEquals("0 mm", Length.mm(-0.0).toString());
  }
}
