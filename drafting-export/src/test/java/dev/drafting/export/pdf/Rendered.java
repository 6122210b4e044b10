package dev.drafting.export.pdf;

import dev.drafting.export.drawing.Drawing;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pages as pixels, measured in millimetres from the lower left corner. */
final class Rendered {
  private final BufferedImage image;
  private final double perMm;

  private Rendered(BufferedImage image, double perMm) {
    this.image = image;
    this.perMm = perMm;
  }

  static byte[] bytes(TiledPdf format, Drawing drawing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    format.write(drawing, out);
    return out.toByteArray();
  }

  static Rendered page(byte[] pdf, int page, float dpi) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new Rendered(new PDFRenderer(document).renderImageWithDPI(page, dpi), dpi / 25.4);
    }
  }

  /** Where the middle of the only line between two points of a row lies, in mm. */
  double lineAcross(double fromX, double toX, double y) {
    int row = (int) Math.round(image.getHeight() - y * perMm);
    double weight = 0;
    double moment = 0;
    for (int x = (int) (fromX * perMm); x < toX * perMm; x++) {
      weight += darkness(x, row);
      moment += darkness(x, row) * (x + 0.5);
    }
    return moment / weight / perMm;
  }

  /** Where the middle of the only line between two points of a column lies, in mm. */
  double lineUp(double x, double fromY, double toY) {
    int column = (int) Math.round(x * perMm);
    double weight = 0;
    double moment = 0;
    for (int up = (int) (fromY * perMm); up < toY * perMm; up++) {
      int row = image.getHeight() - 1 - up;
      weight += darkness(column, row);
      moment += darkness(column, row) * (up + 0.5);
    }
    return moment / weight / perMm;
  }

  int width() {
    return image.getWidth();
  }

  int height() {
    return image.getHeight();
  }

  /** From 0 (white) to 255 (black). */
  int darkness(int x, int y) {
    int rgb = image.getRGB(x, y);
    return 255 - ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 3;
  }
}
