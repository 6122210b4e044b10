package dev.drafting.export.pdf;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.export.drawing.Lettering;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * One PDF file being written page by page: its title and language, no clock, one embedded font, a
 * layer for each kind of line, and no fitting to the page.
 */
final class PdfPages {
  /** The longest side of a page that every reader takes: 14,400 units of 1/72 in (ISO 32000). */
  static final double LONGEST_MM = 5080;

  private static final long DOCUMENT_ID = 1;

  private final PDDocument document;
  private final PDFont font;
  private final Layers layers;
  private final Ink ink;

  private PdfPages(PDDocument document, PDFont font, Ink ink) {
    this.document = document;
    this.font = font;
    this.layers = new Layers(document);
    this.ink = ink;
  }

  /** What comes on the pages. */
  interface Content {
    void draw(PdfPages pages) throws IOException;
  }

  /** What comes on one page. */
  interface Picture {
    void draw(PdfCanvas canvas) throws IOException;
  }

  static void write(String title, Ink ink, OutputStream out, Content content) throws IOException {
    try (PDDocument document = new PDDocument();
        InputStream file = Lettering.open();
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
      // letters are set one by one, as wide as Lettering says
      font.setEnableGsub(false);
      describe(document, title);
      content.draw(new PdfPages(document, PDType0Font.load(document, font, true), ink));
      document.save(out);
    }
  }

  private static void describe(PDDocument document, String title) {
    document.setDocumentId(DOCUMENT_ID);
    document.getDocumentInformation().setTitle(title);
    document.getDocumentCatalog().setLanguage("en-GB");
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    preferences.setDisplayDocTitle(true);
    document.getDocumentCatalog().setViewerPreferences(preferences);
  }

  /** Adds a page of a width and a height in mm. */
  void page(double width, double height, Picture picture) throws IOException {
    if (Thread.currentThread().isInterrupted()) {
      throw DraftingException.of("cancelled").at("page " + (document.getNumberOfPages() + 1));
    }
    PDRectangle box = new PDRectangle(points(width), points(height));
    PDPage page = new PDPage(box);
    document.addPage(page);
    try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
      PdfCanvas canvas = new PdfCanvas(stream, font, layers, ink);
      canvas.ground(width, height);
      picture.draw(canvas);
    }
  }

  private static float points(double mm) {
    return (float) (mm * PdfCanvas.POINTS_PER_MM);
  }
}
