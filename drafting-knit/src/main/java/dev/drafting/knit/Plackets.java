package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Placket;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.sewing.Detail;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What plackets ask of the strips at their edges, of the wearer's body, and of the shop. */
final class Plackets {
  private Plackets() {}

  /** The placket that opens an edge of an opening. */
  static Optional<Placket> of(Pattern pattern, Opening opening) {
    return pattern.plackets().stream()
        .filter(
            placket ->
                opening.parts().stream().anyMatch(part -> part.edge().equals(placket.edge())))
        .findFirst();
  }

  /** The rule for a strip whose ends lie over each other with those of the placket. */
  static StripRule lapped(StripRule rule, Placket placket) {
    StripRule lapped = rule.withLap(placket.width());
    return placket.along().isPresent()
        ? lapped
        : lapped.withJoinAt("centre " + placket.edge().piece());
  }

  /** Both sides of the opening, which no longer have to stretch. */
  static Length opens(Pattern pattern, Opening opening) {
    return of(pattern, opening)
        .map(placket -> placket.belowFinish(pattern).max(Length.ZERO).times(2))
        .orElse(Length.ZERO);
  }

  /** Buttons and snaps call for cautions of their own. */
  static List<Detail> details(Pattern pattern) {
    return pattern.plackets().stream().anyMatch(placket -> placket.fasteners() > 0)
        ? List.of(Detail.SMALL_PARTS)
        : List.of();
  }

  static List<Goods> goods(Pattern pattern) {
    Map<String, Integer> fasteners = new LinkedHashMap<>();
    Map<String, Length> stays = new LinkedHashMap<>();
    for (Placket placket : pattern.plackets()) {
      int times = pattern.piece(placket.edge().piece()).cutting().pieces();
      String size =
          "buttons or snaps, at most " + Wording.fine(placket.width().dividedBy(2)) + " wide";
      if (placket.fasteners() > 0) {
        fasteners.merge(size, times * placket.fasteners(), Integer::sum);
      }
      String stay = "stay to press on, cut " + Wording.fine(placket.width().times(2)) + " wide";
      stays.merge(stay, placket.stayLength().times(3 * times), Length::plus);
    }
    List<Goods> goods = new ArrayList<>();
    fasteners.forEach((what, count) -> goods.add(Goods.of(what, String.valueOf(count))));
    stays.forEach((what, length) -> goods.add(Goods.of(what, Wording.amount(length))));
    return goods;
  }
}
