package dev.drafting.export.drawing;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * All paper pieces of a draft on one plane, side by side at true size.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * DraftDrawing.of(top).groups().size();  // => 2
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class DraftDrawing {
  private static final Length GAP = Length.mm(30);

  private DraftDrawing() {}

  /**
   * Draws the pieces of a draft.
   *
   * @param draft pattern, fabrics and version
   * @return one group a paper piece, titled with the name of the draft
   */
  public static Drawing of(Draft draft) {
    return of(draft, UnaryOperator.identity());
  }

  /**
   * Draws the pieces of a draft with letters of another size, for instance to be read from afar.
   *
   * @param draft pattern, fabrics and version
   * @param letters how high capitals are, as in {@link PieceDrawing#withLetters}
   * @return one group a paper piece, titled with the name of the draft
   * @throws DraftingException if the letters are not from 1 to 50 mm high
   */
  @Experimental
  public static Drawing of(Draft draft, Length letters) {
    return of(draft, piece -> piece.withLetters(letters));
  }

  private static Drawing of(Draft draft, UnaryOperator<PieceDrawing> as) {
    List<Group> pieces =
        draft.cutPieces().stream().map(piece -> as.apply(draw(draft, piece)).group()).toList();
    return Drawing.sideBySide(draft.name(), pieces, GAP);
  }

  private static PieceDrawing draw(Draft draft, CutPiece piece) {
    return PieceDrawing.of(piece)
        .withGarment(draft.name())
        .withFabric(words(draft.fabric(piece.piece().cloth())))
        .withFindings(draft.findings());
  }

  /** A paper that is larger for the wash fits no washed cloth, and the other way round. */
  private static String words(Fabric fabric) {
    if (!fabric.shrinkageToCome().isNone()) {
      return fabric.name() + ", cut unwashed";
    }
    return fabric.isPrewashed() ? fabric.name() + ", washed first" : fabric.name();
  }

  /**
   * The same drawing with its legend under the pieces.
   *
   * @param drawing of one piece or more
   * @return the drawing with one more group
   */
  public static Drawing withLegend(Drawing drawing) {
    Box box = drawing.bounds();
    Vector under = new Vector(box.minX(), box.minY() - 15);
    return drawing.with(Legend.of(drawing).map(Transform.translation(under)));
  }
}
