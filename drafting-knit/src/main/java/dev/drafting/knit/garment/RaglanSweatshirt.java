package dev.drafting.knit.garment;

import dev.drafting.core.Experimental;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
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
 * A sweatshirt with raglan sleeves, and bands of rib at neck, wrists and hem. The sleeve reaches up
 * to the neck: a quarter of the front neck and three tenths of the back neck belong to it (common
 * practice, no source). All lengths count the bands. Instead of its band the neck may have a hood
 * of two halves; put no cord into that of a child. The front may have a pocket for both hands.
 *
 * <pre>{@code
 * Pattern raglan = new RaglanSweatshirt().pattern();
 * Length body = raglan.edge(EdgeRef.parse("front raglan")).length();
 * Length sleeve = raglan.edge(EdgeRef.parse("sleeve / front raglan")).length();
 * body.minus(sleeve).text(LengthUnit.MM);  // => 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class RaglanSweatshirt implements FittedTemplate {
  private static final long serialVersionUID = 1L;
  private static final Length ALLOWANCE = Length.mm(7);
  private static final Length RIB = Length.mm(60);
  private static final double SHARE_OF_FRONT_NECK = 0.25;
  private static final double SHARE_OF_BACK_NECK = 0.3;

  /** Makes the template. */
  public RaglanSweatshirt() {}

  @Override
  public String id() {
    return "raglan-sweatshirt";
  }

  @Override
  public String about() {
    return "a sweatshirt with raglan sleeves, banded at neck, wrists and hem";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        TopDimensions.chest(Length.cm(86), Length.cm(112), Length.cm(160)),
        TopDimensions.length(Length.cm(52), Length.cm(66), Length.cm(90)),
        TopDimensions.neckWidth(Length.mm(150), Length.mm(190), Length.mm(210)),
        TopDimensions.frontNeckDepth(Length.mm(60), Length.mm(85), Length.mm(120)),
        TopDimensions.backNeckDepth(Length.mm(15), Length.mm(25), Length.mm(40)),
        TopDimensions.armholeDepth(Length.mm(240), Length.mm(275), Length.mm(330)),
        Dimension.length(
            "sleeve width",
            "how wide the sleeve lies flat at the underarm",
            Length.mm(150),
            Length.mm(205),
            Length.mm(225)),
        Dimension.length(
            "sleeve length",
            "from the underarm straight down to the end of the cuff",
            Length.mm(300),
            Length.mm(480),
            Length.mm(580)),
        Dimension.length(
            "wrist",
            "how wide the sleeve lies flat at the cuff, before that draws it in",
            Length.mm(85),
            Length.mm(110),
            Length.mm(140)),
        Dimension.length(
            "hood height",
            "along the edge of the hood at the face, from the neck to the brow",
            Length.mm(300),
            Length.mm(345),
            Length.mm(400)),
        Dimension.length(
            "hood depth",
            "from the face to the back of the head, where the hood is deepest",
            Length.mm(210),
            Length.mm(250),
            Length.mm(290)));
  }

  @Override
  public List<Choice> choices() {
    return List.of(
        new Choice("neck", List.of("band", "hood")),
        new Choice("pocket", List.of("none", "front")));
  }

  /** Shares and lengths of the project's own, no source. */
  @Override
  public List<BodyRule> bodyRules() {
    return List.of(
        BodyRule.girth("chest", Fit.ease(0.15), BodyMeasure.BUST_GIRTH, BodyMeasure.CHEST_GIRTH),
        BodyRule.length("length", BodyMeasure.CERVICAL_TO_WAIST).plus(Length.cm(25)),
        BodyRule.length("neck width", BodyMeasure.NECK_BASE_GIRTH)
            .times(0.15)
            .plus(Length.cm(13.2)),
        BodyRule.length("armhole depth", BodyMeasure.SCYE_DEPTH).plus(Length.cm(6.5)),
        BodyRule.length("sleeve width", BodyMeasure.UPPER_ARM_GIRTH)
            .times(0.2)
            .plus(Length.cm(14.5)),
        BodyRule.length("sleeve length", BodyMeasure.ARM_LENGTH).plus(Length.cm(-11)),
        BodyRule.length("wrist", BodyMeasure.WRIST_GIRTH).times(0.5).plus(Length.cm(3)));
  }

  @Override
  public Pattern draw(Dimensions given) {
    RaglanHalf front = new RaglanHalf(given, "front neck depth", SHARE_OF_FRONT_NECK);
    RaglanHalf back = new RaglanHalf(given, "back neck depth", SHARE_OF_BACK_NECK);
    Piece sleeve = new RaglanSleeve(given, front, back).piece("sleeve");
    FoldedBand rib = FoldedBand.waistRib(RIB, ALLOWANCE);
    List<Piece> pieces = List.of(front.piece("front", 1), back.piece("back", 2), sleeve);
    List<Seam> seams =
        List.of(
            Seam.of("front raglan", "front raglan", "sleeve / front raglan").endToStart(),
            Seam.of("back raglan", "back raglan", "sleeve / back raglan"),
            Seam.of("underarm", "sleeve / front underarm", "sleeve / back underarm").endToStart(),
            Seam.of("side", "front side", "back side"));
    Pattern sewn =
        given.choice("neck").equals("hood") ? hooded(given, pieces, seams) : banded(pieces, seams);
    Pattern whole =
        given.choice("pocket").equals("front") ? FrontPocket.on(sewn, given, RIB) : sewn;
    return whole
        .withSeamAllowance(ALLOWANCE)
        .withFinish("front hem", rib)
        .withFinish("back hem", rib)
        .withFinish("sleeve wrist", FoldedBand.cuff(RIB, ALLOWANCE));
  }

  private static Pattern banded(List<Piece> pieces, List<Seam> seams) {
    FoldedBand band = FoldedBand.of(Length.mm(20), ALLOWANCE);
    return Pattern.of("Raglan sweatshirt", pieces, seams)
        .withFinish("front neck", band)
        .withFinish("back neck", band)
        .withFinish("sleeve neck", band);
  }

  /** One seam joins the hood to front, sleeves and back. */
  private static Pattern hooded(Dimensions given, List<Piece> body, List<Seam> bodySeams) {
    Length halfNeck =
        body.stream().map(piece -> piece.edge("neck").length()).reduce(Length.ZERO, Length::plus);
    List<Piece> pieces = new ArrayList<>(body);
    pieces.add(
        Hood.piece("hood", halfNeck, given.length("hood height"), given.length("hood depth")));
    List<Seam> seams = new ArrayList<>(bodySeams);
    seams.add(Seam.mirrored("hood centre", EdgeRef.parse("hood centre")));
    seams.add(
        Seam.of(
            "neck",
            List.of(
                EdgeRef.parse("front neck"),
                EdgeRef.parse("sleeve neck"),
                EdgeRef.parse("back neck")),
            List.of(EdgeRef.parse("hood neck"))));
    return Pattern.of("Hooded raglan sweatshirt", pieces, seams)
        .withFinish("hood face", TurnedHem.once(Length.mm(25)));
  }
}
