package dev.drafting.export.hpgl;

import dev.drafting.core.Experimental;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Format;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Drawings as HPGL/2 files at true size, for roll plotters. A plotter unit is 0.025 mm; every line
 * is drawn within 0.03 mm of where it lies. Dashes are drawn one by one, so that every plotter
 * shows the same. The drawing begins 5 mm from the plotter's origin. Texts are in plain ASCII
 * letters.
 *
 * <pre>{@code
 * HpglFormat.of().fileEnding();  // => .plt
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class HpglFormat implements Format {
  private HpglFormat() {}

  /**
   * The format.
   *
   * @return HPGL/2 with lines and texts
   */
  public static HpglFormat of() {
    return new HpglFormat();
  }

  @Override
  public String fileEnding() {
    return ".plt";
  }

  @Override
  public void write(Drawing drawing, OutputStream out) throws IOException {
    out.write(new PlotterPen(drawing).plot().getBytes(StandardCharsets.US_ASCII));
  }

  @Override
  public String toString() {
    return "HPGL/2";
  }
}
