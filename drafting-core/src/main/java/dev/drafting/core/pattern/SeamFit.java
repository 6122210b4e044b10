package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
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
 * makes those match that nearly did, and gives edges the lengths that are asked for: Gauss-Newton
 * steps of least norm over the corners that may give way.
 */
final class SeamFit {
  private static final int MOST_STEPS = 20;
  private static final double MATCHED_MM = 1e-7;
  private static final double PROBE_MM = 0.01;
  private static final double REACHED_MM = 0.01;

  private final Pattern scaled;
  private final Turns turns;
  private final Map<EdgeRef, EdgeRef> cornerAtStart = new LinkedHashMap<>();
  private final Map<EdgeRef, Vector> moves;

  /** What may give way: a corner, and along x or along y. */
  private final List<Freedom> freedoms = new ArrayList<>();

  private final List<Match> matches = new ArrayList<>();

  private record Freedom(EdgeRef corner, Vector way) {}

  /** By how much some edges should be longer together than others. */
  private record Match(List<EdgeRef> first, List<EdgeRef> second, double wanted) {}

  private SeamFit(
      Pattern original,
      Pattern scaled,
      Map<EdgeRef, Vector> moves,
      Set<EdgeRef> yielding,
      Turns turns,
      Length evened,
      Map<EdgeRef, Length> lengths) {
    this.turns = turns;
    this.scaled = scaled;
    this.moves = new LinkedHashMap<>(moves);
    for (Piece piece : scaled.pieces()) {
      addCorners(piece, yielding);
    }
    for (Seam seam : scaled.seams()) {
      if (!seam.isMirrored()) {
        double before =
            sum(original, seam.first(), lengths) - sum(original, seam.second(), lengths);
        double ease = seam.ease().toMm();
        boolean nearly = Math.abs(before - ease) <= evened.toMm();
        matches.add(new Match(seam.first(), seam.second(), nearly ? ease : before));
      }
    }
    lengths.forEach(
        (edge, length) -> matches.add(new Match(List.of(edge), List.of(), length.toMm())));
  }

  static SeamFit of(
      Pattern original,
      Pattern scaled,
      Map<EdgeRef, Vector> moves,
      Set<EdgeRef> yielding,
      Turns turns,
      Length evened,
      Map<EdgeRef, Length> lengths) {
    return new SeamFit(original, scaled, moves, yielding, turns, evened, lengths);
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

  /** How long edges are together, those with a length of their own as long as that. */
  private static double sum(Pattern pattern, List<EdgeRef> edges, Map<EdgeRef, Length> lengths) {
    double sum = 0;
    for (EdgeRef edge : edges) {
      Length length = lengths.get(edge);
      sum += (length == null ? pattern.edge(edge).length() : length).toMm();
    }
    return sum;
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
    requireLengths(off);
    return moves;
  }

  private void requireLengths(double[] off) {
    for (int i = 0; i < off.length; i++) {
      Match match = matches.get(i);
      if (match.second().isEmpty() && !(Math.abs(off[i]) <= REACHED_MM)) {
        throw DraftingException.of("no moves of its corners make the edge as long as that")
            .at(match.first().get(0).toString())
            .value(Length.mm(match.wanted()))
            .accepted("a length nearer to what it is, for the edges sewn to it as well");
      }
    }
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

  /** By how much the first edges of each match are longer than they should be. */
  private double[] off() {
    return matches.stream()
        .mapToDouble(match -> side(match.first()) - side(match.second()) - match.wanted())
        .toArray();
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

  /** How fast each match's difference grows with each freedom. */
  private RealMatrix slopes() {
    RealMatrix slopes = new Array2DRowRealMatrix(matches.size(), freedoms.size());
    for (int i = 0; i < matches.size(); i++) {
      Match match = matches.get(i);
      for (int j = 0; j < freedoms.size(); j++) {
        Freedom freedom = freedoms.get(j);
        slopes.setEntry(i, j, slope(match.first(), freedom) - slope(match.second(), freedom));
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
