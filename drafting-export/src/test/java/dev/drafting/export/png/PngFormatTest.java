package dev.drafting.export.png;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.TestDrawings;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.pdf.TiledPdf;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

class PngFormatTest {
  private static final PngFormat TENTHS = PngFormat.of().withResolution(254);

  private static byte[] bytes(PngFormat format, Drawing drawing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    format.write(drawing, out);
    return out.toByteArray();
  }

  private static BufferedImage image(PngFormat format, Drawing drawing) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(bytes(format, drawing)));
  }

  private static int darkness(BufferedImage image, int x, int y) {
    int rgb = image.getRGB(x, y);
    return 255 - ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 3;
  }

  /** A square of 100 mm and 5 mm of white around it: 1100 tenths of a millimetre. */
  @Test
  void theSquareIsTrueAndTheFileSaysItsResolution() throws IOException {
    Drawing square = Drawing.of("square", TestDrawings.rectangle("square", 100, 100));
    byte[] file = bytes(TENTHS, square);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(file));
    assertEquals(1100, image.getWidth());
    assertEquals(1100, image.getHeight());
    assertEquals(50, middle(image, 40, 60), 0.5);
    assertEquals(1050, middle(image, 1040, 1060), 0.5);
    int at = new String(file, StandardCharsets.ISO_8859_1).indexOf("pHYs") + 4;
    assertEquals(10_000, ByteBuffer.wrap(file, at, 4).getInt());
    assertEquals(1, file[at + 8], "the unit is the metre (PNG, section 11.3.5.3)");
  }

  /** Where the middle of the only line between two columns lies, in pixels. */
  private static double middle(BufferedImage image, int from, int to) {
    double weight = 0;
    double moment = 0;
    for (int x = from; x < to; x++) {
      weight += darkness(image, x, 300);
      moment += darkness(image, x, 300) * (x + 0.5);
    }
    return moment / weight;
  }

  @Test
  void theSameDrawingGivesTheSameBytes() throws IOException {
    assertArrayEquals(
        bytes(PngFormat.of(), TestDrawings.vest()), bytes(PngFormat.of(), TestDrawings.vest()));
  }

  /**
   * The PDF as PDFBox renders it is the second opinion, letters and all; its sheet begins 75 mm
   * left of the picture's edge and 58 mm above it. Every dark pixel is dark there too, give or take
   * one.
   */
  @Test
  void thePictureIsThatOfThePdf() throws IOException {
    Drawing drawing =
        Drawing.of(
            "vest",
            new Group(
                "front",
                List.of(
                    TestDrawings.rectangle("", 240, 670).elements().get(0),
                    Label.of("Greatest stretch, 30 %", new Point(40, 300), Length.mm(9)),
                    Label.of("\u00e9\u5927", new Point(200, 400), Length.mm(7)),
                    new Stroke(
                        StrokeStyle.CUT_LINE,
                        "",
                        TestDrawings.front("front").strokes().get(3).curve()))));
    BufferedImage png = image(TENTHS, drawing);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TiledPdf.on(Paper.of("large", Length.mm(400), Length.mm(800))).write(drawing, out);
    BufferedImage pdf;
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      pdf = new PDFRenderer(document).renderImageWithDPI(document.getNumberOfPages() - 1, 254);
    }
    Box box = drawing.bounds();
    int dx = 2000 - (int) Math.round(10 * (box.centre().x() - box.minX() + 5));
    int dy = 4000 - (int) Math.round(10 * (box.maxY() - box.centre().y() + 5));
    long dark = 0;
    for (int y = 1; y < png.getHeight() - 1; y++) {
      for (int x = 1; x < png.getWidth() - 1; x++) {
        if (darkness(png, x, y) > 200) {
          dark++;
          assertTrue(darkestAround(pdf, x + dx, y + dy) > 150, x + ", " + y);
        }
      }
    }
    assertTrue(dark > 6 * (2 * 2400 + 2 * 6700), "dark pixels: " + dark);
  }

  private static int darkestAround(BufferedImage image, int x, int y) {
    int darkest = 0;
    for (int dx = -1; dx <= 1; dx++) {
      for (int dy = -1; dy <= 1; dy++) {
        darkest = Math.max(darkest, darkness(image, x + dx, y + dy));
      }
    }
    return darkest;
  }

  @Test
  void hostileTextsAreDrawnAndDoNotFail() throws IOException {
    String hostile = "<b>\"&\\ \ud83d\ude00 \u05e9\u05dc\u05d5\u05dd \u5927 \ud800";
    Label label = Label.of(hostile.repeat(20), new Point(0, 0), Length.mm(3));
    BufferedImage image =
        image(PngFormat.of(), Drawing.of(hostile, new Group(hostile, List.of(label))));
    boolean written = false;
    for (int x = 0; x < image.getWidth(); x++) {
      written |= darkness(image, x, image.getHeight() / 2) > 100;
    }
    assertTrue(written);
  }

  @Test
  void tooManyPixelsAreRefusedAndWhatWouldGoIsSaid() {
    Stroke line =
        new Stroke(StrokeStyle.CUT_LINE, "", Curve.line(new Point(0, 0), new Point(4000, 4000)));
    Drawing large = Drawing.of("sail", new Group("sail", List.of(line)));
    DraftingException refused =
        assertThrows(DraftingException.class, () -> bytes(PngFormat.of(), large));
    assertEquals("15788 x 15788", refused.value());
    assertEquals("64 million; this drawing in up to 50 dots per inch", refused.accepted());
    assertThrows(DraftingException.class, () -> PngFormat.of().withResolution(9));
    assertThrows(DraftingException.class, () -> PngFormat.of().withResolution(1201));
  }

  @Test
  void anInterruptedThreadCancels() {
    Thread.currentThread().interrupt();
    assertThrows(DraftingException.class, () -> bytes(PngFormat.of(), TestDrawings.vest()));
    assertTrue(Thread.interrupted());
  }
}
