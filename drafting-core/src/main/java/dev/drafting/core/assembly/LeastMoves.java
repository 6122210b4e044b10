package dev.drafting.core.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * One constrained least squares over all edges of a pattern: the moves of least squares, summed
 * along the edges, that meet all demands at once (sequential quadratic programming: in every step
 * the demands are taken as straight, and the conditions of Karush, Kuhn and Tucker are solved).
 */
final class LeastMoves {
  private static final int MOST_STEPS = 25;

  private final List<GivingEdge> edges;
  private final int[][] unknowns;
  private final List<Demand> demands;
  private final double[] trust;
  private final int count;

  /** How each edge gives way, in mm. */
  final double[][] give;

  /** How far each demand was from being met when it was left. */
  final double[] misses;

  /** What each demand had to move, against the others. */
  final double[] work;

  /**
   * Solves at once.
   *
   * @param unknowns for each edge and each of its freedoms a number from 0, or -1 if it is held
   * @param trust for each edge how much a move of it costs
   */
  LeastMoves(List<GivingEdge> edges, int[][] unknowns, double[] trust, List<Demand> demands) {
    this.edges = edges;
    this.unknowns = unknowns;
    this.demands = demands;
    this.count = 1 + Arrays.stream(unknowns).flatMapToInt(Arrays::stream).max().orElse(-1);
    this.give = new double[edges.size()][GivingEdge.FREEDOMS];
    this.misses = new double[demands.size()];
    this.work = new double[demands.size()];
    this.trust = trust;
    solve();
  }

  boolean isMet(double within) {
    return Arrays.stream(misses).allMatch(miss -> Math.abs(miss) <= within);
  }

  private RealMatrix metric() {
    RealMatrix metric = new Array2DRowRealMatrix(count, count);
    for (int e = 0; e < unknowns.length; e++) {
      for (int a = 0; a < GivingEdge.FREEDOMS; a++) {
        for (int b = 0; b < GivingEdge.FREEDOMS; b++) {
          if (unknowns[e][a] >= 0 && unknowns[e][b] >= 0) {
            metric.addToEntry(unknowns[e][a], unknowns[e][b], trust[e] * edges.get(e).weight(a, b));
          }
        }
      }
    }
    return metric;
  }

  private void solve() {
    double[][] drawn = seen();
    look(drawn, drawn);
    double[] first = misses.clone();
    if (count == 0 || isMet(Demand.MET_MM)) {
      return;
    }
    DecompositionSolver metric = new CholeskyDecomposition(metric(), 1e-9, 0).getSolver();
    RealVector moves = new ArrayRealVector(count);
    for (int step = 0; step < MOST_STEPS && !isMet(Demand.MET_MM); step++) {
      RealMatrix slopes = slopes();
      RealMatrix back = metric.solve(slopes.transpose());
      RealVector wanted = slopes.operate(moves).subtract(new ArrayRealVector(misses));
      RealVector forces =
          new SingularValueDecomposition(slopes.multiply(back)).getSolver().solve(wanted);
      moves = back.operate(forces);
      spread(moves);
      look(drawn, seen());
      for (int i = 0; i < work.length; i++) {
        work[i] = Math.abs(forces.getEntry(i) * first[i]);
      }
    }
  }

  private void look(double[][] drawn, double[][] now) {
    for (int i = 0; i < misses.length; i++) {
      misses[i] = demands.get(i).miss(drawn, now);
    }
  }

  private double[][] seen() {
    double[][] seen = new double[edges.size()][];
    for (int e = 0; e < seen.length; e++) {
      seen[e] = edges.get(e).seen(give[e]);
    }
    return seen;
  }

  private RealMatrix slopes() {
    List<double[][]> slopes = new ArrayList<>();
    for (int e = 0; e < give.length; e++) {
      slopes.add(edges.get(e).slopes(give[e]));
    }
    RealMatrix all = new Array2DRowRealMatrix(demands.size(), count);
    for (int i = 0; i < demands.size(); i++) {
      for (Demand.Term term : demands.get(i).terms()) {
        for (int f = 0; f < GivingEdge.FREEDOMS; f++) {
          int at = unknowns[term.edge()][f];
          if (at >= 0) {
            all.addToEntry(i, at, term.factor() * slopes.get(term.edge())[term.what()][f]);
          }
        }
      }
    }
    return all;
  }

  private void spread(RealVector moves) {
    for (int e = 0; e < give.length; e++) {
      for (int f = 0; f < GivingEdge.FREEDOMS; f++) {
        give[e][f] = unknowns[e][f] < 0 ? 0 : moves.getEntry(unknowns[e][f]);
      }
    }
  }
}
