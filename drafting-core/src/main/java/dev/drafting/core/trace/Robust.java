package dev.drafting.core.trace;

import java.util.Arrays;

/** Scale and weights that a few wild points do not move. */
final class Robust {
  /** Makes the median of absolute values of a normal sample its standard deviation. */
  private static final double TO_DEVIATION = 1.4826;

  /** Gives a normal sample that was cut at three deviations its deviation back. */
  private static final double CUT_AT_THREE = 1.0136;

  /** Tukey's constant: 95 % of the evidence of a normal sample is used. */
  private static final double BIWEIGHT = 4.685;

  /** Makes the lower quartile of absolute values of a normal sample its standard deviation. */
  private static final double QUARTILE_TO_DEVIATION = 1 / 0.31864;

  private Robust() {}

  /** The standard deviation about zero, by the lower quartile of the absolute values. */
  static double scaleOfSmallest(double[] values) {
    double[] sizes = new double[values.length];
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] = Math.abs(values[i]);
    }
    Arrays.sort(sizes);
    return QUARTILE_TO_DEVIATION * sizes[sizes.length / 4];
  }

  /** The standard deviation about zero, by the median of the absolute values; 0 for none. */
  static double scale(double[] values) {
    if (values.length == 0) {
      return 0;
    }
    double[] sizes = new double[values.length];
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] = Math.abs(values[i]);
    }
    Arrays.sort(sizes);
    int half = sizes.length / 2;
    double median = sizes.length % 2 == 1 ? sizes[half] : sizes[half - 1] / 2 + sizes[half] / 2;
    return TO_DEVIATION * median;
  }

  /**
   * The standard deviation about zero from the values within three deviations: nearly all of the
   * evidence of a normal sample, and none of that of slips.
   */
  static double deviation(double[] values) {
    double within = 3 * scale(values);
    double squares = 0;
    int count = 0;
    for (double value : values) {
      if (Math.abs(value) <= within) {
        squares += value * value;
        count++;
      }
    }
    return count == 0 ? 0 : CUT_AT_THREE * Math.sqrt(squares / count);
  }

  /** Tukey's biweight: near 1 for small distances, 0 for points that do not belong. */
  static double weight(double distance, double scale) {
    double z = distance / (BIWEIGHT * scale);
    double rest = 1 - z * z;
    return rest <= 0 ? 0 : rest * rest;
  }
}
