package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The sizes of a garment in each other: the finished edges of every piece in all sizes, laid on one
 * origin, each size with a dash of its own and named at its outermost corner. Under every piece
 * stands which dash is which size; there are six, and after the sixth size they begin again.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * NestedDrawing.of("top", Map.of("M", top)).title();  // => top
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class NestedDrawing {
  private static final Length GAP = Length.mm(60);
  private static final Length HEADING = Length.mm(7);
  private static final Length LETTERS = Length.mm(4);
  private static final double ROW = 8;
  private static final double BESIDE_SAMPLE = 28;

  private NestedDrawing() {}

  /**
   * Draws a run of sizes.
   *
   * @param title what garment it is
   * @param sizes the patterns by the names of their sizes in their order, which have pieces of the
   *     same names
   * @return one group for each piece
   */
  public static Drawing of(String title, Map<String, Pattern> sizes) {
    Map<String, Map<String, Piece>> pieces = new LinkedHashMap<>();
    Map<String, StrokeStyle> lines = new LinkedHashMap<>();
    sizes.forEach(
        (size, pattern) -> {
          lines.put(size, StrokeStyle.ofSize(lines.size()));
          for (Piece piece : pattern.pieces()) {
            pieces.computeIfAbsent(piece.name(), name -> new LinkedHashMap<>()).put(size, piece);
          }
        });
    List<Group> groups = new ArrayList<>();
    pieces.forEach((name, inSizes) -> groups.add(group(name, inSizes, lines)));
    return Drawing.sideBySide(title, groups, GAP);
  }

  private static Group group(
      String name, Map<String, Piece> sizes, Map<String, StrokeStyle> lines) {
    List<Element> elements = new ArrayList<>();
    sizes.forEach((size, piece) -> add(elements, size, piece, lines));
    fold(sizes.values()).ifPresent(elements::add);
    double y = new Group(name, elements).bounds().minY() - 2 * HEADING.toMm();
    elements.add(Label.of(name, new Point(0, y), HEADING));
    for (String size : sizes.keySet()) {
      y -= ROW;
      Point from = new Point(0, y + LETTERS.toMm() / 2);
      elements.addAll(Legend.sample(line(lines, size), from));
      elements.add(Label.of(size, new Point(BESIDE_SAMPLE, y), LETTERS));
    }
    return new Group(name, elements);
  }

  private static StrokeStyle line(Map<String, StrokeStyle> lines, String size) {
    return lines.getOrDefault(size, StrokeStyle.SIZE_1);
  }

  private static void add(
      List<Element> elements, String size, Piece piece, Map<String, StrokeStyle> lines) {
    Box box = piece.outline().bounds();
    Point outermost = new Point(box.minX(), box.minY());
    for (Edge edge : piece.edges()) {
      if (!edge.isOnFold()) {
        elements.add(new Stroke(line(lines, size), edge.name() + " " + size, edge.curve()));
      }
      Point corner = edge.curve().start();
      boolean farther = corner.x() - corner.y() / 4 > outermost.x() - outermost.y() / 4;
      outermost = farther ? corner : outermost;
    }
    Point beside = new Point(outermost.x(), outermost.y() - 1.5 * LETTERS.toMm());
    elements.add(Label.of(size, beside, LETTERS).withAnchor(Anchor.MIDDLE));
  }

  /** All sizes share the fold; drawn over each other, its dashes would fill up. */
  private static Optional<Stroke> fold(Collection<Piece> sizes) {
    return sizes.stream()
        .flatMap(piece -> piece.edges().stream())
        .filter(Edge::isOnFold)
        .map(edge -> edge.curve().bounds())
        .reduce(Box::union)
        .map(box -> Curve.line(new Point(0, box.maxY()), new Point(0, box.minY())))
        .map(line -> new Stroke(StrokeStyle.FOLD, "fold", line));
  }
}
