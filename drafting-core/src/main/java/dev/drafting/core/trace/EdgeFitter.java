package dev.drafting.core.trace;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Finds the plainest form that an edge's points allow: a straight line if nothing in them but noise
 * speaks against it, else the fewest cubics. A few points well off an edge that otherwise fits are
 * a slip of the pencil: they are set aside, not smoothed in.
 */
final class EdgeFitter {
  private static final int MOST_CUBICS = 48;
  private static final int FEWEST_PER_CUBIC = 4;
  private static final int MOST_IDLE = 3;
  private static final int MOST_ROUNDS = 30;
  private static final int CLOSER = 10;
  private static final int ROUGHER = 3;
  private static final double SUSPECT = 3.5;

  /** At most this share of an edge's points may be slips. */
  private static final int ONE_IN = 7;

  /** Where a stroke sets down or lifts, at most so many points may be off. */
  private static final int MOST_AT_END = 2;

  private final Noise noise;
  private final Significance significance;
  private final Straightness straightness;
  private final Effort effort;
  private final boolean vetted;

  EdgeFitter(Noise noise, Straightness straightness, Effort effort) {
    this(noise, straightness, effort, false);
  }

  private EdgeFitter(Noise noise, Straightness straightness, Effort effort, boolean vetted) {
    this.effort = effort;
    this.noise = noise;
    this.significance = new Significance(noise);
    this.straightness = straightness;
    this.vetted = vetted;
  }

  /** For points whose slips have been set aside already. */
  EdgeFitter vetted() {
    return new EdgeFitter(noise, straightness, effort, true);
  }

  EdgeFit fit(Samples samples, Ends ends) {
    EdgeFit line = robust(Form.STRAIGHT, samples, ends, null);
    if (straightness == Straightness.STRAIGHT || samples.size() < 3) {
      return line;
    }
    if (straightness == Straightness.CURVED) {
      return curved(single(samples, ends), ends);
    }
    boolean fits = isAdequate(line, ends);
    boolean bowed = !fits || isBowed(line, ends);
    if (!bowed && !line.endsShort(MOST_AT_END)) {
      return line;
    }
    EdgeFit single = single(samples, ends);
    if (!bowed) {
      return isHook(line, single) ? single : line;
    }
    EdgeFit curve = curved(single, ends);
    return fits || isImproved(line, curve, ends) ? curve : line;
  }

  /**
   * Whether what a line takes for a slip where the pencil sets down or lifts is the bend of an
   * edge: one cubic through all points leaves less over than the line leaves of fewer.
   */
  private static boolean isHook(EdgeFit line, EdgeFit single) {
    return single.keptCount() == single.samples.size()
        && single.squares() < line.squares()
        && !single.isAstray();
  }

  /** The same form through the same points, with other ends. */
  EdgeFit again(EdgeFit fit, Ends ends) {
    return plain(fit.form, fit.samples, ends, fit.kept, fit.fitted);
  }

  private EdgeFit single(Samples samples, Ends ends) {
    return robust(Form.curved(Knots.single()), samples, ends, null);
  }

  /** Adds cubics for as long as they explain more than the noise would. */
  private EdgeFit curved(EdgeFit single, Ends ends) {
    EdgeFit best = single;
    EdgeFit last = single;
    int most = (int) Math.min(MOST_CUBICS, single.samples.independent / FEWEST_PER_CUBIC);
    int idle = 0;
    while (last.form.cubics() < most && !significance.isNoise(best.squares(), 1)) {
      boolean adequate = isAdequate(best, ends);
      if (adequate && !best.hasPattern()) {
        break;
      }
      int worst = worstCubic(last, last.form.knots);
      if (worst < 0 || idle >= (adequate ? 1 : MOST_IDLE)) {
        break;
      }
      Form form = Form.curved(last.form.knots.split(worst));
      last =
          adequate
              ? plain(form, single.samples, ends, best.kept, last.fitted)
              : robust(form, single.samples, ends, null);
      if (isImproved(best, last, ends)) {
        EdgeFit again = adequate ? robust(form, single.samples, ends, last.fitted) : last;
        best = isImproved(best, again, ends) ? again : last;
        last = best;
        idle = 0;
      } else {
        idle++;
      }
    }
    boolean there = !best.isAstray() && isAdequate(best, ends);
    return there ? best : evenly(best, ends, most);
  }

  /** Where one cut after the other leads nowhere: cuts everywhere at once. */
  private EdgeFit evenly(EdgeFit best, Ends ends, int most) {
    EdgeFit found = best;
    Knots knots = Knots.single();
    for (int cubics = 2; cubics <= most; cubics *= 2) {
      for (int part = 0; part < cubics; part += 2) {
        knots = knots.split(part);
      }
      EdgeFit fit = robust(Form.curved(knots), best.samples, ends, null);
      if (isImproved(found, fit, ends)) {
        found = fit;
        if (isAdequate(fit, ends)) {
          break;
        }
      }
    }
    return found;
  }

  /** Whether nothing but noise is left over. */
  boolean isAdequate(EdgeFit fit, Ends ends) {
    return significance.isNoise(fit.squares(), fit.observations() - fit.form.freedom(ends));
  }

  private boolean isImproved(EdgeFit fit, EdgeFit richer, Ends ends) {
    int refused = fit.keptCount() - richer.keptCount();
    double gain = fit.squares() - richer.squares();
    int freedom = richer.form.freedom(ends) - fit.form.freedom(ends) + Math.max(0, refused);
    if (richer.isAstray()) {
      return false;
    }
    return fit.isAstray() || !significance.isNoise(gain, freedom);
  }

  /** Whether a bow or a double bow stands out of the distances from the line. */
  private boolean isBowed(EdgeFit line, Ends ends) {
    double gain = Bow.squares(line, ends) * line.samples.independent / line.samples.size();
    return !significance.isNoise(gain, 2);
  }

  /** The cubic that leaves most to explain, among those with points enough for two; -1 for none. */
  private static int worstCubic(EdgeFit fit, Knots knots) {
    double[] squares = new double[knots.parts()];
    int[] count = new int[knots.parts()];
    for (int i = 0; i < fit.kept.length; i++) {
      if (fit.kept[i]) {
        int cubic = knots.partAt(fit.fitted.share(i));
        squares[cubic] += fit.fitted.distance(i) * fit.fitted.distance(i);
        count[cubic]++;
      }
    }
    int worst = -1;
    for (int c = 0; c < squares.length; c++) {
      boolean roomy = count[c] >= 2 * FEWEST_PER_CUBIC;
      if (roomy && (worst < 0 || squares[c] > squares[worst])) {
        worst = c;
      }
    }
    return worst;
  }

  private EdgeFit plain(
      Form form, Samples samples, Ends ends, boolean[] kept, @Nullable Fitted near) {
    double[] weights = EdgeFit.weights(kept);
    Fitted fitted = fit(form, samples, weights, ends, noise.mm, near);
    EdgeFit fit = new EdgeFit(samples, form, fitted, kept, noise);
    // Sparse exact points pass for rough ones until a fit runs through them; and the maker may have
    // said less than there is.
    double wander = noise.mm;
    double rms = fit.rms();
    while (!form.isStraight()
        && rms > Noise.LEAST_MM
        && (rms < wander / CLOSER || rms > wander * ROUGHER)) {
      wander = rms;
      Fitted closer = fit(form, samples, weights, ends, wander, fit.fitted);
      fit = new EdgeFit(samples, form, closer, kept, noise);
      rms = fit.rms();
    }
    return fit;
  }

  private Fitted fit(
      Form form,
      Samples samples,
      double[] weights,
      Ends ends,
      double wander,
      @Nullable Fitted near) {
    Fitted fitted = form.fit(samples, weights, ends, wander, near);
    effort.spend(fitted.looks());
    return fitted;
  }

  /** Fits with less and less regard for points that stand off, then plainly without them. */
  private EdgeFit robust(Form form, Samples samples, Ends ends, @Nullable Fitted near) {
    EdgeFit fit = plain(form, samples, ends, likely(samples), near);
    double[] off = distances(fit.fitted, samples.size());
    double scale = scale(off);
    if (vetted || largest(off) <= SUSPECT * scale) {
      boolean all = fit.keptCount() == samples.size();
      return all ? fit : plain(form, samples, ends, EdgeFit.all(samples.size()), fit.fitted);
    }
    Fitted fitted = fit.fitted;
    double[] weights = EdgeFit.weights(fit.kept);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double moved = 0;
      for (int i = 0; i < weights.length; i++) {
        double weight = Robust.weight(off[i], scale);
        moved = Math.max(moved, Math.abs(weight - weights[i]));
        weights[i] = weight;
      }
      if (moved < 1e-2) {
        break;
      }
      fitted = fit(form, samples, weights, ends, noise.mm, fitted);
      off = distances(fitted, samples.size());
      scale = scale(off);
    }
    boolean[] kept = new boolean[weights.length];
    for (int i = 0; i < kept.length; i++) {
      kept[i] = weights[i] > 0 || samples.isSure(i);
    }
    return plain(form, samples, ends, refusesFew(kept) ? kept : EdgeFit.all(kept.length), fitted);
  }

  /** All points but those that look like slips before anything is fitted. */
  private boolean[] likely(Samples samples) {
    boolean[] likely = vetted ? EdgeFit.all(samples.size()) : samples.withoutSlips(noise.mm);
    return refusesFew(likely) ? likely : EdgeFit.all(samples.size());
  }

  private double scale(double[] off) {
    return Math.max(noise.mm, Robust.scale(off));
  }

  private static double[] distances(Fitted fitted, int size) {
    double[] off = new double[size];
    Arrays.setAll(off, fitted::distance);
    return off;
  }

  private static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }

  private static boolean refusesFew(boolean[] kept) {
    int refused = 0;
    for (boolean one : kept) {
      refused += one ? 0 : 1;
    }
    return refused <= Math.max(1, kept.length / ONE_IN)
        && !EdgeFit.endsShort(kept, MOST_AT_END + 1);
  }
}
