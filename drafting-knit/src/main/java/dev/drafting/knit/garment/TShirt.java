package dev.drafting.knit.garment;

import dev.drafting.core.Experimental;
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
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.template.Choice;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.Fit;
import dev.drafting.knit.size.FittedTemplate;
import java.util.ArrayList;
import java.util.List;

/**
 * A T-shirt with sleeves set in: the cap of the sleeve is as high as given, and as wide as makes it
 * as long as both armholes and its ease together. With the choice "neck", "placket" it opens at the
 * front, by a fifth of its length (the project's own, no source).
 *
 * <pre>{@code
 * Pattern tee = new TShirt().pattern(Dimensions.of().with("cap ease", Length.mm(8)));
 * double armholes = 2 * tee.edge(EdgeRef.parse("front armhole")).length().toMm();
 * Math.round(tee.edge(EdgeRef.parse("sleeve cap")).length().toMm() - armholes);  // => 8
 * new TShirt().pattern(Dimensions.of().withChoice("neck", "placket")).plackets();  // => [placket at front / neck, 128 mm long, 25 mm wide, with 3 fasteners]
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class TShirt implements FittedTemplate {
  private static final long serialVersionUID = 1L;
  private static final Length ALLOWANCE = Length.mm(7);
  private static final double INTO_HEM = 0.6;
  private static final String NECK = "neck";
  private static final String PLACKET = "placket";
  private static final Length PLACKET_WIDTH = Length.mm(25);
  private static final double PLACKET_OF_LENGTH = 0.2;

  /** Makes the template. */
  public TShirt() {}

  @Override
  public String id() {
    return "t-shirt";
  }

  @Override
  public String about() {
    return "a T-shirt with sleeves set in, banded at the neck";
  }

  @Override
  public List<Dimension> dimensions() {
    List<Dimension> all =
        new ArrayList<>(TopDimensions.of(Length.cm(76), Length.mm(95), Length.mm(115)));
    all.add(
        Dimension.length(
            "cap height",
            "from the width of the sleeve up to its top",
            Length.mm(70),
            Length.mm(110),
            Length.mm(130)));
    all.add(
        Dimension.length(
            "cap ease",
            "how much longer the cap is than the armholes",
            Length.ZERO,
            Length.mm(5),
            Length.mm(20)));
    all.add(
        Dimension.length(
            "sleeve length",
            "along the underarm seam, as it hangs",
            Length.mm(60),
            Length.mm(120),
            Length.mm(480)));
    all.add(
        Dimension.length(
            "sleeve taper",
            "how much narrower each side of the sleeve is at its hem",
            Length.ZERO,
            Length.mm(8),
            Length.mm(10)));
    return all;
  }

  @Override
  public List<Choice> choices() {
    return List.of(new Choice(NECK, List.of("band", PLACKET)));
  }

  @Override
  public List<BodyRule> bodyRules() {
    List<BodyRule> all = new ArrayList<>(TopDimensions.rules(Fit.ease(0.05), 0.66));
    all.add(BodyRule.length("cap height", BodyMeasure.SCYE_DEPTH).times(0.49));
    all.add(BodyRule.length("sleeve length", BodyMeasure.ARM_LENGTH).times(0.2));
    return List.copyOf(all);
  }

  @Override
  public void check(Dimensions given) {
    TopHalf.check(given);
  }

  @Override
  public Pattern draw(Dimensions given) {
    return draw("T-shirt", given);
  }

  Pattern draw(String name, Dimensions given) {
    Pattern banded = banded(name, given);
    Length opening = given.length("length").times(PLACKET_OF_LENGTH);
    return given.choice(NECK).equals(PLACKET)
        ? banded.withPlacket(Placket.of("front neck", opening, PLACKET_WIDTH))
        : banded;
  }

  private static Pattern banded(String name, Dimensions given) {
    TopHalf front = new TopHalf(given, "front neck depth");
    Length armholes = front.armholeLength().times(2);
    Length ease = given.length("cap ease");
    Piece sleeve = sleeve(given, armholes.plus(ease).toMm());
    return Pattern.of(
            name,
            List.of(
                front.piece("front"), new TopHalf(given, "back neck depth").piece("back"), sleeve),
            List.of(
                Seam.of("shoulder", "front shoulder", "back shoulder"),
                Seam.of("side", "front side", "back side"),
                Seam.of("underarm", "sleeve front underarm", "sleeve back underarm").endToStart(),
                Seam.of(
                        "cap",
                        List.of(EdgeRef.parse("front armhole"), EdgeRef.parse("back armhole")),
                        List.of(EdgeRef.parse("sleeve cap")))
                    .endToStart()
                    .withEase(ease.negated())))
        .withSeamAllowance(ALLOWANCE)
        .withFinish("front neck", FoldedBand.of(Length.mm(20), ALLOWANCE))
        .withFinish("back neck", FoldedBand.of(Length.mm(20), ALLOWANCE))
        .withFinish("front hem", TurnedHem.once(Length.mm(20)))
        .withFinish("back hem", TurnedHem.once(Length.mm(20)))
        .withFinish("sleeve hem", TurnedHem.once(Length.mm(20)));
  }

  private static Piece sleeve(Dimensions given, double capLength) {
    double height = given.length("cap height").toMm();
    double width = SetInCap.width(height, capLength);
    double down = given.length("sleeve length").toMm();
    double hem = width - given.length("sleeve taper").toMm();
    Point left = new Point(-width, 0);
    Point right = new Point(width, 0);
    Point leftHem = new Point(-hem, -down);
    Point rightHem = new Point(hem, -down);
    return Piece.of(
            "sleeve",
            List.of(
                Edge.of("hem", hem(leftHem, rightHem, right)),
                Edge.of("back underarm", Curve.line(rightHem, right)),
                Edge.of("cap", SetInCap.curve(width, height)),
                Edge.of("front underarm", Curve.line(left, leftHem))))
        .withCutting(Cutting.pairs(1));
  }

  /** It meets the underarm squarely at both ends, so that it runs on smoothly beyond the seam. */
  private static Curve hem(Point left, Point right, Point underarm) {
    Vector up = underarm.minus(right).unit();
    double handle = right.x() * INTO_HEM;
    Vector arriving = new Vector(up.dy(), -up.dx()).times(handle);
    Vector leaving = new Vector(up.dy(), up.dx()).times(handle);
    return Curve.of(new Cubic(left, left.plus(leaving), right.plus(arriving.negated()), right));
  }
}
