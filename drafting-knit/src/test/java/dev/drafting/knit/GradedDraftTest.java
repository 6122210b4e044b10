package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.grade.GradeRule;
import dev.drafting.core.grade.Grading;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Every size of a copied garment is a draft of its own, with the fabrics and rules of the first.
 */
class GradedDraftTest {
  private static GradeRule rule(String piece, String edge, String next, double x, double y) {
    return GradeRule.of(piece, edge, next, Length.mm(x), Length.mm(y));
  }

  private static Grading sizes() {
    List<GradeRule> rules = new ArrayList<>();
    for (String piece : List.of("front", "back")) {
      rules.add(rule(piece, "hem", "side", 10, 0));
      rules.add(rule(piece, "side", "armhole", 10, 0));
      rules.add(rule(piece, "armhole", "shoulder", 6, 4.5));
      rules.add(rule(piece, "shoulder", "neck", 2.5, 5));
      rules.add(rule(piece, "neck", "fold", 0, 4));
    }
    return Grading.of(Vest.plain().pattern(), "M", rules).with("S", -1).with("L", 1).with("XL", 2);
  }

  private static Draft draft() {
    return Draft.of(Vest.plain().pattern())
        .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.35))
        .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80))
        .withStripRule("neck", StripRule.ratio(0.85));
  }

  /** The neck of M is as the draft's; its strip is 0.85 of the join line in every size. */
  @Test
  void everySizeHasStripsOfItsOwn() {
    Draft first = draft();
    double below = 0;
    for (Map.Entry<String, Pattern> size : sizes().patterns().entrySet()) {
      Draft sized = first.withAlterations(AlterationRecord.of(size.getValue()));
      Strip neck = neck(sized);
      double loop = neck.loop().toMm();
      assertTrue(loop > below, size.getKey());
      assertEquals(0.85, loop / neck.joinLine().toMm(), 1e-9);
      below = loop;
      if (size.getKey().equals("M")) {
        assertEquals(neck(first).loop(), neck.loop());
      }
    }
  }

  private static Strip neck(Draft draft) {
    return draft.strips().stream()
        .filter(strip -> strip.opening().name().equals("neck"))
        .findFirst()
        .orElseThrow();
  }

  /** Worked by hand: 92 cm round, 4 cm a size (common practice, no source). */
  @Test
  void theChestGrowsByFourCentimetresASize() {
    List<Double> chests =
        sizes().patterns().values().stream()
            .map(pattern -> Draft.of(pattern).measures().get(0).length().toCm())
            .toList();
    List<Double> expected = List.of(88.0, 92.0, 96.0, 100.0);
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i), chests.get(i), 1e-6);
    }
  }

  @Test
  void nothingGoesWrongInAnySizeThatWasRightInTheFirst() {
    List<String> first = ids(draft());
    for (Pattern pattern : sizes().patterns().values()) {
      assertEquals(first, ids(draft().withAlterations(AlterationRecord.of(pattern))));
    }
  }

  private static List<String> ids(Draft draft) {
    return draft.findings().stream().map(finding -> finding.id()).distinct().sorted().toList();
  }
}
