package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.TruedPiece;
import dev.drafting.core.trace.Truing;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TracingDrawingTest {
  private static TracedEdge line(String name, double x, double y, double toX, double toY) {
    double[] xy = new double[42];
    for (int i = 0; i <= 20; i++) {
      xy[2 * i] = x + (toX - x) * i / 20;
      xy[2 * i + 1] = y + (toY - y) * i / 20;
    }
    if (name.equals("side")) {
      xy[20] += 15; // a slip of the pencil
    }
    return TracedEdge.of(name, xy);
  }

  private static final List<TracedEdge> HALF =
      List.of(
          line("hem", 0, 0, 200, 0), line("side", 200, 0, 200, 300), line("top", 200, 300, 0, 300));

  private static Drawing drawn(Tracing tracing) {
    TruedPiece trued = Truing.of(tracing).result();
    return TracingDrawing.of("tube", List.of(tracing), List.of(trued));
  }

  @Test
  void theStrokesLieUnderTheFinishedEdges() {
    Group front = drawn(Tracing.of("front", Extent.HALF_ON_FOLD, HALF)).groups().get(0);
    assertEquals("front", front.name());
    assertEquals(
        List.of("hem traced", "side traced", "top traced"),
        front.strokes(StrokeStyle.TRACED).stream().map(Stroke::name).toList());
    assertEquals(3, front.strokes(StrokeStyle.FINISHED_EDGE).size());
    assertEquals(1, front.strokes(StrokeStyle.FOLD).size());
    Stroke refused = front.strokes(StrokeStyle.FINDING).get(0);
    assertEquals(215, refused.bounds().minX() + refused.bounds().width().toMm() / 2, 1e-9);
    List<String> words = front.labels().stream().map(Label::text).toList();
    assertTrue(
        words.contains("hem: straight, 200 mm ± 0 mm; traced within 0 mm"), words.toString());
    assertTrue(words.contains("refused, a diamond each: 1"), words.toString());
  }

  @Test
  void bothHalvesOfAWholePieceAreDrawn() {
    List<TracedEdge> all = new ArrayList<>();
    for (TracedEdge edge : HALF) {
      all.add(edge);
      all.add(TracedEdge.of(edge.name(), edge.points().map(Transform.mirrorInFold())));
    }
    Group whole = drawn(Tracing.of("back", Extent.WHOLE, all)).groups().get(0);
    assertEquals(6, whole.strokes(StrokeStyle.TRACED).size());
    assertEquals(6, whole.strokes(StrokeStyle.FINISHED_EDGE).size());
    assertEquals(2, whole.strokes(StrokeStyle.FINDING).size());
  }

  @Test
  void everyTracingHasItsPiece() {
    Tracing tracing = Tracing.of("front", Extent.HALF_ON_FOLD, HALF);
    assertEquals(
        "tube: there are not as many pieces as tracings. Found: 0 pieces. "
            + "Accepted: 1 pieces, in the order of the tracings.",
        assertThrows(
                DraftingException.class,
                () -> TracingDrawing.of("tube", List.of(tracing), List.of()))
            .getMessage());
  }
}
