package dev.drafting.knit.wording;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Amounts in the words of the trade: small ones in whole millimetres, long ones in centimetres to
 * the millimetre, shares in per cent.
 *
 * <pre>{@code
 * Wording.amount(Length.mm(9.2));  // => 9 mm
 * Wording.amount(Length.mm(591.6));  // => 59.2 cm
 * Wording.range(Length.mm(480.4), Length.mm(510.7));  // => 48.1 to 51 cm
 * Wording.percent(0.075);  // => 7.5 %
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Wording {
  private static final double LONG_MM = 100;

  private Wording() {}

  /**
   * A length as it is read off the tape: under 10 cm in whole millimetres, from there on in
   * centimetres to one decimal.
   *
   * @param length any length
   * @return number and unit
   */
  public static String amount(Length length) {
    return Math.abs(length.toMm()) < LONG_MM
        ? length.text(LengthUnit.MM, 0)
        : length.text(LengthUnit.CM, 1);
  }

  /**
   * A small length to a tenth of a millimetre, for widths and allowances.
   *
   * @param length any length
   * @return number and unit
   */
  public static String fine(Length length) {
    return length.text(LengthUnit.MM, 1);
  }

  /**
   * From one length to another in centimetres, each rounded to the millimetre inwards, so that
   * everything printed lies within.
   *
   * @param shortest the lower end
   * @param longest the upper end
   * @return "48 to 51 cm", or one length if the two round to the same
   */
  public static String range(Length shortest, Length longest) {
    BigDecimal low = tenths(shortest, RoundingMode.CEILING);
    BigDecimal high = tenths(longest, RoundingMode.FLOOR);
    if (low.compareTo(high) >= 0) {
      return shortest.plus(longest).dividedBy(2).text(LengthUnit.CM, 1);
    }
    return plain(low) + " to " + plain(high) + " cm";
  }

  /**
   * A share in per cent, to one decimal.
   *
   * @param share 0.075 for 7.5 %
   * @return number and sign
   */
  public static String percent(double share) {
    BigDecimal number = BigDecimal.valueOf(share * 100).setScale(1, RoundingMode.HALF_UP);
    return plain(number) + " %";
  }

  private static BigDecimal tenths(Length length, RoundingMode mode) {
    // a millionth of a millimetre either way is rounding, not cloth
    double centimetres = Math.round(length.toMm() * 1e6) / 1e7;
    return BigDecimal.valueOf(centimetres).setScale(1, mode);
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
