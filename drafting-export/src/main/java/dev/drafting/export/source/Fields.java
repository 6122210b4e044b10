package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** The fields of a JSON object, all of them known. */
final class Fields {
  private final Entry object;
  private final Map<String, Entry> fields;

  private Fields(Entry object, Map<String, Entry> fields) {
    this.object = object;
    this.fields = fields;
  }

  static Fields of(Entry object, Map<String, Entry> fields) {
    return new Fields(object, fields);
  }

  /** Refuses a field that is not among the known ones. */
  void require(List<String> known) {
    for (Map.Entry<String, Entry> field : fields.entrySet()) {
      if (!known.contains(field.getKey())) {
        DraftingException fault =
            DraftingException.of("the field is unknown").value(field.getKey());
        throw field.getValue().place(fault.accepted(String.join(", ", known)));
      }
    }
  }

  /** The object that has these fields. */
  Entry object() {
    return object;
  }

  /** A field that has to be there. */
  Entry get(String name) {
    return find(name)
        .orElseThrow(
            () ->
                object.place(
                    DraftingException.of("a field is missing")
                        .accepted("the field \"" + name + "\"")));
  }

  /** A field that may be left out. */
  Optional<Entry> find(String name) {
    return Optional.ofNullable(fields.get(name));
  }

  /** What a field that may be left out says, or else this. */
  <T> T or(String name, T otherwise, Function<Entry, T> reading) {
    return find(name).map(reading).orElse(otherwise);
  }

  /** A thing as it is, or changed by what a field says that may be left out. */
  <T> T change(T thing, String name, BiFunction<T, Entry, T> setting) {
    return find(name).map(value -> setting.apply(thing, value)).orElse(thing);
  }
}
