package dev.drafting.knit;

import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripGrain;
import dev.drafting.knit.fabric.Fabric;
import java.util.List;

/** What is cut from one cloth of a draft, to be laid on it. */
final class DraftLay {
  /** Open-width jersey is 150 to 160 cm (common practice). */
  private static final Length USUAL_WIDTH = Length.cm(150);

  private DraftLay() {}

  static Cloth cloth(Fabric fabric) {
    return Cloth.of(fabric.widthToCut().orElse(USUAL_WIDTH));
  }

  static Lay of(Cloth goods, String cloth, List<CutPiece> pieces, List<Strip> strips) {
    Lay lay =
        Lay.on(goods)
            .with(pieces.stream().filter(cut -> cut.piece().cloth().equals(cloth)).toList());
    for (Strip strip : strips) {
      if (strip.finish().cloth().equals(cloth)) {
        for (int i = 0; i < strip.lengths(); i++) {
          lay =
              strip.fit().grain() == StripGrain.ALONG
                  ? lay.withStripAlong(strip.name(), strip.lengthOfEach(), strip.cutWidth())
                  : lay.withStrip(strip.name(), strip.lengthOfEach(), strip.cutWidth());
        }
      }
    }
    return lay;
  }
}
