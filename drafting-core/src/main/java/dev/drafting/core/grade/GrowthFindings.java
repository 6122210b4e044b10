package dev.drafting.core.grade;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Seams whose sides do not grow alike. */
final class GrowthFindings {
  private GrowthFindings() {}

  static List<Finding> of(Grading grading) {
    List<SeamGrowth> growths = grading.growths();
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : grading.base().seams()) {
      growths.stream()
          .filter(growth -> growth.seam().equals(seam.name()))
          .filter(SeamGrowth::isUnequal)
          .max(Comparator.comparing(growth -> growth.difference().abs()))
          .ifPresent(growth -> findings.add(corrected(grading, seam, growth)));
    }
    return List.copyOf(findings);
  }

  /** The rule that would put it right comes first. */
  private static Finding corrected(Grading grading, Seam seam, SeamGrowth growth) {
    Finding finding = unequal(seam, growth);
    Finding solved =
        GradeCorrection.of(grading, seam, growth).map(finding::withRemedy).orElse(finding);
    return solved.withRemedy(byHand(seam, growth));
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
            + ".");
  }

  private static Remedy byHand(Seam seam, SeamGrowth growth) {
    return Remedy.of(
            "Move the corners at the ends of "
                + names(seam.second())
                + " so that it is "
                + SeamGrowth.words(growth.first())
                + ", or those of "
                + names(seam.first())
                + " so that it is "
                + SeamGrowth.words(growth.second())
                + ".")
        .with("growth.difference", growth.difference().toString());
  }

  private static String names(List<EdgeRef> edges) {
    return edges.stream()
        .map(edge -> edge.piece() + " " + edge.edge())
        .collect(Collectors.joining(" with "));
  }
}
