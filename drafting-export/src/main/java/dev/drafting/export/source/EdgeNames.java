package dev.drafting.export.source;

import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.trace.Tracing;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The edges that are traced, found by the words "piece edge". */
final class EdgeNames {
  private final Map<String, Set<String>> edges = new LinkedHashMap<>();

  EdgeNames(Collection<Tracing> tracings) {
    for (Tracing tracing : tracings) {
      Set<String> names = new LinkedHashSet<>();
      tracing.edges().forEach(edge -> names.add(edge.name()));
      edges.put(tracing.piece(), names);
    }
  }

  /** The edge that an entry names. */
  EdgeRef find(Entry entry) {
    String text = entry.text(200);
    String piece =
        longestPieceIn(text)
            .orElseThrow(
                () ->
                    entry
                        .fault("the piece is unknown")
                        .accepted("a piece and an edge of it: " + written()));
    String edge = text.substring(piece.length()).strip();
    Set<String> known = edges.getOrDefault(piece, Set.of());
    if (!known.contains(edge)) {
      throw entry
          .fault("the piece \"" + piece + "\" has no such edge")
          .accepted(String.join(", ", known));
    }
    return new EdgeRef(piece, edge);
  }

  private Optional<String> longestPieceIn(String text) {
    return edges.keySet().stream()
        .filter(piece -> text.startsWith(piece + " "))
        .max((a, b) -> Integer.compare(a.length(), b.length()));
  }

  /** All edges in the order of the tracing. */
  List<EdgeRef> all() {
    return edges.entrySet().stream()
        .flatMap(piece -> piece.getValue().stream().map(e -> new EdgeRef(piece.getKey(), e)))
        .toList();
  }

  private String written() {
    return String.join(", ", all().stream().map(ref -> ref.piece() + " " + ref.edge()).toList());
  }
}
