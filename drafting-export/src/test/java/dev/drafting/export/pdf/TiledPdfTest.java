package dev.drafting.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.export.TestDrawings;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class TiledPdfTest {
  private static final TiledPdf A4 = TiledPdf.on(Paper.A4);

  private static String text(byte[] pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      return stripper.getText(document).replaceAll("[\\s\u00a0]+", " ");
    }
  }

  @Test
  void theSameDrawingGivesTheSameBytes() throws IOException {
    byte[] once = Rendered.bytes(A4, TestDrawings.vest());
    assertArrayEquals(once, Rendered.bytes(A4, TestDrawings.vest()));
  }

  @Test
  void theFileSaysItsTitleAndLanguageAsksForNoFittingAndKnowsNoClock() throws IOException {
    try (PDDocument document = Loader.loadPDF(Rendered.bytes(A4, TestDrawings.vest()))) {
      assertEquals("Boathouse vest", document.getDocumentInformation().getTitle());
      assertNull(document.getDocumentInformation().getCreationDate());
      assertNull(document.getDocumentInformation().getModificationDate());
      assertEquals("en-GB", document.getDocumentCatalog().getLanguage());
      PDViewerPreferences wishes = document.getDocumentCatalog().getViewerPreferences();
      assertEquals("None", wishes.getPrintScaling());
      assertTrue(wishes.displayDocTitle());
    }
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    try (PDDocument document = Loader.loadPDF(Rendered.bytes(A4, TestDrawings.vest()))) {
      int fonts = 0;
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertTrue(page.getResources().getFont(name).isEmbedded());
          fonts++;
        }
      }
      assertTrue(fonts > 0);
    }
  }

  /** Half a front of 240 x 670 mm: four A4 sheets across instead of two by three upright. */
  @Test
  void paperIsTurnedWhenThatNeedsFewerSheets() throws IOException {
    try (PDDocument document = Loader.loadPDF(Rendered.bytes(A4, TestDrawings.vest()))) {
      assertEquals(2 + 4 + 4, document.getNumberOfPages());
      assertEquals(595.276, document.getPage(0).getMediaBox().getWidth(), 0.001);
      assertEquals(841.890, document.getPage(0).getMediaBox().getHeight(), 0.001);
      assertEquals(841.890, document.getPage(2).getMediaBox().getWidth(), 0.001);
      assertEquals(595.276, document.getPage(2).getMediaBox().getHeight(), 0.001);
    }
  }

  @Test
  void sheetsAreCountedAndSayWhatToDoWithThem() throws IOException {
    byte[] pdf = Rendered.bytes(A4, TestDrawings.vest());
    String first = text(pdf, 1);
    assertTrue(first.contains("Print this sheet first, alone"), first);
    assertTrue(first.contains("Sheets 3 to 6: front"), first);
    assertTrue(first.contains("at most 0.5 mm"), first);
    String plan = text(pdf, 2);
    assertTrue(plan.contains("cut line 240 mm (9.4 in) across, 670 mm (26.4 in)"), plan);
    String sheet = text(pdf, 4);
    assertTrue(sheet.contains("front B1"), sheet);
    assertTrue(sheet.contains("sheet 4 of 10"), sheet);
    assertTrue(sheet.contains("Cut off the top margin."), sheet);
    assertTrue(sheet.contains("C1 goes here"), sheet);
    assertTrue(text(pdf, 3).contains("Cut nothing off."));
  }

  /** Margins of both sheets are cut off at a joint, and no strip is shared. */
  @Test
  void sheetsMayBeLaidEdgeToEdge() throws IOException {
    TiledPdf butt = A4.withButtJoints();
    assertEquals("PDF on A4, margin 10 mm, edge to edge", butt.toString());
    byte[] pdf = Rendered.bytes(butt, TestDrawings.vest());
    assertTrue(text(pdf, 2).contains("edge to edge"), text(pdf, 2));
    assertTrue(text(pdf, 3).contains("Cut off the bottom margin."), text(pdf, 3));
    assertTrue(text(pdf, 3).contains("B1 comes edge to edge"), text(pdf, 3));
    assertTrue(text(pdf, 4).contains("Cut off the top and the bottom margin."), text(pdf, 4));
    assertFalse(text(pdf, 4).contains("dashed line"), text(pdf, 4));
    PieceSheets sheets = PieceSheets.of(TestDrawings.front("front"), Paper.A4, 10, 0);
    for (int i = 1; i < sheets.cells().size(); i++) {
      double upper = sheets.tiling().window(sheets.cells().get(i - 1)).minY();
      assertEquals(upper, sheets.tiling().window(sheets.cells().get(i)).maxY(), 1e-9);
    }
  }

  /** What a sheet is comes before what is on it, for those who have it read to them. */
  @Test
  void aSheetIsReadFromItsName() throws IOException {
    try (PDDocument document = Loader.loadPDF(Rendered.bytes(A4, TestDrawings.vest()))) {
      PDFTextStripper asWritten = new PDFTextStripper();
      asWritten.setSortByPosition(false);
      asWritten.setStartPage(4);
      asWritten.setEndPage(4);
      String text = asWritten.getText(document).strip();
      assertTrue(text.replaceAll(" +", " ").startsWith("front B1"), text);
    }
  }

  @Test
  void emptySheetsAreLeftOutAndInnerOnesKept() {
    Group ring = TestDrawings.rectangle("large", 900, 1100);
    assertEquals(25, PieceSheets.of(ring, Paper.A4, 10, 10).cells().size());
    List<Element> corner = new ArrayList<>();
    TestDrawings.rectangle("", 900, 50).strokes().forEach(corner::add);
    TestDrawings.rectangle("", 50, 1100).strokes().forEach(corner::add);
    PieceSheets bent = PieceSheets.of(new Group("bent", corner), Paper.A4, 10, 10);
    assertEquals(5 + 5 - 1, bent.cells().size());
    assertFalse(bent.across());
  }

  @Test
  void hostileNamesArePrintedAndMissingCharactersAreSeen() throws IOException {
    String name = "<b>\"fr\u00f6nt\"</b> & (co) \\ \ud83d\ude00 \u5927 %PDF";
    byte[] pdf = Rendered.bytes(A4, Drawing.of("t\u0000i\nt\ud800le", TestDrawings.front(name)));
    String sheet = text(pdf, 3);
    assertTrue(sheet.contains("<b>\"fr\u00f6nt\"</b> & (co) \\ \u25a1 \u25a1 %PDF"), sheet);
    assertTrue(sheet.contains("t i t\u25a1le"), sheet);
  }

  @Test
  void anInterruptedThreadCancels() {
    Thread.currentThread().interrupt();
    DraftingException cancelled =
        assertThrows(
            DraftingException.class,
            () -> A4.write(TestDrawings.vest(), new ByteArrayOutputStream()));
    assertTrue(Thread.interrupted());
    assertEquals("cancelled", cancelled.what());
  }

  @Test
  void marginAndOverlapOutOfRangeAreRefused() {
    assertThrows(DraftingException.class, () -> A4.withMargin(Length.mm(2)));
    assertThrows(DraftingException.class, () -> A4.withOverlap(Length.mm(31)));
    assertEquals(
        "PDF on A4, margin 12 mm, overlap 15 mm",
        A4.withMargin(Length.mm(12)).withOverlap(Length.mm(15)).toString());
  }
}
