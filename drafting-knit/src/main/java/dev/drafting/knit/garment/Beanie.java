package dev.drafting.knit.garment;

import dev.drafting.core.Experimental;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Intent;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.Fit;
import dev.drafting.knit.size.FittedTemplate;
import java.util.List;

/**
 * A beanie of two halves: upright at the sides, round over the head, with a rib at the brim. The
 * crown is half an ellipse.
 *
 * <pre>{@code
 * Pattern beanie = new Beanie().pattern(Dimensions.of().with("round", Length.cm(50)));
 * beanie.piece("half").edge("brim").length();  // => 250 mm
 * Assembly.of(beanie).openings().size();  // => 1
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Beanie implements FittedTemplate {
  private static final long serialVersionUID = 1L;
  private static final Length ALLOWANCE = Length.mm(7);

  /** Handles of the cubic that comes nearest to a quarter of a circle (Riskus 2006). */
  private static final double ROUND = 0.551915;

  /** Makes the template. */
  public Beanie() {}

  @Override
  public String id() {
    return "beanie";
  }

  @Override
  public String about() {
    return "a beanie of two halves, round over the head, with a rib at the brim";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        Dimension.girth(
            "round", "all round at the brim", Length.cm(32), Length.cm(52), Length.cm(66)),
        Dimension.length(
            "height",
            "from the edge of the brim up to where the crown begins",
            Length.mm(60),
            Length.mm(130),
            Length.mm(260)),
        Dimension.length(
            "crown",
            "from there up to the middle of the crown, lying flat",
            Length.mm(60),
            Length.mm(95),
            Length.mm(150)));
  }

  /** Shares of the project's own, no source. */
  @Override
  public List<BodyRule> bodyRules() {
    return List.of(
        BodyRule.girth("round", Fit.stretchUsed(0.2), BodyMeasure.HEAD_GIRTH),
        BodyRule.length("height", BodyMeasure.HEAD_GIRTH).times(0.23),
        BodyRule.length("crown", BodyMeasure.HEAD_GIRTH).times(1 / 6.0));
  }

  @Override
  public Pattern draw(Dimensions given) {
    double width = given.length("round").toMm() / 2;
    double height = given.length("height").toMm();
    double top = height + given.length("crown").toMm();
    Point left = new Point(0, 0);
    Point right = new Point(width, 0);
    Point leftRise = new Point(0, height);
    Point rightRise = new Point(width, height);
    Point middle = new Point(width / 2, top);
    Piece half =
        Piece.of(
                "half",
                List.of(
                    Edge.of("brim", Curve.line(left, right)),
                    Edge.of(
                        "crown",
                        Curve.of(
                            new Line(right, rightRise),
                            quarter(rightRise, middle),
                            quarter(leftRise, middle).reversed(),
                            new Line(leftRise, left)))))
            .withCutting(Cutting.pairs(1));
    return Pattern.of(
            "Beanie", List.of(half), List.of(Seam.mirrored("crown", EdgeRef.parse("half / crown"))))
        .withSeamAllowance(ALLOWANCE)
        .withFinish("half brim", FoldedBand.cuff(Length.mm(60), ALLOWANCE).withIntent(Intent.HUGS));
  }

  /** From upright at the side to level in the middle. */
  private static Cubic quarter(Point side, Point middle) {
    return new Cubic(
        side,
        new Point(side.x(), side.y() + ROUND * (middle.y() - side.y())),
        new Point(middle.x() + ROUND * (side.x() - middle.x()), middle.y()),
        middle);
  }
}
