package dev.drafting.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.measure.Length;
import dev.drafting.export.TestDrawings;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class WidePdfTest {
  private static final WidePdf ROLL = WidePdf.onRoll(Length.inches(36));

  /** 36 in are 2592 units of 1/72 in; the front is 670 mm high and has 10 mm margins. */
  @Test
  void aRollIsAsWideAsItSaysAndAsLongAsThePiecesNeed() throws IOException {
    try (PDDocument document = Loader.loadPDF(Rendered.bytes(ROLL, TestDrawings.vest()))) {
      assertEquals(1, document.getNumberOfPages());
      assertEquals(2592, document.getPage(0).getMediaBox().getWidth(), 1e-3);
      assertEquals(690 * 72 / 25.4, document.getPage(0).getMediaBox().getHeight(), 1e-3);
    }
  }

  @Test
  void theFirstSheetHasSquaresLegendAndTheNamesOfThePieces() throws IOException {
    byte[] pdf = Rendered.bytes(WidePdf.on(Paper.A0), TestDrawings.vest());
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document);
      for (String words : List.of("100 mm", "4 in", "Measure a square first", "front", "back")) {
        assertTrue(text.contains(words), words);
      }
      assertTrue(text.contains("The lines") && text.contains("sheet 1 of 1"), text);
    }
    assertArrayEquals(pdf, Rendered.bytes(WidePdf.on(Paper.A0), TestDrawings.vest()));
  }

  @Test
  void theSquaresAreTrue() throws IOException {
    byte[] pdf = Rendered.bytes(ROLL, TestDrawings.vest());
    double middle = 690 - 10 - 90;
    double left = Rendered.lineAcross(pdf, 0, 8, 12, middle);
    assertEquals(10, left, 0.1);
    assertEquals(100, Rendered.lineAcross(pdf, 0, 108, 112, middle) - left, 0.1);
    double inches = Rendered.lineAcross(pdf, 0, 118, 122, middle);
    assertEquals(101.6, Rendered.lineAcross(pdf, 0, 220, 223, middle) - inches, 0.1);
  }

  @Test
  void kindsOfLinesAreLayers() throws IOException {
    for (byte[] pdf :
        List.of(
            Rendered.bytes(ROLL, TestDrawings.vest()),
            Rendered.bytes(TiledPdf.on(Paper.A4), TestDrawings.vest()))) {
      try (PDDocument document = Loader.loadPDF(pdf)) {
        Set<String> names = Set.of(document.getDocumentCatalog().getOCProperties().getGroupNames());
        assertTrue(
            names.containsAll(Set.of("cut line", "join line", "fold", "marking", "words")),
            names.toString());
      }
    }
  }

  /** Groups never overlap and stay within the width; as many come out as went in. */
  @Test
  void manyPiecesGoOnSeveralSheetsSideBySide() {
    List<Group> pieces = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      pieces.add(TestDrawings.rectangle("piece " + i, 120 + 11 * i, 900 - 17 * i));
    }
    Group first = TestDrawings.rectangle("squares", 215, 140);
    List<Shelves.Sheet> sheets = Shelves.of(first, pieces, 821, 1169);
    assertEquals("squares", sheets.get(0).groups().get(0).name());
    int count = 0;
    for (Shelves.Sheet sheet : sheets) {
      assertTrue(sheet.height() <= 1169);
      List<Box> boxes = sheet.groups().stream().map(Group::bounds).toList();
      for (int i = 0; i < boxes.size(); i++) {
        Box box = boxes.get(i);
        assertTrue(box.minX() > -1e-6 && box.maxX() < 821 + 1e-6 && box.minY() > -1169 - 1e-6);
        for (int j = 0; j < i; j++) {
          Box other = boxes.get(j);
          boolean apart =
              box.minX() >= other.maxX()
                  || other.minX() >= box.maxX()
                  || box.minY() >= other.maxY()
                  || other.minY() >= box.maxY();
          assertTrue(apart, sheet.groups().get(i).name());
        }
      }
      count += boxes.size();
    }
    assertEquals(41, count);
  }

  @Test
  void aPieceWiderThanTheSheetIsRefusedByName() {
    Drawing wide = Drawing.of("wide", TestDrawings.rectangle("curtain", 900, 500));
    DraftingException refused =
        assertThrows(
            DraftingException.class,
            () -> WidePdf.on(Paper.A0).write(wide, new ByteArrayOutputStream()));
    assertEquals("curtain", refused.where());
    assertEquals("900 x 500 mm", refused.value());
    assertThrows(DraftingException.class, () -> WidePdf.onRoll(Length.mm(200)));
    assertThrows(DraftingException.class, () -> ROLL.withMargin(Length.mm(4)));
    assertFalse(ROLL.withMargin(Length.mm(20)).toString().contains("10 mm"));
  }
}
