package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import java.io.Serializable;
import java.util.Map;

/**
 * How an edge is finished: sewn to another, turned up, bound, left raw. Anybody may write another
 * one: give it an id of its own, hand out its settings by name, and let the profile follow from the
 * settings alone. Finishes are immutable values with equals and hashCode.
 *
 * <pre>{@code
 * Finish seam = SeamFinish.of(Length.mm(7));
 * seam.settings();  // => {allowance=7 mm}
 * seam.profile();  // => CUT +7 mm, JOIN 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public interface Finish extends Serializable {

  /**
   * The stable name of this sort of finish, under which it is stored.
   *
   * @return for instance "seam"
   */
  String id();

  /**
   * What the maker chose, by name; lengths with their unit.
   *
   * @return an unmodifiable map in a fixed order
   */
  Map<String, String> settings();

  /**
   * The lines that this finish needs along its edge.
   *
   * @return always the same for the same settings
   */
  Profile profile();

  /**
   * The finish in the words of the trade, with its measures.
   *
   * @return for instance "seam with 7 mm allowance"
   */
  String describe();
}
