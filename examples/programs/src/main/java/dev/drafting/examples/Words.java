package dev.drafting.examples;

import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Lengths, sizes and paragraphs as the console shows them. */
final class Words {
  private static final int WIDTH = 78;

  private static final Pattern BREAK = Pattern.compile("(?<!\\d) | (?!(?:mm|cm|m|%|kB)\\b|%)");

  private Words() {}

  static String centimetres(Length length) {
    return String.format(Locale.ROOT, "%.1f cm", length.toCm());
  }

  static String millimetres(Length length) {
    return length.text(LengthUnit.MM);
  }

  static String percent(double share) {
    return Math.round(share * 100) + " %";
  }

  static String kilobytes(long bytes) {
    return String.format(Locale.ROOT, "%,d kB", Math.max(1, (bytes + 500) / 1000));
  }

  static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  static String count(int number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  /**
   * Breaks a text into lines; the first begins with the head, the others below its end. A number
   * stays with its unit.
   */
  static List<String> paragraph(String head, String text) {
    List<String> lines = new ArrayList<>();
    String indent = " ".repeat(head.length());
    StringBuilder line = new StringBuilder(head);
    boolean fresh = true;
    for (String word : BREAK.split(text, -1)) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
