package dev.drafting.export.store;

import static dev.drafting.export.store.Json.fields;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.MarkSpacing;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.sewing.Construction;
import dev.drafting.knit.sewing.Detail;
import dev.drafting.knit.sewing.Machines;
import dev.drafting.knit.sewing.SewingChoices;
import dev.drafting.knit.sewing.Stitch;
import dev.drafting.knit.sewing.StitchType;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** How the maker sews: machines, rules for strips, what sewn strips have taught. */
final class SewingFields {
  private static final Set<StripRule.Kind> LENGTHS =
      Set.of(StripRule.Kind.SHORTER_BY, StripRule.Kind.LOOP, StripRule.Kind.ALREADY_CUT);

  private SewingFields() {}

  static Map<String, Object> of(SewingChoices choices) {
    Machines machines = choices.machines();
    Map<String, Object> stitches = new LinkedHashMap<>();
    machines.stitches().forEach((name, stitch) -> stitches.put(name, of(stitch)));
    return fields(
        "seams", of(machines.seams()),
        "hems", of(machines.hems()),
        "allowance", machines.allowance(),
        "stitches", stitches,
        "allowances", machines.allowances(),
        "construction", choices.construction(),
        "taped", choices.taped(),
        "details", choices.details());
  }

  private static Map<String, Object> of(Stitch stitch) {
    return fields("type", stitch.type(), "length", stitch.length(), "width", stitch.width());
  }

  static Map<String, Object> of(StripRule rule) {
    return fields(
        "kind", rule.kind(),
        "share", rule.kind() == StripRule.Kind.RATIO ? rule.share() : null,
        "length", LENGTHS.contains(rule.kind()) ? rule.length() : null,
        "joinAllowance", rule.joinAllowance(),
        "joinAt", rule.joinAt().orElse(null),
        "marks", rule.marks(),
        "lap", rule.lap().isZero() ? null : rule.lap());
  }

  static Map<String, Object> of(SewnResult result) {
    return fields(
        "fabric", result.fabric(),
        "finishedEdge", result.finishedEdge(),
        "loop", result.loop(),
        "seen", result.seen());
  }

  static SewingChoices choices(Node node) {
    return node.placed(
        () -> {
          Machines machines =
              Machines.of(
                  stitch(node.get("seams")),
                  stitch(node.get("hems")),
                  node.get("allowance").length());
          for (Map.Entry<String, Node> own : node.get("stitches").all().entrySet()) {
            machines = machines.withStitch(own.getKey(), stitch(own.getValue()));
          }
          for (Map.Entry<String, Node> own : node.get("allowances").all().entrySet()) {
            machines = machines.withAllowance(own.getKey(), own.getValue().length());
          }
          SewingChoices choices =
              SewingChoices.of()
                  .withMachines(machines)
                  .withConstruction(node.get("construction").constant(Construction.class));
          for (String seam : node.get("taped").list(Node::text)) {
            choices = choices.withTape(seam);
          }
          for (Detail detail : node.get("details").list(item -> item.constant(Detail.class))) {
            choices = choices.withDetail(detail);
          }
          return choices;
        });
  }

  private static Stitch stitch(Node node) {
    return node.placed(
        () ->
            Stitch.of(node.get("type").constant(StitchType.class))
                .withLength(node.get("length").length())
                .withWidth(node.get("width").length()));
  }

  static StripRule rule(Node node) {
    return node.placed(
        () -> {
          StripRule rule =
              switch (node.get("kind").constant(StripRule.Kind.class)) {
                case RECOMMENDED -> StripRule.recommended();
                case RATIO -> StripRule.ratio(node.get("share").number());
                case SHORTER_BY -> StripRule.shorterBy(node.get("length").length());
                case LOOP -> StripRule.loop(node.get("length").length());
                case ALREADY_CUT -> StripRule.alreadyCut(node.get("length").length());
              };
          StripRule joined =
              rule.withJoinAllowance(node.get("joinAllowance").length())
                  .withMarks(node.get("marks").constant(MarkSpacing.class))
                  .withLap(node.find("lap").map(Node::length).orElse(Length.ZERO));
          return node.find("joinAt").map(at -> joined.withJoinAt(at.text())).orElse(joined);
        });
  }

  static SewnResult result(Node node) {
    return node.placed(
        () ->
            SewnResult.of(
                node.get("fabric").text(),
                node.get("finishedEdge").length(),
                node.get("loop").length(),
                node.get("seen").constant(Outcome.class)));
  }
}
