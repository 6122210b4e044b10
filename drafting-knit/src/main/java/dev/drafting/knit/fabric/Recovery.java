package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;

/**
 * How far to trust a fabric to come back after it was stretched: at least 95 % of the way is good,
 * from 90 % fair, less is poor and no cloth for a garment smaller than its wearer (common practice,
 * no source).
 *
 * <pre>{@code
 * Fabric.of("jersey", Structure.JERSEY, 0.4).withRecovery(0.96).recoveryVerdict();  // => GOOD
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum Recovery {
  /** At least 95 % of the stretch goes back. */
  GOOD,
  /** From 90 % to under 95 %. */
  FAIR,
  /** Under 90 %: it will bag. */
  POOR,
  /** Nobody has tried it. */
  UNKNOWN;

  static Recovery of(double share) {
    if (share >= 0.95) {
      return GOOD;
    }
    return share >= 0.90 ? FAIR : POOR;
  }
}
