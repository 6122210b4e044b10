package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Piece;
import dev.drafting.knit.Draft;
import dev.drafting.knit.sewing.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * A small picture of one step of making up: the pieces it needs, opened out, with the edges at
 * which the work is done drawn heavily; or a scene, where no piece is worked on.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * StepDrawing.of(top, top.orderOfWork().get(0)).title();  // => Prewash
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class StepDrawing {
  private static final Length GAP = Length.mm(60);

  /** More pieces than these would be too small to be told apart. */
  private static final int MOST = 12;

  private static final double LETTERS_TO_HEIGHT = 0.1;

  private StepDrawing() {}

  /**
   * Draws a step.
   *
   * @param draft the garment
   * @param step one of its order of work
   * @return one group a piece, or a scene for a step that is not about edges
   */
  public static Drawing of(Draft draft, Step step) {
    List<String> names = step.edges().stream().map(EdgeRef::piece).distinct().toList();
    if (names.isEmpty()) {
      return Drawing.of(step.title(), SceneDrawing.of(step.scene()));
    }
    List<Piece> pieces = names.stream().limit(MOST).map(draft.pattern()::piece).toList();
    double tallest =
        pieces.stream()
            .mapToDouble(piece -> piece.outline().bounds().height().toMm())
            .max()
            .orElse(0);
    List<Group> groups =
        pieces.stream().map(piece -> group(piece, step, tallest * LETTERS_TO_HEIGHT)).toList();
    Drawing drawn = Drawing.sideBySide(step.title(), groups, GAP);
    return names.size() > MOST ? drawn.with(more(drawn, names.size() - MOST, tallest)) : drawn;
  }

  private static Group more(Drawing drawn, int count, double tallest) {
    Length letters = Length.mm(tallest * LETTERS_TO_HEIGHT);
    Point beside = new Point(drawn.bounds().maxX() + GAP.toMm(), 0);
    return new Group("more", List.of(Label.of("and " + count + " more", beside, letters)));
  }

  private static Group group(Piece piece, Step step, double letters) {
    List<Element> elements = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      boolean worked = step.edges().contains(new EdgeRef(piece.name(), edge.name()));
      StrokeStyle style = worked ? StrokeStyle.WORKED : StrokeStyle.FRAME;
      if (!edge.isOnFold()) {
        elements.add(new Stroke(style, edge.name(), edge.curve()));
        if (piece.cutting().kind() == Cutting.Kind.ON_FOLD) {
          Curve otherHalf = edge.curve().mirrored();
          elements.add(new Stroke(style, edge.name(), otherHalf));
        }
      }
    }
    Box box = new Group(piece.name(), elements).bounds();
    Point middle = new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    elements.add(Label.of(piece.name(), middle, Length.mm(letters)).withAnchor(Anchor.MIDDLE));
    return new Group(piece.name(), elements);
  }
}
