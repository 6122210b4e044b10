package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.offset.sample.RandomGarments;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * Thousands of seeded garment-like outlines with distances from -30 to +40 mm on every edge: none
 * is refused, all come out simple (JTS is the judge), and every tagged point lies at its distance.
 */
class OffsetStressTest {
  private static final int EACH = 500;

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5})
  void garmentsComeOutSimple(int block) {
    for (int seed = block * EACH; seed < (block + 1) * EACH; seed++) {
      List<OffsetEdge> edges = new RandomGarments(seed).any();
      OffsetResult result = Offset.of(edges).result();
      IsValidOp judge = new IsValidOp(OwnDistance.polygon(result));
      String which = "seed " + seed + ": " + edges;
      assertTrue(judge.isValid(), () -> which + ": " + judge.getValidationError());
      OwnDistance.check(edges, result, 0.01);
    }
  }
}
