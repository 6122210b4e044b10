package dev.drafting.knit.band;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A band folded in half lengthwise and sewn on by its two raw edges; the fold is the finished edge.
 *
 * <p>The garment is cut back by the width that shows, less the allowance. The strip is cut twice as
 * wide as width and allowance together.
 *
 * <pre>{@code
 * FoldedBand band = FoldedBand.of(Length.mm(13), Length.mm(7));
 * band;  // => folded band showing 13 mm, sewn with 7 mm
 * band.profile();  // => CUT -6 mm, JOIN -13 mm, TOPSTITCH -15 mm
 * band.cutWidth();  // => 40 mm
 * }</pre>
 *
 * @since 0.1
 */
public final class FoldedBand implements BandFinish {
  private static final long serialVersionUID = 1L;

  private final Length showing;
  private final Length allowance;
  private final String cloth;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Length> topstitch;

  private FoldedBand(Length showing, Length allowance, String cloth, List<Length> topstitch) {
    this.showing = showing;
    this.allowance = allowance;
    this.cloth = cloth;
    this.topstitch = topstitch;
  }

  /**
   * A folded band of rib with one row of topstitching on the garment, 2 mm beyond its seam.
   *
   * @param showing how wide it shows, 3 to 200 mm
   * @param allowance what is sewn in, 0 to 50 mm
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if one of them is out of range
   */
  public static FoldedBand of(Length showing, Length allowance) {
    return new FoldedBand(
        BandWidths.showing(showing),
        BandWidths.within("allowance", allowance, Length.ZERO, Length.mm(50)),
        "rib",
        List.of(BandWidths.TOPSTITCH_MARGIN));
  }

  /**
   * The same band of another cloth.
   *
   * @param newCloth the part that the cloth plays in the garment, such as "body"
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if the name is blank
   */
  public FoldedBand withCloth(String newCloth) {
    return new FoldedBand(showing, allowance, BandWidths.cloth(newCloth), topstitch);
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
    return new FoldedBand(showing, allowance, cloth, List.copyOf(rows));
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

  /** Twice the width that shows and the allowance together. */
  @Override
  public Length cutWidth() {
    return showing.plus(allowance).times(2);
  }

  @Override
  public String noun() {
    return "band";
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
        rows);
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
    return "folded band showing "
        + Wording.fine(showing)
        + ", sewn with "
        + Wording.fine(allowance);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FoldedBand
        && ((FoldedBand) other).showing.equals(showing)
        && ((FoldedBand) other).allowance.equals(allowance)
        && ((FoldedBand) other).cloth.equals(cloth)
        && ((FoldedBand) other).topstitch.equals(topstitch);
  }

  @Override
  public int hashCode() {
    return Objects.hash(showing, allowance, cloth, topstitch);
  }

  @Override
  public String toString() {
    return describe();
  }
}
