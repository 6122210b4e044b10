package dev.drafting.knit.band;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What bands and bindings accept as their measures, and how they hand them out as settings. */
final class BandWidths {
  private static final Length NARROWEST = Length.mm(3);
  private static final Length WIDEST = Length.mm(200);

  /** The row of stitching lies this far from the edge of the strip (common practice, 2 to 3 mm). */
  static final Length TOPSTITCH_MARGIN = Length.mm(2);

  private BandWidths() {}

  static Length showing(Length showing) {
    return within("width that shows", showing, NARROWEST, WIDEST);
  }

  static Length within(String what, Length length, Length least, Length most) {
    if (length.compareTo(least) < 0 || length.compareTo(most) > 0) {
      throw DraftingException.of("the " + what + " is out of range")
          .value(length)
          .accepted(least + " to " + most);
    }
    return length;
  }

  static String cloth(String cloth) {
    if (cloth.isBlank()) {
      throw DraftingException.of("the cloth of a strip has no name").accepted("such as \"rib\"");
    }
    return cloth;
  }

  static Map<String, String> settings(String... keysAndValues) {
    Map<String, String> settings = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      settings.put(keysAndValues[i], keysAndValues[i + 1]);
    }
    return Collections.unmodifiableMap(settings);
  }
}
