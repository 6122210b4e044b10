package dev.drafting.core.alter;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import java.util.Map;

/** One end of a seam swung about the other: a shoulder dropped, a side flared. */
record SeamSwing(String seam, SeamEnd end, Length amount) implements Alteration {
  @Override
  public String id() {
    return "seam-swing";
  }

  @Override
  public Map<String, String> settings() {
    return Settings.of("seam", seam, "end", end.word(), "amount", amount);
  }

  @Override
  public String describe() {
    if (end == SeamEnd.OUTER) {
      return (amount.isNegative() ? "raise" : "drop")
          + " the outer end of the "
          + seam
          + " seam by "
          + Settings.amount(amount);
    }
    return (amount.isNegative() ? "take away " : "add ")
        + Settings.amount(amount)
        + " of flare at the "
        + seam
        + " seam";
  }

  @Override
  public Pattern applyTo(Pattern pattern) {
    Follow follow = new Follow(pattern);
    for (SeamSide side : SeamSide.of(pattern, seam)) {
      boolean start = side.isStart(end);
      follow.move(side.corner(start), swing(side, start));
      follow.keepAnglesTo(side.ref());
    }
    return follow.result();
  }

  /** The move that keeps the chord as long as it was. */
  private Vector swing(SeamSide side, boolean start) {
    Vector way = end == SeamEnd.OUTER ? side.grain().negated() : side.outward();
    Vector chord = side.end(start).minus(side.end(!start));
    double length = chord.length().toMm();
    double part = chord.dot(way) + amount.toMm();
    double rest = length * length - part * part;
    if (!(rest > 0)) {
      throw DraftingException.of("the seam is too short to swing so far")
          .at(side.ref().toString())
          .value(Settings.amount(amount))
          .accepted("less than the length of the seam");
    }
    double across = chord.dot(way.left());
    return way.times(part)
        .plus(way.left().times(Math.copySign(Math.sqrt(rest), across)))
        .minus(chord);
  }

  @Override
  public String toString() {
    return describe();
  }
}
