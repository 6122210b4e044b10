package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;

/** The names of pieces, edges, seams and marks: short enough to be printed on paper. */
final class Names {
  private static final int LONGEST = 60;

  private Names() {}

  static void check(String what, String name) {
    boolean plain =
        !name.isBlank()
            && name.equals(name.strip())
            && name.length() <= LONGEST
            && name.codePoints().allMatch(Names::isPlain);
    if (!plain) {
      throw DraftingException.of("the name of " + what + " cannot be used")
          .value(name.isEmpty() ? "an empty name" : name)
          .accepted("1 to " + LONGEST + " letters, digits, spaces and . , ' - + & ( )");
    }
  }

  private static boolean isPlain(int c) {
    return Character.isLetterOrDigit(c)
        || Character.getType(c) == Character.NON_SPACING_MARK
        || " .,'-+&()".indexOf(c) >= 0;
  }
}
