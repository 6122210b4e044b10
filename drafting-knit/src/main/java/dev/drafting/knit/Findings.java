package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.CasingCheck;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.hem.HemCheck;
import dev.drafting.knit.hem.TurnedHem;
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
