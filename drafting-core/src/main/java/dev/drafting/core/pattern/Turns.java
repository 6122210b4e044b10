package dev.drafting.core.pattern;

import dev.drafting.core.geometry.Vector;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * By how much edges turn when their ends are moved, for those edges whose neighbours shall keep
 * their angle to them. What crosses a seam smoothly then crosses it smoothly afterwards.
 */
final class Turns {
  private final Pattern pattern;
  private final Set<EdgeRef> turning;
  private final Map<EdgeRef, EdgeRef> before = new HashMap<>();
  private final Map<EdgeRef, EdgeRef> after = new HashMap<>();

  Turns(Pattern pattern, Set<EdgeRef> turning) {
    this.pattern = pattern;
    this.turning = turning;
    for (Piece piece : pattern.pieces()) {
      int n = piece.edges().size();
      for (int i = 0; i < n; i++) {
        EdgeRef edge = new EdgeRef(piece.name(), piece.edges().get(i).name());
        EdgeRef next = new EdgeRef(piece.name(), piece.edges().get((i + 1) % n).name());
        after.put(edge, next);
        before.put(next, edge);
      }
    }
  }

  /** The turn that an edge takes over at its start, in radians counter-clockwise. */
  double atStart(EdgeRef edge, Map<EdgeRef, Vector> moves) {
    return followed(edge, before.getOrDefault(edge, edge), moves);
  }

  /** The turn that it takes over at its end. */
  double atEnd(EdgeRef edge, Map<EdgeRef, Vector> moves) {
    return followed(edge, after.getOrDefault(edge, edge), moves);
  }

  private double followed(EdgeRef edge, EdgeRef neighbour, Map<EdgeRef, Vector> moves) {
    if (!turning.contains(neighbour) || turning.contains(edge) || pattern.edge(edge).isOnFold()) {
      return 0;
    }
    Edge turned = pattern.edge(neighbour);
    Vector chord = turned.curve().end().minus(turned.curve().start());
    Vector atStart = moves.getOrDefault(before.get(neighbour), CornerMoves.NONE);
    Vector atEnd = moves.getOrDefault(neighbour, CornerMoves.NONE);
    return chord.turnTo(chord.plus(atEnd).minus(atStart)).toRadians();
  }
}
