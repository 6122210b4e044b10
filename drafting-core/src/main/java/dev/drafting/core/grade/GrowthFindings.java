package dev.drafting.core.grade;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Seams whose sides do not grow alike. */
final class GrowthFindings {
  /** What may be sewn together without a thought (common practice, no source). */
  private static final Length ALIKE = Length.mm(1);

  private GrowthFindings() {}

  static List<Finding> of(Pattern base, List<SeamGrowth> growths) {
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : base.seams()) {
      growths.stream()
          .filter(growth -> growth.seam().equals(seam.name()))
          .filter(growth -> growth.difference().abs().compareTo(ALIKE) > 0)
          .max(Comparator.comparing(growth -> growth.difference().abs()))
          .ifPresent(growth -> findings.add(unequal(seam, growth)));
    }
    return List.copyOf(findings);
  }

  private static Finding unequal(Seam seam, SeamGrowth growth) {
    String first = names(seam.first());
    String second = names(seam.second());
    String amount = growth.difference().abs().text(LengthUnit.MM, 1);
    return Finding.warning(
            "grade.seam-unequal",
            Place.seam(seam.name()),
            "In size "
                + growth.size()
                + " "
                + first
                + " is "
                + SeamGrowth.words(growth.first())
                + " than in the base size and "
                + second
                + " "
                + SeamGrowth.words(growth.second())
                + ": the sides no longer meet by "
                + amount
                + ".")
        .withRemedy(
            Remedy.of(
                    "Move the corners at the ends of "
                        + second
                        + " so that it is "
                        + SeamGrowth.words(growth.first())
                        + ", or those of "
                        + first
                        + " so that it is "
                        + SeamGrowth.words(growth.second())
                        + ".")
                .with("growth.difference", growth.difference().toString()));
  }

  private static String names(List<EdgeRef> edges) {
    return edges.stream()
        .map(edge -> edge.piece() + " " + edge.edge())
        .collect(Collectors.joining(" with "));
  }
}
