package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.CasingCheck;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.hem.HemCheck;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Gathers what fabrics, fit and hems have to say. */
final class Findings {
  private Findings() {}

  static List<Finding> of(
      Pattern pattern,
      List<Opening> openings,
      Collection<Fabric> used,
      Wearer wearer,
      Function<String, Fabric> fabrics) {
    List<Finding> findings = new ArrayList<>();
    used.forEach(fabric -> findings.addAll(fabric.findings()));
    findings.addAll(chest(pattern, wearer, fabrics));
    for (Opening opening : openings) {
      if (opening.finish() instanceof TurnedHem hem) {
        findings.addAll(HemCheck.findings(opening, hem));
      }
      if (opening.finish() instanceof Casing casing) {
        findings.addAll(CasingCheck.findings(opening, casing));
      }
      if (opening.finish() instanceof BandFinish) {
        Plackets.of(pattern, opening)
            .filter(placket -> placket.along().isPresent())
            .ifPresent(placket -> findings.add(marksElsewhere(opening)));
      }
    }
    pattern.patches().forEach(patch -> findings.addAll(withoutStrip(pattern, patch)));
    return findings;
  }

  /** Marks are counted from places where edges meet, and a placket off the fold is none. */
  private static Finding marksElsewhere(Opening opening) {
    return Finding.note(
            "placket.marks",
            Place.opening(opening.name()),
            "The marks of the strip are counted from its usual join, and its ends lie at the"
                + " placket.")
        .withRemedy(
            Remedy.of(
                "Lay the strip round from the placket, and set the quarters of both anew from"
                    + " there."));
  }

  /** Strips are worked out for the openings of the garment, and a pocket's mouth is none. */
  private static List<Finding> withoutStrip(Pattern pattern, Patch patch) {
    List<Finding> findings = new ArrayList<>();
    for (String open : patch.openEdges()) {
      Edge edge = pattern.piece(patch.piece()).edge(open);
      if (edge.finish() instanceof BandFinish band) {
        findings.add(
            Finding.warning(
                    "patch.no-strip",
                    Place.edge(patch.piece(), open),
                    "No strip is cut for this edge, which is finished with a "
                        + band.noun()
                        + ": strips are worked out for the openings of the garment.")
                .withRemedy(Remedy.of("Turn the edge up instead."))
                .withRemedy(
                    Remedy.of(
                        "Cut a strip by hand for an edge of "
                            + Wording.amount(edge.length())
                            + ".")));
      }
    }
    return findings;
  }

  private static List<Finding> chest(
      Pattern pattern, Wearer wearer, Function<String, Fabric> fabrics) {
    return wearer
        .chest()
        .flatMap(body -> Measures.chestGirth(pattern).map(girth -> Ease.of(body, girth)))
        .map(ease -> ease.findings(fabrics.apply(pattern.pieces().get(0).cloth()), "chest"))
        .orElse(List.of());
  }

  static List<Finding> inOrder(List<Finding> findings) {
    return findings.stream()
        .sorted(
            Comparator.comparing(Finding::severity)
                .reversed()
                .thenComparing(finding -> finding.place().toString())
                .thenComparing(Finding::id))
        .toList();
  }
}
