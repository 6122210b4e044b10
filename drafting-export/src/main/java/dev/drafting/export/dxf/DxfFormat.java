package dev.drafting.export.dxf;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Format;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Drawings as DXF files (the 2000 edition of the format, AC1015), in millimetres at true size: one
 * layer for each sort of line, with its dashes; straight lines, arcs and splines as they are, texts
 * as texts. For cutters that know no splines ask for polylines.
 *
 * <pre>{@code
 * DxfFormat.of();  // => DXF with splines
 * DxfFormat.withPolylines(Length.mm(0.1));  // => DXF with polylines within 0.1 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class DxfFormat implements Format {
  private final @Nullable Length tolerance;

  private DxfFormat(@Nullable Length tolerance) {
    this.tolerance = tolerance;
  }

  /**
   * Every curve as it is.
   *
   * @return DXF with arcs and splines
   */
  public static DxfFormat of() {
    return new DxfFormat(null);
  }

  /**
   * Every curve as short straight lines.
   *
   * @param tolerance how far they may lie off the curve, 0.001 to 1 mm
   * @return DXF with polylines
   * @throws DraftingException if the tolerance is out of range
   */
  public static DxfFormat withPolylines(Length tolerance) {
    if (tolerance.toMm() < 0.001 || tolerance.toMm() > 1) {
      throw DraftingException.of("the tolerance of polylines is out of range")
          .value(tolerance)
          .accepted("0.001 to 1 mm");
    }
    return new DxfFormat(tolerance);
  }

  @Override
  public String fileEnding() {
    return ".dxf";
  }

  @Override
  public void write(Drawing drawing, OutputStream out) throws IOException {
    out.write(new DxfDocument(drawing, Optional.ofNullable(tolerance)).bytes());
  }

  @Override
  public String toString() {
    return tolerance == null ? "DXF with splines" : "DXF with polylines within " + tolerance;
  }
}
