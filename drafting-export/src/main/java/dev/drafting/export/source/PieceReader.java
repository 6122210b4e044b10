package dev.drafting.export.source;

import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** Reads how the pieces were traced and how often they are cut, and finds their points. */
final class PieceReader {
  private static final int MOST_PIECES = 50;
  private static final int MOST_TIMES = 20;
  private static final Map<String, IntFunction<Cutting>> CUTTINGS = cuttings();

  private PieceReader() {}

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

  static List<Source> read(Entry list, TracingReader tracings) {
    Unique<Source> pieces = new Unique<>("piece");
    for (Entry entry : list.list(1, MOST_PIECES)) {
      Fields fields =
          entry.fields(
              "name",
              "traced",
              "edges",
              "again",
              "like",
              "outside",
              "grown",
              "cut",
              "times",
              "cloth",
              "straight",
              "curved",
              "pointed");
      Entry name = fields.get("name");
      pieces.put(entry, name.name(), source(fields, name, tracings));
    }
    tracings.refuseUnused();
    return List.copyOf(pieces.all().values());
  }

  private static Source source(Fields fields, Entry name, TracingReader tracings) {
    Tracing tracing = tracings.read(fields, name);
    int times = fields.or("times", 1, e -> e.count(1, MOST_TIMES));
    Cutting cutting = fields.get("cut").choice("way of cutting", CUTTINGS).apply(times);
    String cloth = fields.or("cloth", "body", Entry::name);
    Shape shape = Shape.read(fields, tracing.edges().stream().map(TracedEdge::name).toList());
    return new Source(
        fields.object(), tracing, shape, cutting, cloth, tracings.lines(tracing.piece()));
  }
}
