package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** However many points are traced, and wherever they lie, truing comes to an end soon. */
class TruingLimitTest {
  private static final int MANY = 20_000;

  /** Half a towel whose side wanders by so much, with points closer than any pencil sets them. */
  private static Truing towel(double wander) {
    Random random = new Random(1);
    List<Point> side = new ArrayList<>();
    side.add(new Point(200, 0));
    for (int i = 1; i < MANY; i++) {
      side.add(new Point(200 + wander * random.nextGaussian(), 600.0 * i / MANY));
    }
    side.add(new Point(200, 600));
    TracedEdge hem = TracedEdge.of("hem", List.of(new Point(0, 0), new Point(200, 0)));
    TracedEdge top = TracedEdge.of("top", List.of(new Point(200, 600), new Point(0, 600)));
    List<TracedEdge> edges = List.of(hem, TracedEdge.of("side", side), top);
    return Truing.of(Tracing.of("towel", Extent.HALF_ON_FOLD, edges)).withSmoothing(Length.mm(0.1));
  }

  @Test
  void manyPointsThatLieAlongAnEdgeAreTrued() {
    TruedPiece trued = towel(0.1).result();
    assertTrue(trued.report().edge("side").isStraight());
    assertEquals(600, trued.piece().edge("side").curve().length().toMm(), 0.5);
  }

  @Test
  void manyPointsThatLieAlongNoEdgeAreRefused() {
    DraftingException refused = assertThrows(DraftingException.class, () -> towel(3).result());
    assertEquals("towel / side", refused.where());
    assertEquals("the points lie along no edge, however it is bent", refused.what());
  }
}
