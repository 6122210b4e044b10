package dev.drafting.core.measure;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length on cloth or paper: an allowance, an edge, a girth. Signed, so that it also serves as a
 * difference.
 *
 * <p>Inside it is a number of millimetres; at the door it is millimetres, centimetres or inches,
 * decimal or fractional. Not a number, infinite, or more than 100 m either way is refused.
 *
 * <pre>{@code
 * Length.cm(2.5);  // => 25 mm
 * Length.inches("1 1/4").toMm();  // => 31.75
 * Length.mm(35).toFraction(8);  // => 1 3/8 in
 * Length.parse("0.7 cm").plus(Length.mm(6));  // => 13 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Length implements Comparable<Length>, Serializable {
  private static final long serialVersionUID = 1L;
  private static final double LONGEST_MM = 100_000;
  private static final int TENTHS_IN_CM = 100;
  private static final int TENTHS_IN_INCH = 254;
  private static final double MILLION = 1e6;
  private static final double MOST_MILLIONTHS = 1e12;

  /** No length at all. */
  public static final Length ZERO = new Length(0);

  private final double millimetres;

  private Length(double millimetres) {
    this.millimetres = millimetres;
  }

  /**
   * A length in millimetres.
   *
   * @param millimetres from -100000 to 100000
   * @return the length
   * @throws DraftingException if it is not a number or over 100 m
   */
  public static Length mm(double millimetres) {
    return checked(millimetres, millimetres, "mm");
  }

  /**
   * A length in centimetres.
   *
   * @param centimetres from -10000 to 10000
   * @return the length
   * @throws DraftingException if it is not a number or over 100 m
   */
  public static Length cm(double centimetres) {
    return checked(decimal(centimetres, TENTHS_IN_CM), centimetres, "cm");
  }

  /**
   * A length in inches of 25.4 mm.
   *
   * @param inches up to 100 m either way
   * @return the length
   * @throws DraftingException if it is not a number or over 100 m
   */
  public static Length inches(double inches) {
    return checked(decimal(inches, TENTHS_IN_INCH), inches, "in");
  }

  /**
   * A length in inches as it is read off a tape: "3/8", "1 1/4", "1.5", with or without the unit.
   *
   * @param text the number, whole, decimal or fractional
   * @return the length
   * @throws DraftingException if the text is no such number
   */
  public static Length inches(String text) {
    return LengthText.inches(text);
  }

  /**
   * A length with its unit: "6 mm", "2.5 cm", "3/8 in", "1 1/4 in". A decimal comma is refused.
   *
   * @param text number and unit
   * @return the length
   * @throws DraftingException if the text is no such length
   */
  public static Length parse(String text) {
    return LengthText.parse(text);
  }

  /** Rounds once: 0.7 cm is 7 mm, not 7 mm less the last bit. */
  private static double decimal(double number, int tenths) {
    double millionths = Math.rint(number * MILLION);
    if (millionths / MILLION == number && Math.abs(millionths) < MOST_MILLIONTHS) {
      // No more than six decimals: the product is a whole number that is held exactly.
      return millionths * tenths / (10 * MILLION);
    }
    return Double.isFinite(number)
        ? BigDecimal.valueOf(number).multiply(BigDecimal.valueOf(tenths, 1)).doubleValue()
        : number;
  }

  private static Length checked(double millimetres, double given, String unit) {
    if (!(Math.abs(millimetres) <= LONGEST_MM)) {
      throw DraftingException.of(
              Double.isNaN(given) ? "a length is not a number" : "a length is over 100 m")
          .value(given + " " + unit)
          .accepted("a length from -100 m to 100 m");
    }
    return new Length(millimetres + 0.0);
  }

  /**
   * This length in millimetres.
   *
   * @return millimetres
   */
  public double toMm() {
    return millimetres;
  }

  /**
   * This length in centimetres.
   *
   * @return centimetres
   */
  public double toCm() {
    return millimetres / 10;
  }

  /**
   * This length in inches.
   *
   * @return inches of 25.4 mm
   */
  public double toInches() {
    return millimetres / 25.4;
  }

  /**
   * This length and another one end to end.
   *
   * @param other the other length
   * @return the sum
   */
  public Length plus(Length other) {
    return mm(millimetres + other.millimetres);
  }

  /**
   * What is left of this length when another is taken away.
   *
   * @param other the other length
   * @return the difference, negative if the other is longer
   */
  public Length minus(Length other) {
    return mm(millimetres - other.millimetres);
  }

  /**
   * This length a number of times.
   *
   * @param factor any number
   * @return the product
   */
  public Length times(double factor) {
    return mm(millimetres * factor);
  }

  /**
   * This length cut into equal shares.
   *
   * @param divisor any number but zero
   * @return the quotient
   */
  public Length dividedBy(double divisor) {
    return mm(millimetres / divisor);
  }

  /**
   * How many times the other length this one is.
   *
   * @param other any length but zero
   * @return the ratio, 1 for equal lengths
   */
  public double ratioTo(Length other) {
    return millimetres / other.millimetres;
  }

  /**
   * The same length the other way.
   *
   * @return the length with the other sign
   */
  public Length negated() {
    return new Length(0.0 - millimetres);
  }

  /**
   * The length without its sign.
   *
   * @return zero or a positive length
   */
  public Length abs() {
    return new Length(Math.abs(millimetres));
  }

  /**
   * The shorter of two lengths.
   *
   * @param other the other length
   * @return the lesser one
   */
  public Length min(Length other) {
    return compareTo(other) <= 0 ? this : other;
  }

  /**
   * The longer of two lengths.
   *
   * @param other the other length
   * @return the greater one
   */
  public Length max(Length other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /**
   * Tells whether there is no length at all.
   *
   * @return true for exactly zero
   */
  public boolean isZero() {
    return millimetres == 0;
  }

  /**
   * Tells whether this is less than zero.
   *
   * @return true below zero
   */
  public boolean isNegative() {
    return millimetres < 0;
  }

  /**
   * Tells whether this is more than zero.
   *
   * @return true above zero
   */
  public boolean isPositive() {
    return millimetres > 0;
  }

  /**
   * This length for people to read: rounded to 0.1 mm, 0.01 cm or 0.001 in, without idle zeros.
   *
   * @param unit the unit to print
   * @return for instance "13 mm", "1.3 cm" or "0.512 in"
   */
  public String text(LengthUnit unit) {
    return text(unit, unit.decimals());
  }

  /**
   * This length for people to read, rounded half up, without idle zeros.
   *
   * @param unit the unit to print
   * @param decimals the most decimals to show, 0 to 9
   * @return for instance "13 mm"
   * @throws DraftingException if the number of decimals is out of range
   */
  public String text(LengthUnit unit, int decimals) {
    if (decimals < 0 || decimals > 9) {
      throw DraftingException.of("the number of decimals is out of range")
          .value(decimals)
          .accepted("0 to 9");
    }
    BigDecimal number = BigDecimal.valueOf(millimetres / unit.millimetres());
    return LengthText.plain(number.setScale(decimals, RoundingMode.HALF_UP)) + " " + unit.symbol();
  }

  /**
   * This length in inches to the nearest fraction of a tape, reduced: "1 3/8 in", "1/2 in", "0 in".
   *
   * @param denominator the finest division of the tape: 2, 4, 8, 16, 32 or 64
   * @return whole inches and the fraction
   * @throws DraftingException if the denominator is none of these
   */
  public String toFraction(int denominator) {
    return LengthText.fraction(toInches(), denominator);
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(millimetres, other.millimetres);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(double millimetres) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return Length.mm(millimetres);
    }
  }

  private Object writeReplace() {
    return new Kept(millimetres);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a length is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Length that && that.millimetres == millimetres;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(millimetres);
  }

  /** The exact length in millimetres, which {@link #parse(String)} reads back. */
  @Override
  public String toString() {
    return LengthText.plain(BigDecimal.valueOf(millimetres)) + " mm";
  }
}
