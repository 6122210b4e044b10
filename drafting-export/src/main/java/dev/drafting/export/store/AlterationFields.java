package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was altered: each alteration by id and settings, with the pattern that it gave. */
final class AlterationFields {
  private final Reading reading;
  private final PatternFields patterns;

  AlterationFields(Reading reading, PatternFields patterns) {
    this.reading = reading;
    this.patterns = patterns;
  }

  static List<Map<String, Object>> of(AlterationRecord record) {
    List<Map<String, Object>> list = new ArrayList<>();
    Pattern pattern = record.base();
    for (AlterationRecord.Entry entry : record.entries()) {
      pattern = entry.alteration().applyTo(pattern);
      list.add(of(entry, pattern));
    }
    return list;
  }

  private static Map<String, Object> of(AlterationRecord.Entry entry, Pattern result) {
    Alteration alteration = entry.alteration();
    return fields(
        "id", alteration.id(),
        "settings", alteration.settings(),
        "words", alteration.describe(),
        "note", entry.note(),
        "result", PatternFields.of(result));
  }

  AlterationRecord read(Pattern base, Node list) {
    AlterationRecord record = AlterationRecord.of(base);
    Pattern pattern = base;
    for (Node node : list.list(item -> item)) {
      Pattern result = patterns.read(node.get("result"));
      record = record.with(alteration(node, pattern, result), node.get("note").text());
      pattern = result;
    }
    return record;
  }

  private Alteration alteration(Node node, Pattern before, Pattern result) {
    String id = node.get("id").text();
    String words = node.get("words").text();
    Map<String, String> settings = FinishFields.settings(node.get("settings"));
    Optional<Alteration> known = node.placed(() -> reading.types().alteration(id, settings));
    if (known.isEmpty()) {
      reading.unknownAlteration(id, words);
    } else if (gives(known.get(), before, result)) {
      return known.get();
    } else {
      reading.otherResult(id, words);
    }
    return new StoredAlteration(id, settings, words, before, result);
  }

  private static boolean gives(Alteration alteration, Pattern before, Pattern result) {
    try {
      return alteration.applyTo(before).equals(result);
    } catch (DraftingException e) {
      return false; // it can no longer be made so
    }
  }
}
