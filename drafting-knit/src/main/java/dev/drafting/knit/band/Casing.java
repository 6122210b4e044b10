package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;
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
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An edge turned in to a casing, through which elastic is drawn.
 *
 * <p>The elastic is shorter than the body by a share: 5 to 8 % for soft, wide, knitted elastic,
 * about 10 % for woven, 12 to 15 % for firm elastic (trade pages). It must leave no marks and never
 * restrict breathing.
 *
 * <pre>{@code
 * Casing waist = Casing.of(Length.mm(25), Length.mm(10)).withGirth(Length.cm(76));
 * waist;  // => casing 25 mm deep with 10 mm tucked under, for elastic 22 mm wide
 * waist.profile();  // => CUT +35 mm, FOLD 0 mm, FOLD +25 mm, TOPSTITCH -25 mm
 * waist.elasticCutLength().orElseThrow();  // => 704 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Casing implements Finish {
  private static final long serialVersionUID = 1L;

  /** So that the elastic can be drawn through (common practice, no source). */
  private static final Length ROOM = Length.mm(3);

  private static final Length USUAL_OVERLAP = Length.cm(2);
  private static final double USUAL_SHORTENING = 0.10;
  private static final double MOST_SHORTENING = 0.30;

  private final Length depth;
  private final Length turnIn;
  private final Length elasticWidth;
  private final @Nullable Length girth;
  private final double shortening;
  private final Length overlap;

  private Casing(
      Length depth,
      Length turnIn,
      Length elasticWidth,
      @Nullable Length girth,
      double shortening,
      Length overlap) {
    this.depth = depth;
    this.turnIn = turnIn;
    this.elasticWidth = elasticWidth;
    this.girth = girth;
    this.shortening = shortening;
    this.overlap = overlap;
  }

  /**
   * A casing for elastic that is 3 mm narrower and a tenth shorter than the body.
   *
   * @param depth from the finished edge to the stitching, 6 to 200 mm
   * @param turnIn what is tucked under, 3 mm up to the depth; nothing where the edge is overlocked
   * @return the finish
   * @throws DraftingException if a measure is out of range
   */
  public static Casing of(Length depth, Length turnIn) {
    Length deep = BandWidths.within("depth of the casing", depth, Length.mm(6), Length.mm(200));
    Length tucked =
        turnIn.isZero() ? turnIn : BandWidths.within("turn-in", turnIn, Length.mm(3), deep);
    return new Casing(deep, tucked, deep.minus(ROOM), null, USUAL_SHORTENING, USUAL_OVERLAP);
  }

  /**
   * The same casing for another elastic.
   *
   * @param width 3 mm up to the depth
   * @return the finish
   * @throws DraftingException if the elastic does not go in
   */
  public Casing withElastic(Length width) {
    Length checked = BandWidths.within("width of the elastic", width, Length.mm(3), depth);
    return new Casing(depth, turnIn, checked, girth, shortening, overlap);
  }

  /**
   * The same casing for a body that was measured where the elastic will sit.
   *
   * @param body 5 to 250 cm
   * @return the finish
   * @throws DraftingException if the girth is out of range
   */
  public Casing withGirth(Length body) {
    Length checked = BandWidths.within("girth for the elastic", body, Length.cm(5), Length.cm(250));
    return new Casing(depth, turnIn, elasticWidth, checked, shortening, overlap);
  }

  /**
   * The same casing with elastic that is shorter by another share.
   *
   * @param share of the body girth, 0 to 0.3
   * @return the finish
   * @throws DraftingException if the share is out of range
   */
  public Casing withShortening(double share) {
    if (!(share >= 0 && share <= MOST_SHORTENING)) {
      throw DraftingException.of("the elastic is shortened out of range")
          .value(share)
          .accepted("a share from 0 to 0.3, such as 0.1");
    }
    return new Casing(depth, turnIn, elasticWidth, girth, share + 0.0, overlap);
  }

  /**
   * The same casing with the ends of its elastic lapped further or less.
   *
   * @param lapped 0 to 50 mm; 20 mm unless set
   * @return the finish
   * @throws DraftingException if it is out of range
   */
  public Casing withOverlap(Length lapped) {
    Length checked = BandWidths.within("overlap", lapped, Length.ZERO, Length.mm(50));
    return new Casing(depth, turnIn, elasticWidth, girth, shortening, checked);
  }

  /**
   * How deep the casing is.
   *
   * @return from the finished edge to the stitching
   */
  public Length depth() {
    return depth;
  }

  /**
   * What is tucked under.
   *
   * @return nothing where the edge is overlocked
   */
  public Length turnIn() {
    return turnIn;
  }

  /**
   * How wide the elastic is.
   *
   * @return at most the depth
   */
  public Length elasticWidth() {
    return elasticWidth;
  }

  /**
   * By what share the elastic is shorter than the body.
   *
   * @return 0.1 for 10 %
   */
  public double shortening() {
    return shortening;
  }

  /**
   * How far the ends of the elastic are lapped.
   *
   * @return zero or more
   */
  public Length overlap() {
    return overlap;
  }

  /**
   * The elastic sewn to a ring, relaxed.
   *
   * @return body girth x (1 - shortening), or empty when the girth is not known
   */
  public Optional<Length> elasticLoop() {
    return Optional.ofNullable(girth).map(body -> body.times(1 - shortening));
  }

  /**
   * How long the elastic is cut.
   *
   * @return the ring and its overlap, or empty when the girth is not known
   */
  public Optional<Length> elasticCutLength() {
    return elasticLoop().map(loop -> loop.plus(overlap));
  }

  @Override
  public String id() {
    return "casing";
  }

  @Override
  public Map<String, String> settings() {
    return BandWidths.settings(
        "depth",
        depth.toString(),
        "turn-in",
        turnIn.toString(),
        "elastic",
        elasticWidth.toString(),
        "girth",
        girth == null ? "unknown" : girth.toString(),
        "shortening",
        String.valueOf(shortening),
        "overlap",
        overlap.toString());
  }

  @Override
  public Profile profile() {
    List<ProfileLine> lines = new ArrayList<>();
    lines.add(new ProfileLine(LineRole.CUT, depth.plus(turnIn)));
    lines.add(new ProfileLine(LineRole.FOLD, Length.ZERO));
    if (turnIn.isPositive()) {
      lines.add(new ProfileLine(LineRole.FOLD, depth));
    }
    lines.add(new ProfileLine(LineRole.TOPSTITCH, depth.negated()));
    return Profile.of(lines.toArray(new ProfileLine[0]));
  }

  @Override
  public String describe() {
    return "casing "
        + Wording.fine(depth)
        + " deep"
        + (turnIn.isZero() ? "" : " with " + Wording.fine(turnIn) + " tucked under")
        + ", for elastic "
        + Wording.fine(elasticWidth)
        + " wide";
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      Length depth,
      Length turnIn,
      Length elasticWidth,
      @Nullable Length girth,
      double shortening,
      Length overlap)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Casing casing =
          of(depth, turnIn)
              .withElastic(elasticWidth)
              .withShortening(shortening)
              .withOverlap(overlap);
      return girth == null ? casing : casing.withGirth(girth);
    }
  }

  private Object writeReplace() {
    return new Kept(depth, turnIn, elasticWidth, girth, shortening, overlap);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a casing is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Casing
        && ((Casing) other).depth.equals(depth)
        && ((Casing) other).turnIn.equals(turnIn)
        && ((Casing) other).elasticWidth.equals(elasticWidth)
        && Objects.equals(((Casing) other).girth, girth)
        && ((Casing) other).shortening == shortening
        && ((Casing) other).overlap.equals(overlap);
  }

  @Override
  public int hashCode() {
    return Objects.hash(depth, turnIn, elasticWidth, girth, shortening, overlap);
  }

  @Override
  public String toString() {
    return describe();
  }
}
