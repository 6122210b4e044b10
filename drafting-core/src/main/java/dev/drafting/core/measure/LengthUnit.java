package dev.drafting.core.measure;

import dev.drafting.core.Stable;

/**
 * A unit that lengths are given or printed in.
 *
 * <pre>{@code
 * Length.inches("1/2").text(LengthUnit.MM);  // => 12.7 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum LengthUnit {
  /** Millimetres. */
  MM("mm", 1.0, 1),
  /** Centimetres. */
  CM("cm", 10.0, 2),
  /** Inches of 25.4 mm exactly. */
  INCH("in", 25.4, 3);

  private final String symbol;
  private final double millimetres;
  private final int decimals;

  LengthUnit(String symbol, double millimetres, int decimals) {
    this.symbol = symbol;
    this.millimetres = millimetres;
    this.decimals = decimals;
  }

  /**
   * The symbol printed behind a number.
   *
   * @return mm, cm or in
   */
  public String symbol() {
    return symbol;
  }

  double millimetres() {
    return millimetres;
  }

  int decimals() {
    return decimals;
  }
}
