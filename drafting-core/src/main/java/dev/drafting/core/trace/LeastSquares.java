package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.jspecify.annotations.Nullable;

/**
 * Lays one or more edges through their points so that the squares of the distances, measured square
 * to the edges, add up to the least, while corners stay shared and ends level (Gauss and Newton's
 * method with Levenberg's damping; every step finds the foot of each point anew).
 *
 * <p>Where the distances leave the handles open (an almost straight edge), an even speed is
 * preferred, the more the noisier the points: without noise the preference vanishes, so exact
 * points give the exact curve.
 */
final class LeastSquares {
  private static final int MOST_STEPS = 60;
  private static final double RIDGE = 1e-12;

  /** A turn that must not be weighs as much as points off by this much for each radian. */
  private static final double STRICT_MM = 1e5;

  private static final double ENOUGH_MM = 1e-9;
  private static final double CAREFUL = 1e-3;
  private static final double SLOWEST = 0.9;
  private static final double ROUNDING = 1e-18;

  private final List<Run> runs;
  private final Track[] tracks;
  private final Unknowns unknowns;
  private final int[][] xs;
  private final int[][] ys;
  private final Evenness[] even;
  private final List<int[]> through = new ArrayList<>();
  private double[][] normal;
  private double[] right;
  private double cost;
  private int looks;

  /** Solves the equations as they stand, for the deviations. */
  private @Nullable DecompositionSolver standing;

  private final int[] at = new int[12];
  private final double[] row = new double[12];
  private final double[] weights = new double[4];
  private int size;

  LeastSquares(List<Run> runs, Unknowns unknowns) {
    this.runs = runs;
    this.unknowns = unknowns;
    this.tracks = new Track[runs.size()];
    this.xs = new int[runs.size()][];
    this.ys = new int[runs.size()][];
    this.even = new Evenness[runs.size()];
    for (int e = 0; e < tracks.length; e++) {
      tracks[e] = runs.get(e).track;
      xs[e] = unknowns.xs(e);
      ys[e] = unknowns.ys(e);
      even[e] = new Evenness(runs.get(e));
    }
    this.normal = new double[unknowns.count()][unknowns.count()];
    this.right = new double[unknowns.count()];
  }

  /** The least squares at the shares of the way that the points have, from nothing. */
  void lay() {
    runs.forEach(Run::layAlongChord);
    double[] free = unknowns.gather(tracks);
    unknowns.spread(free, tracks);
    clear();
    for (int e = 0; e < tracks.length; e++) {
      Run run = runs.get(e);
      for (int i = 0; i < run.feet.length; i++) {
        tracks[e].look(run.feet[i]);
        addPoint(e, run.root[i], 1, 0, tracks[e].x - run.samples.x[i]);
        addPoint(e, run.root[i], 0, 1, tracks[e].y - run.samples.y[i]);
      }
    }
    // Few points leave some freedom open: there the chord has a little say.
    unknowns.spread(sum(free, solved(1e-9)), tracks);
  }

  /**
   * Settles to the least squares of the distances.
   *
   * @param little the share of the squares below which one more step is not worth while
   */
  void settle(double little) {
    for (int e = 0; e < tracks.length; e++) {
      runs.get(e).aim();
      even[e].aim(tracks[e]);
    }
    double[] free = unknowns.gather(tracks);
    double damping = CAREFUL;
    double moved = 0;
    look(free);
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] towards = solved(damping);
      double[] next = sum(free, towards);
      double[][] normalHere = normal;
      double[] rightHere = right;
      double costHere = cost;
      normal = new double[free.length][free.length];
      right = new double[free.length];
      look(next);
      if (cost <= costHere * (1 + 1e-9) + ROUNDING) {
        double before = moved;
        moved = largest(towards);
        free = next;
        damping = damping < 1e-7 ? 0 : damping / 10;
        double rate = Math.min(moved / before, SLOWEST);
        boolean there = moved * rate / (1 - rate) < ENOUGH_MM;
        if (there || costHere - cost < little * cost) {
          return;
        }
      } else {
        normal = normalHere;
        right = rightHere;
        cost = costHere;
        damping = Math.max(10 * damping, 1e-6);
      }
    }
    look(free);
  }

  /** How often all points were looked at. */
  int looks() {
    return looks;
  }

  /** The standard deviation of an edge's length, in mm, when points wander by these. */
  double lengthDeviation(int edge, double noise) {
    double[] gradient = new double[right.length];
    tracks[edge].addLengthGradient(xs[edge], ys[edge], gradient);
    ArrayRealVector along = new ArrayRealVector(gradient, false);
    return noise * Math.sqrt(Math.max(along.dotProduct(standing().solve(along)), 0));
  }

  /** The angle in radians by which the outline turns from one edge to the next. */
  double turn(int before, int after) {
    double[] in = handle(before, true);
    double[] out = handle(after, false);
    return Math.atan2(in[0] * out[1] - in[1] * out[0], in[0] * out[0] + in[1] * out[1]);
  }

  /** The standard deviation of a turn near none, in radians. */
  double turnDeviation(int before, int after, double noise) {
    turnRow(before, after, 1);
    double[] gradient = new double[right.length];
    for (int i = 0; i < size; i++) {
      gradient[at[i]] += row[i];
    }
    ArrayRealVector along = new ArrayRealVector(gradient, false);
    return noise * Math.sqrt(Math.max(along.dotProduct(standing().solve(along)), 0));
  }

  private DecompositionSolver standing() {
    DecompositionSolver known = standing;
    if (known == null) {
      known = solver(RIDGE);
      standing = known;
    }
    return known;
  }

  /** From now on the first edge runs on into the second without a turn. */
  void runThrough(int before, int after) {
    through.add(new int[] {before, after});
  }

  /** From the control point beside a corner to the corner, or from the corner to the one beside. */
  private double[] handle(int e, boolean last) {
    Track track = tracks[e];
    int to = last ? track.cx.length - 1 : 1;
    return new double[] {track.cx[to] - track.cx[to - 1], track.cy[to] - track.cy[to - 1]};
  }

  /** Sets how the sine of a turn changes with the handles beside it. */
  private void turnRow(int before, int after, double weight) {
    double[] in = handle(before, true);
    double[] out = handle(after, false);
    double scale = weight / (Math.hypot(in[0], in[1]) * Math.hypot(out[0], out[1]));
    int last = tracks[before].cx.length - 1;
    size = 0;
    put(xs[before][last], scale * out[1]);
    put(ys[before][last], -scale * out[0]);
    put(xs[before][last - 1], -scale * out[1]);
    put(ys[before][last - 1], scale * out[0]);
    put(xs[after][1], -scale * in[1]);
    put(ys[after][1], scale * in[0]);
    put(xs[after][0], scale * in[1]);
    put(ys[after][0], -scale * in[0]);
  }

  private void clear() {
    cost = 0;
    standing = null;
    Arrays.fill(right, 0);
    for (double[] line : normal) {
      Arrays.fill(line, 0);
    }
  }

  /** Moves the edges to these numbers and sets up the equations there. */
  private void look(double[] free) {
    looks++;
    unknowns.spread(free, tracks);
    clear();
    for (int e = 0; e < tracks.length; e++) {
      addPoints(e);
      even[e].add(e);
    }
    for (int[] pair : through) {
      turnRow(pair[0], pair[1], STRICT_MM);
      addEquation(STRICT_MM * Math.sin(turn(pair[0], pair[1])));
    }
  }

  private void addPoints(int e) {
    Run run = runs.get(e);
    Track track = tracks[e];
    for (int i = 0; i < run.feet.length; i++) {
      double pointX = run.samples.x[i];
      double pointY = run.samples.y[i];
      run.feet[i] = track.foot(pointX, pointY, run.feet[i]);
      double off = track.left(pointX, pointY);
      run.distances[i] = off;
      if (run.root[i] > 0) {
        addPoint(e, run.root[i], -track.dy, track.dx, -off);
      }
    }
    addEnd(e, run.startWeight, run.start, 0);
    addEnd(e, run.endWeight, run.end, 1);
  }

  /** A stroke tells where its edge ends, as surely as this. */
  private void addEnd(int e, double weight, Point seen, double share) {
    if (weight == 0) {
      return;
    }
    Run run = runs.get(e);
    Track track = tracks[e];
    double[] way = share == 0 ? run.startWay : run.endWay;
    track.look(share);
    double off = (track.x - seen.x()) * way[0] + (track.y - seen.y()) * way[1];
    addPoint(e, weight, way[0], way[1], off);
  }

  /** An equation for the place looked at: its way in a direction, by so much off, shall be none. */
  private void addPoint(int e, double weight, double towardsX, double towardsY, double off) {
    Track track = tracks[e];
    size = 0;
    track.knots.weights(track.part, track.u, weights);
    int[] x = xs[e];
    int[] y = ys[e];
    for (int c = 0; c <= track.knots.degree; c++) {
      double share = weight * weights[c];
      put(x[track.part + c], share * towardsX);
      put(y[track.part + c], share * towardsY);
    }
    addEquation(weight * off);
  }

  private void put(int unknown, double value) {
    if (unknown >= 0) {
      at[size] = unknown;
      row[size++] = value;
    }
  }

  /** Adds to one half of the equations, the other is its mirror image. */
  private void addEquation(double miss) {
    cost += miss * miss;
    for (int a = 0; a < size; a++) {
      int first = at[a];
      double[] line = normal[first];
      double value = row[a];
      right[first] -= value * miss;
      line[first] += value * value;
      for (int b = 0; b < a; b++) {
        int second = at[b];
        double product = value * row[b];
        if (second < first) {
          line[second] += product;
        } else if (second > first) {
          normal[second][first] += product;
        } else {
          line[first] += 2 * product;
        }
      }
    }
  }

  private double[] solved(double damping) {
    return solver(Math.max(damping, RIDGE)).solve(new ArrayRealVector(right, false)).toArray();
  }

  private DecompositionSolver solver(double damping) {
    double[][] damped = new double[normal.length][];
    double sum = 0;
    for (int i = 0; i < damped.length; i++) {
      sum += normal[i][i];
    }
    for (int i = 0; i < damped.length; i++) {
      damped[i] = normal[i].clone();
      for (int j = 0; j < i; j++) {
        damped[j][i] = damped[i][j];
      }
      damped[i][i] += damping * (normal[i][i] + sum / damped.length) + Double.MIN_NORMAL;
    }
    return new CholeskyDecomposition(new Array2DRowRealMatrix(damped, false), 1e-9, 0).getSolver();
  }

  private static double[] sum(double[] one, double[] other) {
    double[] sum = one.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += other[i];
    }
    return sum;
  }

  private static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }

  /**
   * Prefers curves that are drawn at an even speed, give or take a quarter: a curve that doubles
   * back on itself costs as much as points several times the noise away. Where an outline led an
   * edge astray it costs as much to turn aside.
   */
  private final class Evenness {
    private static final int PLACES = 8;
    private static final double UNEVEN = 0.25;

    private final double[] shares;
    private final double[] waysX;
    private final double[] waysY;
    private final double weight;
    private final boolean firm;
    private double usual;

    Evenness(Run run) {
      Knots knots = run.track.knots;
      int places = knots.isStraight() ? 0 : 1 + PLACES * knots.parts();
      this.shares = new double[places];
      this.waysX = new double[places];
      this.waysY = new double[places];
      this.weight = run.noise / UNEVEN;
      this.firm = run.firm;
      for (int i = 0; i < places; i++) {
        int part = Math.min(i / PLACES, knots.parts() - 1);
        double rest = (double) (i - part * PLACES) / PLACES;
        shares[i] = knots.from(part) + (knots.to(part) - knots.from(part)) * rest;
      }
    }

    /** Takes the directions of a curve that is roughly right. */
    void aim(Track track) {
      double sum = 0;
      for (int i = 0; i < shares.length; i++) {
        track.look(shares[i]);
        waysX[i] = track.dx / track.speed;
        waysY[i] = track.dy / track.speed;
        sum += track.speed;
      }
      usual = sum / shares.length;
    }

    void add(int e) {
      Track track = tracks[e];
      for (int i = 0; i < shares.length; i++) {
        track.look(shares[i]);
        double speed = track.dx * waysX[i] + track.dy * waysY[i];
        addSlope(e, waysX[i], waysY[i], speed / usual - 1);
        if (firm) {
          double aside = track.dy * waysX[i] - track.dx * waysY[i];
          addSlope(e, -waysY[i], waysX[i], aside / usual);
        }
      }
    }

    /** An equation for the place looked at: its speed in a direction, by so much off. */
    private void addSlope(int e, double towardsX, double towardsY, double off) {
      Track track = tracks[e];
      size = 0;
      track.knots.slopes(track.part, track.u, weights);
      for (int c = 0; c <= track.knots.degree; c++) {
        double slope = weight / usual * weights[c];
        put(xs[e][track.part + c], slope * towardsX);
        put(ys[e][track.part + c], slope * towardsY);
      }
      addEquation(weight * off);
    }
  }
}
