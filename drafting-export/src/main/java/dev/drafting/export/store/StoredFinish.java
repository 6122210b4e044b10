package dev.drafting.export.store;

import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Profile;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** A finish that only its author's program can make; its lines are drawn as they were stored. */
@SuppressWarnings("serial") // always an unmodifiable view of a LinkedHashMap
record StoredFinish(String id, Map<String, String> settings, Profile profile, String describe)
    implements Finish {
  StoredFinish {
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
  }

  @Override
  public String toString() {
    return describe;
  }
}
