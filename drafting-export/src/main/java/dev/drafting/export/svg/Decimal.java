package dev.drafting.export.svg;

/** Numbers as SVG writes them: at most four decimals, no exponent, no locale. */
final class Decimal {
  private static final long ONE = 10_000;

  private Decimal() {}

  static String of(double value) {
    long scaled = Math.round(value * ONE);
    StringBuilder text = new StringBuilder(16);
    if (scaled < 0) {
      text.append('-');
    }
    text.append(Math.abs(scaled) / ONE);
    long rest = Math.abs(scaled) % ONE;
    if (rest != 0) {
      text.append('.').append(Long.toString(ONE + rest).substring(1));
      while (text.charAt(text.length() - 1) == '0') {
        text.setLength(text.length() - 1);
      }
    }
    return text.toString();
  }
}
