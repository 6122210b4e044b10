package dev.drafting.knit.hem;

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
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * An edge turned up and stitched: once, with its cut edge covered by the stitching, or twice, with
 * the cut edge tucked under.
 *
 * <p>Knits are mostly turned once; twice only light, flat ones (common practice).
 *
 * <pre>{@code
 * TurnedHem.once(Length.mm(20)).profile();  // => CUT +20 mm, FOLD 0 mm, TOPSTITCH -18 mm
 * TurnedHem.twice(Length.mm(10), Length.mm(15)).profile();  // => CUT +25 mm, FOLD 0 mm, FOLD +15 mm, TOPSTITCH -13 mm
 * TurnedHem.once(Length.mm(20)).withTwinNeedle(Length.mm(4)).profile();  // => CUT +20 mm, FOLD 0 mm, TOPSTITCH -18 mm, TOPSTITCH -14 mm
 * TurnedHem.twice(Length.mm(10), Length.mm(15));  // => hem turned twice, 15 mm deep with 10 mm tucked under
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class TurnedHem implements Finish {
  private static final long serialVersionUID = 1L;
  private static final Length DEEPEST = Length.mm(300);
  private static final Length USUAL_MARGIN = Length.mm(2);
  private static final Length NARROWEST_REST = Length.mm(0.5);
  private static final Length NARROWEST_GAP = Length.mm(1.5);
  private static final Length WIDEST_GAP = Length.mm(8);

  /** Nothing for a hem turned once. */
  private final Length turnIn;

  private final Length depth;
  private final Length margin;

  /** Nothing for one row. */
  private final Length twinGap;

  private TurnedHem(Length turnIn, Length depth, Length margin, Length twinGap) {
    this.turnIn = turnIn;
    this.depth = depth;
    this.margin = margin;
    this.twinGap = twinGap;
  }

  /**
   * A hem turned once.
   *
   * @param depth how deep it is turned up, 3 to 300 mm
   * @return the finish, stitched 2 mm inside its cut edge
   * @throws DraftingException if the depth is out of range
   */
  public static TurnedHem once(Length depth) {
    return new TurnedHem(Length.ZERO, depth("depth", depth), USUAL_MARGIN, Length.ZERO);
  }

  /**
   * A hem turned twice.
   *
   * @param turnIn what is tucked under, 3 mm up to the depth
   * @param depth how deep the finished hem is, 3 to 300 mm
   * @return the finish, stitched 2 mm inside its inner fold
   * @throws DraftingException if a measure is out of range
   */
  public static TurnedHem twice(Length turnIn, Length depth) {
    Length deep = depth("depth", depth);
    if (depth("turn-in", turnIn).compareTo(deep) > 0) {
      throw DraftingException.of("the turn-in of a hem is deeper than the hem")
          .value(turnIn)
          .accepted("up to " + deep);
    }
    return new TurnedHem(turnIn, deep, USUAL_MARGIN, Length.ZERO);
  }

  private static Length depth(String what, Length length) {
    if (length.compareTo(Length.mm(3)) < 0 || length.compareTo(DEEPEST) > 0) {
      throw DraftingException.of("the " + what + " of a hem is out of range")
          .value(length)
          .accepted("3 mm to " + DEEPEST);
    }
    return length;
  }

  /**
   * The same hem, stitched at another distance from its inner edge.
   *
   * @param fromInnerEdge over 0, less than the depth
   * @return the finish
   * @throws DraftingException if the distance is out of range
   */
  public TurnedHem withTopstitchMargin(Length fromInnerEdge) {
    TurnedHem changed = new TurnedHem(turnIn, depth, fromInnerEdge, twinGap);
    boolean liesOnHem = fromInnerEdge.isPositive() && fromInnerEdge.compareTo(depth) < 0;
    if (!liesOnHem || (twinGap.isPositive() && !changed.takesTwinNeedle(twinGap))) {
      Length beyond = twinGap.isPositive() ? twinGap.plus(NARROWEST_REST) : Length.ZERO;
      throw DraftingException.of("the row of stitching does not lie on the hem")
          .value(fromInnerEdge)
          .accepted("over 0, less than " + depth.minus(beyond));
    }
    return changed;
  }

  /**
   * The same hem, stitched in two rows by a twin needle; the second row lies nearer to the fold.
   *
   * @param gap between the two needles, 1.5 to 8 mm, less than what is left of the depth; 4 mm is
   *     usual for knits (sewing magazine, "T-shirt and Knit Fabric Hems", 2018)
   * @return the finish
   * @throws DraftingException if the gap is out of range
   */
  public TurnedHem withTwinNeedle(Length gap) {
    if (!takesTwinNeedle(gap)) {
      throw DraftingException.of("the gap of a twin needle is out of range")
          .value(gap)
          .accepted(NARROWEST_GAP + " to " + widestGap());
    }
    return new TurnedHem(turnIn, depth, margin, gap);
  }

  /**
   * Tells whether both rows of a twin needle find room on the hem.
   *
   * @param gap between the two needles
   * @return true for a gap that {@link #withTwinNeedle} takes
   */
  public boolean takesTwinNeedle(Length gap) {
    return gap.compareTo(NARROWEST_GAP) >= 0 && gap.compareTo(widestGap()) <= 0;
  }

  private Length widestGap() {
    return WIDEST_GAP.min(depth.minus(margin).minus(NARROWEST_REST));
  }

  /**
   * The gap between its two rows of stitching.
   *
   * @return nothing where there is one row
   */
  public Length twinGap() {
    return twinGap;
  }

  /**
   * How deep the finished hem is.
   *
   * @return a depth over nothing
   */
  public Length depth() {
    return depth;
  }

  /**
   * What is tucked under.
   *
   * @return nothing for a hem turned once
   */
  public Length turnIn() {
    return turnIn;
  }

  /**
   * Tells whether the cut edge is tucked under.
   *
   * @return false for a hem turned once
   */
  public boolean isTurnedTwice() {
    return turnIn.isPositive();
  }

  @Override
  public String id() {
    return "turned-hem";
  }

  @Override
  public Map<String, String> settings() {
    Map<String, String> settings = new LinkedHashMap<>();
    settings.put("turn-in", turnIn.toString());
    settings.put("depth", depth.toString());
    settings.put("topstitch margin", margin.toString());
    if (twinGap.isPositive()) {
      settings.put("twin needle", twinGap.toString());
    }
    return Collections.unmodifiableMap(settings);
  }

  @Override
  public Profile profile() {
    List<ProfileLine> lines = new ArrayList<>();
    lines.add(new ProfileLine(LineRole.CUT, depth.plus(turnIn)));
    lines.add(new ProfileLine(LineRole.FOLD, Length.ZERO));
    if (isTurnedTwice()) {
      lines.add(new ProfileLine(LineRole.FOLD, depth));
    }
    lines.add(new ProfileLine(LineRole.TOPSTITCH, margin.minus(depth)));
    if (twinGap.isPositive()) {
      lines.add(new ProfileLine(LineRole.TOPSTITCH, margin.plus(twinGap).minus(depth)));
    }
    return Profile.of(lines.toArray(new ProfileLine[0]));
  }

  @Override
  public String describe() {
    String turned =
        isTurnedTwice()
            ? "hem turned twice, "
                + Wording.fine(depth)
                + " deep with "
                + Wording.fine(turnIn)
                + " tucked under"
            : "hem turned once, " + Wording.fine(depth) + " deep";
    return twinGap.isPositive()
        ? turned + ", stitched with a twin needle of " + Wording.fine(twinGap)
        : turned;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Length turnIn, Length depth, Length margin, Length twinGap)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      TurnedHem hem =
          (turnIn.isZero() ? once(depth) : twice(turnIn, depth)).withTopstitchMargin(margin);
      return twinGap.isZero() ? hem : hem.withTwinNeedle(twinGap);
    }
  }

  private Object writeReplace() {
    return new Kept(turnIn, depth, margin, twinGap);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a turned hem is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TurnedHem
        && ((TurnedHem) other).turnIn.equals(turnIn)
        && ((TurnedHem) other).depth.equals(depth)
        && ((TurnedHem) other).margin.equals(margin)
        && ((TurnedHem) other).twinGap.equals(twinGap);
  }

  @Override
  public int hashCode() {
    return Objects.hash(turnIn, depth, margin, twinGap);
  }

  @Override
  public String toString() {
    return describe();
  }
}
