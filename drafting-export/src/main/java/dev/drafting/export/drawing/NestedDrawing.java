package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sizes of a garment in each other: the finished edges of every piece in all sizes, laid on one
 * origin, each size with a dash of its own and named where the corners of sizes lie farthest apart.
 * Under every piece stands which dash is which size; there are six, and after the sixth size they
 * begin again.
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
    pieces.forEach((name, inSizes) -> groups.add(NestedPiece.of(name, inSizes, lines)));
    return Drawing.sideBySide(title, groups, GAP);
  }
}
