package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * An edge that is moved sideways between two places, most of all at a third one between them. At an
 * end of the edge, the corner and the edge beyond it follow.
 *
 * @param edge the edge
 * @param from where it begins to move, along the edge
 * @param at where it moves most
 * @param to where it ends to move
 * @param outward how far it moves there; inward if negative
 */
record SideShift(EdgeRef edge, Length from, Length at, Length to, Length outward)
    implements Serializable {

  /** The piece with the edge moved. */
  Piece of(Piece piece) {
    Edge moved = piece.edge(edge.edge());
    List<Edge> edges = new ArrayList<>(piece.edges());
    int index = edges.indexOf(moved);
    int before = (index + edges.size() - 1) % edges.size();
    int after = (index + 1) % edges.size();
    Vector atStart = at.isZero() ? sideways(piece, index, before) : CornerMoves.NONE;
    Vector atEnd = at.equals(moved.length()) ? sideways(piece, index, index) : CornerMoves.NONE;
    Curve curve = ShiftedEdge.of(moved.curve(), this, atStart, atEnd);
    edges.set(index, moved.redrawn(moved.name(), curve));
    follow(edges, before, CornerMoves.NONE, atStart);
    follow(edges, after, atEnd, CornerMoves.NONE);
    PieceDetails details = piece.details().withNotches(CornerMoves.notches(piece, edges));
    return Piece.of(piece.name(), edges, details);
  }

  private static void follow(List<Edge> edges, int index, Vector atStart, Vector atEnd) {
    Edge edge = edges.get(index);
    edges.set(index, edge.redrawn(edge.name(), EdgeBending.of(edge.curve(), atStart, atEnd)));
  }

  void check(Length length) {
    if (from.isNegative() || from.compareTo(at) > 0 || at.compareTo(to) > 0 || from.equals(to)) {
      throw DraftingException.of("the places along the edge are out of order")
          .at(edge.toString())
          .value(words(from) + ", " + words(at) + ", " + words(to))
          .accepted("where the move begins, where it is largest, where it ends");
    }
    if (to.compareTo(length) > 0) {
      throw DraftingException.of("the place lies beyond the end of the edge")
          .at(edge.toString())
          .value(words(to))
          .accepted("0 mm to " + words(length));
    }
    boolean jumps = (from.equals(at) && !at.isZero()) || (to.equals(at) && !at.equals(length));
    if (jumps) {
      throw DraftingException.of("the edge would jump where it begins to move")
          .at(edge.toString())
          .value(words(at))
          .accepted("a place between the two, or at an end of the edge");
    }
  }

  private static String words(Length place) {
    return place.text(LengthUnit.MM);
  }

  /** How the corner at an end of the edge moves: along the fold if it lies there. */
  private Vector sideways(Piece piece, int index, int corner) {
    Curve curve = piece.edges().get(index).curve();
    Vector way = ShiftedEdge.outside(curve.directionAt(corner == index ? curve.length() : at));
    Vector free = CornerMoves.onFold(piece, corner) ? new Vector(0, Math.signum(way.dy())) : way;
    return free.times(outward.toMm());
  }
}
