package dev.drafting.core.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Vests;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A gape taken out of a front without a fold, to its right or to its left. */
class GapeTest {
  private static final Piece FRONT = Vests.plain().piece("front").unfolded();
  private static final Length EIGHT = Length.mm(8);

  private static Piece closed(int first, String edge, String pivot) {
    return closed(first, edge, EIGHT, pivot);
  }

  private static Piece closed(int first, String edge, Length amount, String pivot) {
    List<Edge> edges = new ArrayList<>(FRONT.edges());
    Collections.rotate(edges, -first);
    Pattern front = Pattern.of("vest", List.of(Piece.of("front", edges)), List.of());
    return Alteration.takeOutGape("front " + edge, amount, pivot).applyTo(front).piece("front");
  }

  private static Point end(Piece piece, String edge) {
    return piece.edge(edge).curve().end();
  }

  @Test
  void itReadsWell() {
    Alteration gape = Alteration.takeOutGape("front neck", EIGHT, "armhole");
    assertEquals(
        "take a gape of 8 mm out of front / neck, running to nothing at armhole", gape.describe());
    assertEquals(gape.describe(), gape.toString());
  }

  @Test
  void whatTurnsKeepsItsShapeAndTheRestItsPlace() {
    Piece closed = closed(0, "armhole (right)", "shoulder (right)");
    double before = FRONT.edge("armhole (right)").length().toMm();
    assertEquals(before - 8, closed.edge("armhole (right)").length().toMm(), 1e-6);
    for (Edge edge : FRONT.edges()) {
      boolean turned = edge.name().equals("armhole (right)");
      double off = edge.curve().end().distanceTo(end(closed, edge.name())).toMm();
      assertEquals(turned, off > 1e-9, edge.name() + " moved by " + off);
    }
  }

  /** The left side is the right one in a mirror, wherever the outline is begun. */
  @Test
  void itIsTheSameOnEitherSideAndFromWhereverThePieceIsTold() {
    Piece right = closed(0, "armhole (right)", "shoulder (right)");
    for (int first = 0; first < FRONT.edges().size(); first++) {
      Piece same = closed(first, "armhole (right)", "shoulder (right)");
      Piece left = closed(first, "armhole (left)", "shoulder (left)");
      for (Edge edge : FRONT.edges()) {
        Point there = end(right, edge.name());
        assertEquals(0, end(same, edge.name()).distanceTo(there).toMm(), 1e-9, edge.name());
        String other =
            edge.name().contains("(right)")
                ? edge.name().replace("right", "left")
                : edge.name().replace("left", "right");
        Point mirrored = left.edge(other).curve().start().mirrored();
        assertEquals(0, mirrored.distanceTo(there).toMm(), 1e-6, edge.name());
      }
    }
  }

  /**
   * Turned about the middle of the side, its upper end takes out of the armhole what lies between
   * them at first, and adds to it beyond: by 30 degrees the armhole is longer than it was.
   */
  @Test
  void aSmallTurnIsFoundWhereAWideOneWouldLengthenTheEdge() {
    Length half = Length.mm(0.5);
    Piece closed = closed(0, "armhole (right)", half, "side (right)");
    double before = FRONT.edge("armhole (right)").length().toMm();
    assertEquals(before - 0.5, closed.edge("armhole (right)").length().toMm(), 1e-6);
    DraftingException e =
        assertThrows(DraftingException.class, () -> closed(0, "armhole (right)", "side (right)"));
    assertEquals("the edge cannot give up so much", e.what());
  }

  @Test
  void anEdgeDoesNotTurnAboutItself() {
    DraftingException e = assertThrows(DraftingException.class, () -> closed(0, "neck", "neck"));
    assertTrue(e.what().startsWith("no part of the piece can turn"), e.what());
  }
}
