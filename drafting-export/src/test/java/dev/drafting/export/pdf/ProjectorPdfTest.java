package dev.drafting.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.export.TestDrawings;
import dev.drafting.export.drawing.Drawing;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

class ProjectorPdfTest {
  private static final ProjectorPdf LIGHT = ProjectorPdf.of();
  private static final float DPI = 50.8f;

  private static Rendered page(ProjectorPdf format) throws IOException {
    return Rendered.page(Rendered.bytes(format, TestDrawings.vest()), 0, DPI);
  }

  /** Squares 304.8 mm wide left of 240 + 30 + 240 mm of pieces, 40 mm around and between. */
  @Test
  void onePageAtFullSizeHoldsAllPieces() throws IOException {
    try (PDDocument document = Loader.loadPDF(Rendered.bytes(LIGHT, TestDrawings.vest()))) {
      assertEquals(1, document.getNumberOfPages());
      double width = document.getPage(0).getMediaBox().getWidth() * 25.4 / 72;
      assertEquals(304.8 + 240 + 30 + 240 + 3 * 40, width, 0.01);
    }
  }

  /** The left side of the front lies 40 + 304.8 + 40 mm from the left. */
  @Test
  void theSquareAndThePieceAreTrueAndLinesAreHeavier() throws IOException {
    byte[] pdf = Rendered.bytes(LIGHT, TestDrawings.vest());
    double left = Rendered.lineAcross(pdf, 0, 36, 44, 60);
    assertEquals(40, left, 0.1);
    assertEquals(304.8, Rendered.lineAcross(pdf, 0, 340, 349, 60) - left, 0.1);
    assertEquals(384.8, Rendered.lineAcross(pdf, 0, 380, 390, 60), 0.1);
    Rendered page = Rendered.page(pdf, 0, 127);
    double black = 0;
    for (int x = 380 * 5; x < 390 * 5; x++) {
      black += page.darkness(x, page.height() - 300) / 255.0 / 5;
    }
    assertEquals(3 * 0.7, black, 0.2);
  }

  @Test
  void theDarkGroundIsTheLightOneInverted() throws IOException {
    Rendered light = page(LIGHT);
    Rendered dark = page(LIGHT.onDark());
    for (int y = 0; y < light.height(); y += 3) {
      for (int x = 0; x < light.width(); x += 3) {
        assertEquals(255 - light.darkness(x, y), dark.darkness(x, y), 1);
      }
    }
    assertEquals(255, dark.darkness(1, 1));
  }

  /** Pixel by pixel the other way round, but for those that a line shares with its ground. */
  @Test
  void theMirroredPageIsTheOtherWayRound() throws IOException {
    Rendered right = page(LIGHT);
    Rendered mirrored = page(LIGHT.mirrored());
    long unlike = 0;
    long dark = 0;
    for (int y = 0; y < right.height(); y++) {
      for (int x = 1; x < right.width() - 1; x++) {
        int there = right.darkness(x, y);
        int here = 0;
        for (int shift = -1; shift <= 1; shift++) {
          int at = Math.min(right.width() - 1, Math.max(0, right.width() - 1 - x + shift));
          here = Math.max(here, mirrored.darkness(at, y));
        }
        dark += there > 200 ? 1 : 0;
        unlike += there > 200 && here < 100 ? 1 : 0;
      }
    }
    assertTrue(dark > 10_000);
    assertEquals(0, unlike);
  }

  @Test
  void whatDoesNotServeIsRefused() {
    Drawing long1 = Drawing.of("long", TestDrawings.rectangle("sail", 300, 6000));
    assertThrows(DraftingException.class, () -> LIGHT.write(long1, new ByteArrayOutputStream()));
    assertThrows(DraftingException.class, () -> LIGHT.withHeavierLines(0.5));
    assertThrows(DraftingException.class, () -> LIGHT.withHeavierLines(Double.NaN));
    assertEquals("PDF for a projector, lines 4.5 times as heavy", LIGHT.withHeavierLines(4.5) + "");
    assertEquals(Length.mm(7), ProjectorPdf.LETTERS);
  }
}
