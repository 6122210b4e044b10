package dev.drafting.export.sheet;

import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;

/** Lengths as they are read off a tape; number and unit stay on one line. */
final class Tape {
  private static final char NO_BREAK = '\u00a0';

  private Tape() {}

  static String cm(Length length) {
    return length.text(LengthUnit.CM, 1).replace(' ', NO_BREAK);
  }

  static String inches(Length length) {
    return length.toFraction(8).replace(' ', NO_BREAK);
  }

  static String both(Length length) {
    return cm(length) + " (" + inches(length) + ")";
  }
}
