package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.trace.Truing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What the tracer says of the shape of a piece, beside the points. */
final class Shape {
  private static final int MOST_EDGES = 200;
  private static final Length FARTHEST = Length.mm(100);
  private static final int MOST_GROWN = 50;

  private final List<String> straight;
  private final List<String> curved;
  private final List<String> pointedAtFold;
  private final Map<Entry, List<String>> pointed;
  private final Map<String, Length> outside;
  private final Map<String, Double> grown;

  private Shape(
      List<String> straight,
      List<String> curved,
      List<String> pointedAtFold,
      Map<Entry, List<String>> pointed,
      Map<String, Length> outside,
      Map<String, Double> grown) {
    this.outside = outside;
    this.grown = grown;
    this.straight = straight;
    this.curved = curved;
    this.pointedAtFold = pointedAtFold;
    this.pointed = pointed;
  }

  /** Reads what a piece with these edges says of their shape, and of what was traced. */
  static Shape read(Fields fields, Collection<String> edges) {
    Map<String, String> known = new LinkedHashMap<>();
    edges.forEach(edge -> known.put(edge, edge));
    List<String> atFold = new ArrayList<>();
    Map<Entry, List<String>> corners = new LinkedHashMap<>();
    for (Entry corner : fields.or("pointed", List.<Entry>of(), e -> e.list(0, MOST_EDGES))) {
      if (corner.isList()) {
        corners.put(corner, names(corner.list(2, 2), known));
      } else {
        atFold.add(corner.choice("edge", known));
      }
    }
    return new Shape(
        fields.or("straight", List.of(), e -> names(e.list(0, MOST_EDGES), known)),
        fields.or("curved", List.of(), e -> names(e.list(0, MOST_EDGES), known)),
        atFold,
        corners,
        byEdge(fields, "outside", known, by -> by.length(FARTHEST.negated(), FARTHEST)),
        byEdge(fields, "grown", known, by -> by.quantity("%", 0, MOST_GROWN)));
  }

  /** What a field says of edges: a list of edges and an amount for all of them. */
  private static <T> Map<String, T> byEdge(
      Fields whole, String field, Map<String, String> known, Function<Entry, T> reading) {
    Map<String, T> amounts = new LinkedHashMap<>();
    for (Entry entry : whole.or(field, List.<Entry>of(), e -> e.list(0, MOST_EDGES))) {
      Fields fields = entry.fields("edges", "by");
      T by = reading.apply(fields.get("by"));
      names(fields.get("edges").list(1, MOST_EDGES), known).forEach(edge -> amounts.put(edge, by));
    }
    return amounts;
  }

  /** How long those of its edges were that have stretched in wear. */
  Map<EdgeRef, Length> lengthsBeforeWear(Piece piece) {
    Map<EdgeRef, Length> lengths = new LinkedHashMap<>();
    grown.forEach(
        (edge, percent) ->
            lengths.put(
                new EdgeRef(piece.name(), edge),
                piece.edge(edge).length().times(1 / (1 + percent / 100))));
    return lengths;
  }

  private static List<String> names(List<Entry> entries, Map<String, String> known) {
    return entries.stream().map(entry -> entry.choice("edge", known)).toList();
  }

  /** The truing that knows which edges are straight, curved, pointed at the fold or inside. */
  Truing of(Truing truing) {
    Truing told = truing;
    for (String edge : straight) {
      told = told.withStraight(edge);
    }
    for (String edge : curved) {
      told = told.withCurved(edge);
    }
    for (String edge : pointedAtFold) {
      told = told.withPointedCorner(edge);
    }
    for (Map.Entry<String, Length> edge : outside.entrySet()) {
      told = told.withTracedOutside(edge.getKey(), edge.getValue());
    }
    return told;
  }

  /** The piece that knows which of its corners are meant to be points. */
  Piece of(Piece piece) {
    Piece told = piece;
    for (Map.Entry<Entry, List<String>> corner : pointed.entrySet()) {
      Corner found = corner(piece, corner.getKey(), corner.getValue());
      told = told.withPointedCorner(found.before(), found.after());
    }
    return told;
  }

  private static Corner corner(Piece piece, Entry entry, List<String> edges) {
    return piece.corners().stream()
        .filter(corner -> edges.containsAll(List.of(corner.before(), corner.after())))
        .findFirst()
        .orElseThrow(
            () ->
                entry
                    .fault("these edges do not meet in a corner")
                    .value(String.join(", ", edges))
                    .accepted("two edges that follow each other"));
  }
}
