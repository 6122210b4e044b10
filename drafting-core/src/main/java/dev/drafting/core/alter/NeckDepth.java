package dev.drafting.core.alter;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.List;
import java.util.Map;

/** A neck lowered or raised at its centre. */
record NeckDepth(EdgeRef edge, Length lower) implements Alteration {
  @Override
  public String id() {
    return "neck-depth";
  }

  @Override
  public Map<String, String> settings() {
    return Settings.of("edge", edge, "lower", lower);
  }

  @Override
  public String describe() {
    return (lower.isNegative() ? "raise " : "lower ") + edge + " by " + Settings.amount(lower);
  }

  @Override
  public Pattern applyTo(Pattern pattern) {
    SeamSide side = SeamSide.of(pattern, edge);
    Length length = side.curve().length();
    Length centre = length.dividedBy(2);
    if (endsOnFold(side.piece(), side.index())) {
      centre = length;
    } else if (endsOnFold(side.piece(), side.index() - 1)) {
      centre = Length.ZERO;
    }
    Follow follow = new Follow(pattern);
    follow.shift(edge, List.of(Length.ZERO, centre, length), lower.negated());
    return follow.result();
  }

  private static boolean endsOnFold(Piece piece, int index) {
    int n = piece.edges().size();
    return piece.edges().get((index + n) % n).isOnFold()
        || piece.edges().get((index + 1) % n).isOnFold();
  }

  @Override
  public String toString() {
    return describe();
  }
}
