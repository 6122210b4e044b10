package dev.drafting.core.trace;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.ConvergenceChecker;
import org.apache.commons.math3.util.Pair;

/**
 * Lays a chain of cubics through points so that the squares of their distances, measured square to
 * the curve, add up to the least.
 *
 * <p>First a linear fit at the shares of the way along the points, then Levenberg and Marquardt's
 * method on the distances themselves; every trial finds the foot of each point anew. Where the
 * distances leave the handles open (an almost straight edge), an even speed is preferred, the more
 * the noisier the points: without noise the preference vanishes, so exact points give the exact
 * curve.
 */
final class SplineFit implements Fitted {
  private static final double RIDGE = 1e-10;
  private static final double UNEVEN = 0.5;
  private static final int PLACES = 4;
  private static final double SHORT_HANDLE = 0.1;
  private static final double LEAST_HANDLE = 0.3;
  private static final int MOST_TRIALS = 200;
  private static final int MOST_STEPS = 12;
  private static final double STILL = 1e-12;
  private static final double ENOUGH_MM = 1e-9;

  private final Samples samples;
  private final double[] root;
  private final Knots knots;
  private final Controls controls;
  private final double[] feet;
  private final double[] distances;
  private double[] cx;
  private double[] cy;

  // Where the curve was looked at last.
  private final double[] value = new double[4];
  private final double[] slope = new double[4];
  private int cubic;
  private double x;
  private double y;
  private double dx;
  private double dy;
  private double speed;

  private SplineFit(Samples samples, double[] weights, Knots knots, Ends ends, double noise) {
    this.samples = samples;
    this.knots = knots;
    this.controls = new Controls(knots.controls(), ends);
    this.feet = samples.share.clone();
    this.distances = new double[samples.size()];
    this.root = new double[samples.size()];
    for (int i = 0; i < root.length; i++) {
      root[i] = Math.sqrt(weights[i]);
    }
    double[] start = linear(alongPoints());
    this.cx = controls.xs(start);
    this.cy = controls.ys(start);
    double[] best = orthogonal(start, noise, ends);
    this.cx = controls.xs(best);
    this.cy = controls.ys(best);
    findFeet();
  }

  /**
   * Fits cubics to points.
   *
   * @param samples the points with their shares of the way
   * @param weights how much each point counts, 0 to 1
   * @param noise how far the pencil wandered, in mm
   */
  static SplineFit of(Samples samples, double[] weights, Knots knots, Ends ends, double noise) {
    SplineFit fit = new SplineFit(samples, weights, knots, ends, noise);
    Ends handled = fit.handled(ends);
    return handled.equals(ends) ? fit : new SplineFit(samples, weights, knots, handled, noise);
  }

  /** Level ends whose handle is too short, or turned round, to keep the curve level. */
  private Ends handled(Ends ends) {
    int last = knots.cubics() - 1;
    double usual = extent() / 3;
    End start = handled(ends.start(), cx[1], usual * knots.to(0));
    End end = handled(ends.end(), cx[cx.length - 2], usual * (1 - knots.from(last)));
    return start == ends.start() && end == ends.end() ? ends : new Ends(start, end);
  }

  private static End handled(End end, double handle, double usual) {
    boolean tooShort = end.isLevel() && !end.hasHandle() && handle < SHORT_HANDLE * usual;
    return tooShort ? end.withHandle(LEAST_HANDLE * usual) : end;
  }

  /** Control points on the points themselves. */
  private double[] alongPoints() {
    double[] x = new double[knots.controls()];
    double[] y = new double[knots.controls()];
    for (int j = 0; j < x.length; j++) {
      int near = 0;
      for (int i = 1; i < samples.size(); i++) {
        if (Math.abs(samples.share[i] - knots.centre(j))
            < Math.abs(samples.share[near] - knots.centre(j))) {
          near = i;
        }
      }
      x[j] = samples.x[near];
      y[j] = samples.y[near];
    }
    return controls.free(x, y);
  }

  /** The least squares at the given shares, from control points that are roughly right. */
  private double[] linear(double[] rough) {
    int n = controls.count();
    cx = controls.xs(rough);
    cy = controls.ys(rough);
    double[][] normal = new double[n][n];
    double[] right = new double[n];
    double[] row = new double[n];
    for (int i = 0; i < samples.size(); i++) {
      look(feet[i]);
      addEquation(normal, right, row, root[i], 0, samples.x[i] - x);
      addEquation(normal, right, row, 0, root[i], samples.y[i] - y);
    }
    double ridge = RIDGE;
    for (int j = 0; j < n; j++) {
      ridge += RIDGE * normal[j][j];
    }
    for (int j = 0; j < n; j++) {
      normal[j][j] += ridge;
    }
    RealVector step =
        new CholeskyDecomposition(new Array2DRowRealMatrix(normal, false), 1e-12, 0)
            .getSolver()
            .solve(new ArrayRealVector(right, false));
    return new ArrayRealVector(rough, false).add(step).toArray();
  }

  private void addEquation(
      double[][] normal,
      double[] right,
      double[] row,
      double towardsX,
      double towardsY,
      double miss) {
    Arrays.fill(row, 0);
    controls.addRow(row, cubic, value, towardsX, towardsY, 1);
    double scale = Math.max(towardsX, towardsY);
    for (int j = 0; j < row.length; j++) {
      if (row[j] != 0) {
        right[j] += row[j] * miss * scale;
        for (int k = 0; k < row.length; k++) {
          normal[j][k] += row[j] * row[k];
        }
      }
    }
  }

  private double[] orthogonal(double[] start, double noise, Ends ends) {
    MultivariateJacobianFunction misses = misses(noise, ends);
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .model(misses)
            .target(new double[samples.size() + 3 + PLACES * knots.cubics()])
            .start(start)
            .checker(settled())
            .maxEvaluations(MOST_TRIALS)
            .maxIterations(MOST_TRIALS)
            .build();
    return new LevenbergMarquardtOptimizer()
        .withCostRelativeTolerance(1e-13)
        .withParameterRelativeTolerance(1e-13)
        .withOrthoTolerance(1e-13)
        .optimize(problem)
        .getPoint()
        .toArray();
  }

  private ConvergenceChecker<LeastSquaresProblem.Evaluation> settled() {
    return (iteration, before, now) ->
        iteration >= MOST_TRIALS / 2
            || largestDistance() < ENOUGH_MM
            || before.getPoint().getLInfDistance(now.getPoint()) < ENOUGH_MM;
  }

  /** Distances square to the curve, then the loose ends, then the preference for even speed. */
  private MultivariateJacobianFunction misses(double noise, Ends ends) {
    int size = samples.size();
    Evenness even = new Evenness(noise);
    int first = counting(0, 1);
    int last = counting(size - 1, -1);
    double[] firstWay = way(0);
    double[] lastWay = way(1);
    return free -> {
      cx = controls.xs(free.toArray());
      cy = controls.ys(free.toArray());
      findFeet();
      double[] miss = new double[size + 2 + even.size()];
      double[][] rows = new double[miss.length][controls.count()];
      for (int i = 0; i < size; i++) {
        look(feet[i]);
        miss[i] = -root[i] * distances[i];
        controls.addRow(rows[i], cubic, value, -dy, dx, root[i]);
      }
      if (ends.start().isFree()) {
        look(0);
        miss[size] = missAlong(first, firstWay);
        controls.addRow(rows[size], cubic, value, firstWay[0], firstWay[1], 1);
      }
      if (ends.end().isFree()) {
        look(1);
        miss[size + 1] = missAlong(last, lastWay);
        controls.addRow(rows[size + 1], cubic, value, lastWay[0], lastWay[1], 1);
      }
      even.add(miss, rows, size + 2);
      RealMatrix jacobian = new Array2DRowRealMatrix(rows, false);
      return new Pair<>(new ArrayRealVector(miss, false), jacobian);
    };
  }

  private double[] way(double share) {
    look(share);
    return new double[] {dx, dy};
  }

  /** The first point from here on that counts. */
  private int counting(int from, int step) {
    int i = from;
    while (root[i] == 0) {
      i += step;
    }
    return i;
  }

  /**
   * Prefers curves that are drawn at an even speed, give or take a half: a curve that doubles back
   * on itself costs as much as points several times the noise away.
   */
  private final class Evenness {
    private final int places = 1 + PLACES * knots.cubics();
    private final double[] shares = new double[places];
    private final double[][] ways = new double[places][];
    private final double usual;
    private final double weight;

    Evenness(double noise) {
      double sum = 0;
      for (int i = 0; i < places; i++) {
        int which = Math.min(i / PLACES, knots.cubics() - 1);
        double part = (double) (i - which * PLACES) / PLACES;
        shares[i] = knots.from(which) + (knots.to(which) - knots.from(which)) * part;
        ways[i] = way(shares[i]);
        sum += speed;
      }
      this.usual = sum / places;
      this.weight = noise / UNEVEN;
    }

    int size() {
      return places;
    }

    void add(double[] miss, double[][] rows, int from) {
      for (int i = 0; i < places; i++) {
        look(shares[i]);
        double towardsX = ways[i][0];
        double towardsY = ways[i][1];
        miss[from + i] = weight * (speed * (dx * towardsX + dy * towardsY) / usual - 1);
        controls.addRow(rows[from + i], cubic, slope, towardsX, towardsY, weight / usual);
      }
    }
  }

  /** How far the curve, where it was looked at last, lies beyond a point in a direction. */
  private double missAlong(int i, double[] way) {
    return (x - samples.x[i]) * way[0] + (y - samples.y[i]) * way[1];
  }

  /** Sets the cubic, the weights of its control points, the point and the unit direction there. */
  private void look(double share) {
    cubic = knots.cubicAt(share);
    knots.weights(cubic, share, value, slope);
    x = point(cx, cubic, value);
    y = point(cy, cubic, value);
    dx = point(cx, cubic, slope);
    dy = point(cy, cubic, slope);
    speed = Math.max(Math.hypot(dx, dy), Double.MIN_NORMAL);
    dx /= speed;
    dy /= speed;
  }

  private double extent() {
    double minX = samples.x[0];
    double maxX = minX;
    double minY = samples.y[0];
    double maxY = minY;
    for (int i = 1; i < samples.size(); i++) {
      minX = Math.min(minX, samples.x[i]);
      maxX = Math.max(maxX, samples.x[i]);
      minY = Math.min(minY, samples.y[i]);
      maxY = Math.max(maxY, samples.y[i]);
    }
    return Math.hypot(maxX - minX, maxY - minY);
  }

  private double largestDistance() {
    double largest = 0;
    for (int i = 0; i < root.length; i++) {
      largest = Math.max(largest, root[i] * Math.abs(distances[i]));
    }
    return largest;
  }

  private void findFeet() {
    for (int i = 0; i < samples.size(); i++) {
      distances[i] = findFoot(i);
    }
  }

  /** Slides the foot of a point along the curve until the point lies square to it. */
  private double findFoot(int i) {
    look(feet[i]);
    for (int step = 0; step < MOST_STEPS; step++) {
      double along = ((samples.x[i] - x) * dx + (samples.y[i] - y) * dy) / speed;
      double next = Math.min(Math.max(feet[i] + along, 0), 1);
      if (Math.abs(next - feet[i]) < STILL) {
        break;
      }
      feet[i] = next;
      look(next);
    }
    return dx * (samples.y[i] - y) - dy * (samples.x[i] - x);
  }

  private static double point(double[] controls, int first, double[] weights) {
    return controls[first] * weights[0]
        + controls[first + 1] * weights[1]
        + controls[first + 2] * weights[2]
        + controls[first + 3] * weights[3];
  }

  @Override
  public double distance(int point) {
    return distances[point];
  }

  @Override
  public double share(int point) {
    return feet[point];
  }

  @Override
  public List<Segment> segments() {
    List<Segment> cubics = new ArrayList<>();
    Point start = new Point(cx[0], cy[0]);
    for (int i = 0; i < knots.cubics(); i++) {
      double[] x = knots.cubicControls(i, cx);
      double[] y = knots.cubicControls(i, cy);
      boolean first = i == 0;
      boolean last = i == knots.cubics() - 1;
      // At the ends the control points are the spline's own, to the last bit.
      Point beside = first ? new Point(cx[1], cy[1]) : new Point(x[1], y[1]);
      Point before = last ? new Point(cx[cx.length - 2], cy[cy.length - 2]) : new Point(x[2], y[2]);
      Point end = last ? new Point(cx[cx.length - 1], cy[cy.length - 1]) : new Point(x[3], y[3]);
      cubics.add(new Cubic(start, beside, before, end));
      start = end;
    }
    return cubics;
  }
}
