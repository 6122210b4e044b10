package dev.drafting.core.trace;

import java.util.Arrays;

/**
 * Finds slips of the pencil on a line whose corners are not known yet: one to three points well off
 * a curve that runs on behind them as it came.
 */
final class Slips {
  private static final int MOST_POINTS = 3;
  private static final int BESIDE = 3;
  private static final int DEGREE = 2;
  private static final double FAR = 5;
  private static final double FAR_OF_SCATTER = 8;
  private static final double LEAST_MM = 1;

  private Slips() {}

  /** Which points belong to the line. */
  static boolean[] kept(Samples samples, double noise) {
    boolean[] kept = EdgeFit.all(samples.size());
    for (int run = 1; run <= MOST_POINTS; run++) {
      for (int from = BESIDE; from + run + BESIDE <= samples.size(); from++) {
        if (isSlip(samples, from, run, noise)) {
          Arrays.fill(kept, from, from + run, false);
        }
      }
    }
    return kept;
  }

  private static boolean isSlip(Samples samples, int from, int run, double noise) {
    int to = from + run;
    double[] way = new double[run + 2 * BESIDE];
    for (int i = 1; i < way.length; i++) {
      int at = from - BESIDE + i;
      boolean beside = i < BESIDE || i > BESIDE + run;
      way[i] = way[i - 1] + (beside ? step(samples, at - 1, at) : 0);
    }
    // The way across the slip is that from where it left to where it came back.
    double acrossX = samples.x[to] - samples.x[from - 1];
    double acrossY = samples.y[to] - samples.y[from - 1];
    double across = Math.hypot(acrossX, acrossY);
    for (int i = BESIDE; i < way.length; i++) {
      int at = from - BESIDE + i;
      double part =
          (samples.x[at] - samples.x[from - 1]) * acrossX
              + (samples.y[at] - samples.y[from - 1]) * acrossY;
      way[i] += Math.max(0, Math.min(across, across == 0 ? 0 : part / across));
    }
    Moments around = new Moments(way[BESIDE], samples.x[from - 1], samples.y[from - 1]);
    for (int i = 0; i < way.length; i++) {
      if (i < BESIDE || i >= BESIDE + run) {
        int at = from - BESIDE + i;
        around.add(way[i], samples.x[at], samples.y[at]);
      }
    }
    int freedom = 2 * (2 * BESIDE - DEGREE - 1);
    double scatter = Math.sqrt(around.left(DEGREE) / freedom);
    double far = Math.max(LEAST_MM, Math.max(FAR * noise, FAR_OF_SCATTER * scatter));
    for (int i = 0; i < run; i++) {
      int at = from + i;
      if (around.off(DEGREE, way[BESIDE + i], samples.x[at], samples.y[at]) < far * far) {
        return false;
      }
    }
    return true;
  }

  private static double step(Samples samples, int one, int other) {
    return Math.hypot(samples.x[other] - samples.x[one], samples.y[other] - samples.y[one]);
  }
}
