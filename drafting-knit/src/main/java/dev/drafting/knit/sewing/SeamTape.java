package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A tape or clear elastic that is sewn into a seam so that it keeps its length (extension leaflets,
 * from memory; common practice).
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.withSewing(SewingChoices.of().withTape("shoulder")).sewing().tapes().get(0).seam();  // => shoulder
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class SeamTape implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Length WIDTH = Length.mm(6);

  private final String seam;
  private final Length length;
  private final int times;

  private SeamTape(String seam, Length length, int times) {
    this.seam = seam;
    this.length = length;
    this.times = times;
  }

  static SeamTape of(SewnLine seam) {
    return new SeamTape(seam.name(), seam.length(), seam.times());
  }

  /**
   * The seam that it goes into.
   *
   * @return its name
   */
  public String seam() {
    return seam;
  }

  /**
   * How long it is cut: as long as the seam in the pattern.
   *
   * @return the length of one
   */
  public Length length() {
    return length;
  }

  /**
   * How wide it is.
   *
   * @return 6 mm, so that an overlock covers it
   */
  public Length width() {
    return WIDTH;
  }

  /**
   * How many are cut.
   *
   * @return 1 or 2
   */
  public int times() {
    return times;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String seam, Length length, int times) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (times < 1 || length.isNegative()) {
        throw DraftingException.of("a seam is never taped, or shorter than nothing")
            .at(seam)
            .value(times + " times " + length)
            .accepted("once or more, 0 mm or more");
      }
      return new SeamTape(
          Objects.requireNonNull(seam, "seam"), Objects.requireNonNull(length, "length"), times);
    }
  }

  private Object writeReplace() {
    return new Kept(seam, length, times);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a seam tape is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SeamTape
        && ((SeamTape) other).seam.equals(seam)
        && ((SeamTape) other).length.equals(length)
        && ((SeamTape) other).times == times;
  }

  @Override
  public int hashCode() {
    return Objects.hash(seam, length, times);
  }

  @Override
  public String toString() {
    return times + " of " + Wording.amount(length) + " for the " + seam;
  }
}
