package dev.drafting.core.measure;

import dev.drafting.core.finding.DraftingException;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths as text: what is read off a tape and what is printed. */
final class LengthText {
  private static final String ACCEPTED =
      "a number and mm, cm or in, such as \"6 mm\", \"2.5 cm\" or \"1 1/4 in\"";
  private static final String DECIMAL =
      "[+-]?(?:\\d{1,9}(?:\\.\\d{0,345})?|\\.\\d{1,345})(?:[eE][+-]?\\d{1,3})?";
  private static final Pattern NUMBER = Pattern.compile(DECIMAL);
  private static final Pattern FRACTION =
      Pattern.compile("([+-]?)(?:(\\d{1,5})[ -])?(\\d{1,4})/(\\d{1,4})");
  private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*(mm|cm|inches|inch|in|\")");
  private static final int LONGEST_TEXT = 400;

  private LengthText() {}

  static Length parse(String text) {
    Matcher match = WITH_UNIT.matcher(tidy(text));
    if (!match.matches()) {
      throw DraftingException.of("a length has no unit that is known")
          .value(text)
          .accepted(ACCEPTED);
    }
    String number = match.group(1);
    return switch (match.group(2)) {
      case "mm" -> Length.mm(decimal(number, text));
      case "cm" -> Length.cm(decimal(number, text));
      default -> inches(number, text);
    };
  }

  static Length inches(String text) {
    String tidy = tidy(text);
    Matcher match = WITH_UNIT.matcher(tidy);
    return match.matches() && match.group(2).matches("in.*|\"")
        ? inches(match.group(1), text)
        : inches(tidy, text);
  }

  private static Length inches(String number, String text) {
    Matcher match = FRACTION.matcher(number);
    if (!match.matches()) {
      return Length.inches(decimal(number, text));
    }
    int denominator = Integer.parseInt(match.group(4));
    if (denominator == 0) {
      throw DraftingException.of("a fraction is divided by zero")
          .value(text)
          .accepted("3/8 or 1 1/4");
    }
    int whole = match.group(2) == null ? 0 : Integer.parseInt(match.group(2));
    double numerator = (double) whole * denominator + Integer.parseInt(match.group(3));
    double millimetres = numerator * 254 / (denominator * 10.0);
    return Length.mm(match.group(1).equals("-") ? -millimetres : millimetres);
  }

  private static String tidy(String text) {
    Objects.requireNonNull(text, "text");
    if (text.length() > LONGEST_TEXT) {
      throw DraftingException.of("a length is not a number with a unit")
          .value(text)
          .accepted(ACCEPTED);
    }
    return text.strip().toLowerCase(Locale.ROOT);
  }

  private static double decimal(String number, String text) {
    if (!NUMBER.matcher(number).matches()) {
      throw DraftingException.of(
              number.indexOf(',') >= 0
                  ? "a length has a decimal comma"
                  : "a length is not a number")
          .value(text)
          .accepted(ACCEPTED);
    }
    return Double.parseDouble(number);
  }

  static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  static String fraction(double inches, int denominator) {
    if (Integer.bitCount(denominator) != 1 || denominator < 2 || denominator > 64) {
      throw DraftingException.of("a tape has no such division")
          .value(denominator)
          .accepted("2, 4, 8, 16, 32 or 64");
    }
    long parts = Math.round(Math.abs(inches) * denominator);
    long whole = parts / denominator;
    long rest = parts % denominator;
    int divisor = denominator;
    while (rest % 2 == 0 && rest > 0) {
      rest /= 2;
      divisor /= 2;
    }
    String sign = inches < 0 && parts > 0 ? "-" : "";
    String shares = rest == 0 ? "" : rest + "/" + divisor;
    String text = whole == 0 && rest > 0 ? shares : (whole + " " + shares).strip();
    return sign + text + " in";
  }
}
