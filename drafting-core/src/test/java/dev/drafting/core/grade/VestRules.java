package dev.drafting.core.grade;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.trace.TapedHalf;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A vest of 92 cm round, and the rules of practice for 4 cm of girth. */
final class VestRules {
  private VestRules() {}

  static Pattern vest() {
    return Pattern.of(
        "vest",
        List.of(half(10).piece("front"), half(3).piece("back")),
        List.of(
            Seam.of("shoulder", "front shoulder", "back shoulder"),
            Seam.of("side", "front side", "back side")));
  }

  private static TapedHalf half(double neckDepth) {
    return TapedHalf.of("half", Length.cm(64))
        .withHem(Length.cm(48))
        .withUnderarm(Length.cm(46), Length.cm(22))
        .withShoulder(Length.cm(7), Length.cm(2))
        .withNeck(Length.cm(20), Length.cm(neckDepth));
  }

  /**
   * A quarter of the girth at the side, a quarter of 1 cm at the neck, 3.5 mm more of shoulder, 5
   * mm more of armhole (common practice, no source).
   */
  static List<GradeRule> rules(String piece) {
    return List.of(
        rule(piece, "fold", "hem", 0, -5),
        rule(piece, "hem", "side", 10, -5),
        rule(piece, "side", "armhole", 10, 0),
        rule(piece, "armhole", "shoulder", 6, 4.5),
        rule(piece, "shoulder", "neck", 2.5, 5),
        rule(piece, "neck", "fold", 0, 4));
  }

  static GradeRule rule(String piece, String edge, String next, double across, double along) {
    return GradeRule.of(piece, edge, next, Length.mm(across), Length.mm(along));
  }

  static Grading grading() {
    List<GradeRule> rules = new ArrayList<>(rules("front"));
    rules.addAll(rules("back"));
    return Grading.of(vest(), "M", rules).with("S", -1).with("L", 1).with("XL", 2).with("3XL", 3.5);
  }

  /** The rule for one corner that a finding proposes first. */
  static GradeRule proposed(Finding finding) {
    Map<String, String> data = finding.remedies().get(0).data();
    return GradeRule.of(
        data.getOrDefault("grade.piece", ""),
        data.getOrDefault("grade.edge", ""),
        data.getOrDefault("grade.next", ""),
        Length.parse(data.getOrDefault("grade.across", "")),
        Length.parse(data.getOrDefault("grade.along", "")));
  }
}
