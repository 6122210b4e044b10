package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;

/** A draft in one line. */
final class DraftText {
  private DraftText() {}

  static String of(Draft draft) {
    return draft.name()
        + ": "
        + draft.pattern().pieces().size()
        + " pieces, openings "
        + String.join(", ", draft.openings().stream().map(Opening::name).toList())
        + ", fabrics "
        + (draft.fabrics().isEmpty() ? "none yet" : String.join(", ", draft.fabrics().keySet()))
        + ", wearer "
        + draft.wearer();
  }
}
