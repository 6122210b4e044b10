package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.lay.LayPlan;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class LayDrawingTest {
  private static LayPlan plan(Cloth cloth) {
    return Lay.on(cloth)
        .withStrip("band", Length.cm(60), Length.cm(4))
        .withStripAlong("tie", Length.cm(62), Length.cm(3))
        .plan(1, 3);
  }

  private static List<String> words(Drawing drawing) {
    return drawing.groups().get(0).labels().stream().map(Label::text).toList();
  }

  @Test
  void namesFoldAndSelvageAndEveryPiece() {
    Drawing drawing = LayDrawing.of("vest", plan(Cloth.of(Length.cm(150)).foldedLengthwise()));
    assertEquals("vest, lay plan", drawing.title());
    assertEquals(
        List.of("cloth", "tie", "band"), drawing.groups().stream().map(Group::name).toList());
    assertTrue(
        words(drawing).containsAll(List.of("FOLD", "SELVAGE", "50 cm")), words(drawing).toString());
    assertEquals(
        "Cloth 150 cm wide, folded lengthwise, one way",
        words(drawing).stream().filter(text -> text.startsWith("Cloth")).findFirst().orElse(""));
  }

  @Test
  void isDrawnAtAFifth() {
    Drawing drawing = LayDrawing.of("vest", plan(Cloth.of(Length.cm(150))));
    Group band = drawing.groups().get(2);
    assertEquals(120, band.strokes().get(0).bounds().height().toMm(), 1e-9);
  }
}
