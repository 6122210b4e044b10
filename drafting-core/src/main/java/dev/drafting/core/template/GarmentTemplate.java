package dev.drafting.core.template;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Pattern;
import java.io.Serializable;
import java.util.List;

/**
 * A garment that is drawn from a few dimensions of the finished garment, lying flat or all round. A
 * template of one's own implements this interface; what is built in is used in the same way.
 *
 * <p>{@link #draw} is a pure function: the same dimensions give the same pattern. It is called with
 * dimensions that are within their bounds and {@linkplain #check go together}; {@link #pattern}
 * sees to that.
 *
 * <pre>{@code
 * GarmentTemplate skirt = Templates.installed().get("straight-skirt");
 * skirt.about();  // => a straight skirt to pull on, with elastic in a casing
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public interface GarmentTemplate extends Serializable {

  /**
   * The name of the template, the same in all versions.
   *
   * @return words such as {@code "sleeveless-top"}
   */
  String id();

  /**
   * What garment it is, in a sentence.
   *
   * @return a sentence without a full stop
   */
  String about();

  /**
   * The dimensions that it takes.
   *
   * @return one or more, each with a name of its own
   */
  List<Dimension> dimensions();

  /**
   * What can be chosen beside the dimensions, the usual option first.
   *
   * @return none unless the template has choices
   */
  default List<Choice> choices() {
    return List.of();
  }

  /**
   * Tells whether the whole garment grows evenly with its dimensions: all of them larger by one
   * factor, every finished edge larger by that factor. Allowances and widths of finishes are no
   * part of it.
   *
   * @return true unless the template says otherwise, because parts of it, such as a pocket or a
   *     strap, are the same in all sizes
   */
  default boolean growsEvenly() {
    return true;
  }

  /**
   * Refuses dimensions that are each within their bounds and still do not go together, such as
   * shoulders that reach beyond the underarm. The usual dimensions go together, also with any one
   * of them at its bounds.
   *
   * @param given every dimension and choice, each within its bounds
   * @throws DraftingException if they do not go together; its place is one of the dimensions, and
   *     it says what would be accepted
   */
  default void check(Dimensions given) {}

  /**
   * Draws the garment.
   *
   * @param given every dimension and choice, each within its bounds and going together
   * @return the pattern
   * @throws DraftingException never, for a template that keeps its contract
   */
  Pattern draw(Dimensions given);

  /**
   * Draws the garment from dimensions that are looked at first.
   *
   * @param given dimensions and choices; what is missing is taken as usual
   * @return the pattern
   * @throws DraftingException if a dimension is unknown or out of bounds, or they do not go
   *     together
   */
  default Pattern pattern(Dimensions given) {
    try {
      Dimensions all = given.completed(this);
      check(all);
      return draw(all);
    } catch (DraftingException e) {
      throw e.at(id());
    }
  }

  /**
   * Draws the garment as usual.
   *
   * @return the pattern of the usual dimensions
   * @throws DraftingException never, for a template that keeps its contract
   */
  default Pattern pattern() {
    return pattern(Dimensions.of());
  }
}
