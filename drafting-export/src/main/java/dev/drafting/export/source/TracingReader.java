package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.RepeatedTracing;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.TracedStretch;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.UnnamedTracing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The tracings of the pieces: traced once, several times, or as another piece with some lines of
 * its own.
 */
final class TracingReader {
  private static final int MOST_EDGES = 200;
  private static final int MOST_TRACINGS = 20;
  private static final Map<String, Extent> EXTENTS = extents();

  private final List<Stroke> strokes;
  private final Map<String, List<Stroke>> byPiece = new LinkedHashMap<>();
  private final Map<String, Tracing> done = new LinkedHashMap<>();
  private final Set<String> used = new HashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  TracingReader(List<Stroke> strokes) {
    this.strokes = strokes;
    strokes.forEach(s -> byPiece.computeIfAbsent(s.piece(), p -> new ArrayList<>()).add(s));
  }

  private static Map<String, Extent> extents() {
    Map<String, Extent> extents = new LinkedHashMap<>();
    extents.put("half on the fold", Extent.HALF_ON_FOLD);
    extents.put("whole", Extent.WHOLE);
    extents.put("as it lies", Extent.AS_IT_LIES);
    return extents;
  }

  /** What was seen as tracings were laid on each other. */
  List<Finding> findings() {
    return findings;
  }

  /** The lines of the file that hold a piece. */
  String lines(String piece) {
    return Stroke.lines(strokes(piece));
  }

  Tracing read(Fields fields, Entry name) {
    String piece = name.name();
    if (!byPiece.containsKey(piece)) {
      throw notTraced(name);
    }
    Optional<Entry> like = fields.find("like");
    Tracing tracing =
        like.isPresent() ? withLines(fields, piece, like.get()) : traced(fields, piece);
    done.put(piece, tracing);
    return tracing;
  }

  private DraftingException notTraced(Entry name) {
    return name.fault("no points are traced for this piece")
        .accepted(String.join(", ", byPiece.keySet()));
  }

  private List<Stroke> strokes(String piece) {
    used.add(piece);
    return Objects.requireNonNull(byPiece.get(piece), piece);
  }

  /** Another piece that was read before, with the lines that were traced for this one. */
  private Tracing withLines(Fields fields, String piece, Entry like) {
    for (String other : List.of("traced", "edges", "again")) {
      fields
          .find(other)
          .ifPresent(
              entry -> {
                throw entry
                    .fault("a piece like another one is traced as that is")
                    .accepted("\"" + other + "\" left out, or \"like\" left out");
              });
    }
    Tracing other = done.get(like.name());
    if (other == null) {
      throw like.fault("no such piece is described before this one")
          .accepted(done.isEmpty() ? "\"like\" left out" : String.join(", ", done.keySet()));
    }
    List<Stroke> lines = strokes(piece);
    try {
      return withLines(other, piece, lines);
    } catch (DraftingException e) {
      throw e.at(Stroke.lines(lines));
    }
  }

  private static Tracing withLines(Tracing other, String piece, List<Stroke> lines) {
    Tracing tracing = other;
    Set<String> own = new HashSet<>();
    for (Stroke line : lines) {
      if (own.add(line.edge())) {
        tracing = tracing.withLine(piece, traced(line));
      } else {
        List<TracedEdge> edges = new ArrayList<>(tracing.edges());
        edges.add(traced(line));
        tracing = Tracing.of(piece, tracing.extent(), edges);
      }
    }
    return tracing;
  }

  private static TracedEdge traced(Stroke stroke) {
    return TracedEdge.of(stroke.edge(), stroke.line());
  }

  /** Traced once, or several times and laid on each other. */
  private Tracing traced(Fields fields, String piece) {
    Extent extent = fields.get("traced").choice("way of tracing", EXTENTS);
    Tracing first = once(fields, piece, extent, strokes(piece));
    Optional<Entry> again = fields.find("again");
    if (again.isEmpty()) {
      return first;
    }
    List<Tracing> more = new ArrayList<>();
    for (Entry name : again.get().list(1, MOST_TRACINGS)) {
      if (!byPiece.containsKey(name.name()) || used.contains(name.name())) {
        throw notTraced(name);
      }
      more.add(once(fields, piece, extent, strokes(name.name())));
    }
    RepeatedTracing repeated =
        again.get().placed(() -> RepeatedTracing.of(first, more.toArray(Tracing[]::new)));
    findings.addAll(repeated.findings());
    return repeated.together();
  }

  private static Tracing once(Fields fields, String piece, Extent extent, List<Stroke> strokes) {
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
        return Tracing.of(piece, extent, strokes.stream().map(TracingReader::traced).toList());
      }
      return named(fields, found(piece, extent, strokes));
    } catch (DraftingException e) {
      throw e.at(Stroke.lines(strokes));
    }
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

  /** Refuses what was traced and belongs to no piece. */
  void refuseUnused() {
    for (Stroke stroke : strokes) {
      if (!used.contains(stroke.piece())) {
        throw DraftingException.of("the piece is not described in garment.json")
            .at(stroke.where() + ", field piece")
            .value(stroke.piece())
            .accepted(String.join(", ", done.keySet()));
      }
    }
  }
}
