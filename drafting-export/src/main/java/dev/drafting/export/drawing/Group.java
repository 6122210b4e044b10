package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Transform;
import java.io.Serializable;
import java.util.List;

/**
 * The lines and texts of one piece.
 *
 * <pre>{@code
 * new Group("front", List.of(new Stroke(StrokeStyle.CUT_LINE, "hem", Curve.line(new Point(0, 0), new Point(230, 0)))));  // => front (1 lines, 0 texts)
 * }</pre>
 *
 * @param name the name of the piece
 * @param elements at least one, from the lowest to the topmost
 * @since 0.1
 */
@Stable
public record Group(String name, List<Element> elements) implements Serializable {
  /**
   * Checks that the group is not empty.
   *
   * @param name the name of the piece
   * @param elements at least one, from the lowest to the topmost
   * @throws DraftingException if there are no elements
   */
  public Group {
    name = Lettering.oneLine(name);
    elements = List.copyOf(elements);
    if (elements.isEmpty()) {
      throw DraftingException.of("a group of a drawing is empty").at(name).accepted("one element");
    }
  }

  /**
   * The lines of this group.
   *
   * @return the strokes in drawing order
   */
  public List<Stroke> strokes() {
    return elements.stream().filter(Stroke.class::isInstance).map(Stroke.class::cast).toList();
  }

  /**
   * The lines of one style.
   *
   * @param style what the lines mean
   * @return the strokes in drawing order
   */
  public List<Stroke> strokes(StrokeStyle style) {
    return strokes().stream().filter(s -> s.style() == style).toList();
  }

  /**
   * The texts of this group.
   *
   * @return the labels in drawing order
   */
  public List<Label> labels() {
    return elements.stream().filter(Label.class::isInstance).map(Label.class::cast).toList();
  }

  /**
   * This group moved, turned, mirrored or scaled.
   *
   * @param transform where the points go
   * @return the mapped group
   */
  public Group map(Transform transform) {
    return new Group(name, elements.stream().map(e -> e.map(transform)).toList());
  }

  /**
   * The room this group takes, line widths left out.
   *
   * @return the smallest upright box around it, in mm
   */
  public Box bounds() {
    return elements.stream().map(Element::bounds).reduce(Box::union).orElseThrow();
  }

  @Override
  public String toString() {
    return name + " (" + strokes().size() + " lines, " + labels().size() + " texts)";
  }
}
