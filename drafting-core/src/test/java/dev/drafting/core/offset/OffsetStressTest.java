package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.offset.sample.OffsetJudge;
import dev.drafting.core.offset.sample.RandomOutline;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Seeded outlines of every kind with distances from -30 to +40 mm and a treatment for every corner:
 * all come out simple (JTS is the judge), every tagged point lies at its distance, and what is
 * refused is refused by the name of an edge. The bench table {@code fuzz} does the same with as
 * many as one likes.
 */
class OffsetStressTest {
  private static final int EACH = Integer.getInteger("seeds", 600);
  private static final int MOST_REFUSED = 10;

  @ParameterizedTest
  @EnumSource
  void outlinesComeOutSimple(RandomOutline.Kind kind) {
    int refused = 0;
    for (int seed = 0; seed < EACH; seed++) {
      RandomOutline outline = RandomOutline.of(kind, seed);
      try {
        List<String> faults = OffsetJudge.faults(outline.edges(), outline.offset().result(), 0.01);
        assertEquals(List.of(), faults, "seed " + seed);
      } catch (DraftingException complaint) {
        assertTrue(
            outline.edges().stream().anyMatch(edge -> edge.name().equals(complaint.where())),
            () -> complaint.toString());
        refused++;
      }
    }
    boolean roomy = kind == RandomOutline.Kind.GARMENT || kind == RandomOutline.Kind.TRACED;
    assertTrue(refused <= (roomy ? 0 : MOST_REFUSED), refused + " refused");
  }
}
