package dev.drafting.core.trace;

import org.apache.commons.math3.distribution.FDistribution;

/**
 * Tells shape from noise: variance ratios against the noise of the tracing (the F test), at one
 * false alarm in a hundred.
 */
final class Significance {
  private static final double FALSE_ALARM = 0.01;

  private final Noise noise;

  Significance(Noise noise) {
    this.noise = noise;
  }

  /** Whether squares left over, with this much freedom, are no more than the noise leaves. */
  boolean isNoise(double squares, double freedom) {
    if (freedom <= 0) {
      return true;
    }
    double ratio = squares / (freedom * noise.mm * noise.mm);
    if (ratio <= 1) {
      return true;
    }
    FDistribution f = new FDistribution(null, freedom, noise.freedom);
    return 1 - f.cumulativeProbability(ratio) > FALSE_ALARM;
  }
}
