package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** Reads how the pieces were traced and how often they are cut, and finds their points. */
final class PieceReader {
  private static final int MOST_PIECES = 50;
  private static final int MOST_TIMES = 20;
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
          entry.fields("name", "traced", "cut", "times", "cloth", "straight", "curved", "pointed");
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
    Shape shape = Shape.read(fields, strokes.stream().map(Stroke::edge).toList());
    String lines = Stroke.lines(strokes);
    Tracing tracing = tracing(name, extent, strokes);
    return new Source(fields.object(), tracing, shape, cutting, cloth, lines);
  }

  private static Tracing tracing(String piece, Extent extent, List<Stroke> strokes) {
    try {
      return Tracing.of(piece, extent, strokes.stream().map(PieceReader::traced).toList());
    } catch (DraftingException e) {
      throw e.at(Stroke.lines(strokes));
    }
  }

  private static TracedEdge traced(Stroke stroke) {
    List<Point> points = new ArrayList<>(stroke.points());
    for (int i = 0; i < stroke.points(); i++) {
      points.add(new Point(Length.cm(stroke.x(i)).toMm(), Length.cm(stroke.y(i)).toMm()));
    }
    return TracedEdge.of(stroke.edge(), points);
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
