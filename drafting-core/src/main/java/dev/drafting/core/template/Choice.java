package dev.drafting.core.template;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import java.io.Serializable;
import java.util.List;

/**
 * Something that can be chosen of a template.
 *
 * <pre>{@code
 * new Choice("neck", List.of("round", "v"));  // => Choice[name=neck, options=[round, v]]
 * }</pre>
 *
 * @param name what is chosen: "shape"
 * @param options what there is to choose from, the usual one first
 * @since 0.1
 */
@Experimental
public record Choice(String name, List<String> options) implements Serializable {

  /**
   * Copies the options.
   *
   * @param name what is chosen
   * @param options one or more
   */
  public Choice {
    options = List.copyOf(options);
    if (name.isBlank() || options.isEmpty()) {
      throw DraftingException.of("a choice has no name or no options")
          .value(name + options)
          .accepted("a name and one option or more");
    }
  }

  void check(String option) {
    if (!options.contains(option)) {
      throw DraftingException.of("there is no such option")
          .at(name)
          .value(option)
          .accepted(String.join(", ", options));
    }
  }
}
