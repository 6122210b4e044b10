package dev.drafting.core.alter;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import java.util.Map;

/** The ends of both edges of a seam moved along it, into the seam. */
record SeamEndMove(String seam, SeamEnd end, Length inwards) implements Alteration {
  @Override
  public String id() {
    return "seam-end";
  }

  @Override
  public Map<String, String> settings() {
    return Settings.of("seam", seam, "end", end.word(), "inwards", inwards);
  }

  @Override
  public String describe() {
    return (inwards.isNegative() ? "lengthen the " : "shorten the ")
        + seam
        + " seam at its "
        + end.word()
        + " end by "
        + Settings.amount(inwards);
  }

  @Override
  public Pattern applyTo(Pattern pattern) {
    Follow follow = new Follow(pattern);
    for (SeamSide side : SeamSide.of(pattern, seam)) {
      boolean start = side.isStart(end);
      follow.move(side.corner(start), side.inwards(start).times(inwards.toMm()));
      follow.keepAnglesTo(side.ref());
    }
    return follow.result();
  }

  @Override
  public String toString() {
    return describe();
  }
}
