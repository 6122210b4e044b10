package dev.drafting.core.alter;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import java.util.Map;

/** A seam taken in or let out. */
record SeamMove(String seam, Length atLower, Length atUpper) implements Alteration {
  @Override
  public String id() {
    return "seam-move";
  }

  @Override
  public Map<String, String> settings() {
    return Settings.of("seam", seam, "at lower end", atLower, "at upper end", atUpper);
  }

  @Override
  public String describe() {
    if (atLower.equals(atUpper)) {
      return words(atLower) + " at the " + seam + " seam";
    }
    return words(atLower)
        + " at the lower end of the "
        + seam
        + " seam, "
        + words(atUpper)
        + " at its upper end";
  }

  private static String words(Length inward) {
    if (inward.isZero()) {
      return "nothing";
    }
    return (inward.isNegative() ? "let out " : "take in ") + Settings.amount(inward);
  }

  @Override
  public Pattern applyTo(Pattern pattern) {
    Follow follow = new Follow(pattern);
    for (SeamSide side : SeamSide.of(pattern, seam)) {
      boolean lower = side.isStart(SeamEnd.LOWER);
      follow.move(side.corner(lower), side.outward().times(-atLower.toMm()));
      follow.move(side.corner(!lower), side.outward().times(-atUpper.toMm()));
      follow.keepAnglesTo(side.ref());
    }
    return follow.result();
  }

  @Override
  public String toString() {
    return describe();
  }
}
