package dev.drafting.core.pattern;

import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One piece with its corners moved. */
final class CornerMoves {
  static final Vector NONE = new Vector(0, 0);

  private final Piece piece;
  private final List<Vector> moves;
  private final Map<EdgeRef, Vector> byEdge;
  private final Turns turns;

  /** A move for each corner; a corner is that after the edge of the same number. */
  private CornerMoves(Piece piece, List<Vector> moves, Map<EdgeRef, Vector> byEdge, Turns turns) {
    this.piece = piece;
    this.moves = moves;
    this.byEdge = byEdge;
    this.turns = turns;
  }

  static CornerMoves of(Piece piece, Map<EdgeRef, Vector> byEdge, Turns turns) {
    List<Vector> moves = new ArrayList<>();
    for (int i = 0; i < piece.edges().size(); i++) {
      Vector move =
          byEdge.getOrDefault(new EdgeRef(piece.name(), piece.edges().get(i).name()), NONE);
      moves.add(onFold(piece, i) ? new Vector(0, move.dy()) : move);
    }
    return new CornerMoves(piece, moves, byEdge, turns);
  }

  /** Tells whether the corner after an edge lies on the fold and can only move along it. */
  static boolean onFold(Piece piece, int edge) {
    List<Edge> edges = piece.edges();
    return edges.get(edge).isOnFold() || edges.get((edge + 1) % edges.size()).isOnFold();
  }

  Piece piece() {
    if (moves.stream().allMatch(NONE::equals)) {
      return piece;
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < moves.size(); i++) {
      Edge edge = piece.edges().get(i);
      Vector atStart = moves.get((i + moves.size() - 1) % moves.size());
      EdgeRef ref = new EdgeRef(piece.name(), edge.name());
      double turnAtStart = turns.atStart(ref, byEdge);
      double turnAtEnd = turns.atEnd(ref, byEdge);
      edges.add(
          edge.redrawn(
              edge.name(),
              EdgeBending.of(edge.curve(), atStart, moves.get(i), turnAtStart, turnAtEnd)));
    }
    PieceDetails details = piece.details().withNotches(notches(piece, edges));
    return Piece.of(piece.name(), edges, details);
  }

  /** Every notch at the same share of its edge's length as before. */
  static List<Notch> notches(Piece piece, List<Edge> redrawn) {
    List<Notch> notches = new ArrayList<>();
    for (Notch notch : piece.notches()) {
      for (int i = 0; i < redrawn.size(); i++) {
        Edge edge = redrawn.get(i);
        if (edge.name().equals(notch.edge())) {
          Length before = piece.edges().get(i).length();
          Length along = edge.length().times(notch.along().ratioTo(before)).min(edge.length());
          notches.add(Notch.of(notch.edge(), along, notch.label()));
        }
      }
    }
    return notches;
  }
}
