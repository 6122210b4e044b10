package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The garment that fits and is copied: what it is made of, how wide it is, and where its copy in
 * another fabric may be made wider or narrower.
 *
 * <pre>{@code
 * Original.of(Fabric.of("old jersey", Structure.JERSEY, 0.40)).withGirth(Length.cm(92));
 * // => of old jersey, which stretches 40 %; 92 cm round
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Original implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Fabric fabric;
  private final @Nullable Length girth;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> seams;

  private final boolean shoulders;

  private Original(Fabric fabric, @Nullable Length girth, List<String> seams, boolean shoulders) {
    this.fabric = fabric;
    this.girth = girth;
    this.seams = seams;
    this.shoulders = shoulders;
  }

  /**
   * A garment of this fabric.
   *
   * @param fabric what it is made of
   * @return the original; its girth is taken from its pattern where that is known
   */
  public static Original of(Fabric fabric) {
    return new Original(Objects.requireNonNull(fabric, "fabric"), null, List.of(), false);
  }

  /**
   * The same garment with its girth by the tape.
   *
   * @param allRound lying flat and at rest, over nothing
   * @return the original
   * @throws dev.drafting.core.finding.DraftingException if it is nothing
   */
  public Original withGirth(Length allRound) {
    return new Original(fabric, Ease.of(allRound, allRound).garment(), seams, shoulders);
  }

  /**
   * The same garment, whose copy changes at other seams.
   *
   * @param names the names of seams that run along the body or a sleeve; those whose names have
   *     "side" or "underarm" in them unless set
   * @return the original
   */
  public Original withSeams(String... names) {
    return new Original(fabric, girth, List.of(names), shoulders);
  }

  /**
   * The same garment, whose copy changes over its whole width: shoulders, neck and straps in
   * proportion.
   *
   * @return the original
   */
  public Original withShoulders() {
    return new Original(fabric, girth, seams, true);
  }

  /**
   * What it is made of.
   *
   * @return the fabric
   */
  public Fabric fabric() {
    return fabric;
  }

  /**
   * How wide it is.
   *
   * @return its girth by the tape, or empty if it was not measured
   */
  public Optional<Length> girth() {
    return Optional.ofNullable(girth);
  }

  /**
   * The seams at which its copy changes.
   *
   * @return their names; empty for those at the side and under the arm
   */
  public List<String> seams() {
    return seams;
  }

  /**
   * Tells whether the shoulders change too.
   *
   * @return false unless set
   */
  public boolean includesShoulders() {
    return shoulders;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Fabric fabric, @Nullable Length girth, List<String> seams, boolean shoulders)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Original original = of(fabric).withSeams(seams.toArray(String[]::new));
      original = girth == null ? original : original.withGirth(girth);
      return shoulders ? original.withShoulders() : original;
    }
  }

  private Object writeReplace() {
    return new Kept(fabric, girth, seams, shoulders);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an original is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Original
        && ((Original) other).fabric.equals(fabric)
        && Objects.equals(((Original) other).girth, girth)
        && ((Original) other).seams.equals(seams)
        && ((Original) other).shoulders == shoulders;
  }

  @Override
  public int hashCode() {
    return Objects.hash(fabric, girth, seams, shoulders);
  }

  @Override
  public String toString() {
    return "of "
        + fabric.name()
        + ", which stretches "
        + Wording.percent(fabric.stretchAcross())
        + girth().map(round -> "; " + Wording.amount(round) + " round").orElse("");
  }
}
