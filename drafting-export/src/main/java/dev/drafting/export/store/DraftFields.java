package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.Brief;
import dev.drafting.knit.Draft;
import dev.drafting.knit.band.SewnResult;
import java.util.LinkedHashMap;
import java.util.Map;

/** Everything that a draft was given. */
final class DraftFields {
  private final PatternFields patterns;
  private final AlterationFields alterations;

  DraftFields(Reading reading) {
    this.patterns = new PatternFields(reading);
    this.alterations = new AlterationFields(reading, patterns);
  }

  static Map<String, Object> of(Brief brief) {
    Map<String, Object> rules = new LinkedHashMap<>();
    brief.stripRules().forEach((opening, rule) -> rules.put(opening, SewingFields.of(rule)));
    return fields(
        "name", brief.name(),
        "pattern", PatternFields.of(brief.alterations().base()),
        "alterations", AlterationFields.of(brief.alterations()),
        "fabrics", FabricFields.of(brief.fabrics()),
        "wearer", WearerFields.of(brief.wearer()),
        "original", FabricFields.of(brief.original().orElse(null)),
        "stripRules", rules,
        "sewnResults", brief.sewnResults().stream().map(SewingFields::of).toList(),
        "sewing", SewingFields.of(brief.sewing()));
  }

  Draft read(Node node) {
    Pattern base = patterns.read(node.get("pattern"));
    AlterationRecord record = alterations.read(base, node.get("alterations"));
    return node.placed(
        () -> {
          Brief brief =
              Brief.of(base)
                  .withName(node.get("name").text())
                  .withAlterations(record)
                  .withWearer(WearerFields.read(node.get("wearer")))
                  .withSewing(SewingFields.choices(node.get("sewing")));
          return Draft.of(withResults(withFabrics(brief, node), node));
        });
  }

  private static Brief withFabrics(Brief plain, Node node) {
    Brief brief = plain;
    for (Map.Entry<String, Node> cloth : node.get("fabrics").all().entrySet()) {
      brief = brief.withFabric(cloth.getKey(), FabricFields.fabric(cloth.getValue()));
    }
    return node.find("original").isPresent()
        ? brief.withOriginal(FabricFields.original(node.get("original")))
        : brief;
  }

  private static Brief withResults(Brief plain, Node node) {
    Brief brief = plain;
    for (Map.Entry<String, Node> opening : node.get("stripRules").all().entrySet()) {
      brief = brief.withStripRule(opening.getKey(), SewingFields.rule(opening.getValue()));
    }
    for (SewnResult result : node.get("sewnResults").list(SewingFields::result)) {
      brief = brief.withSewnResult(result);
    }
    return brief;
  }
}
