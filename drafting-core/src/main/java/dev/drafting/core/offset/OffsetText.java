package dev.drafting.core.offset;

import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;

/** How lengths are shown when offset results are printed: to a hundredth of a millimetre. */
final class OffsetText {
  private OffsetText() {}

  static String rounded(Length length) {
    return length.text(LengthUnit.MM, 2);
  }
}
