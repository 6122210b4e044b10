package dev.drafting.export.store;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The settings of a finish or an alteration, as they are read. */
final class Settings {
  private final Map<String, String> settings;

  Settings(Map<String, String> settings) {
    this.settings = settings;
  }

  Optional<String> find(String name) {
    return Optional.ofNullable(settings.get(name));
  }

  String text(String name) {
    return find(name)
        .orElseThrow(
            () ->
                DraftingException.of("a setting is missing")
                    .value(String.join(", ", settings.keySet()))
                    .accepted("the setting \"" + name + "\""));
  }

  Length length(String name) {
    return Length.parse(text(name));
  }

  double number(String name) {
    try {
      return Double.parseDouble(text(name));
    } catch (NumberFormatException e) {
      throw unknown(name, "a number").because(e);
    }
  }

  /** What the value of a setting means. */
  <T> T choice(String name, Map<String, T> known) {
    T meant = known.get(text(name));
    if (meant == null) {
      throw unknown(name, String.join(", ", known.keySet()));
    }
    return meant;
  }

  private DraftingException unknown(String name, String accepted) {
    return DraftingException.of("the setting \"" + name + "\" is unknown")
        .value(text(name))
        .accepted(accepted);
  }

  /** The settings whose names begin so, without that beginning. */
  Map<String, String> after(String prefix) {
    Map<String, String> some = new LinkedHashMap<>();
    settings.forEach(
        (name, value) -> {
          if (name.startsWith(prefix)) {
            some.put(name.substring(prefix.length()), value);
          }
        });
    return some;
  }
}
