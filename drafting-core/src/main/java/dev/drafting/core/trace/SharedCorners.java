package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Keeps the ends of strokes that pass for slips where the stroke next to them says the same: what
 * two strokes agree on is a corner, and the edge bends there. One and the same point in both says
 * it once only.
 */
final class SharedCorners {
  /**
   * The square of the way between two points at one place that a wandering pencil exceeds once in a
   * hundred times, in variances: each is off in two directions.
   */
  static final double WIDE_GAP = 4 * Math.log(100);

  private final List<EdgeFit> fits;

  private SharedCorners(List<EdgeFit> fits) {
    this.fits = fits;
  }

  /** Fits an edge of the outline through other samples of it. */
  interface Fitter {
    EdgeFit fit(int edge, Samples samples);
  }

  /**
   * The edges of an outline, those fitted again whose ends were wrongly left out.
   *
   * @param fits in the order of the outline
   * @param closed whether the last edge meets the first
   * @param fitter fits one of them again
   */
  static List<EdgeFit> kept(List<EdgeFit> fits, boolean closed, Fitter fitter) {
    SharedCorners corners = new SharedCorners(fits);
    int n = fits.size();
    List<EdgeFit> kept = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      EdgeFit fit = fits.get(i);
      boolean start = (closed || i > 0) && corners.isSeen((i + n - 1) % n, i, i);
      boolean end = (closed || i + 1 < n) && corners.isSeen(i, (i + 1) % n, i);
      kept.add(start || end ? fitter.fit(i, fit.samples.withSureEnds(start, end)) : fit);
    }
    return kept;
  }

  /** Whether one of two edges leaves out the end that the other has at the same place. */
  private boolean isSeen(int before, int after, int leavingOut) {
    EdgeFit one = fits.get(before);
    EdgeFit other = fits.get(after);
    int last = one.kept.length - 1;
    boolean left = leavingOut == before ? !one.kept[last] : !other.kept[0];
    boolean seen = leavingOut == before ? other.kept[0] : one.kept[last];
    Point end = one.samples.end(last);
    Point start = other.samples.start(0);
    double gap = end.distanceTo(start).toMm();
    double wander = Math.max(one.noise.mm, other.noise.mm);
    return left && seen && !end.equals(start) && gap * gap <= WIDE_GAP * wander * wander;
  }
}
