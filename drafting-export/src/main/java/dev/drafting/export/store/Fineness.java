package dev.drafting.export.store;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.List;

/**
 * Into how many segments the edges of a stored pattern may be cut. A fitted edge has a few dozen;
 * the allowance beside steps far shorter than it is wide would be computed for minutes.
 */
final class Fineness {
  private static final int MOST_OF_EDGE = 1_000;
  private static final int MOST_OF_PATTERN = 10_000;

  private Fineness() {}

  static Edge checked(Edge edge) {
    int segments = edge.curve().segments().size();
    if (segments > MOST_OF_EDGE) {
      throw DraftingException.of("an edge has too many segments")
          .at(edge.name())
          .value(segments)
          .accepted("at most " + MOST_OF_EDGE + " in an edge");
    }
    return edge;
  }

  static List<Piece> checked(List<Piece> pieces) {
    long segments =
        pieces.stream()
            .flatMap(piece -> piece.edges().stream())
            .mapToLong(edge -> checked(edge).curve().segments().size())
            .sum();
    if (segments > MOST_OF_PATTERN) {
      throw DraftingException.of("the edges have too many segments")
          .at("pattern")
          .value(segments)
          .accepted("at most " + MOST_OF_PATTERN + " in a pattern");
    }
    return pieces;
  }
}
