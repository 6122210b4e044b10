package dev.drafting.knit.garment;

import dev.drafting.core.measure.Length;
import dev.drafting.core.template.Dimension;
import java.util.ArrayList;
import java.util.List;

/** The dimensions of garments for the upper body. */
final class TopDimensions {
  private TopDimensions() {}

  /** Those of all tops, with the bounds of the shoulder seam, which a sleeve makes longer. */
  static List<Dimension> of(Length leastChest, Length shoulder, Length longestShoulder) {
    List<Dimension> all = new ArrayList<>();
    all.add(
        Dimension.girth(
            "chest", "all round under the arms", leastChest, Length.cm(94), Length.cm(160)));
    all.add(
        Dimension.length(
            "length",
            "from the neck point at the shoulder to the hem",
            Length.cm(52),
            Length.cm(64),
            Length.cm(110)));
    all.add(
        Dimension.length(
            "flare",
            "how much a quarter of the hem is wider than a quarter of the chest",
            Length.mm(-15),
            Length.mm(5),
            Length.mm(60)));
    all.add(
        Dimension.length(
            "shoulder", "along the shoulder seam", Length.mm(45), shoulder, longestShoulder));
    all.add(
        Dimension.length(
            "shoulder drop",
            "how much lower the tip of the shoulder is than the neck point",
            Length.mm(8),
            Length.mm(20),
            Length.mm(22)));
    all.add(
        Dimension.length(
            "neck width",
            "from neck point to neck point",
            Length.mm(140),
            Length.mm(180),
            Length.mm(220)));
    all.add(
        Dimension.length(
            "front neck depth",
            "from the height of the neck points down to the front neck",
            Length.mm(60),
            Length.mm(100),
            Length.mm(150)));
    all.add(
        Dimension.length(
            "back neck depth",
            "from the height of the neck points down to the back neck",
            Length.mm(15),
            Length.mm(25),
            Length.mm(60)));
    all.add(
        Dimension.length(
            "armhole depth",
            "from the height of the neck points down to the underarm",
            Length.mm(190),
            Length.mm(230),
            Length.mm(290)));
    return all;
  }
}
