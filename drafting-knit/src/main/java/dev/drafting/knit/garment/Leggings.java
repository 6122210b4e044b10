package dev.drafting.knit.garment;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
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
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Leggings without a side seam: one piece for each leg, with elastic in a casing. The fork reaches
 * farther at the back than at the front (common practice, no source), and the back point of the
 * fork lies so much lower that both sides of the inside leg are equally long.
 *
 * <pre>{@code
 * Pattern leggings = new Leggings().pattern();
 * Length front = leggings.edge(EdgeRef.parse("leg / front inside leg")).length();
 * Length back = leggings.edge(EdgeRef.parse("leg / back inside leg")).length();
 * front.minus(back).text(LengthUnit.MM);  // => 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Leggings implements FittedTemplate {
  private static final long serialVersionUID = 1L;
  private static final double FRONT_SHARE = 1 / 3.0;
  private static final double LEANING = Math.toRadians(8);
  private static final double LONG = 0.4;
  private static final double EXACT_MM = 1e-9;
  private static final double LOWEST_MM = 80;
  private static final int MOST_STEPS = 200;

  /** Makes the template. */
  public Leggings() {}

  @Override
  public String id() {
    return "leggings";
  }

  @Override
  public String about() {
    return "leggings of one piece for each leg, with elastic in a casing";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        Dimension.girth(
            "hip", "all round at the hip", Length.cm(44), Length.cm(88), Length.cm(140)),
        Dimension.length(
            "fork",
            "how far front and back together reach between the legs",
            Length.mm(50),
            Length.mm(100),
            Length.mm(160)),
        Dimension.length(
            "rise",
            "from the fork up to the upper edge, at the front",
            Length.mm(130),
            Length.mm(230),
            Length.mm(330)),
        Dimension.length(
            "back rise",
            "how much higher the upper edge is at the back",
            Length.ZERO,
            Length.mm(35),
            Length.mm(60)),
        Dimension.length(
            "inside leg",
            "from the hem up to the front of the fork",
            Length.mm(300),
            Length.mm(700),
            Length.mm(950)),
        Dimension.length(
            "hem", "how wide the hem lies flat", Length.mm(60), Length.mm(95), Length.mm(120)));
  }

  /** Shares of the project's own, no source. */
  @Override
  public List<BodyRule> bodyRules() {
    return List.of(
        BodyRule.girth("hip", Fit.stretchUsed(0.2), BodyMeasure.HIP_GIRTH),
        BodyRule.length("fork", BodyMeasure.HIP_GIRTH).times(0.105),
        BodyRule.length("rise", BodyMeasure.BODY_RISE).times(0.85),
        BodyRule.length("inside leg", BodyMeasure.INSIDE_LEG).plus(Length.cm(-7)),
        BodyRule.girth("hem", Fit.stretchUsed(0.2), BodyMeasure.ANKLE_GIRTH).times(0.5));
  }

  @Override
  public Pattern draw(Dimensions given) {
    double side = given.length("hip").toMm() / 4;
    double fork = given.length("fork").toMm();
    double hem = given.length("hem").toMm();
    double top = given.length("inside leg").plus(given.length("rise")).toMm();
    Point frontHem = new Point(hem, 0);
    Point backHem = new Point(-hem, 0);
    Point frontFork = new Point(side + FRONT_SHARE * fork, given.length("inside leg").toMm());
    Curve frontLeg = insideLeg(frontHem, frontFork);
    Point backFork = backFork(backHem, -side - (1 - FRONT_SHARE) * fork, frontLeg);
    Point frontWaist = new Point(side, top);
    Point backWaist = new Point(-side, top + given.length("back rise").toMm());
    Piece leg =
        Piece.of(
                "leg",
                List.of(
                    Edge.of("hem", Curve.line(backHem, frontHem)),
                    Edge.of("front inside leg", frontLeg),
                    Edge.of(
                        "front centre",
                        LegCurves.centre(frontFork, outwards(frontFork), frontWaist)),
                    Edge.of("waist", LegCurves.waist(frontWaist, backWaist)),
                    Edge.of(
                        "back centre",
                        LegCurves.centre(backFork, outwards(backFork), backWaist).reversed()),
                    Edge.of("back inside leg", insideLeg(backHem, backFork).reversed())))
            .withCutting(Cutting.pairs(1));
    return Pattern.of(
            "Leggings",
            List.of(leg),
            List.of(
                Seam.of("inside leg", "leg / front inside leg", "leg / back inside leg")
                    .endToStart(),
                Seam.mirrored("front centre", EdgeRef.parse("leg / front centre")),
                Seam.mirrored("back centre", EdgeRef.parse("leg / back centre"))))
        .withSeamAllowance(Length.mm(7))
        .withFinish("leg / waist", Casing.of(Length.mm(30), Length.mm(7)))
        .withFinish("leg / hem", TurnedHem.once(Length.mm(20)));
  }

  /** Square to the hem, leaning outwards into the fork. */
  private static Curve insideLeg(Point hem, Point fork) {
    double handle = LONG * fork.y();
    Vector into = outwards(fork).times(handle);
    return Curve.of(new Cubic(hem, new Point(hem.x(), handle), fork.plus(into.negated()), fork));
  }

  /** The way in which the inside leg arrives at the fork, to the side on which the fork lies. */
  private static Vector outwards(Point fork) {
    return new Vector(Math.copySign(Math.sin(LEANING), fork.x()), Math.cos(LEANING));
  }

  /** The point at this x that makes the back of the inside leg as long as its front. */
  private static Point backFork(Point hem, double x, Curve frontLeg) {
    double wanted = frontLeg.length().toMm();
    double high = frontLeg.end().y();
    UnivariateFunction over = y -> insideLeg(hem, new Point(x, y)).length().toMm() - wanted;
    if (over.value(high - LOWEST_MM) > 0) {
      throw DraftingException.of("the fork reaches too far for so short a leg")
          .at("fork")
          .value(Length.mm(-x))
          .accepted("a smaller fork, or a longer inside leg");
    }
    return new Point(x, new BrentSolver(EXACT_MM).solve(MOST_STEPS, over, high - LOWEST_MM, high));
  }
}
