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
 * Boxer briefs without side seams: one piece for each leg, and between them at the front a pouch of
 * two halves with a seam down its centre. One seam goes from hem to hem between the legs: the back
 * of the leg is sewn to its front and to the bottom of the pouch.
 *
 * <pre>{@code
 * Pattern briefs = new BoxerBriefs().pattern();
 * Assembly.of(briefs).seamChecks().get(3).difference().text(LengthUnit.MM);  // => 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class BoxerBriefs implements FittedTemplate {
  private static final long serialVersionUID = 1L;
  private static final double FRONT_SHARE = 1 / 3.0;
  private static final double FRONT_TAPER = 0.15;
  private static final double INTO_FRONT = 0.2;
  private static final double LONG = 0.4;
  private static final double EXACT_MM = 1e-9;
  private static final int MOST_STEPS = 200;

  /** Makes the template. */
  public BoxerBriefs() {}

  @Override
  public String id() {
    return "boxer-briefs";
  }

  @Override
  public String about() {
    return "boxer briefs of one piece for each leg and a pouch, with elastic in a casing";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        Dimension.girth(
            "hip", "all round at the hip", Length.cm(60), Length.cm(90), Length.cm(140)),
        Dimension.length(
            "fork",
            "how far front and back together reach between the legs",
            Length.mm(80),
            Length.mm(130),
            Length.mm(170)),
        Dimension.length(
            "rise",
            "from the fork up to the upper edge, at the front",
            Length.mm(150),
            Length.mm(210),
            Length.mm(300)),
        Dimension.length(
            "back rise",
            "how much higher the upper edge is at the back",
            Length.ZERO,
            Length.mm(30),
            Length.mm(60)),
        Dimension.length(
            "inside leg",
            "from the hem up to the fork, at the front",
            Length.mm(60),
            Length.mm(90),
            Length.mm(220)),
        Dimension.length(
            "taper",
            "how much narrower the hem is than the leg at the fork, all round",
            Length.mm(20),
            Length.mm(65),
            Length.mm(70)),
        Dimension.length(
            "pouch",
            "how wide the pouch is at the upper edge",
            Length.mm(80),
            Length.mm(130),
            Length.mm(160)),
        Dimension.length(
            "fullness",
            "how far the centre of the pouch bulges beyond a straight line",
            Length.mm(10),
            Length.mm(25),
            Length.mm(40)));
  }

  /** Shares of the project's own, no source. */
  @Override
  public List<BodyRule> bodyRules() {
    return List.of(
        BodyRule.girth("hip", Fit.stretchUsed(0.15), BodyMeasure.HIP_GIRTH),
        BodyRule.length("fork", BodyMeasure.HIP_GIRTH).times(0.13),
        BodyRule.length("rise", BodyMeasure.BODY_RISE).times(0.8));
  }

  @Override
  public Pattern draw(Dimensions given) {
    Piece leg = leg(given);
    Pouch pouch =
        new Pouch(
            given.length("pouch").times(0.5), leg.edge("front").length(), given.length("fullness"));
    return Pattern.of(
            "Boxer briefs",
            List.of(leg, pouch.piece("pouch")),
            List.of(
                Seam.mirrored("pouch centre", EdgeRef.parse("pouch centre")),
                Seam.of("pouch", "leg front", "pouch side").endToStart(),
                Seam.mirrored("back centre", EdgeRef.parse("leg / back centre")),
                Seam.of(
                        "inside leg",
                        List.of(
                            EdgeRef.parse("leg / front inside leg"), EdgeRef.parse("pouch bottom")),
                        List.of(EdgeRef.parse("leg / back inside leg")))
                    .endToStart()))
        .withSeamAllowance(Length.mm(7))
        .withFinish("leg waist", Casing.of(Length.mm(30), Length.mm(7)))
        .withFinish("pouch waist", Casing.of(Length.mm(30), Length.mm(7)))
        .withFinish("leg hem", TurnedHem.once(Length.mm(20)));
  }

  private static Piece leg(Dimensions given) {
    double side = given.length("hip").toMm() / 4;
    double fork = given.length("fork").toMm();
    double taper = given.length("taper").toMm();
    Length halfPouch = given.length("pouch").times(0.5);
    Length bottom = Pouch.bottom(halfPouch);
    double rise = given.length("rise").toMm();
    Point frontFork =
        new Point(side + FRONT_SHARE * fork - bottom.toMm(), given.length("inside leg").toMm());
    Point frontHem = new Point(frontFork.x() - FRONT_TAPER * taper, 0);
    Curve front = insideLeg(frontHem, frontFork);
    double backReach = side + (1 - FRONT_SHARE) * fork;
    Point backHem = new Point((1 - FRONT_TAPER) * taper - backReach, 0);
    Curve back = insideLeg(backHem, -backReach, front.length().plus(bottom));
    Point frontWaist = new Point(side - halfPouch.toMm(), frontFork.y() + rise);
    Point backWaist = new Point(-side, frontWaist.y() + given.length("back rise").toMm());
    return Piece.of(
            "leg",
            List.of(
                Edge.of("hem", Curve.line(backHem, frontHem)),
                Edge.of("front inside leg", front),
                Edge.of("front", front(front, frontWaist)),
                Edge.of("waist", LegCurves.waist(frontWaist, backWaist)),
                Edge.of(
                    "back centre",
                    LegCurves.centre(back.end(), arriving(back), backWaist).reversed()),
                Edge.of("back inside leg", back.reversed())))
        .withCutting(Cutting.pairs(1));
  }

  /** Square to the hem, and leaning outwards more and more. */
  private static Curve insideLeg(Point hem, Point fork) {
    Point turn = new Point(hem.x(), fork.y() / 2);
    return Curve.of(new Cubic(hem, hem.between(turn, 2 / 3.0), fork.between(turn, 2 / 3.0), fork));
  }

  /** As high as makes it as long as wanted. */
  private static Curve insideLeg(Point hem, double x, Length wanted) {
    UnivariateFunction over = y -> insideLeg(hem, new Point(x, y)).length().minus(wanted).toMm();
    if (over.value(0) > 0) {
      throw DraftingException.of("the leg tapers too much for its length")
          .at("taper")
          .value(wanted)
          .accepted("less taper, or a longer inside leg");
    }
    double y = new BrentSolver(EXACT_MM).solve(MOST_STEPS, over, 0, wanted.toMm());
    return insideLeg(hem, new Point(x, y));
  }

  private static Vector arriving(Curve curve) {
    return curve.directionAt(curve.length());
  }

  /** To which the pouch is sewn; square to the inside leg and to the upper edge. */
  private static Curve front(Curve insideLeg, Point waist) {
    Point fork = insideLeg.end();
    double chord = fork.distanceTo(waist).toMm();
    return Curve.of(
        new Cubic(
            fork,
            fork.plus(arriving(insideLeg).left().times(INTO_FRONT * chord)),
            waist.plus(new Vector(0, -LONG * chord)),
            waist));
  }
}
