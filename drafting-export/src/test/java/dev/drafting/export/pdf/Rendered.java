package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Format;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pages as pixels, measured in millimetres from the lower left corner. */
final class Rendered {
  private final BufferedImage image;
  private final double perMm;

  private Rendered(BufferedImage image, double perMm) {
    this.image = image;
    this.perMm = perMm;
  }

  static byte[] bytes(Format format, Drawing drawing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    format.write(drawing, out);
    return out.toByteArray();
  }

  static Rendered page(byte[] pdf, int page, float dpi) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new Rendered(new PDFRenderer(document).renderImageWithDPI(page, dpi), dpi / 25.4);
    }
  }

  /**
   * What a page shows at 600 dpi between two places, in mm from its lower left corner: a pixel is
   * 0.042 mm.
   */
  static double lineAcross(byte[] pdf, int page, double fromX, double toX, double y)
      throws IOException {
    Box part = new Box(fromX - 1, y - 1, toX + 1, y + 1);
    return part.minX() + cropped(pdf, page, part).lineAcross(1, 1 + toX - fromX, 1);
  }

  /** The same up a column. */
  static double lineUp(byte[] pdf, int page, double x, double fromY, double toY)
      throws IOException {
    Box part = new Box(x - 1, fromY - 1, x + 1, toY + 1);
    return part.minY() + cropped(pdf, page, part).lineUp(1, 1, 1 + toY - fromY);
  }

  private static Rendered cropped(byte[] pdf, int page, Box part) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      float unit = 72 / 25.4f;
      PDRectangle box =
          new PDRectangle(
              (float) part.minX() * unit,
              (float) part.minY() * unit,
              (float) part.width().toMm() * unit,
              (float) part.height().toMm() * unit);
      document.getPage(page).setCropBox(box);
      return new Rendered(new PDFRenderer(document).renderImageWithDPI(page, 600), 600 / 25.4);
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
