package dev.drafting.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.measure.Length;
import dev.drafting.export.TestDrawings;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Stroke;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** Measures printed pages by their pixels. */
class TrueScaleTest {
  private static final double WITHIN = 0.1;
  private static final List<Paper> PAPERS = List.of(Paper.A4, Paper.LETTER, Paper.A3, Paper.LEGAL);

  @Test
  void theTestSquaresOfEveryPaperAreTrue() throws IOException {
    for (Paper paper : PAPERS) {
      byte[] pdf = Rendered.bytes(TiledPdf.on(paper), TestDrawings.vest());
      square(pdf, 130, 100);
      square(pdf, 20, 101.6);
    }
  }

  private static void square(byte[] pdf, double bottom, double side) throws IOException {
    double y = bottom + 87;
    double x = 20 + 87;
    assertEquals(20, Rendered.lineAcross(pdf, 0, 17, 22, bottom + 5), WITHIN);
    assertEquals(bottom, Rendered.lineUp(pdf, 0, 25, bottom - 3, bottom + 2), WITHIN);
    assertEquals(
        side,
        Rendered.lineAcross(pdf, 0, 20 + side - 4, 20 + side + 4, y)
            - Rendered.lineAcross(pdf, 0, 17, 22, y),
        WITHIN);
    assertEquals(
        side,
        Rendered.lineUp(pdf, 0, x, bottom + side - 4, bottom + side + 4)
            - Rendered.lineUp(pdf, 0, x, bottom - 3, bottom + 2),
        WITHIN);
  }

  /**
   * One pixel is 0.1 mm. Every dark pixel of the whole is dark on its sheet too, give or take a
   * pixel. On average the sheets are nearly as dark there as the whole: a shift by 0.1 mm would
   * make one pixel in seven of the cut line white, a mean loss of 36; the bound is a third of it.
   */
  @Test
  void theSheetsJoinedReproduceTheDrawing() throws IOException {
    Group front = wholeLines(TestDrawings.front("front"));
    Drawing drawing = Drawing.of("vest", front);
    Paper wide = Paper.of("roll", Length.mm(400), Length.mm(800));
    TiledPdf whole = TiledPdf.on(wide);
    Rendered one = Rendered.page(Rendered.bytes(whole, drawing), 2, 254);
    Box wholeWindow = PieceSheets.of(front, wide, 10, 10).tiling().window(new Cell(0, 0));

    PieceSheets sheets = PieceSheets.of(front, Paper.A4, 10, 10);
    byte[] pdf = Rendered.bytes(TiledPdf.on(Paper.A4), drawing);
    long compared = 0;
    long lighter = 0;
    for (int i = 0; i < sheets.cells().size(); i++) {
      Rendered sheet = Rendered.page(pdf, 2 + i, 254);
      Box window = sheets.tiling().window(sheets.cells().get(i));
      Box seen = sheets.tiling().visible(sheets.cells().get(i));
      int dx = (int) Math.round((window.minX() - wholeWindow.minX()) * 10);
      int dy = (int) Math.round((wholeWindow.maxY() - window.maxY()) * 10);
      int bottom = (int) Math.round(100 + seen.height().toMm() * 10);
      for (int y = 102; y < bottom - 2; y++) {
        for (int x = 102; x < sheet.width() - 102; x++) {
          int inWhole = inside(one, x + dx, y + dy);
          if (inWhole > 200) {
            assertTrue(darkestAround(sheet, x, y) > 200, "sheet " + i + " at " + x + ", " + y);
            lighter += Math.max(0, inWhole - sheet.darkness(x, y));
            compared++;
          }
        }
      }
    }
    assertEquals(4, sheets.cells().size());
    assertTrue(compared > 17_000 * 6, "dark pixels compared: " + compared);
    assertTrue(lighter < 12 * compared, "mean loss of darkness: " + (double) lighter / compared);
  }

  /** Without dashes: where a renderer ends a dash depends on where it clips the curve. */
  private static Group wholeLines(Group group) {
    List<Element> kept =
        group.elements().stream()
            .filter(e -> !(e instanceof Stroke s) || s.style().dashes().isEmpty())
            .toList();
    return new Group(group.name(), kept);
  }

  private static int darkestAround(Rendered page, int x, int y) {
    int darkest = 0;
    for (int dx = -1; dx <= 1; dx++) {
      for (int dy = -1; dy <= 1; dy++) {
        darkest = Math.max(darkest, page.darkness(x + dx, y + dy));
      }
    }
    return darkest;
  }

  private static int inside(Rendered page, int x, int y) {
    boolean on = x >= 0 && y >= 0 && x < page.width() && y < page.height();
    return on ? page.darkness(x, y) : 0;
  }

  /** To a thousandth of a millimetre, on every sheet that a line touches. */
  @Test
  void theNumbersInTheFileAreThoseOfTheDrawing() throws IOException {
    Group strip = TestDrawings.rectangle("strip", 100, 1000);
    PieceSheets sheets = PieceSheets.of(strip, Paper.LETTER, 10, 10);
    byte[] pdf = Rendered.bytes(TiledPdf.on(Paper.LETTER), Drawing.of("strip", strip));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int i = 0; i < sheets.cells().size(); i++) {
        Box window = sheets.tiling().window(sheets.cells().get(i));
        List<Object> tokens = new PDFStreamParser(document.getPage(2 + i)).parse();
        int start = tokens.indexOf(Operator.getOperator("m"));
        double x = ((COSNumber) tokens.get(start - 2)).floatValue() / 72 * 25.4;
        double y = ((COSNumber) tokens.get(start - 1)).floatValue() / 72 * 25.4;
        assertEquals(0, x - 10 + window.minX(), 0.001);
        assertEquals(0, y - 10 + window.minY(), 0.001);
        int corner = tokens.indexOf(Operator.getOperator("l"));
        double right = ((COSNumber) tokens.get(corner - 2)).floatValue() / 72 * 25.4;
        assertEquals(100, right - x, 0.001);
      }
      assertEquals(4, sheets.cells().size());
    }
  }

  /** A long edge over several sheets: its ends on the first and the last sheet. */
  @Test
  void aLongEdgeIsTrueAcrossTheSheets() throws IOException {
    Group strip = TestDrawings.rectangle("strip", 100, 1000);
    for (Paper paper : PAPERS) {
      PieceSheets sheets = PieceSheets.of(strip, paper, 10, 10);
      byte[] pdf = Rendered.bytes(TiledPdf.on(paper), Drawing.of("strip", strip));
      int last = sheets.cells().size() - 1;
      double top = onDrawing(pdf, sheets, 0, 1000);
      double bottom = onDrawing(pdf, sheets, last, 0);
      assertEquals(1000, top - bottom, WITHIN, paper.name());
    }
  }

  /** Wide paper has the whole edge on one page: both ends on a roll and on A0. */
  @Test
  void aLongEdgeIsTrueOnWidePaper() throws IOException {
    Drawing strip = Drawing.of("strip", TestDrawings.rectangle("strip", 100, 1000));
    for (WidePdf wide : List.of(WidePdf.on(Paper.A0), WidePdf.onRoll(Length.inches(36)))) {
      byte[] pdf = Rendered.bytes(wide, strip);
      double x = 10 + 215 + 10 + 50;
      double top = (wide.fileEnding().equals("-wide-a0.pdf") ? 1189 : 1020) - 10;
      assertEquals(top, Rendered.lineUp(pdf, 0, x, top - 3, top + 3), WITHIN);
      assertEquals(top - 1000, Rendered.lineUp(pdf, 0, x, top - 1003, top - 997), WITHIN);
    }
  }

  private static double onDrawing(byte[] pdf, PieceSheets sheets, int sheet, double y)
      throws IOException {
    Box window = sheets.tiling().window(sheets.cells().get(sheet));
    double onPage = 10 + y - window.minY();
    double x = 10 + 50 - window.minX();
    double found = Rendered.lineUp(pdf, 2 + sheet, x, onPage - 3, onPage + 3);
    return window.minY() + found - 10;
  }
}
