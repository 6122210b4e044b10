package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Piece;
import org.junit.jupiter.api.Test;

class TracedOutsideTest {
  private static final Truing CUT_EDGES =
      Truing.of(new Vest.Pencil(1, 0, 10).half())
          .withTracedOutside("hem", Length.mm(20))
          .withTracedOutside("side", Length.mm(10))
          .withTracedOutside("neck", Length.mm(-6));

  private static void assertBeside(Piece piece, String edge, double distance) {
    Curve finished = piece.edge(edge).curve();
    for (int i = 1; i < 20; i++) {
      var at = finished.pointAt(finished.length().times(i / 20.0));
      double off = Vest.edge(edge).nearest(at).distance().toMm();
      assertTrue(Math.abs(off - distance) < 0.0015 || i < 3 || i > 17, edge + " " + i + ": " + off);
    }
  }

  @Test
  void theFinishedEdgesLieInsideWhatWasTraced() {
    Piece piece = CUT_EDGES.result().piece();
    assertBeside(piece, "hem", 20);
    assertBeside(piece, "side", 10);
    assertBeside(piece, "neck", 6);
    assertBeside(piece, "armhole", 0);
    assertBeside(piece, "shoulder", 0);
    assertEquals(506, piece.edge("fold").length().toMm(), 1e-6);
    assertTrue(piece.outline().selfCrossings().isEmpty());
    assertEquals(Truing.of(CUT_EDGES.tracing()).result().report(), CUT_EDGES.result().report());
  }

  /** An allowance that was added comes off again. */
  @Test
  void aWholePieceIsDrawnInsideOnBothSides() {
    Tracing whole = new Vest.Pencil(1, 0, 10).whole(Transform.identity());
    Truing truing = Truing.of(whole).withTracedOutside("side", Length.mm(10));
    Piece inside = truing.result().piece();
    Piece plain = Truing.of(whole).result().piece();
    double narrower = plain.edge("hem").curve().end().x() - inside.edge("hem").curve().end().x();
    assertEquals(10, narrower, 0.6);
    assertEquals(plain, Truing.of(whole).withTracedOutside("side", Length.ZERO).result().piece());
  }

  @Test
  void whatCannotLieInsideIsRefused() {
    Truing plain = Truing.of(CUT_EDGES.tracing());
    assertEquals(
        "front: side: what was traced lies too far from the finished edge. Found: 101 mm. "
            + "Accepted: 100 mm outside to 100 mm inside.",
        assertThrows(DraftingException.class, () -> plain.withTracedOutside("side", Length.mm(101)))
            .getMessage());
    assertThrows(DraftingException.class, () -> plain.withTracedOutside("sleeve", Length.mm(10)));
    Truing swallowed =
        plain.withTracedOutside("armhole", Length.mm(60)).withTracedOutside("neck", Length.mm(60));
    assertEquals(
        "nothing is left of an edge inside what was traced",
        assertThrows(DraftingException.class, swallowed::result).what());
  }

  @Test
  void theDistancesArePartOfTheValue() {
    assertNotEquals(Truing.of(CUT_EDGES.tracing()), CUT_EDGES);
    assertEquals(CUT_EDGES, CUT_EDGES.withTracedOutside("side", Length.mm(10)));
    assertEquals(
        CUT_EDGES.hashCode(), CUT_EDGES.withTracedOutside("side", Length.mm(10)).hashCode());
  }
}
