package dev.drafting.knit.garment;

import dev.drafting.core.Experimental;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.Fit;
import dev.drafting.knit.size.FittedTemplate;
import java.util.List;

/**
 * A baby's top with an envelope neck: front and back lap over each other at the shoulders, so that
 * it opens wide enough for the head without buttons or snaps. The laps are caught in the seams of
 * the sleeves; they are some 4 to 5 cm deep at the armhole (common practice, no source).
 *
 * <p>It is a child's garment: give the draft the {@linkplain dev.drafting.knit.Wearer wearer's} age
 * for the cautions on cords, small parts and nightwear, and ask for the rules where it will be worn
 * or sold.
 *
 * <pre>{@code
 * Pattern top = new BabyTop().pattern();
 * top.seams().get(0);  // => shoulder lap: front / lap over back / lap, end to start
 * Assembly.of(top).opening("neck").length().text(LengthUnit.CM);  // => 49.36 cm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class BabyTop implements FittedTemplate {
  private static final long serialVersionUID = 1L;
  private static final Length ALLOWANCE = Length.mm(7);
  private static final Length HEM = Length.mm(15);
  private static final double STRAIGHT = 0.7;

  /** Makes the template. */
  public BabyTop() {}

  @Override
  public String id() {
    return "baby-top";
  }

  @Override
  public String about() {
    return "a baby's top with an envelope neck, bound, and sleeves set in";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        TopDimensions.chest(Length.cm(48), Length.cm(52), Length.cm(66)),
        TopDimensions.length(Length.cm(24), Length.cm(31), Length.cm(44)),
        TopDimensions.neckWidth(Length.mm(105), Length.mm(120), Length.mm(130)),
        TopDimensions.frontNeckDepth(Length.mm(30), Length.mm(45), Length.mm(60)),
        TopDimensions.backNeckDepth(Length.mm(10), Length.mm(20), Length.mm(30)),
        Dimension.length(
            "shoulder",
            "along the line where the shoulder turns from front to back",
            Length.mm(35),
            Length.mm(45),
            Length.mm(50)),
        Dimension.length(
            "shoulder drop",
            "how much lower the tip of the shoulder is than the neck point",
            Length.mm(4),
            Length.mm(10),
            Length.mm(14)),
        Dimension.length(
            "lap",
            "how far front and back lie over each other, along the armhole",
            Length.mm(30),
            Length.mm(44),
            Length.mm(60)),
        TopDimensions.armholeDepth(Length.mm(100), Length.mm(120), Length.mm(150)),
        Dimension.length(
            "cap height",
            "from the width of the sleeve up to its top",
            Length.mm(25),
            Length.mm(40),
            Length.mm(50)),
        Dimension.length(
            "sleeve length",
            "from the underarm straight down to the hem",
            Length.mm(60),
            Length.mm(180),
            Length.mm(280)),
        Dimension.length(
            "wrist",
            "how wide the sleeve lies flat at its hem",
            Length.mm(60),
            Length.mm(75),
            Length.mm(90)));
  }

  /** Shares and lengths of the project's own, no source. */
  @Override
  public List<BodyRule> bodyRules() {
    return List.of(
        BodyRule.girth("chest", Fit.ease(0.15), BodyMeasure.CHEST_GIRTH),
        BodyRule.length("length", BodyMeasure.CERVICAL_TO_WAIST).plus(Length.cm(13.5)),
        BodyRule.length("shoulder", BodyMeasure.SHOULDER_LENGTH).times(0.2).plus(Length.mm(33.5)),
        BodyRule.length("armhole depth", BodyMeasure.SCYE_DEPTH).plus(Length.cm(2)),
        BodyRule.length("cap height", BodyMeasure.SCYE_DEPTH).times(0.38),
        BodyRule.length("sleeve length", BodyMeasure.ARM_LENGTH).times(0.85));
  }

  @Override
  public Pattern draw(Dimensions given) {
    LappedHalf front = new LappedHalf(given, "front neck depth");
    LappedHalf back = new LappedHalf(given, "back neck depth");
    return Pattern.of(
            "Baby top",
            List.of(
                front.piece("front"),
                back.piece("back"),
                sleeve(given, front.armholeLength(), back.armholeLength())),
            List.of(
                Seam.lapped("shoulder lap", "front lap", "back lap").endToStart(),
                Seam.of(
                        "cap",
                        List.of(
                            EdgeRef.parse("front armhole"),
                            EdgeRef.parse("front lap"),
                            EdgeRef.parse("back armhole")),
                        List.of(EdgeRef.parse("sleeve cap")))
                    .endToStart(),
                Seam.of("side", "front side", "back side"),
                Seam.of("underarm", "sleeve / front underarm", "sleeve / back underarm")
                    .endToStart()))
        .withSeamAllowance(ALLOWANCE)
        .withFinish("front neck", WrappedBinding.of(Length.mm(10)))
        .withFinish("back neck", WrappedBinding.of(Length.mm(10)))
        .withFinish("front hem", TurnedHem.once(HEM))
        .withFinish("back hem", TurnedHem.once(HEM))
        .withFinish("sleeve hem", TurnedHem.once(HEM));
  }

  private static Piece sleeve(Dimensions given, Length front, Length back) {
    Length lap = given.length("lap");
    double height = given.length("cap height").toMm();
    double width = SetInCap.width(height, front.plus(lap).plus(back).toMm());
    double down = given.length("sleeve length").toMm();
    Point wrist = new Point(given.length("wrist").toMm(), -down);
    Curve underarm = underarm(wrist, new Point(width, 0));
    return Piece.of(
            "sleeve",
            List.of(
                Edge.of("hem", Curve.line(wrist.mirrored(), wrist)),
                Edge.of("back underarm", underarm),
                Edge.of("cap", SetInCap.curve(width, height)),
                Edge.of("front underarm", underarm.mirrored().reversed())))
        .withNotch(Notch.of("cap", back, "end of front lap"))
        .withNotch(Notch.of("cap", back.plus(lap), "end of back lap"))
        .withCutting(Cutting.pairs(1));
  }

  /** Upright at the hem, so that it is square to it, then straight. */
  private static Curve underarm(Point wrist, Point end) {
    Point straightTo = new Point(wrist.x(), STRAIGHT * wrist.y());
    return Curve.of(new Cubic(wrist, straightTo, straightTo.midpoint(end), end));
  }
}
