package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import dev.drafting.export.TestDrawings;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DrawingTest {
  @Test
  void groupsStandSideBySideOnOneLine() {
    Drawing drawing = TestDrawings.vest();
    assertEquals(new Box(0, 0, 510, 670), drawing.bounds());
    assertEquals(270, drawing.groups().get(1).bounds().minX());
    assertEquals(
        "Boathouse vest: front (4 lines, 1 texts), back (4 lines, 1 texts), 510 x 670 mm",
        drawing.toString());
  }

  @Test
  void drawingsAreValues() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(TestDrawings.vest());
    }
    Object back = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray())).readObject();
    assertEquals(TestDrawings.vest(), back);
    assertEquals(TestDrawings.vest().hashCode(), back.hashCode());
  }

  @Test
  void nothingIsNoDrawing() {
    assertThrows(DraftingException.class, () -> Drawing.of("empty", List.of()));
    assertThrows(DraftingException.class, () -> new Group("empty", List.of()));
    assertThrows(DraftingException.class, () -> Label.of("flat", new Point(0, 0), Length.ZERO));
  }

  /** Liberation Sans has the widths of the Helvetica metrics: H 722, e 556, m 833 of 1000. */
  @Test
  void widthsAreThoseOfTheFont() {
    double em = 10 * Lettering.EM;
    assertEquals(0.722 * em, Lettering.width("H", Length.mm(10)).toMm(), 0.001 * em);
    assertEquals((0.556 + 0.833) * em, Lettering.width("em", Length.mm(10)).toMm(), 0.001 * em);
  }

  @Test
  void textsKeepTheirAnchorWhenMapped() {
    Label label = Label.of("FOLD", new Point(10, 5), Length.mm(4)).withAnchor(Anchor.END);
    Label twice = label.map(Transform.scaling(2));
    assertEquals(new Point(20, 10), twice.at());
    assertEquals(Length.mm(8), twice.height());
    assertEquals(20, twice.bounds().maxX(), 1e-9);
    assertEquals(2 * label.bounds().width().toMm(), twice.bounds().width().toMm(), 1e-9);
  }

  @Test
  void longWordsAreBrokenWithin() {
    Length height = Length.mm(5);
    List<String> lines = Lettering.wrap("a ".repeat(20) + "w".repeat(50), height, Length.mm(40));
    assertTrue(lines.size() > 5, lines.toString());
    lines.forEach(line -> assertTrue(Lettering.width(line, height).toMm() <= 40, line));
    assertEquals("w".repeat(50), String.join("", lines).replace("a", "").replace(" ", ""));
  }

  @Test
  void roomIsFoundInsideAnOutlineAndBesideOtherThings() {
    Curve outline = TestDrawings.rectangle("", 100, 100).strokes().get(0).curve();
    FreeRoom room = FreeRoom.inside(outline);
    Point middle = new Point(50, 50);
    Point first = room.find(Length.mm(40), Length.mm(20), middle).orElseThrow();
    assertEquals(new Point(30, 40), first);
    room.take(new Stroke(StrokeStyle.FRAME, "", Curve.line(new Point(0, 50), new Point(100, 50))));
    Point second = room.find(Length.mm(40), Length.mm(20), middle).orElseThrow();
    assertTrue(second.y() >= 52 || second.y() + 20 <= 48, second.toString());
    assertEquals(Optional.empty(), room.find(Length.mm(40), Length.mm(60), middle));
  }

  @Test
  void theLegendExplainsWhatIsUsed() {
    List<String> words = Legend.of(TestDrawings.vest()).labels().stream().map(Label::text).toList();
    assertTrue(words.contains("cut here"), words.toString());
    assertFalse(words.contains(StrokeStyle.NOTCH.meaning()), words.toString());
  }

  @Test
  void styleWeightsAreOfTheIso128Series() {
    List<Double> series = List.of(0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0);
    for (StrokeStyle style : StrokeStyle.values()) {
      assertTrue(series.contains(style.weight().toMm()), style.toString());
      assertTrue(
          style == StrokeStyle.CUT_LINE
              || style.weight().compareTo(StrokeStyle.CUT_LINE.weight()) < 0);
    }
  }

  @Test
  void plainNamesCannotLeaveAFolder() {
    assertEquals("etc-passwd", PlainName.of("../../etc/passwd"));
    assertEquals("c-windows", PlainName.of("C:\\windows"));
    assertEquals("unnamed", PlainName.of(".."));
    assertEquals("te", PlainName.of("T\u00e9\u0000"));
    assertEquals(60, PlainName.of("x".repeat(10_000)).length());
  }

  /**
   * Unicode Standard Annex 9, the example of a quotation (from memory): capitals stand for letters
   * of a script written from right to left, here Hebrew ones.
   */
  @Test
  void textsFromRightToLeftAreDrawnInTheirOrder() {
    assertEquals(
        "he said \u201c" + hebrew("KO ,") + "789 ,456 ,123" + hebrew(" ERA SEULAV EHT") + "\u201d.",
        Lettering.drawn(
            "he said \u201c"
                + hebrew("THE VALUES ARE ")
                + "123, 456, 789"
                + hebrew(", OK")
                + "\u201d."));
    assertEquals("\u05dd\u05d5\u05dc\u05e9", Lettering.drawn("\u05e9\u05dc\u05d5\u05dd"));
    assertEquals("neck", Lettering.drawn("neck"));
  }

  private static String hebrew(String capitals) {
    StringBuilder text = new StringBuilder();
    capitals.chars().forEach(c -> text.append((char) (c >= 'A' ? '\u05d0' + c - 'A' : c)));
    return text.toString();
  }

  @Test
  void longLinesAreShortenedToTheirRoom() {
    Length room = Length.mm(40);
    String line = Lettering.shortened("x".repeat(10_000), Length.mm(3), room);
    assertTrue(line.endsWith("\u2026"), line);
    assertTrue(Lettering.width(line, Length.mm(3)).compareTo(room) <= 0);
    assertTrue(Lettering.width(line + "x", Length.mm(3)).compareTo(room) > 0);
    assertEquals("neck", Lettering.shortened("neck", Length.mm(3), room));
  }
}
