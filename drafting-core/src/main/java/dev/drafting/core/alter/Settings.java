package dev.drafting.core.alter;

import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Names, values and words of alterations. */
final class Settings {
  private Settings() {}

  /** Names and values in turn. */
  static Map<String, String> of(Object... pairs) {
    Map<String, String> settings = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      settings.put(pairs[i].toString(), pairs[i + 1].toString());
    }
    return Collections.unmodifiableMap(settings);
  }

  /** A length without its sign. */
  static String amount(Length length) {
    return length.abs().text(LengthUnit.MM);
  }
}
