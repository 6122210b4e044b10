package dev.drafting.core.alter;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import java.util.Map;

/** Pieces made longer or shorter along a line square to their grain. */
record Lengthening(String seam, Length up, Length amount) implements Alteration {
  @Override
  public String id() {
    return "lengthen";
  }

  @Override
  public Map<String, String> settings() {
    return Settings.of("seam", seam, "up", up, "amount", amount);
  }

  @Override
  public String describe() {
    return (amount.isNegative() ? "shorten by " : "lengthen by ")
        + Settings.amount(amount)
        + ", "
        + Settings.amount(up)
        + " up the "
        + seam
        + " seam";
  }

  @Override
  public Pattern applyTo(Pattern pattern) {
    Follow follow = new Follow(pattern);
    for (SeamSide side : SeamSide.of(pattern, seam)) {
      Vector down = side.grain().times(-amount.toMm());
      double line = side.up(crossing(side));
      for (Edge edge : side.piece().edges()) {
        if (side.up(edge.curve().end()) < line) {
          follow.move(new EdgeRef(side.piece().name(), edge.name()), down);
        }
      }
      follow.keepAnglesTo(side.ref());
    }
    return follow.result();
  }

  private Point crossing(SeamSide side) {
    Length length = side.curve().length();
    if (!up.isPositive() || up.compareTo(length) >= 0) {
      throw DraftingException.of("the line does not cross the seam")
          .at(side.ref().toString())
          .value(Settings.amount(up))
          .accepted("between 0 mm and " + Settings.amount(length));
    }
    return side.curve().pointAt(side.isStart(SeamEnd.LOWER) ? up : length.minus(up));
  }

  @Override
  public String toString() {
    return describe();
  }
}
