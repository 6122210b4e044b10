package dev.drafting.export.source;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Things by their names; a name that differs from another only by capital letters is refused. */
final class Unique<T> {
  private final String what;
  private final Map<String, T> byName = new LinkedHashMap<>();
  private final Map<String, String> spellings = new LinkedHashMap<>();

  Unique(String what) {
    this.what = what;
  }

  void put(Entry entry, String name, T thing) {
    String before = spellings.putIfAbsent(name.toLowerCase(Locale.ROOT), name);
    if (before != null) {
      throw entry
          .fault("two of them have one name")
          .value(name)
          .accepted("a name of its own for each " + what);
    }
    byName.put(name, thing);
  }

  /** All of them in the order they were put in. */
  Map<String, T> all() {
    return Collections.unmodifiableMap(byName);
  }
}
