package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.Serializable;

/**
 * What a cloth loses in the wash, each way: (before - after) / before.
 *
 * <p>To wash to size a length is cut wanted / (1 - loss) long. Not wanted x (1 + loss), which comes
 * out too short.
 *
 * <pre>{@code
 * Shrinkage loss = Shrinkage.measured(Length.cm(50), Length.cm(48.5), Length.cm(47.5));
 * loss;  // => 3 % across and 5 % along
 * loss.beforeWashingAlong(Length.cm(100)).toCm();  // => 105.26315789473685
 * }</pre>
 *
 * @param across the loss across, a share from 0 to 0.3
 * @param along the loss along, a share from 0 to 0.3
 * @since 0.1
 */
@Stable
public record Shrinkage(double across, double along) implements Serializable {
  private static final double MOST = 0.3;

  /** None at all. */
  public static final Shrinkage NONE = new Shrinkage(0, 0);

  /**
   * Refuses what is out of range.
   *
   * @param across the loss across, a share from 0 to 0.3
   * @param along the loss along, a share from 0 to 0.3
   * @throws DraftingException if one of them is out of range
   */
  public Shrinkage {
    across = checked("across", across);
    along = checked("along", along);
  }

  private static double checked(String way, double loss) {
    if (!(loss >= 0 && loss <= MOST)) {
      throw DraftingException.of("the shrinkage " + way + " is out of range")
          .value(loss)
          .accepted("a share from 0 to " + MOST + ", such as 0.05 for 5 %");
    }
    return loss + 0.0;
  }

  /**
   * The loss of a swatch that was washed as the garment will be: 50 cm square, marked 5 cm from its
   * edges (trade articles, after ISO 5077 and AATCC 135).
   *
   * @param before between the marks before washing, either way
   * @param across between the marks across after washing
   * @param along between the marks along after washing
   * @return the loss each way
   * @throws DraftingException if the swatch has no length, grew, or lost more than 30 %
   */
  public static Shrinkage measured(Length before, Length across, Length along) {
    return new Shrinkage(loss(before, across), loss(before, along));
  }

  private static double loss(Length before, Length after) {
    if (!before.isPositive() || after.compareTo(before) > 0) {
      throw DraftingException.of("a washed swatch has no length or is longer than before")
          .value(before + " before, " + after + " after")
          .accepted("a length over 0, and one that is no longer after the wash");
    }
    return before.minus(after).ratioTo(before);
  }

  /**
   * Tells whether nothing is lost.
   *
   * @return true if both losses are 0
   */
  public boolean isNone() {
    return across == 0 && along == 0;
  }

  /**
   * How much larger than wanted a length across is cut.
   *
   * @return 1 / (1 - loss)
   */
  public double factorAcross() {
    return 1 / (1 - across);
  }

  /**
   * How much larger than wanted a length along is cut.
   *
   * @return 1 / (1 - loss)
   */
  public double factorAlong() {
    return 1 / (1 - along);
  }

  /**
   * How much unwashed cloth makes a length across.
   *
   * @param wanted the length after washing
   * @return the length before washing
   */
  public Length beforeWashingAcross(Length wanted) {
    return wanted.dividedBy(1 - across);
  }

  /**
   * How much unwashed cloth makes a length along.
   *
   * @param wanted the length after washing
   * @return the length before washing
   */
  public Length beforeWashingAlong(Length wanted) {
    return wanted.dividedBy(1 - along);
  }

  @Override
  public String toString() {
    return Wording.percent(across) + " across and " + Wording.percent(along) + " along";
  }
}
