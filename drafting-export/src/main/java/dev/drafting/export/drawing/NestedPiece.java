package dev.drafting.export.drawing;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One piece in all sizes, which are named where their corners lie farthest apart. */
final class NestedPiece {
  private static final Length HEADING = Length.mm(7);
  private static final Length LETTERS = Length.mm(4);
  private static final double ROW = 8;
  private static final double BESIDE_SAMPLE = 28;

  private final String name;
  private final Map<String, Piece> sizes;
  private final Map<String, StrokeStyle> lines;
  private final List<Element> elements = new ArrayList<>();

  private NestedPiece(String name, Map<String, Piece> sizes, Map<String, StrokeStyle> lines) {
    this.name = name;
    this.sizes = sizes;
    this.lines = lines;
  }

  static Group of(String name, Map<String, Piece> sizes, Map<String, StrokeStyle> lines) {
    NestedPiece nested = new NestedPiece(name, sizes, lines);
    sizes.forEach(nested::draw);
    nested.fold().ifPresent(nested.elements::add);
    nested.explain(nested.bounds().minY() - 2 * HEADING.toMm());
    nested.label();
    return new Group(name, nested.elements);
  }

  private Box bounds() {
    return new Group(name, elements).bounds();
  }

  private void draw(String size, Piece piece) {
    for (Edge edge : piece.edges()) {
      if (!edge.isOnFold()) {
        elements.add(new Stroke(line(size), edge.name() + " " + size, edge.curve()));
      }
    }
  }

  private StrokeStyle line(String size) {
    return lines.getOrDefault(size, StrokeStyle.SIZE_1);
  }

  /** All sizes share the fold; drawn over each other, its dashes would fill up. */
  private Optional<Stroke> fold() {
    return sizes.values().stream()
        .flatMap(piece -> piece.edges().stream())
        .filter(Edge::isOnFold)
        .map(edge -> edge.curve().bounds())
        .reduce(Box::union)
        .map(box -> Curve.line(new Point(0, box.maxY()), new Point(0, box.minY())))
        .map(line -> new Stroke(StrokeStyle.FOLD, "fold", line));
  }

  /** The name of the piece, and under it which dash is which size. */
  private void explain(double from) {
    double y = from;
    elements.add(Label.of(name, new Point(0, y), HEADING));
    for (String size : sizes.keySet()) {
      y -= ROW;
      elements.addAll(Legend.sample(line(size), new Point(0, y + LETTERS.toMm() / 2)));
      elements.add(Label.of(size, new Point(BESIDE_SAMPLE, y), LETTERS));
    }
  }

  private void label() {
    int corner = fan(List.copyOf(sizes.values()));
    Map<String, Point> corners = new LinkedHashMap<>();
    sizes.forEach((size, piece) -> corners.put(size, at(piece, corner)));
    elements.addAll(NameColumn.of(corners, LETTERS, elements));
  }

  /** The corner at which neighbouring sizes lie farthest apart; the lowest for one size alone. */
  private static int fan(List<Piece> pieces) {
    int corners = pieces.stream().mapToInt(piece -> piece.corners().size()).min().orElse(1);
    int best = 0;
    double widest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < corners; i++) {
      double apart = pieces.size() == 1 ? -at(pieces.get(0), i).y() : apart(pieces, i);
      if (apart > widest) {
        widest = apart;
        best = i;
      }
    }
    return best;
  }

  private static double apart(List<Piece> pieces, int corner) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < pieces.size(); i++) {
      Length apart = at(pieces.get(i), corner).distanceTo(at(pieces.get(i - 1), corner));
      least = Math.min(least, apart.toMm());
    }
    return least;
  }

  private static Point at(Piece piece, int corner) {
    return piece.corners().get(corner).at();
  }
}
