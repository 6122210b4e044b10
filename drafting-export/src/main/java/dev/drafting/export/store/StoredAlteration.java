package dev.drafting.export.store;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Pattern;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * An alteration whose result is taken as it was stored, because it cannot be made again or would
 * come out otherwise.
 */
@SuppressWarnings("serial") // always an unmodifiable view of a LinkedHashMap
record StoredAlteration(
    String id, Map<String, String> settings, String describe, Pattern before, Pattern after)
    implements Alteration {
  StoredAlteration {
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
  }

  @Override
  public Pattern applyTo(Pattern pattern) {
    if (!pattern.equals(before)) {
      throw DraftingException.of("only its result is known, which was stored for another pattern")
          .at(describe)
          .value(pattern.name())
          .accepted("the pattern that it was stored with, or types that know \"" + id + "\"");
    }
    return after;
  }

  @Override
  public String toString() {
    return describe;
  }
}
