package dev.drafting.knit;

import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripGrain;
import dev.drafting.knit.band.StripPiece;
import dev.drafting.knit.fabric.Fabric;
import java.util.List;

/** What is cut from one cloth of a draft, to be laid on it. */
final class DraftLay {
  /** Open-width jersey is 150 to 160 cm (common practice). */
  private static final Length USUAL_WIDTH = Length.cm(150);

  /** What shapes are grown by, so that none is cut into, and a little more. */
  private static final double ROOM_MM = 4;

  private DraftLay() {}

  /**
   * The fabric's width, folded so that the pieces on the fold find room: both selvages to the
   * middle if they can lie beside each other, lengthwise if they are wider, else not at all.
   */
  static Cloth cloth(Fabric fabric, String cloth, List<CutPiece> pieces) {
    Cloth open = Cloth.of(fabric.widthToCut().orElse(USUAL_WIDTH));
    double widest =
        pieces.stream()
            .filter(cut -> cut.piece().cloth().equals(cloth) && cut.piece().isOnFold())
            .mapToDouble(cut -> cut.cutLine().bounds().width().toMm())
            .max()
            .orElse(0);
    double width = open.usableWidth().toMm() - ROOM_MM;
    if (4 * widest <= width) {
      return open.foldedToTheMiddle();
    }
    return 2 * widest <= width ? open.foldedLengthwise() : open;
  }

  static Lay of(Cloth goods, String cloth, List<CutPiece> pieces, List<Strip> strips) {
    Lay lay =
        Lay.on(goods)
            .with(pieces.stream().filter(cut -> cut.piece().cloth().equals(cloth)).toList());
    for (Strip strip : strips) {
      if (strip.finish().cloth().equals(cloth)) {
        lay = with(lay, strip);
      }
    }
    return lay;
  }

  private static Lay with(Lay lay, Strip strip) {
    boolean along = strip.fit().grain() == StripGrain.ALONG;
    Lay more = lay;
    for (StripPiece piece : strip.pieces()) {
      for (int i = 0; i < piece.count(); i++) {
        more =
            along
                ? more.withStripAlong(piece.name(), piece.length(), strip.cutWidth())
                : more.withStrip(piece.name(), piece.length(), strip.cutWidth());
      }
    }
    return more;
  }
}
