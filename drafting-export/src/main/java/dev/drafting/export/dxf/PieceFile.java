package dev.drafting.export.dxf;

import dev.drafting.core.Experimental;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;

/**
 * The pieces of a draft as data for other pattern software: DXF in the style of ASTM D6673, one
 * block for each piece, metric. Layers: 1 the cut line, 2 its corners, 3 points on its curves, 4
 * notches, 6 the fold, 7 the grain, 8 folds, topstitching and other lines to be marked, 14 lines to
 * sew. (Layers and texts are from memory of that standard, which was withdrawn in 2019; nothing is
 * claimed of conformity.) What lies on the fold of the cloth is a half with its fold.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * PieceFile.of(top);  // => pieces of Sleeveless top
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class PieceFile {
  /** What the file's name ends in after the name of the draft. */
  public static final String FILE_ENDING = "-pieces.dxf";

  private final Draft draft;

  private PieceFile(Draft draft) {
    this.draft = draft;
  }

  /**
   * The pieces of a draft.
   *
   * @param draft what is cut
   * @return the file to be written
   */
  public static PieceFile of(Draft draft) {
    return new PieceFile(Objects.requireNonNull(draft, "draft"));
  }

  /**
   * Writes the file. The stream is left open.
   *
   * @param stream where the bytes go
   * @throws IOException if the stream fails
   */
  public void write(OutputStream stream) throws IOException {
    stream.write(new PieceDocument(draft).bytes());
  }

  @Override
  public String toString() {
    return "pieces of " + draft.name();
  }
}
