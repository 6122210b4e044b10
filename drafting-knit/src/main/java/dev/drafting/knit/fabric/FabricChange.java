package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * From the fabric of a garment that fits to another: how wide the garment has to be in the new one
 * to fit alike, and what becomes of its pattern.
 *
 * <p>A garment that is smaller than its wearer uses a share of its fabric's stretch: {@code share =
 * (body / garment - 1) / stretch}. The same share is used of the new fabric: {@code body / (1 +
 * share x stretch)}, as far as that fabric's recovery allows. A garment that is larger than its
 * wearer keeps its ease, whatever the fabrics give. Without the wearer's girth the share cannot be
 * known, and there are bounds only.
 *
 * <p>The change goes in at the side and underarm seams and fades to nothing at the shoulder;
 * shoulders, neck and straps stay, and so do the lengths of joined edges against each other. A
 * sleeve follows its armhole.
 *
 * <pre>{@code
 * FabricChange change = FabricChange.of(Fabric.of("old jersey", Structure.JERSEY, 0.60), Fabric.of("new jersey", Structure.JERSEY, 0.35).withRecovery(0.96))
 *     .withGirth(Length.cm(92), Length.cm(84));
 * Wording.percent(change.shareUsed().getAsDouble());  // => 15.9 %
 * change.girth().get().text(LengthUnit.CM, 3);  // => 87.158 cm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class FabricChange implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Original garment;
  private final Fabric candidate;
  private final @Nullable Length body;

  private FabricChange(Original garment, Fabric candidate, @Nullable Length body) {
    this.garment = Objects.requireNonNull(garment, "garment");
    this.candidate = Objects.requireNonNull(candidate, "candidate");
    this.body = body;
  }

  /**
   * The change from one fabric to another.
   *
   * @param original what the garment that fits is made of
   * @param candidate what it is to be made of
   * @return the change, with no girth known
   */
  public static FabricChange of(Fabric original, Fabric candidate) {
    return of(Original.of(original), candidate);
  }

  /**
   * The change of a garment to another fabric.
   *
   * @param garment the garment that fits
   * @param candidate what it is to be made of
   * @return the change, with the wearer's girth not known
   */
  public static FabricChange of(Original garment, Fabric candidate) {
    return new FabricChange(garment, candidate, null);
  }

  /**
   * The same change for a garment whose girth is known and whose wearer's is not.
   *
   * @param ofGarment the girth of the garment that fits, lying flat and at rest, all round; over
   *     nothing
   * @return the change, which gives bounds
   * @throws DraftingException if the girth is nothing
   */
  public FabricChange withGarment(Length ofGarment) {
    return new FabricChange(garment.withGirth(ofGarment), candidate, null);
  }

  /**
   * The same change for a garment and a wearer whose girths are known.
   *
   * @param ofBody the wearer's girth, over nothing
   * @param ofGarment the girth of the garment that fits, lying flat and at rest, all round at the
   *     same height; over nothing
   * @return the change, which gives the girth in the new fabric
   * @throws DraftingException if a girth is nothing
   */
  public FabricChange withGirth(Length ofBody, Length ofGarment) {
    Ease ease = Ease.of(ofBody, ofGarment);
    return new FabricChange(garment.withGirth(ease.garment()), candidate, ease.body());
  }

  /**
   * The two fabrics beside each other.
   *
   * @return the comparison
   */
  public FabricComparison comparison() {
    return FabricComparison.of(original(), candidate);
  }

  /**
   * The garment that fits.
   *
   * @return the garment
   */
  public Original garment() {
    return garment;
  }

  Fabric original() {
    return garment.fabric();
  }

  /**
   * What it is to be made of.
   *
   * @return the new fabric
   */
  public Fabric candidate() {
    return candidate;
  }

  /**
   * The garment that fits on its wearer.
   *
   * @return the ease, or empty when one of the girths is not known
   */
  public Optional<Ease> before() {
    Length wearer = body;
    return wearer == null ? Optional.empty() : garment.girth().map(girth -> Ease.of(wearer, girth));
  }

  /**
   * The garment in the new fabric on its wearer.
   *
   * @return the ease, or empty when one of the girths is not known
   */
  public Optional<Ease> after() {
    Length wearer = body;
    return wearer == null ? Optional.empty() : girth().map(girth -> Ease.of(wearer, girth));
  }

  /**
   * The share of the original's stretch that is used in wear.
   *
   * @return 0 for a garment that is larger than its wearer; empty when a girth is not known
   */
  public OptionalDouble shareUsed() {
    return before().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(before().get().shareOfStretch(original()));
  }

  /**
   * The finished girth in the new fabric.
   *
   * @return that of the garment that fits if it is larger than its wearer; empty when a girth is
   *     not known
   */
  public Optional<Length> girth() {
    return before().map(ease -> WornStretch.girth(ease, original(), candidate));
  }

  /**
   * How much wider the garment has to be.
   *
   * @return negative for a narrower garment; empty when a girth is not known
   */
  public Optional<Length> difference() {
    return before().flatMap(ease -> girth().map(girth -> girth.minus(ease.garment())));
  }

  /**
   * Between what the girth in the new fabric lies when the wearer's is not known: from a garment
   * that is not stretched in wear to one that uses a quarter of its fabric's stretch, which is as
   * much as a close fit uses (common practice).
   *
   * @return the bounds, or empty when the garment's girth is not known
   */
  public Optional<GirthBounds> bounds() {
    return garment.girth().map(girth -> WornStretch.bounds(girth, original(), candidate));
  }

  /**
   * The pattern in the new fabric, its joined edges still matched.
   *
   * @param pattern that of the garment that fits
   * @return the same pattern where nothing is to be changed or a girth is not known
   * @throws DraftingException if the girth changes and the pattern has no seam to take it
   */
  public Pattern applyTo(Pattern pattern) {
    return before()
        .flatMap(
            ease ->
                difference()
                    .filter(difference -> !difference.isZero())
                    .map(d -> new SideChange(pattern, garment).by(d, ease.garment())))
        .orElse(pattern);
  }

  /**
   * What is to be known about the change: fabrics that do not suit, what cannot be known, a cap by
   * the recovery, a length that will draw up, pressure like a medical garment's.
   *
   * @return findings with the new fabric as their place
   */
  public List<Finding> findings() {
    return ChangeFindings.of(this);
  }

  /**
   * What was done to the pattern, in figures.
   *
   * @return sentences, at least one
   */
  public List<String> explanation() {
    return ChangeWords.of(this);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Original garment, Fabric candidate, @Nullable Length body)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      @Nullable Length checked = body == null ? null : Ease.of(body, body).body();
      return new FabricChange(garment, candidate, checked);
    }
  }

  private Object writeReplace() {
    return new Kept(garment, candidate, body);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a change of fabric is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FabricChange
        && ((FabricChange) other).garment.equals(garment)
        && ((FabricChange) other).candidate.equals(candidate)
        && Objects.equals(((FabricChange) other).body, body);
  }

  @Override
  public int hashCode() {
    return Objects.hash(garment, candidate, body);
  }

  /** What was done, in figures. */
  @Override
  public String toString() {
    return original().name() + " to " + candidate().name() + ": " + String.join(" ", explanation());
  }
}
