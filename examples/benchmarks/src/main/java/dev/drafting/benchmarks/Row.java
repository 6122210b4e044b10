package dev.drafting.benchmarks;

import java.util.Locale;

/**
 * One measured figure.
 *
 * @param table the table it belongs to
 * @param subject what was measured
 * @param figure the number
 * @param unit its unit
 * @param bound what was promised, "-" if nothing
 * @param holds "yes" or "no", "-" if nothing was promised
 */
record Row(String table, String subject, String figure, String unit, String bound, String holds) {
  private static final String HEADING = "table | case | figure | unit | bound | holds";

  /** A figure that is reported beside others, with no promise of its own. */
  static Row plain(String table, String subject, double figure, String unit) {
    return new Row(table, subject, text(figure), unit, "-", "-");
  }

  /** A figure that must not be over a bound. */
  static Row atMost(String table, String subject, double figure, String unit, double bound) {
    return new Row(
        table, subject, text(figure), unit, "at most " + text(bound), yes(figure <= bound));
  }

  /** A figure that must not be under a bound. */
  static Row atLeast(String table, String subject, double figure, String unit, double bound) {
    return new Row(
        table, subject, text(figure), unit, "at least " + text(bound), yes(figure >= bound));
  }

  static String heading() {
    return HEADING;
  }

  private static String yes(boolean holds) {
    return holds ? "yes" : "no";
  }

  private static String text(double figure) {
    return String.format(Locale.ROOT, "%.4g", figure);
  }

  @Override
  public String toString() {
    return String.join(" | ", table, subject, figure, unit, bound, holds);
  }
}
