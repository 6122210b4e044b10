package dev.drafting.core.pattern;

import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;

/** Lengths as they are printed in descriptions. */
final class Text {
  private Text() {}

  static String mm(Length length) {
    return length.text(LengthUnit.MM);
  }
}
