package dev.drafting.knit.garment;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerSide;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.hem.TurnedHem;
import java.util.ArrayList;
import java.util.List;

/**
 * A pocket for both hands, in one piece on the fold of the front: stitched down at the top, the
 * bottom and low at the sides, and open where it slants. Shares of the project's own, no source.
 */
final class FrontPocket {
  private static final String NAME = "pocket";
  private static final double ABOVE_RIB_MM = 10;
  private static final double WIDTH = 0.62;
  private static final double WIDTH_AT_TOP = 0.6;
  private static final double HEIGHT = 0.32;
  private static final double HEIGHT_AT_SIDE = 0.3;

  private FrontPocket() {}

  /** The pattern with a pocket on its front, above a rib so deep. */
  static Pattern on(Pattern pattern, Dimensions given, Length rib) {
    Point place = new Point(0, rib.toMm() + ABOVE_RIB_MM);
    List<Piece> pieces = new ArrayList<>(pattern.pieces());
    pieces.add(piece(given));
    return Pattern.of(pattern.name(), pieces, pattern.seams())
        .withPatch(Patch.of(NAME, "front", place).openAt("mouth"))
        .withFinish(new EdgeRef(NAME, "mouth"), TurnedHem.once(Length.mm(20)));
  }

  private static Piece piece(Dimensions given) {
    double width = WIDTH * given.length("chest").toMm() / 4;
    double height = HEIGHT * given.length("length").toMm();
    Point foot = new Point(0, 0);
    Point corner = new Point(width, 0);
    Point low = new Point(width, HEIGHT_AT_SIDE * height);
    Point high = new Point(WIDTH_AT_TOP * width, height);
    Point top = new Point(0, height);
    return Piece.of(
            NAME,
            List.of(
                Edge.onFold(Curve.line(top, foot)),
                Edge.of("bottom", Curve.line(foot, corner)),
                Edge.of("side", Curve.line(corner, low)),
                Edge.of("mouth", Curve.line(low, high)),
                Edge.of("top", Curve.line(high, top))))
        .withCorner("side", "mouth", CornerTreatment.squareTo(CornerSide.AFTER))
        .withCorner("mouth", "top", CornerTreatment.squareTo(CornerSide.BEFORE));
  }
}
