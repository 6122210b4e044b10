package dev.drafting.export.csv;

import dev.drafting.core.Experimental;
import dev.drafting.core.cut.ChalkPoint;
import dev.drafting.core.cut.ChalkTable;
import dev.drafting.core.cut.CutPiece;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * The pieces of a draft to be chalked straight on the cloth, as CSV: RFC 4180, UTF-8, one row a
 * point, lengths in mm with a decimal point. {@code up_mm} is measured along the fold, or along the
 * grain where there is no fold, {@code across_mm} square to it; {@code line} runs from the point to
 * the next one.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * ChalkingFile.of(top.cutPieces());  // => chalking: 2 pieces
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class ChalkingFile {
  /** What is added to the name of the draft. */
  public static final String FILE_ENDING = "-chalking.csv";

  private final List<CutPiece> pieces;

  private ChalkingFile(List<CutPiece> pieces) {
    this.pieces = List.copyOf(pieces);
  }

  /**
   * A file of pieces.
   *
   * @param pieces in the order of the rows
   * @return the file
   */
  public static ChalkingFile of(List<CutPiece> pieces) {
    return new ChalkingFile(pieces);
  }

  /**
   * Writes the rows; the stream stays open.
   *
   * @param out where to
   * @throws IOException if it cannot be written
   */
  public void write(OutputStream out) throws IOException {
    Rows rows = new Rows("piece", "point", "line", "up_mm", "across_mm");
    for (CutPiece piece : pieces) {
      ChalkTable table = ChalkTable.of(piece);
      int number = 1;
      for (ChalkPoint point : table.points()) {
        rows.add(piece.name(), number++, point.line(), point.up(), point.across());
      }
      for (ChalkPoint notch : table.notches()) {
        rows.add(piece.name(), "", notch.line(), notch.up(), notch.across());
      }
    }
    rows.write(out);
  }

  @Override
  public String toString() {
    return "chalking: " + pieces.size() + " pieces";
  }
}
