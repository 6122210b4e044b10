package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeDrawingTest {
  private static final Piece HALF =
      Piece.of(
          "front",
          List.of(
              Edge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0))),
              Edge.of("side", Curve.line(new Point(200, 0), new Point(200, 300))),
              Edge.of("top", Curve.line(new Point(200, 300), new Point(0, 300))),
              Edge.onFold(Curve.line(new Point(0, 300), new Point(0, 0)))));

  private final AlterationRecord tube =
      AlterationRecord.of(
          Pattern.of(
              "tube",
              List.of(HALF, Piece.of("back", HALF.edges())),
              List.of(Seam.of("side", "front side", "back side"))));

  @Test
  void drawsWhatWasUnderWhatIs() {
    Drawing drawing = ChangeDrawing.of(tube.with(Alteration.takeIn("side", Length.mm(10))));
    assertEquals("tube, altered", drawing.title());
    assertEquals(List.of("front", "back"), drawing.groups().stream().map(Group::name).toList());
    Group front = drawing.groups().get(0);
    assertEquals(
        List.of("hem before", "side before", "top before"),
        front.strokes(StrokeStyle.BEFORE).stream().map(Stroke::name).toList());
    assertEquals(3, front.strokes(StrokeStyle.FINISHED_EDGE).size());
    assertEquals(1, front.strokes(StrokeStyle.FOLD).size());
    assertTrue(
        front.labels().stream()
            .anyMatch(
                label -> label.text().equals("hem: 200 mm, now 190 mm; moved by up to 10 mm")));
  }

  @Test
  void drawsAnyTwoPatternsOfOneGarment() {
    Pattern wider = Alteration.letOut("side", Length.mm(4)).applyTo(tube.base());
    Drawing drawing = ChangeDrawing.of("in another fabric", tube.base(), wider);
    assertEquals("in another fabric", drawing.title());
    assertEquals(2, drawing.groups().size());
  }

  @Test
  void saysSoIfNothingWasAltered() {
    assertEquals(
        "Nothing was changed.", ChangeDrawing.of(tube).groups().get(0).labels().get(0).text());
  }
}
