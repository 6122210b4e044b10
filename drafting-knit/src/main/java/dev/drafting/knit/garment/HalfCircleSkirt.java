package dev.drafting.knit.garment;

import dev.drafting.core.Experimental;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.Fit;
import dev.drafting.knit.size.FittedTemplate;
import java.util.List;

/**
 * A skirt cut as half a ring, with one seam at the back and a rib band at the waist. The radius of
 * its waist is the waist's girth divided by pi.
 *
 * <pre>{@code
 * Pattern skirt = new HalfCircleSkirt().pattern(Dimensions.of().with("waist", Length.cm(70)).with("length", Length.cm(50)));
 * skirt.piece("skirt").edge("waist").length();  // => 350 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class HalfCircleSkirt implements FittedTemplate {
  private static final long serialVersionUID = 1L;
  private static final Length ALLOWANCE = Length.mm(7);
  private static final Angle QUARTER = Angle.degrees(90);

  /** Makes the template. */
  public HalfCircleSkirt() {}

  @Override
  public String id() {
    return "half-circle-skirt";
  }

  @Override
  public String about() {
    return "a skirt cut as half a ring, with a band at the waist and one seam";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        Dimension.girth(
            "waist",
            "all round where the band is sewn",
            Length.cm(50),
            Length.cm(80),
            Length.cm(140)),
        Dimension.length(
            "length", "from the band to the hem", Length.cm(20), Length.cm(55), Length.cm(100)));
  }

  /** Shares of the project's own, no source. */
  @Override
  public List<BodyRule> bodyRules() {
    return List.of(BodyRule.girth("waist", Fit.ease(0.06), BodyMeasure.WAIST_GIRTH));
  }

  @Override
  public Pattern draw(Dimensions given) {
    Length radius = given.length("waist").dividedBy(Math.PI);
    double inner = radius.toMm();
    double outer = inner + given.length("length").toMm();
    Point centre = new Point(0, 0);
    Arc hem = Arc.of(centre, Length.mm(outer), QUARTER.negated(), QUARTER);
    Arc waist = Arc.of(centre, radius, Angle.ZERO, QUARTER.negated());
    Piece skirt =
        Piece.of(
            "skirt",
            List.of(
                Edge.of("hem", Curve.of(hem)),
                Edge.of("back seam", Curve.line(hem.end(), waist.start())),
                Edge.of("waist", Curve.of(waist)),
                Edge.onFold(Curve.line(new Point(0, waist.end().y()), new Point(0, -outer)))));
    return Pattern.of(
            "Half-circle skirt",
            List.of(skirt),
            List.of(Seam.mirrored("back seam", EdgeRef.parse("skirt back seam"))))
        .withSeamAllowance(ALLOWANCE)
        .withFinish("skirt waist", FoldedBand.waistRib(Length.mm(40), ALLOWANCE))
        .withFinish("skirt hem", TurnedHem.once(Length.mm(15)));
  }
}
