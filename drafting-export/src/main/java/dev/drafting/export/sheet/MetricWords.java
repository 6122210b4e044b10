package dev.drafting.export.sheet;

import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences in millimetres, centimetres and metres with what it is by an inch tape in brackets. The
 * metric amount stays: it is the exact one, and a name of a cloth that holds one is still found.
 */
final class MetricWords {
  private static final double MM_A_YARD = 914.4;

  /** An amount or a range; amounts that have inches beside them already are left alone. */
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?<![\\w.,/])(?:(?<from>\\d{1,6}(?:\\.\\d{1,3})?) to )?(?<to>\\d{1,6}(?:\\.\\d{1,3})?)"
              + " (?<unit>mm|cm|m)(?![\\w\u00b2/])(?! (?:and |\\()[\\d ./]+ in\\b)");

  private MetricWords() {}

  static String withInches(String sentence) {
    return AMOUNT
        .matcher(sentence)
        .replaceAll(
            amount -> Matcher.quoteReplacement(amount.group() + " (" + inches(amount) + ")"));
  }

  private static String inches(MatchResult amount) {
    String from = amount.group(1);
    String to = amount.group(2);
    String unit = amount.group(3);
    if (unit.equals("m")) {
      return yards(Double.parseDouble(to));
    }
    String upper = Tape.inches(Length.parse(to + " " + unit));
    if (from == null) {
      return upper;
    }
    String lower = Tape.inches(Length.parse(from + " " + unit));
    return lower.replace("\u00a0" + LengthUnit.INCH.symbol(), "") + " to " + upper;
  }

  /** Cloth is sold by the eighth of a yard, and nobody should go home with too little. */
  private static String yards(double metres) {
    double eighths = Math.ceil(metres * 1000 / MM_A_YARD * 8 - 1e-9);
    return Tape.inches(Length.inches(eighths / 8)).replace(LengthUnit.INCH.symbol(), "yd");
  }
}
