package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;

/** What the finishes of this package accept as a width of cloth. */
final class Allowance {
  private static final Length WIDEST = Length.mm(500);

  private Allowance() {}

  static Length checked(String what, Length width) {
    if (width.isNegative() || width.compareTo(WIDEST) > 0) {
      throw DraftingException.of("the " + what + " is out of range")
          .value(width)
          .accepted("a length from 0 mm to " + WIDEST);
    }
    return width;
  }
}
