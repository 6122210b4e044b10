package dev.drafting.core.trace;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetTag;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Draws the finished edges of a piece inside what was traced outside of them. */
final class TracedOutside {
  private static final Length TOLERANCE = Length.mm(0.001);

  private TracedOutside() {}

  static TruedPiece taken(Map<String, Length> outside, TruedPiece trued) {
    boolean moved = outside.values().stream().anyMatch(distance -> !distance.isZero());
    return moved ? new TruedPiece(inside(outside, trued.piece()), trued.report()) : trued;
  }

  private static Piece inside(Map<String, Length> outside, Piece traced) {
    List<OffsetEdge> edges = new ArrayList<>();
    for (Edge edge : traced.edges()) {
      Length distance = outside.getOrDefault(edge.name(), Length.ZERO);
      edges.add(OffsetEdge.of(edge.name(), edge.curve(), distance.negated()));
    }
    Map<String, Curve> curves = curves(edges, traced.name());
    List<Edge> finished = new ArrayList<>();
    for (Edge edge : traced.edges()) {
      Curve curve = curves.get(edge.name());
      if (curve == null) {
        throw DraftingException.of("nothing is left of an edge inside what was traced")
            .at(edge.name())
            .at(traced.name())
            .value(outside.getOrDefault(edge.name(), Length.ZERO))
            .accepted("less, for this edge or its neighbours");
      }
      finished.add(edge.isOnFold() ? Edge.onFold(curve) : Edge.of(edge.name(), curve));
    }
    Piece piece = Piece.of(traced.name(), finished);
    for (Corner corner : traced.corners()) {
      piece = corner.isPointed() ? piece.withPointedCorner(corner.before(), corner.after()) : piece;
    }
    return piece;
  }

  /** By edge; what a corner adds goes to the edge before it. */
  private static Map<String, Curve> curves(List<OffsetEdge> edges, String piece) {
    List<OffsetPart> parts;
    try {
      parts = new ArrayList<>(Offset.of(edges).withTolerance(TOLERANCE).result().parts());
    } catch (DraftingException e) {
      throw e.at(piece);
    }
    while (parts.get(0).tag() != OffsetTag.EDGE) {
      parts.add(parts.remove(0));
    }
    Map<String, Curve> curves = new LinkedHashMap<>();
    String name = "";
    for (OffsetPart part : parts) {
      name = part.tag() == OffsetTag.EDGE ? part.sourceName() : name;
      curves.merge(name, part.curve(), Curve::then);
    }
    return curves;
  }
}
