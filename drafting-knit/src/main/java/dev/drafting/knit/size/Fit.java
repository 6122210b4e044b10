package dev.drafting.knit.size;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How close a garment lies on a body: an ease as a length, an ease as a share of the body, or the
 * share of the cloth's stretch that is used up when the garment is worn. The last one gives another
 * garment in every fabric, and the same feel.
 *
 * <pre>{@code
 * Fabric jersey = Fabric.of("jersey", Structure.JERSEY, 0.50);
 * Fit.ease(Length.cm(6)).garment(Length.cm(92), jersey);  // => 980 mm
 * Fit.ease(-0.05).garment(Length.cm(92), jersey);  // => 874 mm
 * Fit.stretchUsed(0.20).garment(Length.cm(92), jersey).text(LengthUnit.CM, 1);  // => 83.6 cm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Fit implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double LEAST_SHARE = -0.5;
  private static final double MOST_SHARE = 2;

  private final @Nullable Length ease;
  private final double share;
  private final boolean ofStretch;

  private Fit(@Nullable Length ease, double share, boolean ofStretch) {
    this.ease = ease;
    this.share = share + 0.0;
    this.ofStretch = ofStretch;
  }

  /**
   * An ease: the garment's girth less the body's.
   *
   * @param ease negative where the garment is smaller than the body
   * @return the fit
   */
  public static Fit ease(Length ease) {
    return new Fit(Objects.requireNonNull(ease, "ease"), 0, false);
  }

  /**
   * An ease as a share of the body's girth.
   *
   * @param share -0.5 to 2; -0.05 makes the garment 5 % smaller than the body
   * @return the fit
   * @throws DraftingException if the share is out of range
   */
  public static Fit ease(double share) {
    if (!(share >= LEAST_SHARE && share <= MOST_SHARE)) {
      throw DraftingException.of("the ease is out of range")
          .value(share)
          .accepted("a share of the body's girth from -0.5 to 2, such as 0.05 for 5 %");
    }
    return new Fit(null, share, false);
  }

  /**
   * A close fit: how much of the cloth's stretch is used up in wear. Vests use 10 to 20 %, a close
   * fit a quarter at most (common practice, no source).
   *
   * @param share 0 to 1
   * @return the fit
   * @throws DraftingException if the share is out of range
   */
  public static Fit stretchUsed(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw DraftingException.of("the share of the stretch used in wear is out of range")
          .value(share)
          .accepted("0 to 1");
    }
    return new Fit(null, share, true);
  }

  /**
   * The garment's girth.
   *
   * @param body the body's girth
   * @param fabric the cloth that lies round it
   * @return the finished girth
   * @throws DraftingException if nothing would be left of it
   */
  public Length garment(Length body, Fabric fabric) {
    if (ofStretch) {
      return Ease.girthFor(body, fabric, share);
    }
    Length garment = ease == null ? body.times(1 + share) : body.plus(ease);
    return checked(body, garment);
  }

  private Length checked(Length body, Length garment) {
    if (garment.isPositive()) {
      return garment;
    }
    throw DraftingException.of("so much negative ease leaves nothing of the garment")
        .value(this)
        .accepted("an ease over -" + Wording.amount(body));
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(@Nullable Length ease, double share, boolean ofStretch)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (ofStretch) {
        return Fit.stretchUsed(share);
      }
      return ease == null ? Fit.ease(share) : Fit.ease(ease);
    }
  }

  private Object writeReplace() {
    return new Kept(ease, share, ofStretch);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a fit is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Fit that
        && Objects.equals(that.ease, ease)
        && Double.compare(that.share, share) == 0
        && that.ofStretch == ofStretch;
  }

  @Override
  public int hashCode() {
    return Objects.hash(ease, share, ofStretch);
  }

  @Override
  public String toString() {
    if (ofStretch) {
      return Wording.percent(share) + " of the stretch used";
    }
    return "ease " + (ease == null ? Wording.percent(share) : Wording.amount(ease));
  }
}
