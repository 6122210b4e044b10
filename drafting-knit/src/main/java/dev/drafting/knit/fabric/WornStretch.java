package dev.drafting.knit.fabric;

import dev.drafting.core.measure.Length;

/**
 * How far a fabric may be stretched all the time it is worn. A fit of 8 % less than the body or
 * closer needs a recovery of 95 % (common practice, no source); poor recovery stands none.
 */
final class WornStretch {
  /** A close tee or vest is up to 8 % smaller than its wearer (common practice, no source). */
  private static final double CLOSE_FIT = 0.08;

  /** As much as a close fit uses of its stretch (common practice, no source). */
  static final double CLOSE_SHARE = 0.25;

  /** Extensions that are this close are one: what lies between them comes from the arithmetic. */
  private static final double SAME = 1e-12;

  private WornStretch() {}

  /** The extension that the fabric's recovery allows in wear. */
  static double most(Fabric fabric) {
    return switch (fabric.recoveryVerdict()) {
      case GOOD -> fabric.usableStretch();
      case FAIR, UNKNOWN -> Math.min(fabric.usableStretch(), CLOSE_FIT / (1 - CLOSE_FIT));
      case POOR -> 0;
    };
  }

  /** The extension that would keep the share of the stretch that is used. */
  static double wanted(Ease before, Fabric original, Fabric candidate) {
    double extension = before.extension();
    return extension == 0 ? 0 : extension / original.stretchAcross() * candidate.stretchAcross();
  }

  static boolean isCapped(Ease before, Fabric original, Fabric candidate) {
    return wanted(before, original, candidate) > most(candidate) + SAME;
  }

  static Length girth(Ease before, Fabric original, Fabric candidate) {
    double extension = Math.min(wanted(before, original, candidate), most(candidate));
    if (before.extension() == 0 || Math.abs(extension - before.extension()) < SAME) {
      return before.garment();
    }
    return before.body().dividedBy(1 + extension);
  }

  static GirthBounds bounds(Length garment, Fabric original, Fabric candidate) {
    double body = 1 + CLOSE_SHARE * original.stretchAcross();
    double extension = Math.min(CLOSE_SHARE * candidate.stretchAcross(), most(candidate));
    Length close = garment.times(body / (1 + extension));
    return new GirthBounds(garment.min(close), garment.max(close));
  }
}
