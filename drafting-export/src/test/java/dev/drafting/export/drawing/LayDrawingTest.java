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
        .withStrip("left armhole binding", Length.cm(60), Length.cm(4))
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
        List.of("cloth", "tie", "left armhole binding"),
        drawing.groups().stream().map(Group::name).toList());
    assertTrue(
        words(drawing).containsAll(List.of("FOLD", "SELVAGE", "50 cm")), words(drawing).toString());
    assertEquals(
        "Cloth 150 cm wide, folded lengthwise, one way",
        words(drawing).stream().filter(text -> text.startsWith("Cloth")).findFirst().orElse(""));
    assertTrue(words(drawing).contains("2 is left armhole binding"), words(drawing).toString());
    assertEquals("2", drawing.groups().get(2).labels().get(0).text());
  }

  /** Nobody is told to cut where the fold is. */
  @Test
  void theFoldIsNoCutLine() {
    LayPlan plan =
        Lay.on(Cloth.of(Length.cm(90)).foldedLengthwise())
            .withStrip("band", Length.cm(60), Length.cm(4))
            .plan(1, 3);
    Drawing drawing = LayDrawing.of("vest", plan);
    assertEquals(640.0 / 5, drawing.groups().get(1).strokes().get(0).curve().length().toMm(), 1e-9);
  }

  /** A shop cuts whole centimetres and quarters of an inch, and never too little. */
  @Test
  void theClothIsToldAsAShopCutsIt() {
    LayPlan plan =
        LayPlan.of(
            Lay.on(Cloth.of(Length.cm(90))),
            plan(Cloth.of(Length.cm(150))).pieces(),
            Length.mm(730.12),
            List.of());
    assertTrue(
        words(LayDrawing.of("vest", plan)).stream()
            .anyMatch(text -> text.startsWith("74 cm (28 3/4 in) long, ")),
        () -> words(LayDrawing.of("vest", plan)).toString());
    assertEquals(Length.mm(730.12), plan.length());
  }

  @Test
  void isDrawnAtAFifth() {
    Drawing drawing = LayDrawing.of("vest", plan(Cloth.of(Length.cm(150))));
    Group band = drawing.groups().get(2);
    assertEquals(120, band.strokes().get(0).bounds().height().toMm(), 1e-9);
  }
}
