package dev.drafting.export.png;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Format;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Drawings as PNG pictures, 5 mm of white around them. The file says its resolution, so that
 * programs that heed it print at true size; to cut by, take PDF or SVG.
 *
 * <pre>{@code
 * PngFormat.of().withResolution(200);  // => PNG, 200 dots per inch
 * PngFormat.of().fileEnding();  // => .png
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class PngFormat implements Format {
  private static final Length MARGIN = Length.mm(5);
  private static final int LEAST = 10;
  private static final int MOST = 1200;

  /** Three bytes each are held while the picture is drawn. */
  private static final long MOST_PIXELS = 64_000_000;

  private final int dotsPerInch;

  private PngFormat(int dotsPerInch) {
    this.dotsPerInch = dotsPerInch;
  }

  /**
   * Pictures of 100 dots per inch.
   *
   * @return the format
   */
  public static PngFormat of() {
    return new PngFormat(100);
  }

  /**
   * The same in another resolution.
   *
   * @param newDotsPerInch from 10 to 1200
   * @return the format
   * @throws DraftingException if the resolution is out of range
   */
  public PngFormat withResolution(int newDotsPerInch) {
    if (newDotsPerInch < LEAST || newDotsPerInch > MOST) {
      throw DraftingException.of("this resolution does not serve")
          .value(newDotsPerInch)
          .accepted("from " + LEAST + " to " + MOST + " dots per inch");
    }
    return new PngFormat(newDotsPerInch);
  }

  @Override
  public String fileEnding() {
    return ".png";
  }

  /**
   * {@inheritDoc}
   *
   * @throws DraftingException if the picture would have more than 64 million pixels
   */
  @Override
  public void write(Drawing drawing, OutputStream out) throws IOException {
    Box box = drawing.bounds().widened(MARGIN);
    double perMm = dotsPerInch / 25.4;
    double width = Math.ceil(box.width().toMm() * perMm);
    double height = Math.ceil(box.height().toMm() * perMm);
    if (width * height > MOST_PIXELS) {
      double fits = dotsPerInch * Math.sqrt(MOST_PIXELS / (width * height));
      throw DraftingException.of("the picture has too many pixels")
          .at(drawing.title())
          .value(Math.round(width) + " x " + Math.round(height))
          .accepted("64 million; this drawing in up to " + (int) fits + " dots per inch");
    }
    PixelCanvas canvas = new PixelCanvas(box, perMm, (int) width, (int) height);
    canvas.draw(drawing);
    PngFile.write(canvas.image(), dotsPerInch, out);
  }

  @Override
  public String toString() {
    return "PNG, " + dotsPerInch + " dots per inch";
  }
}
