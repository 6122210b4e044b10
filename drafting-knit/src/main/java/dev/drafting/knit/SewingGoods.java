package dev.drafting.knit;

import dev.drafting.core.cut.CutItem;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.sewing.Needle;
import dev.drafting.knit.sewing.SeamTape;
import dev.drafting.knit.sewing.SewingPlan;
import dev.drafting.knit.sewing.Stitch;
import dev.drafting.knit.sewing.StitchType;
import dev.drafting.knit.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What sewing itself uses up: tape, thread, needles. */
final class SewingGoods {
  private SewingGoods() {}

  static CutItem cutItem(SeamTape tape) {
    String how = "tape or clear elastic, as long as the seam";
    return CutItem.ofStrip(tape.seam() + " tape", "tape", tape.length(), tape.width(), how)
        .withCount(tape.times());
  }

  static List<Goods> of(SewingPlan sewing, Collection<Fabric> fabrics) {
    List<Goods> goods = new ArrayList<>();
    double tape =
        sewing.tapes().stream().mapToDouble(each -> each.length().toCm() * each.times()).sum();
    if (tape > 0) {
      BigDecimal metres = BigDecimal.valueOf((long) Math.ceil(tape / 10 - 1e-9), 1);
      String width = Wording.fine(sewing.tapes().get(0).width());
      goods.add(Goods.of("tape or clear elastic, " + width + " wide", metres + " m"));
    }
    sewing
        .threadMetres()
        .forEach(
            (cloth, metres) ->
                goods.add(
                    Goods.of("thread to match " + cloth, "about " + metres + " m (estimate)")));
    fabrics.forEach(
        fabric ->
            goods.add(Goods.of("needles for " + fabric.name(), Needle.of(fabric).toString())));
    sewing.lines().stream()
        .map(line -> line.stitch())
        .filter(stitch -> stitch.type() == StitchType.TWIN_NEEDLE)
        .distinct()
        .forEach(stitch -> goods.add(twin(stitch)));
    return goods;
  }

  private static Goods twin(Stitch stitch) {
    BigDecimal inches =
        BigDecimal.valueOf(Math.round(stitch.width().toMm() / 25.4 * 100), 2).stripTrailingZeros();
    return Goods.of(
        "twin needle for stretch cloth",
        "size 75, " + Wording.fine(stitch.width()) + " (" + inches.toPlainString() + " in) wide");
  }
}
