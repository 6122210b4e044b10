package dev.drafting.knit.garment;

import dev.drafting.core.measure.Length;
import dev.drafting.core.template.Dimension;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.Fit;
import java.util.List;

/** The dimensions of garments for the upper body. */
final class TopDimensions {
  private TopDimensions() {}

  /** Those of all tops, with the bounds of the shoulder seam, which a sleeve makes longer. */
  static List<Dimension> of(Length leastChest, Length shoulder, Length longestShoulder) {
    return List.of(
        chest(leastChest, Length.cm(94), Length.cm(160)),
        length(Length.cm(52), Length.cm(64), Length.cm(110)),
        Dimension.length(
            "flare",
            "how much a quarter of the hem is wider than a quarter of the chest",
            Length.mm(-15),
            Length.mm(5),
            Length.mm(60)),
        Dimension.length(
            "shoulder", "along the shoulder seam", Length.mm(45), shoulder, longestShoulder),
        Dimension.length(
            "shoulder drop",
            "how much lower the tip of the shoulder is than the neck point",
            Length.mm(8),
            Length.mm(20),
            Length.mm(22)),
        neckWidth(Length.mm(140), Length.mm(180), Length.mm(220)),
        frontNeckDepth(Length.mm(60), Length.mm(100), Length.mm(150)),
        backNeckDepth(Length.mm(15), Length.mm(25), Length.mm(60)),
        armholeDepth(Length.mm(190), Length.mm(230), Length.mm(290)));
  }

  static Dimension chest(Length least, Length usual, Length most) {
    return Dimension.girth("chest", "all round under the arms", least, usual, most);
  }

  static Dimension length(Length least, Length usual, Length most) {
    return Dimension.length(
        "length", "from the neck point at the shoulder to the hem", least, usual, most);
  }

  static Dimension neckWidth(Length least, Length usual, Length most) {
    return Dimension.length("neck width", "from neck point to neck point", least, usual, most);
  }

  static Dimension frontNeckDepth(Length least, Length usual, Length most) {
    return Dimension.length(
        "front neck depth",
        "from the height of the neck points down to the front neck",
        least,
        usual,
        most);
  }

  static Dimension backNeckDepth(Length least, Length usual, Length most) {
    return Dimension.length(
        "back neck depth",
        "from the height of the neck points down to the back neck",
        least,
        usual,
        most);
  }

  static Dimension armholeDepth(Length least, Length usual, Length most) {
    return Dimension.length(
        "armhole depth",
        "from the height of the neck points down to the underarm",
        least,
        usual,
        most);
  }

  /**
   * What they follow (the project's own shares, no source). The seam takes a share of the shoulder,
   * for the neck of a knit top is wider than the base of the neck.
   */
  static List<BodyRule> rules(Fit usual, double shoulder) {
    return List.of(
        BodyRule.girth("chest", usual, BodyMeasure.BUST_GIRTH, BodyMeasure.CHEST_GIRTH),
        BodyRule.length("length", BodyMeasure.CERVICAL_TO_WAIST).plus(Length.cm(24)),
        BodyRule.length("shoulder", BodyMeasure.SHOULDER_LENGTH).times(shoulder),
        BodyRule.length("neck width", BodyMeasure.NECK_BASE_GIRTH).times(0.3).plus(Length.cm(6.6)),
        BodyRule.length("armhole depth", BodyMeasure.SCYE_DEPTH).plus(Length.cm(2.5)));
  }
}
