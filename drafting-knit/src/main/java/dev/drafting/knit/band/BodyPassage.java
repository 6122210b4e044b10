package dev.drafting.knit.band;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Whether an opening goes over what it is pulled over: the head, the shoulders, the hips, a hand or
 * a foot.
 *
 * <p>It stretches as far as the tightest of three: its strip, {@code loop x (1 + usable stretch of
 * the strip)}; the garment's own edge at the seam of the strip, {@code join line x (1 + usable
 * stretch of the body)}; and that seam, {@code join line x (1 + what its stitches give)}, where
 * that is known. Both sides of a placket are added. That must reach the girth and a little
 * clearance. The usable share of the stretch is {@link Fabric#usableStretch()}.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * BodyPassage neck = top.withWearer(Wearer.of().withHead(Length.cm(58))).headOpening().get();
 * neck.passes();  // => true
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class BodyPassage implements Serializable {
  private static final long serialVersionUID = 1L;

  /** One to two centimetres: common practice, no source. */
  private static final Length USUAL_CLEARANCE = Length.cm(1);

  /** What an opening is held by when it is pulled. */
  public enum Limit {
    /** The strip round it. */
    STRIP,
    /** The stitches of its seam. */
    SEAM,
    /** The garment's own edge. */
    BODY
  }

  private final Opening opening;
  private final @Nullable Strip strip;
  private final Fabric body;
  private final BodyPart part;
  private final Length girth;
  private final Length clearance;
  private final @Nullable Double stitches;
  private final Length placket;

  private BodyPassage(
      Opening opening,
      @Nullable Strip strip,
      Fabric body,
      BodyPart part,
      Length girth,
      Length clearance,
      @Nullable Double stitches,
      Length placket) {
    this.opening = opening;
    this.strip = strip;
    this.body = Objects.requireNonNull(body, "body");
    this.part = Objects.requireNonNull(part, "part");
    this.girth = girth;
    this.clearance = clearance;
    this.stitches = stitches;
    this.placket = placket;
  }

  /**
   * An opening with a band or binding.
   *
   * @param strip the strip round it
   * @param body what the garment is cut from
   * @param part what it has to go over
   * @param girth the girth of that, over nothing
   * @return the passage, with 1 cm of clearance
   * @throws DraftingException if the girth is nothing
   */
  public static BodyPassage of(Strip strip, Fabric body, BodyPart part, Length girth) {
    return new BodyPassage(
        strip.opening(),
        strip,
        body,
        part,
        positive(part, girth),
        USUAL_CLEARANCE,
        null,
        Length.ZERO);
  }

  /**
   * An opening without a strip: hemmed, faced or raw.
   *
   * @param opening the opening
   * @param body what the garment is cut from
   * @param part what it has to go over
   * @param girth the girth of that, over nothing
   * @return the passage, with 1 cm of clearance
   * @throws DraftingException if the girth is nothing
   */
  public static BodyPassage of(Opening opening, Fabric body, BodyPart part, Length girth) {
    return new BodyPassage(
        opening, null, body, part, positive(part, girth), USUAL_CLEARANCE, null, Length.ZERO);
  }

  private static Length positive(BodyPart part, Length girth) {
    if (!girth.isPositive()) {
      throw DraftingException.of("the girth of the " + part.plainName() + " is nothing")
          .value(girth)
          .accepted("more than 0");
    }
    return girth;
  }

  /**
   * The same with another clearance.
   *
   * @param more what the opening must be wider than the head, 0 to 10 cm
   * @return the opening against the head
   * @throws DraftingException if it is out of range
   */
  public BodyPassage withClearance(Length more) {
    Length checked = BandWidths.within("clearance", more, Length.ZERO, Length.cm(10));
    return new BodyPassage(opening, strip, body, part, girth, checked, stitches, placket);
  }

  /**
   * The same with stitches that give only so much before they break. An overlock or zigzag gives as
   * much as the cloth; a straight stitch does not, and is tried on a scrap.
   *
   * @param share how far the seam stretches, from 0 to 3
   * @return the passage
   * @throws DraftingException if the share is out of range
   */
  public BodyPassage withStitchesGiving(double share) {
    if (!(share >= 0 && share <= 3)) {
      throw DraftingException.of("what the stitches give is out of range")
          .value(share)
          .accepted("a share from 0 to 3, such as 0.3 for 30 %");
    }
    return new BodyPassage(opening, strip, body, part, girth, clearance, share, placket);
  }

  /**
   * The same with a placket, which adds both its sides to the opening; they do not stretch, for
   * they are stayed.
   *
   * @param bothSides how much wider the opening goes, zero or more
   * @return the check for an opening with this placket
   * @throws DraftingException if it is negative or over 2 m
   */
  @Experimental
  public BodyPassage withPlacket(Length bothSides) {
    Length checked = BandWidths.within("placket", bothSides, Length.ZERO, Length.cm(200));
    return new BodyPassage(opening, strip, body, part, girth, clearance, stitches, checked);
  }

  /**
   * What it has to go over.
   *
   * @return the part of the body
   */
  public BodyPart part() {
    return part;
  }

  /**
   * The opening.
   *
   * @return the opening
   */
  public Opening opening() {
    return opening;
  }

  /**
   * The strip round it.
   *
   * @return the strip, or empty when there is none
   */
  public Optional<Strip> strip() {
    return Optional.ofNullable(strip);
  }

  Fabric body() {
    return body;
  }

  Length girth() {
    return girth;
  }

  Length clearance() {
    return clearance;
  }

  /** Where the garment's own cloth ends: the strip's seam, or the seam of a facing, or the edge. */
  Length bodyEdge() {
    return strip != null
        ? strip.joinLine()
        : opening.lengthAt(opening.finish().profile().join().orElse(Length.ZERO));
  }

  private Length bodyStretched() {
    return bodyEdge().times(1 + body.usableStretch());
  }

  private Optional<Length> seamStretched() {
    return Optional.ofNullable(stitches).map(share -> bodyEdge().times(1 + share));
  }

  private Optional<Length> stripStretched() {
    return strip().map(round -> round.fit().stretchesTo());
  }

  /**
   * How wide the opening goes.
   *
   * @return the girth that it can be pulled to
   */
  public Length stretchedOpening() {
    Length widest = bodyStretched();
    widest = seamStretched().map(widest::min).orElse(widest);
    return stripStretched().map(widest::min).orElse(widest).plus(placket);
  }

  /**
   * How wide it has to go.
   *
   * @return the girth and the clearance
   */
  public Length needed() {
    return girth.plus(clearance);
  }

  Length placket() {
    return placket;
  }

  /** What is left for the opening itself to reach. */
  Length neededOfOpening() {
    return needed().minus(placket);
  }

  /**
   * How much wider it goes than it has to.
   *
   * @return negative when it will not go over
   */
  public Length margin() {
    return stretchedOpening().minus(needed());
  }

  /**
   * Tells whether it goes over.
   *
   * @return true when the margin is not negative
   */
  public boolean passes() {
    return !margin().isNegative();
  }

  /**
   * What holds the opening when it is pulled.
   *
   * @return the strip, its seam or the garment, whichever is tightest
   */
  public Limit limit() {
    Length held = stretchedOpening().minus(placket);
    if (stripStretched().filter(held::equals).isPresent()) {
      return Limit.STRIP;
    }
    return seamStretched().filter(held::equals).isPresent() ? Limit.SEAM : Limit.BODY;
  }

  /**
   * What is wrong when the opening does not go over, with the remedies in the order to try them:
   * lower the neck, a longer loop, a narrower band, a seam that gives more, a cloth with more
   * stretch, an opening at the shoulder. Those that cannot help are left out.
   *
   * @return one finding, or none when it passes
   */
  public List<Finding> findings() {
    return passes() ? List.of() : List.of(PassageRemedies.finding(this));
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      Opening opening,
      @Nullable Strip strip,
      Fabric body,
      BodyPart part,
      Length girth,
      Length clearance,
      @Nullable Double stitches,
      Length placket)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      BodyPassage passage =
          new BodyPassage(
                  Objects.requireNonNull(opening, "opening"),
                  strip,
                  body,
                  part,
                  positive(part, girth),
                  USUAL_CLEARANCE,
                  null,
                  Length.ZERO)
              .withClearance(clearance)
              .withPlacket(placket);
      return stitches == null ? passage : passage.withStitchesGiving(stitches);
    }
  }

  private Object writeReplace() {
    return new Kept(opening, strip, body, part, girth, clearance, stitches, placket);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a passage of the body is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BodyPassage
        && ((BodyPassage) other).opening.equals(opening)
        && Objects.equals(((BodyPassage) other).strip, strip)
        && ((BodyPassage) other).body.equals(body)
        && ((BodyPassage) other).part == part
        && ((BodyPassage) other).girth.equals(girth)
        && ((BodyPassage) other).clearance.equals(clearance)
        && Objects.equals(((BodyPassage) other).stitches, stitches)
        && ((BodyPassage) other).placket.equals(placket);
  }

  @Override
  public int hashCode() {
    return Objects.hash(opening, strip, body, part.name(), girth, clearance, stitches, placket);
  }

  @Override
  public String toString() {
    return opening.name()
        + " stretches to "
        + Wording.amount(stretchedOpening())
        + ", "
        + part.needs()
        + Wording.amount(needed())
        + ": "
        + (passes() ? "goes " : "does not go ")
        + part.over();
  }
}
