package dev.drafting.knit;

import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Piece;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripGrain;
import dev.drafting.knit.band.StripPiece;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.sewing.SewingPlan;
import dev.drafting.knit.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A first estimate of what to buy. Pieces are laid as upright rectangles in rows across the cloth,
 * so that a proper lay plan needs no more than this.
 */
final class GoodsEstimate {
  /** Open-width jersey is 150 to 160 cm (common practice), ribbing from 71 cm (sewing handbook). */
  private static final Length USUAL_WIDTH = Length.cm(150);

  private static final Length USUAL_RIB_WIDTH = Length.cm(70);

  /** What is lost at the ends of a length of goods: 3 to 5 %, common practice. */
  private static final double END_LOSS = 0.05;

  private final Map<Fabric, List<Rectangle>> lays = new LinkedHashMap<>();

  private record Rectangle(double across, double along) {}

  private GoodsEstimate() {}

  static List<Goods> of(
      Plan plan, SewingPlan sewing, List<Strip> strips, Function<String, Fabric> fabrics) {
    GoodsEstimate estimate = new GoodsEstimate();
    for (CutPiece cut : plan.cutPlan().clothPieces()) {
      estimate.add(cut, fabrics.apply(cut.piece().cloth()));
    }
    strips.forEach(estimate::add);
    List<Goods> goods = new ArrayList<>();
    estimate.lays.forEach((fabric, pieces) -> goods.add(cloth(fabric, pieces)));
    goods.addAll(Elastics.goods(plan.assembly().openings()));
    goods.addAll(Plackets.goods(plan.finished()));
    goods.addAll(SewingGoods.of(sewing, estimate.lays.keySet()));
    return List.copyOf(goods);
  }

  private void add(CutPiece cut, Fabric fabric) {
    Piece piece = cut.piece();
    Transform upright = Transform.rotation(new Point(0, 0), Angle.degrees(90).minus(piece.grain()));
    Curve outline = cut.cutLine();
    Box box = outline.map(upright).bounds();
    if (piece.isOnFold()) {
      box = box.union(outline.mirrored().map(upright).bounds());
    }
    for (int i = 0; i < piece.cutting().pieces(); i++) {
      lay(fabric).add(new Rectangle(box.width().toMm(), box.height().toMm()));
    }
  }

  private void add(Strip strip) {
    double width = strip.cutWidth().toMm();
    boolean across = strip.fit().grain() == StripGrain.ACROSS;
    for (StripPiece piece : strip.pieces()) {
      double length = piece.length().toMm();
      Rectangle cut = across ? new Rectangle(length, width) : new Rectangle(width, length);
      lay(strip.fabric()).addAll(Collections.nCopies(piece.count(), cut));
    }
  }

  private List<Rectangle> lay(Fabric fabric) {
    return lays.computeIfAbsent(fabric, f -> new ArrayList<>());
  }

  private static Length usualWidth(Fabric fabric) {
    return fabric.structure() == Structure.RIB ? USUAL_RIB_WIDTH : USUAL_WIDTH;
  }

  private static Goods cloth(Fabric fabric, List<Rectangle> pieces) {
    Length across = fabric.widthToCut().orElse(usualWidth(fabric));
    Length lay = rows(pieces, across.toMm());
    Length unwashed = fabric.isPrewashed() ? fabric.shrinkage().beforeWashingAlong(lay) : lay;
    Length bought = unwashed.times(1 + END_LOSS);
    BigDecimal metres = BigDecimal.valueOf((long) Math.ceil(bought.toCm() / 10 - 1e-9), 1);
    String width =
        fabric
            .width()
            .map(known -> Wording.amount(known) + " wide")
            .orElse("if " + Wording.amount(usualWidth(fabric)) + " of its width can be cut from");
    return Goods.of(fabric.name(), metres + " m, " + width + " (estimate)");
  }

  /** The length of cloth when the pieces lie side by side in rows, the longest first. */
  private static Length rows(List<Rectangle> pieces, double width) {
    List<Rectangle> longestFirst = new ArrayList<>(pieces);
    longestFirst.sort(Comparator.comparingDouble(Rectangle::along).reversed());
    double length = 0;
    double used = Double.POSITIVE_INFINITY;
    for (Rectangle piece : longestFirst) {
      if (used + piece.across() > width) {
        length += piece.along();
        used = 0;
      }
      used += piece.across();
    }
    return Length.mm(length);
  }
}
