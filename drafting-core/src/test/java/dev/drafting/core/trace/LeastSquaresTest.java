package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/** Edges laid through points, against principal axes, chance and points of known curves. */
class LeastSquaresTest {
  private static final double QUIET = 1e-9;

  /** An edge through points, all of which count alike, and both of whose ends were seen. */
  private static Run run(Knots knots, double[] x, double[] y, double noise) {
    Samples samples = Samples.traced(x, y);
    double[] weights = EdgeFit.weights(EdgeFit.all(x.length));
    return new Run(samples, weights, new Track(knots), samples.share.clone(), 1, 1, noise, false);
  }

  private static LeastSquares free(Run... runs) {
    int[] controls = new int[runs.length];
    for (int i = 0; i < runs.length; i++) {
      controls[i] = runs[i].track.knots.controls();
    }
    return new LeastSquares(List.of(runs), new Unknowns(controls).numbered());
  }

  /** Two straight edges that share the corner between them. */
  private static LeastSquares joined(Run before, Run after) {
    Unknowns unknowns = new Unknowns(2, 2);
    unknowns.join(0, 1, 1);
    return new LeastSquares(List.of(before, after), unknowns.numbered());
  }

  private static void layAndSettle(LeastSquares squares) {
    squares.lay();
    squares.settle(1e-12);
  }

  /** Every 10 mm along a line that leaves the origin at a slope, off by chance square to it. */
  private static double[][] straight(
      double fromX, double fromY, double slope, int steps, double wander, Random random) {
    double[] x = new double[steps + 1];
    double[] y = new double[steps + 1];
    double cos = Math.cos(slope);
    double sin = Math.sin(slope);
    for (int i = 0; i <= steps; i++) {
      double off = wander * random.nextGaussian();
      x[i] = fromX + 10 * i * cos - off * sin;
      y[i] = fromY + 10 * i * sin + off * cos;
    }
    return new double[][] {x, y};
  }

  /** The direction in which points spread most, to the right. */
  private static double principalSlope(double[] x, double[] y) {
    double[][] rows = new double[x.length][];
    for (int i = 0; i < x.length; i++) {
      rows[i] = new double[] {x[i], y[i]};
    }
    RealMatrix spread = new Covariance(MatrixUtils.createRealMatrix(rows)).getCovarianceMatrix();
    double[] axis = new EigenDecomposition(spread).getEigenvector(0).toArray();
    return Math.atan(axis[1] / axis[0]);
  }

  private static double slope(Track track) {
    return Math.atan2(track.cy[1] - track.cy[0], track.cx[1] - track.cx[0]);
  }

  /** Least squares of distances square to a line: the principal axis through the mean. */
  @Test
  void aStraightEdgeLiesAlongThePrincipalAxisOfItsPoints() {
    double[][] points = straight(20, 30, 0.7, 15, 2, new Random(4));
    Run run = run(Knots.straight(), points[0], points[1], 2);
    layAndSettle(free(run));
    double slope = principalSlope(points[0], points[1]);
    assertEquals(slope, slope(run.track), 1e-9);
    double sum = 0;
    for (double off : run.distances) {
      sum += off;
    }
    assertEquals(0, sum, 1e-7);
  }

  @Test
  void pointsOfACubicGiveTheCubic() {
    Track truth =
        new Track(Knots.single(), new double[] {0, 40, 120, 150}, new double[] {0, 90, -30, 60});
    double[] x = new double[31];
    double[] y = new double[31];
    for (int i = 0; i < x.length; i++) {
      truth.look(i / 30.0);
      x[i] = truth.x;
      y[i] = truth.y;
    }
    Run run = run(Knots.single(), x, y, QUIET);
    LeastSquares squares = free(run);
    layAndSettle(squares);
    for (double off : run.distances) {
      assertEquals(0, off, 1e-6);
    }
    for (int i = 0; i < 4; i++) {
      assertEquals(truth.cx[i], run.track.cx[i], 0.01);
      assertEquals(truth.cy[i], run.track.cy[i], 0.01);
    }
    int before = squares.looks();
    assertTrue(before > 1);
    squares.settle(1e-12);
    assertTrue(squares.looks() > before);
  }

  /**
   * Points in a place beside their own share of the way: laid at the shares as they stand, a
   * straight edge is the line of ordinary least squares in x and in y, here about their means at
   * half of the way.
   */
  @Test
  void layingTakesTheSharesAsTheyStand() {
    Run run = run(Knots.straight(), new double[] {0, 30, 70, 100}, new double[] {0, 6, -6, 0}, 1);
    double[] shares = {0, 0.25, 0.75, 1};
    System.arraycopy(shares, 0, run.feet, 0, 4);
    free(run).lay();
    double slope = (0.5 * 50 * 2 + 0.25 * 20 * 2) / (0.25 * 2 + 0.0625 * 2);
    assertEquals(50 - slope / 2, run.track.cx[0], 1e-5);
    assertEquals(50 + slope / 2, run.track.cx[1], 1e-5);
    double fall = (-0.25 * 6 * 2) / (0.25 * 2 + 0.0625 * 2);
    assertEquals(-fall / 2, run.track.cy[0], 1e-5);
    assertEquals(fall / 2, run.track.cy[1], 1e-5);
  }

  /** Each end was seen once, off by 2 mm: their distance is off by the root of two times that. */
  @Test
  void theLengthOfAStraightEdgeIsAsSureAsItsEnds() {
    double[][] points = straight(0, 0, 0.3, 12, 2, new Random(1));
    Run run = run(Knots.straight(), points[0], points[1], 2);
    LeastSquares squares = free(run);
    layAndSettle(squares);
    assertEquals(2 * Math.sqrt(2), squares.lengthDeviation(0, 2), 1e-6);
  }

  @Test
  void aTurnIsCountedToTheLeft() {
    Run before = run(Knots.straight(), new double[] {0, 50, 100}, new double[] {0, 0, 0}, 1);
    for (double degrees : new double[] {90, -40, 150, 0}) {
      double slope = Math.toRadians(degrees);
      double[][] points = straight(100, 0, slope, 10, 0, new Random(1));
      Run after = run(Knots.straight(), points[0], points[1], 1);
      LeastSquares squares = joined(before, after);
      layAndSettle(squares);
      assertEquals(slope, squares.turn(0, 1), 1e-9);
    }
  }

  /** What 400 tracings of one line in two parts turn by, against what is expected of one. */
  @Test
  void theDeviationOfATurnIsThatOfManyTracings() {
    Random random = new Random(9);
    SummaryStatistics turns = new SummaryStatistics();
    double expected = 0;
    for (int i = 0; i < 400; i++) {
      double[][] one = straight(0, 0, 0.4, 10, 1, random);
      double[][] other = straight(100 * Math.cos(0.4), 100 * Math.sin(0.4), 0.4, 6, 1, random);
      LeastSquares squares =
          joined(
              run(Knots.straight(), one[0], one[1], 1),
              run(Knots.straight(), other[0], other[1], 1));
      layAndSettle(squares);
      turns.addValue(squares.turn(0, 1));
      expected = squares.turnDeviation(0, 1, 1);
    }
    assertEquals(1, turns.getStandardDeviation() / expected, 0.12);
    assertEquals(0, turns.getMean(), 4 * expected / 20);
  }

  /** Two edges that run on without a turn are one line through the points of both. */
  @Test
  void edgesThatRunOnAreOneLine() {
    Random random = new Random(2);
    double[][] one = straight(0, 0, 0.1, 10, 1, random);
    double[][] other = straight(100 * Math.cos(0.1), 100 * Math.sin(0.1), 0.3, 6, 1, random);
    Run before = run(Knots.straight(), one[0], one[1], 1);
    Run after = run(Knots.straight(), other[0], other[1], 1);
    LeastSquares squares = joined(before, after);
    layAndSettle(squares);
    assertTrue(squares.turn(0, 1) > 0.1);
    squares.runThrough(0, 1);
    squares.settle(1e-12);
    assertEquals(0, squares.turn(0, 1), 1e-7);
    double[] x = new double[18];
    double[] y = new double[18];
    for (int i = 0; i < 18; i++) {
      x[i] = i < 11 ? one[0][i] : other[0][i - 11];
      y[i] = i < 11 ? one[1][i] : other[1][i - 11];
    }
    assertEquals(principalSlope(x, y), slope(before.track), 1e-4);
    assertEquals(principalSlope(x, y), slope(after.track), 1e-4);
  }
}
