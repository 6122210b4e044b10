package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.trace.Truing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the tracer says of the shape of a piece, beside the points. */
final class Shape {
  private static final int MOST_EDGES = 200;
  private static final Length FARTHEST = Length.mm(100);

  private final List<String> straight;
  private final List<String> curved;
  private final List<String> pointedAtFold;
  private final Map<Entry, List<String>> pointed;
  private final Map<String, Length> outside;

  private Shape(
      List<String> straight,
      List<String> curved,
      List<String> pointedAtFold,
      Map<Entry, List<String>> pointed,
      Map<String, Length> outside) {
    this.outside = outside;
    this.straight = straight;
    this.curved = curved;
    this.pointedAtFold = pointedAtFold;
    this.pointed = pointed;
  }

  /** Reads the fields "straight", "curved", "pointed" and "outside" of a piece with these edges. */
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
        outside(fields.or("outside", List.of(), e -> e.list(0, MOST_EDGES)), known));
  }

  /** How far outside of the finished edge lies what was traced. */
  private static Map<String, Length> outside(List<Entry> list, Map<String, String> known) {
    Map<String, Length> outside = new LinkedHashMap<>();
    for (Entry entry : list) {
      Fields fields = entry.fields("edges", "by");
      Length by = fields.get("by").length(FARTHEST.negated(), FARTHEST);
      names(fields.get("edges").list(1, MOST_EDGES), known).forEach(edge -> outside.put(edge, by));
    }
    return outside;
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
