package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * All edges of an outline in one least squares: each as straight or as curved as it was found to
 * be, with the corners that neighbours share, square at the fold, and smooth where one edge runs on
 * into the next.
 */
final class OutlineFit {
  private static final double LITTLE = 1e-9;

  /** In radians: below this, a turn that noise may have made is taken for none. */
  private static final double SLIGHT = Math.toRadians(25);

  /** One false alarm in a hundred. */
  private static final double DEVIATIONS = 2.58;

  private final Outline outline;
  private final List<FittedEdge> edges;
  private final double noise;

  /** How surely strokes say where each corner is. */
  private final double[] cornerSurety;

  private final List<Run> runs = new ArrayList<>();
  private LeastSquares squares;

  OutlineFit(Outline outline) {
    this.outline = outline;
    this.edges = outline.edges();
    this.noise = outline.noise().mm;
    this.cornerSurety = cornerSurety();
    this.squares = broughtTogether(Set.of());
    Set<Integer> astray = astray();
    if (!astray.isEmpty()) {
      this.squares = broughtTogether(astray);
    }
  }

  /** All edges as they were found, brought together, some of them the firmer. */
  private LeastSquares broughtTogether(Set<Integer> firm) {
    runs.clear();
    for (int i = 0; i < edges.size(); i++) {
      runs.add(run(i, firm.contains(i)));
    }
    LeastSquares found = squares(edges.stream().map(FittedEdge::ends).toList());
    found.settle(LITTLE);
    found = keepingHandles(found);
    runThrough(found);
    return found;
  }

  private Run run(int i, boolean firm) {
    FittedEdge edge = edges.get(i);
    EdgeFit fit = edge.fit();
    Track found = fit.track();
    Track track = new Track(found.knots, found.cx.clone(), found.cy.clone());
    double start = edge.ends().start().isOnFold() ? 0 : cornerSurety[i];
    double end = edge.ends().end().isOnFold() ? 0 : cornerSurety[i + 1];
    double wander = Math.max(fit.rms(), firm ? noise : Noise.LEAST_MM) * surety(fit);
    return new Run(fit.samples, weights(fit), track, feet(fit), start, end, wander, firm);
  }

  /**
   * The edges that double back on themselves since they share their corners, or have run away: few
   * points say little of what lies between them.
   */
  private Set<Integer> astray() {
    Set<Integer> astray = new HashSet<>();
    for (int i = 0; i < edges.size(); i++) {
      Track own = edges.get(i).fit().track();
      Track shared = runs.get(i).track;
      boolean away = EdgeFit.isMuchLonger(shared.length(), own.length(), outline.noise());
      boolean folded = shared.isFolded() && !own.isFolded();
      if (away || folded) {
        astray.add(i);
      }
    }
    return astray;
  }

  /** The edges as they run now, each from corner to corner. */
  Track track(int edge) {
    return runs.get(edge).track;
  }

  /** The standard deviation of an edge's length, in mm; no more than the length itself. */
  double lengthDeviation(int edge) {
    return Math.min(squares.lengthDeviation(edge, noise), track(edge).length());
  }

  private static double[] feet(EdgeFit fit) {
    double[] feet = new double[fit.samples.size()];
    Arrays.setAll(feet, fit.fitted::share);
    return feet;
  }

  /** How little a distance from a rough edge counts, whether of a point or in what it prefers. */
  private double surety(EdgeFit fit) {
    return noise / fit.noise.mm;
  }

  /** Rough edges and points that follow each other closely count for less. */
  private double[] weights(EdgeFit fit) {
    double each = surety(fit) * surety(fit) * fit.samples.independent / fit.samples.size();
    double[] weights = EdgeFit.weights(fit.kept);
    for (int i = 0; i < weights.length; i++) {
      weights[i] *= each;
    }
    return weights;
  }

  private LeastSquares squares(List<Ends> ends) {
    int n = edges.size();
    Unknowns unknowns =
        new Unknowns(runs.stream().mapToInt(run -> run.track.knots.controls()).toArray());
    for (int i = 0; i < n; i++) {
      int controls = runs.get(i).track.knots.controls();
      if (i + 1 < n || !outline.folded()) {
        unknowns.join(i, controls - 1, (i + 1) % n);
      }
      ends.get(i).ask(unknowns, i, controls);
    }
    return new LeastSquares(runs, unknowns.numbered());
  }

  private LeastSquares keepingHandles(LeastSquares found) {
    List<Ends> handled = new ArrayList<>();
    boolean changed = false;
    for (int i = 0; i < edges.size(); i++) {
      Ends asked = edges.get(i).ends();
      Ends kept = SplineFit.handled(runs.get(i).track, asked);
      changed |= !kept.equals(asked);
      handled.add(kept);
    }
    if (!changed) {
      return found;
    }
    LeastSquares again = squares(handled);
    again.settle(LITTLE);
    return again;
  }

  private void runThrough(LeastSquares found) {
    boolean any = false;
    int corners = outline.folded() ? edges.size() - 1 : edges.size();
    for (int i = 0; i < corners; i++) {
      int next = (i + 1) % edges.size();
      double turn = Math.abs(found.turn(i, next));
      if (turn < SLIGHT && turn < DEVIATIONS * found.turnDeviation(i, next, noise)) {
        found.runThrough(i, next);
        any = true;
      }
    }
    if (any) {
      found.settle(LITTLE);
    }
  }

  /**
   * How surely the ends of the strokes say where each corner is, against a point's distance from
   * its edge: as surely, unless the gap between the strokes is wider than the pencil wanders.
   */
  private double[] cornerSurety() {
    int n = edges.size();
    double wander = Math.min(noise, rms());
    double variance = wander * wander;
    double[] surety = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      boolean fold = outline.folded() && (i == 0 || i == n);
      double gap = fold ? 0 : gap(edges.get((i + n - 1) % n).fit(), edges.get(i % n).fit());
      surety[i] =
          gap > SharedCorners.WIDE_GAP * variance ? wander / Math.sqrt(gap / 2 - variance) : 1;
    }
    return surety;
  }

  private double rms() {
    double squares = 0;
    double observations = 0;
    for (FittedEdge edge : edges) {
      squares += edge.fit().squares();
      observations += edge.fit().observations();
    }
    return Math.max(Math.sqrt(squares / observations), Noise.LEAST_MM);
  }

  /** The square of the way from one stroke to the next. */
  private static double gap(EdgeFit before, EdgeFit after) {
    Point end = before.samples.end(before.lastKept());
    Point start = after.samples.start(after.firstKept());
    double gap = end.distanceTo(start).toMm();
    return gap * gap;
  }
}
