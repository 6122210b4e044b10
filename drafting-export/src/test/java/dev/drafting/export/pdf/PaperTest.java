package dev.drafting.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;

class PaperTest {
  /** ISO 216: A4 is 210 x 297 mm, in the units of PDF (1/72 in) 595.276 x 841.890. */
  @Test
  void a4HasTheSizeOfIso216() {
    assertEquals(595.276, Paper.A4.width().toMm() * PdfCanvas.POINTS_PER_MM, 0.0005);
    assertEquals(841.890, Paper.A4.height().toMm() * PdfCanvas.POINTS_PER_MM, 0.0005);
  }

  /** ISO 216 halves the next larger size and keeps the ratio of one to the root of two. */
  @Test
  void a4KeepsItsRatioWhenItIsHalved() {
    double ratio = Paper.A4.height().ratioTo(Paper.A4.width());
    assertEquals(Math.sqrt(2), ratio, 0.005);
  }

  /** ANSI/ASME Y14.1: size A is 8.5 x 11 in, in the units of PDF 612 x 792. */
  @Test
  void letterIsEightAndAHalfByElevenInches() {
    assertEquals(612, Paper.LETTER.width().toMm() * PdfCanvas.POINTS_PER_MM, 1e-9);
    assertEquals(792, Paper.LETTER.height().toMm() * PdfCanvas.POINTS_PER_MM, 1e-9);
    assertEquals("Letter, 215.9 x 279.4 mm", Paper.LETTER.toString());
  }

  /** ISO 216: A3 is 297 x 420 mm, A0 841 x 1189 mm; ANSI Legal is 8.5 x 14 in. */
  @Test
  void theOtherPapersHaveTheirSizesOfTheStandards() {
    assertEquals("A3, 297 x 420 mm", Paper.A3.toString());
    assertEquals("A0, 841 x 1189 mm", Paper.A0.toString());
    assertEquals("Legal, 215.9 x 355.6 mm", Paper.LEGAL.toString());
  }

  @Test
  void paperTooSmallForTheTestSquaresIsRefused() {
    DraftingException refused =
        assertThrows(DraftingException.class, () -> Paper.of("A5", Length.mm(148), Length.mm(210)));
    assertEquals("A5", refused.where());
    assertEquals("from 200 x 270 mm to 5 x 5 m", refused.accepted());
  }
}
