package dev.drafting.core.template;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.Optional;

/**
 * The law of scale: all dimensions larger by one factor make every finished edge larger by that
 * factor. The factor is as large as the bounds of all dimensions allow, and half as large again at
 * most; the dimensions that are tried are drawn together so far that both sizes lie within them.
 */
final class EvenGrowth {
  private static final double MOST_FACTOR = 1.5;
  private static final double LEAST_FACTOR = 1.01;
  private static final double SAME_MM = 0.01;
  private static final int PLACES = 4;

  private final GarmentTemplate template;
  private final double factor;

  EvenGrowth(GarmentTemplate template) {
    this.template = template;
    this.factor = template.dimensions().stream().mapToDouble(EvenGrowth::room).min().orElse(1);
  }

  /** A factor that leaves as much room for what is tried as for its growth. */
  private static double room(Dimension dimension) {
    double least = dimension.least().toMm();
    double most = dimension.most().toMm();
    if (least <= 0 && most >= 0) {
      return MOST_FACTOR;
    }
    double ratio = least > 0 ? most / least : least / most;
    return Math.min(MOST_FACTOR, Math.sqrt(ratio));
  }

  /** Tells whether the template claims the law, and its bounds leave room to try it. */
  boolean isAsked() {
    return template.growsEvenly() && factor > LEAST_FACTOR;
  }

  /** What does not grow evenly from these dimensions, or nothing. */
  Optional<String> violation(Dimensions given) {
    Dimensions small = given;
    Dimensions large = given;
    for (Dimension dimension : template.dimensions()) {
      Length from = drawnTogether(dimension, given.length(dimension.name()));
      Length to = from.times(factor).max(dimension.least()).min(dimension.most());
      small = small.with(dimension.name(), from);
      large = large.with(dimension.name(), to);
    }
    try {
      return violation(template.pattern(small), template.pattern(large));
    } catch (DraftingException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  private Length drawnTogether(Dimension dimension, Length length) {
    Length least = dimension.least().max(dimension.least().dividedBy(factor));
    Length most = dimension.most().min(dimension.most().dividedBy(factor));
    Length range = dimension.most().minus(dimension.least());
    double share = range.isZero() ? 0 : length.minus(dimension.least()).ratioTo(range);
    return least.plus(most.minus(least).times(share));
  }

  private Optional<String> violation(Pattern small, Pattern large) {
    for (Piece piece : small.pieces()) {
      Piece grown = large.piece(piece.name());
      Vector moved = grown.outline().start().minus(scaled(piece.outline()).start());
      for (Edge edge : piece.edges()) {
        Curve expected = scaled(edge.curve()).map(Transform.translation(moved));
        double off = off(expected, grown.edge(edge.name()).curve());
        if (off > SAME_MM) {
          return Optional.of(
              piece.name()
                  + " / "
                  + edge.name()
                  + " does not grow evenly with the dimensions, by "
                  + off
                  + " mm");
        }
      }
    }
    return Optional.empty();
  }

  private Curve scaled(Curve curve) {
    return curve.map(Transform.scaling(factor));
  }

  private static double off(Curve expected, Curve drawn) {
    double off = 0;
    for (int i = 0; i <= PLACES; i++) {
      off = Math.max(off, at(expected, i).distanceTo(at(drawn, i)).toMm());
    }
    return off;
  }

  private static Point at(Curve curve, int place) {
    return curve.pointAt(curve.length().times((double) place / PLACES));
  }
}
