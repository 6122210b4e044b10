package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A finish: its id and settings, the lines that follow from them, and the words for it. */
final class FinishFields {
  private final Reading reading;

  FinishFields(Reading reading) {
    this.reading = reading;
  }

  static Map<String, Object> of(Finish finish) {
    return fields(
        "id", finish.id(),
        "settings", finish.settings(),
        "profile",
            finish.profile().lines().stream()
                .map(line -> List.of(Json.word(line.role()), line.distance()))
                .toList(),
        "words", finish.describe());
  }

  Finish read(Node node) {
    String id = node.get("id").text();
    String words = node.get("words").text();
    Map<String, String> settings = settings(node.get("settings"));
    Profile profile = profile(node.get("profile"));
    Optional<Finish> known = node.placed(() -> reading.types().finish(id, settings));
    if (known.isEmpty()) {
      reading.unknownFinish(id, words);
    } else if (!known.get().profile().equals(profile)) {
      reading.otherProfile(id, words);
    }
    return known.orElseGet(() -> new StoredFinish(id, settings, profile, words));
  }

  static Map<String, String> settings(Node node) {
    Map<String, String> settings = new LinkedHashMap<>();
    node.all().forEach((name, value) -> settings.put(name, value.text()));
    return settings;
  }

  private static Profile profile(Node node) {
    ProfileLine[] lines = node.list(FinishFields::line).toArray(ProfileLine[]::new);
    return node.placed(() -> Profile.of(lines));
  }

  private static ProfileLine line(Node node) {
    List<Node> pair = node.list(item -> item);
    if (pair.size() != 2) {
      throw node.fault("this is no line of a finish").accepted("its role and its distance");
    }
    return new ProfileLine(pair.get(0).constant(LineRole.class), pair.get(1).length());
  }
}
