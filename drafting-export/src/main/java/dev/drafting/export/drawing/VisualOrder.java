package dev.drafting.export.drawing;

import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;

/** Texts of scripts written from right to left, in the order in which their letters are drawn. */
final class VisualOrder {
  private static final String OPEN = "([{<\u00ab\u2039";
  private static final String CLOSED = ")]}>\u00bb\u203a";

  private VisualOrder() {}

  /** The text from the leftmost letter to the rightmost, by the Unicode bidirectional algorithm. */
  static String of(String text) {
    if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
      return text;
    }
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    int count = bidi.getRunCount();
    byte[] levels = new byte[count];
    Object[] runs = new Object[count];
    for (int i = 0; i < count; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      String run = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
      runs[i] = levels[i] % 2 == 0 ? run : reversed(run);
    }
    Bidi.reorderVisually(levels, 0, runs, 0, count);
    StringBuilder visual = new StringBuilder(text.length());
    for (Object run : runs) {
      visual.append(run);
    }
    return visual.toString();
  }

  /** Marks over a letter stay behind it, brackets open to the other side. */
  private static String reversed(String run) {
    List<String> letters = new ArrayList<>();
    run.codePoints()
        .forEach(
            c -> {
              String letter = Character.toString(mirrored(c));
              boolean mark = Character.getType(c) == Character.NON_SPACING_MARK;
              if (mark && !letters.isEmpty()) {
                letters.set(letters.size() - 1, letters.get(letters.size() - 1) + letter);
              } else {
                letters.add(letter);
              }
            });
    StringBuilder reversed = new StringBuilder(run.length());
    for (int i = letters.size() - 1; i >= 0; i--) {
      reversed.append(letters.get(i));
    }
    return reversed.toString();
  }

  private static int mirrored(int character) {
    int open = OPEN.indexOf(character);
    int closed = CLOSED.indexOf(character);
    if (open >= 0) {
      return CLOSED.charAt(open);
    }
    return closed >= 0 ? OPEN.charAt(closed) : character;
  }
}
