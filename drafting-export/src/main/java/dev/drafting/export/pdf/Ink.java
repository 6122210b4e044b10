package dev.drafting.export.pdf;

import java.awt.Color;

/** The colours of a file and how much heavier than on paper its lines are. */
record Ink(Color ground, Color lines, Color accent, double heavier) {
  /** Black on white paper. */
  static final Ink ON_PAPER = new Ink(Color.WHITE, Color.BLACK, new Color(0xb5, 0x38, 0x1f), 1);

  /** Light on a dark ground, in the same weights. */
  static final Ink ON_DARK = new Ink(Color.BLACK, Color.WHITE, new Color(0xff, 0xb0, 0x90), 1);

  Ink heavier(double times) {
    return new Ink(ground, lines, accent, times);
  }
}
