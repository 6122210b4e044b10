package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sizes of a garment in each other: the finished edges of every piece in all sizes, laid on one
 * origin, each size named at its outermost corner.
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

  private NestedDrawing() {}

  /**
   * Draws a run of sizes.
   *
   * @param title what garment it is
   * @param sizes the patterns by the names of their sizes, which have pieces of the same names
   * @return one group for each piece
   */
  public static Drawing of(String title, Map<String, Pattern> sizes) {
    Map<String, List<Element>> pieces = new LinkedHashMap<>();
    Map<String, Double> feet = new LinkedHashMap<>();
    for (Map.Entry<String, Pattern> size : sizes.entrySet()) {
      for (Piece piece : size.getValue().pieces()) {
        List<Element> elements = pieces.computeIfAbsent(piece.name(), name -> new ArrayList<>());
        add(elements, size.getKey(), piece);
        feet.merge(piece.name(), piece.outline().bounds().minY(), Math::min);
      }
    }
    List<Group> groups = new ArrayList<>();
    pieces.forEach(
        (name, elements) -> {
          double y = feet.getOrDefault(name, 0.0) - 3 * HEADING.toMm();
          elements.add(Label.of(name, new Point(0, y), HEADING));
          groups.add(new Group(name, elements));
        });
    return Drawing.sideBySide(title, groups, GAP);
  }

  private static void add(List<Element> elements, String size, Piece piece) {
    Box box = piece.outline().bounds();
    Point outermost = new Point(box.minX(), box.minY());
    for (Edge edge : piece.edges()) {
      StrokeStyle style = edge.isOnFold() ? StrokeStyle.FOLD : StrokeStyle.FINISHED_EDGE;
      elements.add(new Stroke(style, edge.name() + " " + size, edge.curve()));
      Point corner = edge.curve().start();
      boolean farther = corner.x() - corner.y() / 4 > outermost.x() - outermost.y() / 4;
      outermost = farther ? corner : outermost;
    }
    Point beside = new Point(outermost.x(), outermost.y() - 1.5 * LETTERS.toMm());
    elements.add(Label.of(size, beside, LETTERS).withAnchor(Anchor.MIDDLE));
  }
}
