package dev.drafting.export.dxf;

import dev.drafting.core.geometry.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** A DXF file as it grows: pairs of a group code and a value, each on its line. */
@CanIgnoreReturnValue
final class Groups {
  private static final int CODE_WIDTH = 3;
  private static final int DECIMALS = 9;
  private static final int LONGEST_TEXT = 250;

  private final StringBuilder text = new StringBuilder();
  private int handle = 0x20;

  Groups add(int code, String value) {
    String digits = Integer.toString(code);
    text.append(" ".repeat(Math.max(0, CODE_WIDTH - digits.length())));
    text.append(digits).append('\n').append(value).append('\n');
    return this;
  }

  Groups add(int code, int value) {
    return add(code, Integer.toString(value));
  }

  Groups add(int code, double value) {
    BigDecimal decimal = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    BigDecimal plain = decimal.signum() == 0 ? BigDecimal.ZERO : decimal.stripTrailingZeros();
    String digits = plain.toPlainString();
    return add(code, digits.contains(".") ? digits : digits + ".0");
  }

  /** A point in the plane, its x under this code. */
  Groups add(int code, Point point) {
    return add(code, point.x()).add(code + 10, point.y()).add(code + 20, 0.0);
  }

  /** A text on one line; letters beyond ASCII are written by their numbers. */
  Groups addText(int code, String value) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      String letter = c < ' ' || c == 127 ? " " : c > 126 ? unicode(c) : String.valueOf(c);
      if (plain.length() + letter.length() > LONGEST_TEXT) {
        break;
      }
      plain.append(letter.equals("^") ? "^ " : letter);
    }
    return add(code, plain.toString());
  }

  private static String unicode(char c) {
    return String.format(Locale.ROOT, "\\U+%04X", (int) c);
  }

  Groups begin(String section) {
    return add(0, "SECTION").add(2, section);
  }

  Groups end() {
    return add(0, "ENDSEC");
  }

  /** A number that no other object of the file has. */
  String nextHandle() {
    return Integer.toHexString(handle++).toUpperCase(Locale.ROOT);
  }

  byte[] bytes() {
    return add(0, "EOF").text.toString().getBytes(StandardCharsets.US_ASCII);
  }
}
