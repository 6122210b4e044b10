package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.cut.CutItem;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.sewing.Detail;
import dev.drafting.knit.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The elastic of all casings: what to cut and what to buy. */
final class Elastics {
  private Elastics() {}

  static Optional<CutItem> cutItem(Opening opening) {
    return opening.finish() instanceof Casing casing
        ? casing.elasticCutLength().map(cut -> cutItem(opening.name(), cut, casing))
        : Optional.empty();
  }

  private static CutItem cutItem(String opening, Length cut, Casing casing) {
    String how = "its ends lapped by " + Wording.fine(casing.overlap());
    return CutItem.ofStrip(opening + " elastic", "elastic", cut, casing.elasticWidth(), how);
  }

  /** Elastic calls for cautions of its own. */
  static List<Detail> details(List<Opening> openings) {
    boolean elastic = openings.stream().anyMatch(opening -> opening.finish() instanceof Casing);
    return elastic ? List.of(Detail.ELASTIC) : List.of();
  }

  /** Rounded up to 10 cm, each width for itself. */
  static List<Goods> goods(List<Opening> openings) {
    Map<Length, Length> lengths = new LinkedHashMap<>();
    for (Opening opening : openings) {
      cutItem(opening).ifPresent(item -> lengths.merge(item.width(), item.length(), Length::plus));
    }
    List<Goods> goods = new ArrayList<>();
    lengths.forEach(
        (width, length) -> {
          BigDecimal metres = BigDecimal.valueOf((long) Math.ceil(length.toCm() / 10 - 1e-9), 1);
          goods.add(Goods.of("elastic, " + Wording.fine(width) + " wide", metres + " m"));
        });
    return goods;
  }
}
