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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A band folded in half lengthwise and sewn on by its two raw edges; the fold is the finished edge.
 * Cuffs and waist ribs are such bands that draw their edge in.
 *
 * <p>The garment is cut back by the width that shows, less the allowance. The strip is cut twice as
 * wide as width and allowance together.
 *
 * <pre>{@code
 * FoldedBand band = FoldedBand.of(Length.mm(13), Length.mm(7));
 * band;  // => folded band showing 13 mm, sewn with 7 mm
 * band.profile();  // => CUT -6 mm, JOIN -13 mm, TOPSTITCH -15 mm
 * band.cutWidth();  // => 40 mm
 * FoldedBand.cuff(Length.mm(60), Length.mm(7)).intent();  // => DRAWS_IN
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class FoldedBand implements BandFinish {
  private static final long serialVersionUID = 1L;

  private final Length showing;
  private final Length allowance;
  private final String cloth;
  private final Style style;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Length> topstitch;

  /** What it is called, what it is meant to do, and whether it comes with a finished edge. */
  private record Style(String noun, Intent intent, boolean readyEdged) implements Serializable {}

  private FoldedBand(
      Length showing, Length allowance, String cloth, Style style, List<Length> topstitch) {
    this.showing = showing;
    this.allowance = allowance;
    this.cloth = cloth;
    this.style = style;
    this.topstitch = topstitch;
  }

  /**
   * A folded band of rib that lies flat, with one row of topstitching on the garment, 2 mm beyond
   * its seam.
   *
   * @param showing how wide it shows, 3 to 200 mm
   * @param allowance what is sewn in, 0 to 50 mm
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if one of them is out of range
   */
  public static FoldedBand of(Length showing, Length allowance) {
    Style band = new Style("band", Intent.LIES_FLAT, false);
    return of(showing, allowance, band, List.of(BandWidths.TOPSTITCH_MARGIN));
  }

  /**
   * A cuff of rib: a folded band that draws the end of a sleeve or a leg in, without topstitching.
   *
   * @param showing how wide it shows, 3 to 200 mm
   * @param allowance what is sewn in, 0 to 50 mm
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if one of them is out of range
   */
  public static FoldedBand cuff(Length showing, Length allowance) {
    return of(showing, allowance, new Style("cuff", Intent.DRAWS_IN, false), List.of());
  }

  /**
   * A waist rib: a folded band that draws a waist or a hem in, without topstitching.
   *
   * @param showing how wide it shows, 3 to 200 mm
   * @param allowance what is sewn in, 0 to 50 mm
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if one of them is out of range
   */
  public static FoldedBand waistRib(Length showing, Length allowance) {
    return of(showing, allowance, new Style("waist rib", Intent.DRAWS_IN, false), List.of());
  }

  private static FoldedBand of(
      Length showing, Length allowance, Style style, List<Length> topstitch) {
    return new FoldedBand(
        BandWidths.showing(showing),
        BandWidths.within("allowance", allowance, Length.ZERO, Length.mm(50)),
        "rib",
        style,
        topstitch);
  }

  /**
   * The same band of another cloth.
   *
   * @param newCloth the part that the cloth plays in the garment, such as "body"
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if the name is blank
   */
  public FoldedBand withCloth(String newCloth) {
    return new FoldedBand(showing, allowance, BandWidths.cloth(newCloth), style, topstitch);
  }

  /**
   * The same band with other rows of topstitching on the garment.
   *
   * @param beyondSeam how far each row lies from the seam, away from the band, over 0 to 20 mm;
   *     none for no topstitching
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if a row is out of range
   */
  public FoldedBand withTopstitch(Length... beyondSeam) {
    List<Length> rows = new ArrayList<>();
    for (Length row : beyondSeam) {
      rows.add(BandWidths.within("row of topstitching", row, Length.mm(0.5), Length.mm(20)));
    }
    return new FoldedBand(showing, allowance, cloth, style, List.copyOf(rows));
  }

  /**
   * The same band, meant to do something else.
   *
   * @param newIntent lies flat, hugs or draws in
   * @return the finish
   */
  public FoldedBand withIntent(Intent newIntent) {
    Objects.requireNonNull(newIntent, "newIntent");
    Style meant = new Style(style.noun(), newIntent, style.readyEdged());
    return new FoldedBand(showing, allowance, cloth, meant, topstitch);
  }

  /**
   * The same band of ribbing that is knitted with a finished edge: it is not folded, and cut as
   * wide as it shows and one allowance.
   *
   * @return the finish
   */
  public FoldedBand readyEdged() {
    Style single = new Style(style.noun(), style.intent(), true);
    return new FoldedBand(showing, allowance, cloth, single, topstitch);
  }

  @Override
  public Length showing() {
    return showing;
  }

  /**
   * What is sewn in.
   *
   * @return zero or more
   */
  public Length allowance() {
    return allowance;
  }

  @Override
  public String cloth() {
    return cloth;
  }

  /**
   * Twice the width that shows and the allowance together (Ribbed Edges, a chapter of a sewing
   * handbook); once for ribbing with a finished edge.
   */
  @Override
  public Length cutWidth() {
    return showing.plus(allowance).times(isReadyEdged() ? 1 : 2);
  }

  @Override
  public Length sewnIn() {
    return allowance.times(isReadyEdged() ? 1 : 2);
  }

  /**
   * Tells whether it is cut from ribbing with a finished edge.
   *
   * @return false for a band that is folded
   */
  public boolean isReadyEdged() {
    return style.readyEdged();
  }

  @Override
  public String noun() {
    return style.noun();
  }

  @Override
  public Intent intent() {
    return style.intent();
  }

  /** The width that shows, inward. */
  @Override
  public Length joinDistance() {
    return showing.negated();
  }

  @Override
  public String id() {
    return "folded-band";
  }

  @Override
  public Map<String, String> settings() {
    String rows = topstitch.stream().map(Length::toString).collect(Collectors.joining(", "));
    return BandWidths.settings(
        "showing",
        showing.toString(),
        "allowance",
        allowance.toString(),
        "cloth",
        cloth,
        "topstitch",
        rows,
        "noun",
        noun(),
        "intent",
        intent().plainName(),
        "edge",
        isReadyEdged() ? "ready" : "folded");
  }

  @Override
  public Profile profile() {
    Stream<ProfileLine> rows =
        topstitch.stream()
            .map(row -> new ProfileLine(LineRole.TOPSTITCH, showing.plus(row).negated()));
    return Profile.of(
        Stream.concat(
                Stream.of(
                    new ProfileLine(LineRole.CUT, allowance.minus(showing)),
                    new ProfileLine(LineRole.JOIN, joinDistance())),
                rows)
            .toArray(ProfileLine[]::new));
  }

  @Override
  public String describe() {
    return (isReadyEdged() ? "ready-edged " : "folded ")
        + noun()
        + " showing "
        + Wording.fine(showing)
        + ", sewn with "
        + Wording.fine(allowance);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Length showing, Length allowance, String cloth, Style style, List<Length> topstitch)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      FoldedBand band =
          of(
              showing,
              allowance,
              new Style(Objects.requireNonNull(style.noun, "noun"), style.intent, style.readyEdged),
              List.of());
      return band.withIntent(style.intent)
          .withCloth(cloth)
          .withTopstitch(topstitch.toArray(Length[]::new));
    }
  }

  private Object writeReplace() {
    return new Kept(showing, allowance, cloth, style, topstitch);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a folded band is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FoldedBand
        && ((FoldedBand) other).showing.equals(showing)
        && ((FoldedBand) other).allowance.equals(allowance)
        && ((FoldedBand) other).cloth.equals(cloth)
        && ((FoldedBand) other).style.equals(style)
        && ((FoldedBand) other).topstitch.equals(topstitch);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        showing, allowance, cloth, noun(), intent().name(), isReadyEdged(), topstitch);
  }

  @Override
  public String toString() {
    return describe();
  }
}
