package dev.drafting.knit.sewing;

import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Placket;
import dev.drafting.knit.wording.Wording;
import java.util.List;

/**
 * How an opening is cut and closed by two folded strips, in words (common practice, no source). The
 * cloth is stayed before it is cut, for a knit would stretch along the cut.
 */
final class PlacketSteps {
  private PlacketSteps() {}

  /** The name of the line that holds the strips. */
  static String line(Placket placket) {
    return placket.edge().piece() + " placket";
  }

  static Step sew(Placket placket, SewingPlan plan) {
    Pattern pattern = plan.sewn().pattern();
    String piece = placket.edge().piece();
    String text =
        "Press a stay that does not stretch, such as fusible interfacing "
            + Wording.fine(placket.width().times(2))
            + " wide and "
            + Wording.fine(placket.stayLength())
            + " long, to the wrong side of the "
            + piece
            + " where the placket will be, and another one to half of each strip, up to its fold."
            + " Transfer the lines. Fold both strips in half along their length, right side out."
            + " Lay them on the right side of the "
            + piece
            + " with their cut edges along the cut, the folds outwards and the lower ends "
            + Wording.fine(placket.allowance())
            + " beyond the box, and sew each along its side of the box in "
            + plan.line(line(placket)).stitch().type().plainName()
            + ", from the edge to the corner and no farther. Cut the "
            + piece
            + " alone between them, and into both corners as marked, up to the stitches. Turn the"
            + " strips inwards, the overlap on the underlap: the right over the left in garments"
            + " for women, the left over the right in those for men, as is usual. Fold the "
            + piece
            + " back and sew across both strips and the small triangle at the end of the box. Cut"
            + " the tops even with the edge."
            + others(pattern.piece(piece).cutting().pieces());
    return Step.of("Sew the placket into the " + piece, text)
        .making(List.of(piece))
        .showing(List.of(placket.edge()))
        .withCaution(Cautions.IRON);
  }

  static Step close(Placket placket) {
    String text =
        (placket.fasteners() == 1
                ? "Set the snap, or work the buttonhole and sew on the button, where it is"
                : "Set "
                    + placket.fasteners()
                    + " snaps, or work the buttonholes and sew on the buttons, where they are")
            + " marked: the holes on the overlap, the buttons on the underlap. Try one on a scrap"
            + " of the folded and stayed cloth first, and pull at it.";
    return Step.of("Close the placket of the " + placket.edge().piece(), text)
        .making(List.of(placket.edge().piece()))
        .showing(List.of(placket.edge()))
        .withCaution(Cautions.SMALL_PARTS);
  }

  private static String others(int pieces) {
    return pieces == 1 ? "" : " All " + pieces + " are made alike.";
  }
}
