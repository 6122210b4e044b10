package dev.drafting.core.geometry;

import dev.drafting.core.finding.DraftingException;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Coordinates at the door: checked when they come in, rounded to 1e-9 mm when they are printed. */
final class Coordinates {
  private static final int DECIMALS = 9;
  private static final double FAR = 1e12;
  private static final double TINY = 1e-280;
  private static final double HUGE = 1e280;

  private Coordinates() {}

  /** Refuses what is not finite and turns -0.0 into 0.0, so that equal places are equal values. */
  static double checked(double value, String what) {
    if (!Double.isFinite(value)) {
      throw DraftingException.of(what + " is not a number")
          .value(value)
          .accepted("a finite number of millimetres");
    }
    return value + 0.0;
  }

  /** Refuses a parameter outside 0 to 1. */
  static void checkParameter(double t) {
    if (!(t >= 0 && t <= 1)) {
      throw DraftingException.of("a parameter is off the segment").value(t).accepted("0 to 1");
    }
  }

  /**
   * The length of a way. {@link Math#hypot} is many times slower for the last bit, which only
   * matters, and is only asked for, where squares overflow or vanish.
   */
  static double norm(double dx, double dy) {
    double square = dx * dx + dy * dy;
    return square > TINY && square < HUGE ? Math.sqrt(square) : Math.hypot(dx, dy);
  }

  static String text(double value) {
    return text(value, DECIMALS);
  }

  static String text(double value, int decimals) {
    if (Math.abs(value) >= FAR) {
      return String.valueOf(value);
    }
    BigDecimal number = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  static String pair(double x, double y) {
    return pair(x, y, DECIMALS);
  }

  static String pair(double x, double y, int decimals) {
    return "(" + text(x, decimals) + ", " + text(y, decimals) + ")";
  }
}
