package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.TracedStretch;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.UnnamedTracing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;

/** Reads how the pieces were traced and how often they are cut, and finds their points. */
final class PieceReader {
  private static final int MOST_PIECES = 50;
  private static final int MOST_TIMES = 20;
  private static final int MOST_EDGES = 200;
  private static final Map<String, Extent> EXTENTS = extents();
  private static final Map<String, IntFunction<Cutting>> CUTTINGS = cuttings();

  private PieceReader() {}

  private static Map<String, Extent> extents() {
    Map<String, Extent> extents = new LinkedHashMap<>();
    extents.put("half on the fold", Extent.HALF_ON_FOLD);
    extents.put("whole", Extent.WHOLE);
    extents.put("as it lies", Extent.AS_IT_LIES);
    return extents;
  }

  private static Map<String, IntFunction<Cutting>> cuttings() {
    Map<String, IntFunction<Cutting>> cuttings = new LinkedHashMap<>();
    cuttings.put("on the fold", Cutting::onFold);
    cuttings.put("in pairs", Cutting::pairs);
    cuttings.put("single", Cutting::single);
    return cuttings;
  }

  /** A piece as it is described, with the strokes that trace it and the lines that hold them. */
  record Source(
      Entry entry, Tracing tracing, Shape shape, Cutting cutting, String cloth, String lines) {}

  static List<Source> read(Entry list, List<Stroke> strokes) {
    Map<String, List<Stroke>> byPiece = new LinkedHashMap<>();
    strokes.forEach(s -> byPiece.computeIfAbsent(s.piece(), p -> new ArrayList<>()).add(s));
    Unique<Source> pieces = new Unique<>("piece");
    for (Entry entry : list.list(1, MOST_PIECES)) {
      Fields fields =
          entry.fields(
              "name",
              "traced",
              "edges",
              "outside",
              "grown",
              "cut",
              "times",
              "cloth",
              "straight",
              "curved",
              "pointed");
      String name = fields.get("name").name();
      pieces.put(entry, name, source(fields, name, byPiece));
    }
    refuseUnknown(strokes, pieces.all());
    return List.copyOf(pieces.all().values());
  }

  private static Source source(Fields fields, String name, Map<String, List<Stroke>> byPiece) {
    List<Stroke> strokes = byPiece.get(name);
    if (strokes == null) {
      throw fields
          .get("name")
          .fault("no points are traced for this piece")
          .accepted(String.join(", ", byPiece.keySet()));
    }
    Extent extent = fields.get("traced").choice("way of tracing", EXTENTS);
    int times = fields.or("times", 1, e -> e.count(1, MOST_TIMES));
    Cutting cutting = fields.get("cut").choice("way of cutting", CUTTINGS).apply(times);
    String cloth = fields.or("cloth", "body", Entry::name);
    String lines = Stroke.lines(strokes);
    Tracing tracing = tracing(fields, name, extent, strokes);
    Shape shape = Shape.read(fields, tracing.edges().stream().map(TracedEdge::name).toList());
    return new Source(fields.object(), tracing, shape, cutting, cloth, lines);
  }

  private static Tracing tracing(Fields fields, String piece, Extent extent, List<Stroke> strokes) {
    boolean named = strokes.stream().allMatch(Stroke::isNamed);
    Optional<Entry> edges = fields.find("edges");
    if (named && edges.isPresent()) {
      throw edges
          .get()
          .fault("the strokes of this piece name their edges themselves")
          .accepted("\"edges\" left out, or strokes without the name of an edge");
    }
    try {
      if (named) {
        return Tracing.of(piece, extent, strokes.stream().map(PieceReader::traced).toList());
      }
      return named(fields, found(piece, extent, strokes));
    } catch (DraftingException e) {
      throw e.at(Stroke.lines(strokes));
    }
  }

  private static TracedEdge traced(Stroke stroke) {
    return TracedEdge.of(stroke.edge(), stroke.line());
  }

  /** The corners of a piece whose strokes run past them. */
  private static UnnamedTracing found(String piece, Extent extent, List<Stroke> strokes) {
    for (Stroke stroke : strokes) {
      if (stroke.isNamed()) {
        throw DraftingException.of("some strokes of a piece name their edge and some do not")
            .at(piece)
            .value(stroke.edge())
            .accepted("all of them, or none");
      }
    }
    return UnnamedTracing.of(piece, extent, strokes.stream().map(Stroke::line).toList());
  }

  private static Tracing named(Fields fields, UnnamedTracing found) {
    List<String> names = fields.get("edges").list(1, MOST_EDGES).stream().map(Entry::name).toList();
    if (names.size() != found.stretches().size()) {
      throw fields
          .get("edges")
          .place(
              DraftingException.of("there are not as many edges as stretches between corners")
                  .value(String.join(", ", names))
                  .accepted(
                      found.stretches().stream()
                          .map(TracedStretch::toString)
                          .collect(Collectors.joining("; "))));
    }
    return found.named(names.toArray(String[]::new));
  }

  private static void refuseUnknown(List<Stroke> strokes, Map<String, Source> pieces) {
    for (Stroke stroke : strokes) {
      if (!pieces.containsKey(stroke.piece())) {
        throw DraftingException.of("the piece is not described in garment.json")
            .at(stroke.where() + ", field piece")
            .value(stroke.piece())
            .accepted(String.join(", ", pieces.keySet()));
      }
    }
  }
}
