package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Map;
import java.util.Objects;

/**
 * A strip sewn to the finished edge, turned to the inside and stitched down there: it does not show
 * on the right side. It is meant to hug.
 *
 * <p>The garment is cut an allowance beyond the finished edge. The strip is cut as wide as the
 * allowance, the depth and what is tucked under at its inner edge, which is nothing when that is
 * overlocked (common practice).
 *
 * <pre>{@code
 * FacedStrip strip = FacedStrip.of(Length.mm(12), Length.mm(7));
 * strip;  // => strip turned in, 12 mm deep, sewn with 7 mm
 * strip.profile();  // => CUT +7 mm, JOIN 0 mm, FOLD 0 mm, TOPSTITCH -10 mm
 * strip.cutWidth();  // => 19 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class FacedStrip implements BandFinish {
  private static final long serialVersionUID = 1L;

  private final Length depth;
  private final Length allowance;
  private final Length tuckedUnder;
  private final String cloth;
  private final Intent intent;

  private FacedStrip(
      Length depth, Length allowance, Length tuckedUnder, String cloth, Intent intent) {
    this.depth = depth;
    this.allowance = allowance;
    this.tuckedUnder = tuckedUnder;
    this.cloth = cloth;
    this.intent = intent;
  }

  /**
   * A strip of the body's cloth with its inner edge overlocked.
   *
   * @param depth how wide it lies on the inside, 3 to 200 mm
   * @param allowance what is sewn in, 0 to 50 mm
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if one of them is out of range
   */
  public static FacedStrip of(Length depth, Length allowance) {
    return new FacedStrip(
        BandWidths.showing(depth),
        BandWidths.within("allowance", allowance, Length.ZERO, Length.mm(50)),
        Length.ZERO,
        "body",
        Intent.HUGS);
  }

  /**
   * The same strip with its inner edge tucked under.
   *
   * @param turnedUnder how much, from 0 to the depth
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if it is out of range
   */
  public FacedStrip withTuck(Length turnedUnder) {
    Length checked = BandWidths.within("tuck", turnedUnder, Length.ZERO, depth);
    return new FacedStrip(depth, allowance, checked, cloth, intent);
  }

  /**
   * The same strip of another cloth.
   *
   * @param newCloth the part that the cloth plays in the garment, such as "rib"
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if the name is blank
   */
  public FacedStrip withCloth(String newCloth) {
    return new FacedStrip(depth, allowance, tuckedUnder, BandWidths.cloth(newCloth), intent);
  }

  /**
   * The same strip, meant to do something else.
   *
   * @param newIntent lies flat, hugs or draws in
   * @return the finish
   */
  public FacedStrip withIntent(Intent newIntent) {
    Objects.requireNonNull(newIntent, "newIntent");
    return new FacedStrip(depth, allowance, tuckedUnder, cloth, newIntent);
  }

  /** How wide it lies on the inside. */
  @Override
  public Length showing() {
    return depth;
  }

  /**
   * What is sewn in.
   *
   * @return zero or more
   */
  public Length allowance() {
    return allowance;
  }

  /**
   * What is tucked under at its inner edge.
   *
   * @return nothing when that is overlocked
   */
  public Length tuck() {
    return tuckedUnder;
  }

  @Override
  public String cloth() {
    return cloth;
  }

  /** Allowance, depth and tuck. */
  @Override
  public Length cutWidth() {
    return allowance.plus(depth).plus(tuckedUnder);
  }

  @Override
  public Length sewnIn() {
    return allowance;
  }

  @Override
  public String noun() {
    return "strip";
  }

  @Override
  public Intent intent() {
    return intent;
  }

  /** Nothing: it is sewn to the finished edge. */
  @Override
  public Length joinDistance() {
    return Length.ZERO;
  }

  @Override
  public String id() {
    return "faced-strip";
  }

  @Override
  public Map<String, String> settings() {
    return BandWidths.settings(
        "depth",
        depth.toString(),
        "allowance",
        allowance.toString(),
        "tuck",
        tuckedUnder.toString(),
        "cloth",
        cloth,
        "intent",
        intent.plainName());
  }

  @Override
  public Profile profile() {
    return Profile.of(
        new ProfileLine(LineRole.CUT, allowance),
        new ProfileLine(LineRole.JOIN, Length.ZERO),
        new ProfileLine(LineRole.FOLD, Length.ZERO),
        new ProfileLine(LineRole.TOPSTITCH, BandWidths.TOPSTITCH_MARGIN.minus(depth)));
  }

  @Override
  public String describe() {
    return "strip turned in, "
        + Wording.fine(depth)
        + " deep, sewn with "
        + Wording.fine(allowance)
        + (tuckedUnder.isZero() ? "" : ", " + Wording.fine(tuckedUnder) + " tucked under");
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      Length depth, Length allowance, Length tuckedUnder, String cloth, Intent intent)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(depth, allowance).withTuck(tuckedUnder).withCloth(cloth).withIntent(intent);
    }
  }

  private Object writeReplace() {
    return new Kept(depth, allowance, tuckedUnder, cloth, intent);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a faced strip is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FacedStrip
        && ((FacedStrip) other).depth.equals(depth)
        && ((FacedStrip) other).allowance.equals(allowance)
        && ((FacedStrip) other).tuckedUnder.equals(tuckedUnder)
        && ((FacedStrip) other).cloth.equals(cloth)
        && ((FacedStrip) other).intent == intent;
  }

  @Override
  public int hashCode() {
    return Objects.hash(depth, allowance, tuckedUnder, cloth, intent.name());
  }

  @Override
  public String toString() {
    return describe();
  }
}
