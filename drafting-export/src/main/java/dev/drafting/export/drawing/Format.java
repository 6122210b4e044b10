package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import java.io.IOException;
import java.io.OutputStream;

/**
 * A way of writing drawings: the same display list, another kind of file. Values of a format are
 * immutable; the same drawing gives the same bytes, whatever the clock, place or language.
 *
 * <pre>{@code
 * Format svg = SvgFormat.of();
 * svg.fileEnding();  // => .svg
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public interface Format {
  /**
   * What a file name of this format ends in after the name of the garment.
   *
   * @return for instance "-A4.pdf"
   */
  String fileEnding();

  /**
   * Writes a drawing at true size. The stream is left open.
   *
   * @param drawing what to draw
   * @param out where the bytes go
   * @throws IOException if the stream fails
   * @throws dev.drafting.core.finding.DraftingException if the thread is interrupted or the drawing
   *     does not fit the format
   */
  void write(Drawing drawing, OutputStream out) throws IOException;
}
