package dev.drafting.core.pattern;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Moves corners by the least that keeps both sides of every seam as well matched as they were, or
 * makes those match that nearly did: Gauss-Newton steps of least norm over the corners that may
 * give way.
 */
final class SeamFit {
  private static final int MOST_STEPS = 20;
  private static final double MATCHED_MM = 1e-7;
  private static final double PROBE_MM = 0.01;

  private final Pattern scaled;
  private final Turns turns;
  private final Map<EdgeRef, EdgeRef> cornerAtStart = new LinkedHashMap<>();
  private final Map<EdgeRef, Vector> moves;

  /** What may give way: a corner, and along x or along y. */
  private final List<Freedom> freedoms = new ArrayList<>();

  private final List<Seam> seams;
  private final double[] wanted;

  private record Freedom(EdgeRef corner, Vector way) {}

  private SeamFit(
      Pattern original,
      Pattern scaled,
      Map<EdgeRef, Vector> moves,
      Set<EdgeRef> yielding,
      Turns turns,
      Length evened) {
    this.turns = turns;
    this.scaled = scaled;
    this.moves = new LinkedHashMap<>(moves);
    for (Piece piece : scaled.pieces()) {
      addCorners(piece, yielding);
    }
    this.seams = scaled.seams().stream().filter(seam -> !seam.isMirrored()).toList();
    this.wanted = new double[seams.size()];
    for (int i = 0; i < wanted.length; i++) {
      wanted[i] = wanted(original, seams.get(i), evened.toMm());
    }
  }

  /** By how much the first side should be longer: as before, or by its ease if it nearly was. */
  private static double wanted(Pattern original, Seam seam, double evened) {
    double before = lengths(original, seam.first()) - lengths(original, seam.second());
    double ease = seam.ease().toMm();
    return Math.abs(before - ease) <= evened ? ease : before;
  }

  static SeamFit of(
      Pattern original,
      Pattern scaled,
      Map<EdgeRef, Vector> moves,
      Set<EdgeRef> yielding,
      Turns turns,
      Length evened) {
    return new SeamFit(original, scaled, moves, yielding, turns, evened);
  }

  private void addCorners(Piece piece, Set<EdgeRef> yielding) {
    EdgeRef before = ref(piece, piece.edges().size() - 1);
    for (int i = 0; i < piece.edges().size(); i++) {
      EdgeRef edge = ref(piece, i);
      cornerAtStart.put(edge, before);
      before = edge;
      if (yielding.contains(edge)) {
        freedoms.add(new Freedom(edge, new Vector(0, 1)));
        if (!CornerMoves.onFold(piece, i)) {
          freedoms.add(new Freedom(edge, new Vector(1, 0)));
        }
      }
    }
  }

  private static EdgeRef ref(Piece piece, int edge) {
    return new EdgeRef(piece.name(), piece.edges().get(edge).name());
  }

  private static double lengths(Pattern pattern, List<EdgeRef> edges) {
    return edges.stream().mapToDouble(edge -> pattern.edge(edge).length().toMm()).sum();
  }

  /** The moves of all corners, those that gave way among them. */
  Map<EdgeRef, Vector> moves() {
    double[] off = off();
    for (int step = 0; step < MOST_STEPS && worst(off) > MATCHED_MM; step++) {
      if (freedoms.isEmpty()) {
        break;
      }
      RealMatrix slopes = slopes();
      RealMatrix square = slopes.multiply(slopes.transpose());
      RealVector weights =
          new SingularValueDecomposition(square).getSolver().solve(new ArrayRealVector(off));
      give(slopes.transpose().operate(weights));
      off = off();
    }
    return moves;
  }

  private static double worst(double[] off) {
    double worst = 0;
    for (double one : off) {
      worst = Math.max(worst, Math.abs(one));
    }
    return worst;
  }

  private void give(RealVector steps) {
    for (int i = 0; i < freedoms.size(); i++) {
      Freedom freedom = freedoms.get(i);
      moves.merge(freedom.corner(), freedom.way().times(-steps.getEntry(i)), Vector::plus);
    }
  }

  /** By how much the first side of each seam is longer than it should be. */
  private double[] off() {
    double[] off = new double[seams.size()];
    for (int i = 0; i < off.length; i++) {
      off[i] = side(seams.get(i).first()) - side(seams.get(i).second()) - wanted[i];
    }
    return off;
  }

  private double side(List<EdgeRef> edges) {
    return edges.stream()
        .mapToDouble(edge -> length(edge, CornerMoves.NONE, CornerMoves.NONE))
        .sum();
  }

  private double length(EdgeRef edge, Vector moreAtStart, Vector moreAtEnd) {
    Curve curve = scaled.edge(edge).curve();
    Vector atStart = move(cornerAtStart.getOrDefault(edge, edge)).plus(moreAtStart);
    double turnAtStart = turns.atStart(edge, moves);
    double turnAtEnd = turns.atEnd(edge, moves);
    return EdgeBending.of(curve, atStart, move(edge).plus(moreAtEnd), turnAtStart, turnAtEnd)
        .length()
        .toMm();
  }

  private Vector move(EdgeRef corner) {
    return moves.getOrDefault(corner, CornerMoves.NONE);
  }

  /** How fast each seam's difference grows with each freedom. */
  private RealMatrix slopes() {
    RealMatrix slopes = new Array2DRowRealMatrix(seams.size(), freedoms.size());
    for (int i = 0; i < seams.size(); i++) {
      for (int j = 0; j < freedoms.size(); j++) {
        slopes.setEntry(
            i,
            j,
            slope(seams.get(i).first(), freedoms.get(j))
                - slope(seams.get(i).second(), freedoms.get(j)));
      }
    }
    return slopes;
  }

  private double slope(List<EdgeRef> edges, Freedom freedom) {
    double sum = 0;
    for (EdgeRef edge : edges) {
      boolean start = freedom.corner().equals(cornerAtStart.get(edge));
      boolean end = freedom.corner().equals(edge);
      if (start || end) {
        Vector probe = freedom.way().times(PROBE_MM);
        Vector atStart = start ? probe : CornerMoves.NONE;
        Vector atEnd = end ? probe : CornerMoves.NONE;
        double more = length(edge, atStart, atEnd);
        double less = length(edge, atStart.negated(), atEnd.negated());
        sum += (more - less) / (2 * PROBE_MM);
      }
    }
    return sum;
  }
}
