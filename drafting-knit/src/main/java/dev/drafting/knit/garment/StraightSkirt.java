package dev.drafting.knit.garment;

import dev.drafting.core.Experimental;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.Fit;
import dev.drafting.knit.size.FittedTemplate;
import java.util.List;

/**
 * A straight skirt to pull on: front and back alike, a casing for elastic at the waist.
 *
 * <pre>{@code
 * new StraightSkirt().pattern(Dimensions.of().with("hip", Length.cm(96))).piece("front").edge("hem").length();  // => 240 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class StraightSkirt implements FittedTemplate {
  private static final long serialVersionUID = 1L;

  /** Makes the template. */
  public StraightSkirt() {}

  @Override
  public String id() {
    return "straight-skirt";
  }

  @Override
  public String about() {
    return "a straight skirt to pull on, with elastic in a casing";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        Dimension.girth(
            "hip",
            "all round at the hip and the hem",
            Length.cm(60),
            Length.cm(96),
            Length.cm(160)),
        Dimension.length(
            "length",
            "from the upper edge to the hem",
            Length.cm(25),
            Length.cm(55),
            Length.cm(110)));
  }

  /** Shares of the project's own, no source. */
  @Override
  public List<BodyRule> bodyRules() {
    return List.of(BodyRule.girth("hip", Fit.ease(Length.ZERO), BodyMeasure.HIP_GIRTH));
  }

  @Override
  public Pattern draw(Dimensions given) {
    double quarter = given.length("hip").toMm() / 4;
    double length = given.length("length").toMm();
    Point foldTop = new Point(0, length);
    Point foldFoot = new Point(0, 0);
    Point hemSide = new Point(quarter, 0);
    Point waistSide = new Point(quarter, length);
    Piece front =
        Piece.of(
            "front",
            List.of(
                Edge.onFold(Curve.line(foldTop, foldFoot)),
                Edge.of("hem", Curve.line(foldFoot, hemSide)),
                Edge.of("side", Curve.line(hemSide, waistSide)),
                Edge.of("waist", Curve.line(waistSide, foldTop))));
    Casing casing = Casing.of(Length.mm(30), Length.mm(7));
    TurnedHem hem = TurnedHem.once(Length.mm(25));
    return Pattern.of(
            "Straight skirt",
            List.of(front, Piece.of("back", front.edges())),
            List.of(Seam.of("side", "front side", "back side")))
        .withSeamAllowance(Length.mm(7))
        .withFinish("front waist", casing)
        .withFinish("back waist", casing)
        .withFinish("front hem", hem)
        .withFinish("back hem", hem);
  }
}
