package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A garment's girth beside the body's: the ease, and how far the cloth is stretched in wear.
 *
 * <p>The two are not the same number. A garment 20 % smaller than the body is stretched by 25 %:
 * {@code body / garment - 1}, not {@code 1 - garment / body}.
 *
 * <pre>{@code
 * Ease ease = Ease.of(Length.cm(98), Length.cm(92));
 * ease;  // => 92 cm on 98 cm: ease -6.1 %, stretched 6.5 %
 * Wording.percent(ease.shareOfStretch(Fabric.of("jersey", Structure.JERSEY, 0.30)));  // => 21.7 %
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Ease implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Close-fitting garments use 0.10 to 0.25 of the stretch (common practice, no source). */
  private static final double COMFORTABLE_SHARE = WornStretch.CLOSE_SHARE;

  /**
   * Burn-scar pressure garments are finished at 80 % of the body's girth ("Stages in garment
   * construction", chapter of a hospital manual on pressure garments).
   */
  private static final double COMPRESSION = -0.20;

  private final Length body;
  private final Length garment;

  private Ease(Length body, Length garment) {
    this.body = body;
    this.garment = garment;
  }

  /**
   * The ease between two girths.
   *
   * @param body the wearer's girth, over nothing
   * @param garment the finished garment's girth at the same height, over nothing
   * @return the ease
   * @throws DraftingException if one of them is not over nothing
   */
  public static Ease of(Length body, Length garment) {
    girth("the body's girth", body);
    girth("the garment's girth", garment);
    return new Ease(body, garment);
  }

  private static void girth(String what, Length girth) {
    if (!girth.isPositive()) {
      throw DraftingException.of(what + " is nothing").value(girth).accepted("more than 0");
    }
  }

  Length body() {
    return body;
  }

  Length garment() {
    return garment;
  }

  /**
   * The ease as a share of the body's girth: (garment - body) / body.
   *
   * @return negative when the garment is smaller than the body
   */
  public double share() {
    return garment.minus(body).ratioTo(body);
  }

  /**
   * How far the cloth is stretched when the garment is worn: body / garment - 1, or nothing when it
   * hangs loose.
   *
   * @return a share from 0
   */
  public double extension() {
    return Math.max(0, body.ratioTo(garment) - 1);
  }

  /**
   * How much of a fabric's stretch is used up by wearing the garment.
   *
   * @param fabric the cloth that the garment is made of
   * @return 0 when loose, 1 when stretched as far as the gauge went, over 1 when it cannot be worn
   */
  public double shareOfStretch(Fabric fabric) {
    double extension = extension();
    return extension == 0 ? 0 : extension / fabric.stretchAcross();
  }

  /**
   * The girth at which a garment uses a share of a fabric's stretch: body / (1 + share x stretch).
   *
   * @param body the wearer's girth
   * @param fabric the cloth
   * @param share the share of its stretch used in wear, from 0 to 1
   * @return the finished girth
   * @throws DraftingException if the share is out of range
   */
  public static Length girthFor(Length body, Fabric fabric, double share) {
    if (!(share >= 0 && share <= 1)) {
      throw DraftingException.of("the share of the stretch used in wear is out of range")
          .value(share)
          .accepted("0 to 1");
    }
    return body.dividedBy(1 + share * fabric.stretchAcross());
  }

  /**
   * What will feel or wear badly in this fabric.
   *
   * @param fabric the cloth that the garment is made of
   * @param where what is measured, such as "chest"
   * @return findings with the fabric as their place
   */
  public List<Finding> findings(Fabric fabric, String where) {
    List<Finding> findings = new ArrayList<>();
    Place place = Place.fabric(fabric.name());
    double used = shareOfStretch(fabric);
    if (extension() > fabric.usableStretch()) {
      findings.add(
          roomier(Finding.problem("ease.too-tight", place, cannot(fabric, where)), fabric));
    } else if (used > COMFORTABLE_SHARE) {
      findings.add(roomier(Finding.warning("ease.tight", place, tight(fabric, where)), fabric));
    }
    findings.addAll(compression(place, where));
    if (extension() > 0 && fabric.recoveryVerdict() == Recovery.POOR) {
      findings.add(
          Finding.problem("ease.recovery-poor", place, bags(where))
              .withRemedy(Remedy.of("Take a fabric that comes back at least 95 %.")));
    }
    return List.copyOf(findings);
  }

  private String stretched(String where) {
    return "The garment is "
        + Wording.amount(garment)
        + " round the "
        + where
        + " and its wearer "
        + Wording.amount(body)
        + ": worn, it is stretched "
        + Wording.percent(extension());
  }

  private String cannot(Fabric fabric, String where) {
    return stretched(where)
        + ", and this fabric gives "
        + Wording.percent(fabric.usableStretch())
        + " in use.";
  }

  private String tight(Fabric fabric, String where) {
    return stretched(where)
        + ", which is "
        + Wording.percent(shareOfStretch(fabric))
        + " of what this fabric gives. A close fit uses a quarter at most; this will feel tight.";
  }

  private Finding roomier(Finding finding, Fabric fabric) {
    Length girth = girthFor(body, fabric, COMFORTABLE_SHARE);
    return finding
        .withRemedy(
            Remedy.of("Make it " + Wording.amount(girth) + " round for this fabric.")
                .with("girth.finished", girth.toString()))
        .withRemedy(Remedy.of("Or take a fabric that stretches " + stretchNeeded() + " or more."));
  }

  private String stretchNeeded() {
    return Wording.percent(Math.ceil(100 * extension() / COMFORTABLE_SHARE - 1e-9) / 100);
  }

  /** A warning where a garment is as small as a medical one. */
  List<Finding> compression(Place place, String where) {
    return share() > COMPRESSION
        ? List.of()
        : List.of(
            Finding.warning("ease.compression", place, compression(where))
                .withRemedy(
                    Remedy.of("Make it wider; ask licensed practice if pressure is meant.")));
  }

  private String compression(String where) {
    return "The garment is "
        + Wording.percent(-share())
        + " smaller than the body round the "
        + where
        + ". From 20 % on a garment presses like a medical one: that is for licensed practice, not"
        + " for this plan.";
  }

  private static String bags(String where) {
    return "The garment is stretched round the "
        + where
        + " all the time it is worn, and this fabric does not come back: it will bag.";
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Length body, Length garment) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(body, garment);
    }
  }

  private Object writeReplace() {
    return new Kept(body, garment);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an ease is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Ease
        && ((Ease) other).body.equals(body)
        && ((Ease) other).garment.equals(garment);
  }

  @Override
  public int hashCode() {
    return Objects.hash(body, garment);
  }

  @Override
  public String toString() {
    return Wording.amount(garment)
        + " on "
        + Wording.amount(body)
        + ": ease "
        + Wording.percent(share())
        + ", stretched "
        + Wording.percent(extension());
  }
}
