package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.knit.Wearer;
import dev.drafting.knit.band.BodyPart;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** Who will wear the garment, as far as it is known. */
final class WearerFields {
  private WearerFields() {}

  static Map<String, Object> of(Wearer wearer) {
    Map<String, Object> girths = new LinkedHashMap<>();
    Arrays.stream(BodyPart.values())
        .forEach(part -> wearer.girth(part).ifPresent(girth -> girths.put(Json.word(part), girth)));
    return fields(
        "chest",
        wearer.chest().orElse(null),
        "girths",
        girths,
        "height",
        wearer.height().orElse(null),
        "age",
        wearer.age().isPresent() ? wearer.age().getAsInt() : null);
  }

  static Wearer read(Node node) {
    return node.placed(
        () -> {
          Wearer wearer = Wearer.of();
          Node girths = node.get("girths");
          for (BodyPart part : BodyPart.values()) {
            if (girths.find(Json.word(part)).isPresent()) {
              wearer = wearer.withGirth(part, girths.get(Json.word(part)).length());
            }
          }
          if (node.find("chest").isPresent()) {
            wearer = wearer.withChest(node.get("chest").length());
          }
          if (node.find("height").isPresent()) {
            wearer = wearer.withHeight(node.get("height").length());
          }
          return node.find("age").isPresent() ? wearer.withAge(node.get("age").count()) : wearer;
        });
  }
}
