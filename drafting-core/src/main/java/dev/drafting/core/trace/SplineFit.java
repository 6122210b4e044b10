package dev.drafting.core.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A chain of cubics laid through the points of one edge. */
final class SplineFit implements Fitted {
  /** Less of the squares than this changes nobody's mind about the form of an edge. */
  private static final double LITTLE = 1e-4;

  private static final double SHORT_HANDLE = 0.1;
  private static final double LEAST_HANDLE = 0.3;

  private final Run run;
  private final long looks;

  private SplineFit(Run run, long looks) {
    this.run = run;
    this.looks = looks;
  }

  /**
   * Fits cubics to points.
   *
   * @param weights how much each point counts, 0 to 1
   * @param noise how far the pencil wandered, in mm
   * @param near a fit that is nearly right; nothing to start from the shares of the points
   */
  static SplineFit of(
      Samples samples,
      double[] weights,
      Knots knots,
      Ends ends,
      double noise,
      @Nullable Fitted near) {
    Track track = new Track(knots);
    double[] feet = samples.share.clone();
    if (near != null) {
      near.copyTo(track, feet);
    }
    double start = ends.start().isOnFold() ? 0 : 1;
    double end = ends.end().isOnFold() ? 0 : 1;
    Run run = new Run(samples, weights, track, feet, start, end, noise, false);
    LeastSquares squares = new LeastSquares(List.of(run), unknowns(knots, ends));
    if (near == null) {
      squares.lay();
    }
    squares.settle(LITTLE);
    long looks = (long) squares.looks() * samples.size();
    SplineFit fit = new SplineFit(run, looks);
    Ends handled = handled(track, ends);
    if (handled.equals(ends)) {
      return fit;
    }
    SplineFit again = of(samples, weights, knots, handled, noise, fit);
    return new SplineFit(again.run, looks + again.looks);
  }

  private static Unknowns unknowns(Knots knots, Ends ends) {
    Unknowns unknowns = new Unknowns(knots.controls());
    ends.ask(unknowns, 0, knots.controls());
    return unknowns.numbered();
  }

  /** Level ends whose handle is too short, or turned round, to keep the curve level. */
  static Ends handled(Track track, Ends ends) {
    if (track.knots.isStraight()) {
      return ends;
    }
    int last = track.cx.length - 1;
    Knots knots = track.knots;
    double usual = Math.hypot(track.cx[last] - track.cx[0], track.cy[last] - track.cy[0]) / 3;
    End start = handled(ends.start(), track.cx[1], usual * knots.to(0));
    End end = handled(ends.end(), track.cx[last - 1], usual * (1 - knots.from(knots.parts() - 1)));
    return new Ends(start, end);
  }

  private static End handled(End end, double handle, double usual) {
    boolean tooShort = end.isLevel() && !end.hasHandle() && handle < SHORT_HANDLE * usual;
    return tooShort ? end.withHandle(LEAST_HANDLE * usual) : end;
  }

  @Override
  public long looks() {
    return looks;
  }

  @Override
  public Track track() {
    return run.track;
  }

  @Override
  public double distance(int point) {
    return run.distances[point];
  }

  @Override
  public double share(int point) {
    return run.feet[point];
  }
}
