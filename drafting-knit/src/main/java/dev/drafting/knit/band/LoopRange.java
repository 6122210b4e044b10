package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.Serializable;
import java.util.Objects;

/**
 * The loops, from the shortest to the longest, that do what a strip is meant to do.
 *
 * <pre>{@code
 * new LoopRange(Length.mm(480), Length.mm(520)).margin(Length.mm(490));  // => 10 mm
 * }</pre>
 *
 * @param shortest from seam to seam, without allowances
 * @param longest from seam to seam, without allowances
 * @since 0.1
 */
@Stable
public record LoopRange(Length shortest, Length longest) implements Serializable {

  /**
   * Refuses nulls.
   *
   * @param shortest from seam to seam, without allowances
   * @param longest from seam to seam, without allowances
   */
  public LoopRange {
    Objects.requireNonNull(shortest, "shortest");
    Objects.requireNonNull(longest, "longest");
  }

  /**
   * The loop halfway between the two, which forgives most either way.
   *
   * @return a loop from seam to seam, without allowances
   */
  public Length middle() {
    return shortest.plus(longest).dividedBy(2);
  }

  /**
   * Tells whether a loop is one of them; both ends are.
   *
   * @param loop from seam to seam, without allowances
   * @return true from the shortest to the longest
   */
  public boolean contains(Length loop) {
    return loop.compareTo(shortest) >= 0 && loop.compareTo(longest) <= 0;
  }

  /**
   * How far a loop is from the nearest end.
   *
   * @param loop from seam to seam, without allowances
   * @return positive inside: what it may still be wrong by; negative outside: what it is too short
   *     or too long by
   */
  public Length margin(Length loop) {
    return loop.minus(shortest).min(longest.minus(loop));
  }

  @Override
  public String toString() {
    return Wording.range(shortest, longest);
  }
}
