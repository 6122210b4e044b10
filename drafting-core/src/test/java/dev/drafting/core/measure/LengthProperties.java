package dev.drafting.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.StringLength;

class LengthProperties {
  @Property
  void toStringReadsBackToTheLastBit(
      @ForAll @DoubleRange(min = -1e5, max = 1e5) @Scale(17) double mm) {
    Length length = Length.mm(mm);
    assertEquals(length, Length.parse(length.toString()));
    assertEquals(mm, Length.parse(length.toString()).toMm(), 0);
  }

  @Property
  void lengthsTooSmallToCutReadBackAsWell(
      @ForAll @DoubleRange(min = -1, max = 1) double mantissa,
      @ForAll @IntRange(min = -320, max = 0) int exponent) {
    Length tiny = Length.mm(mantissa * Math.pow(10, exponent));
    assertEquals(tiny, Length.parse(tiny.toString()));
  }

  @Property
  void storedLengthsComeBackEqual(@ForAll @DoubleRange(min = -1e5, max = 1e5) @Scale(9) double mm) {
    Object back = SerialCopy.of(Length.mm(mm));
    assertEquals(Length.mm(mm), back);
    assertEquals(Length.mm(mm).hashCode(), back.hashCode());
  }

  @Property
  void unitsGoThereAndBack(@ForAll @DoubleRange(min = -900, max = 900) @Scale(6) double number) {
    assertEquals(number, Length.mm(number).toMm(), 0);
    assertEquals(number, Length.cm(number).toCm(), Math.ulp(number));
    assertEquals(number, Length.inches(number).toInches(), 2 * Math.ulp(number));
  }

  /** Decimal arithmetic of any number of digits as oracle. */
  @Property
  void unitsRoundOnce(
      @ForAll @IntRange(min = -1_000_000_000, max = 1_000_000_000) int digits,
      @ForAll @IntRange(min = 6, max = 15) int decimals) {
    BigDecimal number = BigDecimal.valueOf(digits, decimals);
    double given = number.doubleValue();
    double millimetres = number.multiply(BigDecimal.TEN).doubleValue();
    double ofInches = number.multiply(BigDecimal.valueOf(254, 1)).doubleValue();
    assertEquals(millimetres, Length.cm(given).toMm(), 0);
    assertEquals(ofInches, Length.inches(given).toMm(), 0);
    BigDecimal fewer = BigDecimal.valueOf(digits, 5).remainder(BigDecimal.valueOf(3_000));
    assertEquals(
        fewer.multiply(BigDecimal.valueOf(254, 1)).doubleValue(),
        Length.inches(fewer.doubleValue()).toMm(),
        0);
  }

  @Property
  void orderIsThatOfTheNumbers(
      @ForAll @DoubleRange(min = -10, max = 10) double a,
      @ForAll @DoubleRange(min = -10, max = 10) double b) {
    assertEquals(
        Integer.signum(Double.compare(a + 0.0, b + 0.0)),
        Integer.signum(Length.mm(a).compareTo(Length.mm(b))));
    assertEquals(a == b, Length.mm(a).equals(Length.mm(b)));
    assertNotEquals(Length.mm(a), Angle.degrees(a));
  }

  @Property
  void fractionsReadBackWithinHalfADivision(
      @ForAll @DoubleRange(min = -3000, max = 3000) double mm,
      @ForAll @IntRange(min = 1, max = 6) int power) {
    int denominator = 1 << power;
    Length length = Length.mm(mm);
    Length read = Length.parse(length.toFraction(denominator));
    double half = 25.4 / denominator / 2;
    assertTrue(length.minus(read).abs().toMm() <= half + 1e-9, length + " and " + read);
  }

  @Property
  void anyTextIsReadOrRefusedInWords(@ForAll @StringLength(max = 80) String text) {
    try {
      assertTrue(Math.abs(Length.parse(text).toMm()) <= 100_000);
    } catch (DraftingException refusal) {
      assertTrue(!refusal.accepted().isEmpty());
    }
  }
}
