package dev.drafting.notebooks;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the comments {@code // => TEXT} behind a statement say that it prints.
 *
 * @param lines the promised lines, none if nothing is promised
 * @param length how many characters the comments take
 */
record Promise(List<String> lines, int length) {
  private static final Pattern COMMENT = Pattern.compile("\\s*// => ?([^\\n]*)");

  /** The promise at the very beginning of a text. */
  static Promise at(String text) {
    Matcher matcher = COMMENT.matcher(text);
    List<String> lines = new ArrayList<>();
    int end = 0;
    while (matcher.region(end, text.length()).lookingAt()) {
      lines.add(matcher.group(1).stripTrailing());
      end = matcher.end();
    }
    return new Promise(lines, end);
  }

  /** Fails unless the outcome is as promised; an exception must be promised. */
  void check(Outcome outcome, String place) {
    if (lines.isEmpty()) {
      if (outcome.thrown()) {
        throw new AssertionError(place + "\nthrew " + outcome.text());
      }
      return;
    }
    String promised = String.join("\n", lines);
    String quoted = '"' + promised + '"';
    if (!outcome.text().equals(promised) && !outcome.text().equals(quoted)) {
      throw new AssertionError(place + "\npromised: " + promised + "\n   found: " + outcome.text());
    }
  }
}
