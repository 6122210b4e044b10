package dev.drafting.knit.band;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.Serializable;
import java.util.Objects;

/**
 * How long a strip is made: as recommended, or as the maker says. A maker's own rule is always
 * accepted and judged.
 *
 * <pre>{@code
 * StripRule.ratio(0.85);  // => 85 % of its edge, 10 mm at each end for the join
 * StripRule.shorterBy(Length.cm(5)).withJoinAllowance(Length.mm(6));  // => 50 mm shorter than its edge, 6 mm at each end for the join
 * }</pre>
 *
 * @since 0.1
 */
public final class StripRule implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length USUAL_JOIN = Length.mm(10);

  private enum Kind {
    RECOMMENDED,
    RATIO,
    SHORTER_BY,
    LOOP,
    ALREADY_CUT
  }

  private final Kind kind;
  private final double ratio;
  private final Length length;
  private final Length joinAllowance;

  private StripRule(Kind kind, double ratio, Length length, Length joinAllowance) {
    this.kind = kind;
    this.ratio = ratio;
    this.length = length;
    this.joinAllowance = joinAllowance;
  }

  /**
   * The loop in the middle of the flat window; longer, as far as the window goes, where the strip's
   * fabric does not give enough for that.
   *
   * @return the rule
   */
  public static StripRule recommended() {
    return new StripRule(Kind.RECOMMENDED, 1, Length.ZERO, USUAL_JOIN);
  }

  /**
   * A share of the join line.
   *
   * @param ofJoinLine the loop divided by the join line, 0.3 to 1.5
   * @return the rule
   * @throws DraftingException if the share is out of range
   */
  public static StripRule ratio(double ofJoinLine) {
    if (!(ofJoinLine >= 0.3 && ofJoinLine <= 1.5)) {
      throw DraftingException.of("the ratio of a strip to its edge is out of range")
          .value(ofJoinLine)
          .accepted("0.3 to 1.5, such as 0.85");
    }
    return new StripRule(Kind.RATIO, ofJoinLine, Length.ZERO, USUAL_JOIN);
  }

  /**
   * A fixed length less than the join line.
   *
   * @param shortening what the loop is shorter by; negative for a longer loop
   * @return the rule
   */
  public static StripRule shorterBy(Length shortening) {
    return new StripRule(Kind.SHORTER_BY, 1, shortening, USUAL_JOIN);
  }

  /**
   * A loop of this length.
   *
   * @param loop from seam to seam, without allowances, over nothing
   * @return the rule
   * @throws DraftingException if it has no length
   */
  public static StripRule loop(Length loop) {
    return new StripRule(Kind.LOOP, 1, positive("loop", loop), USUAL_JOIN);
  }

  /**
   * A strip that is cut already; what is sewn in at its join comes off.
   *
   * @param cutLength from cut end to cut end, over nothing
   * @return the rule
   * @throws DraftingException if it has no length
   */
  public static StripRule alreadyCut(Length cutLength) {
    return new StripRule(Kind.ALREADY_CUT, 1, positive("cut strip", cutLength), USUAL_JOIN);
  }

  private static Length positive(String what, Length length) {
    if (!length.isPositive()) {
      throw DraftingException.of("the " + what + " has no length")
          .value(length)
          .accepted("more than 0");
    }
    return length;
  }

  /**
   * The same rule with another allowance where the strip is joined to a loop.
   *
   * @param atEachEnd what is sewn in at each of its two ends, 0 to 50 mm; 10 mm unless set
   * @return the rule
   * @throws DraftingException if the allowance is out of range
   */
  public StripRule withJoinAllowance(Length atEachEnd) {
    Length checked =
        BandWidths.within("allowance at the join", atEachEnd, Length.ZERO, Length.mm(50));
    return new StripRule(kind, ratio, length, checked);
  }

  /**
   * What is sewn in at each end of the strip.
   *
   * @return zero or more
   */
  public Length joinAllowance() {
    return joinAllowance;
  }

  /**
   * The loop by this rule.
   *
   * @param joinLine the opening along the strip's seam
   * @param window where it lies flat
   * @param usableStretch how far the strip's fabric gives
   * @return the loop from seam to seam
   * @throws DraftingException if the rule leaves no loop
   */
  Length loop(Length joinLine, FlatWindow window, double usableStretch) {
    return switch (kind) {
      case RECOMMENDED -> recommended(window, joinLine.dividedBy(1 + usableStretch));
      case RATIO -> joinLine.times(ratio);
      case SHORTER_BY -> left(joinLine.minus(length));
      case LOOP -> length;
      case ALREADY_CUT -> left(length.minus(joinAllowance.times(2)));
    };
  }

  private static Length recommended(FlatWindow window, Length shortestThatStretches) {
    return window.middle().max(shortestThatStretches.min(window.longest()));
  }

  private Length left(Length loop) {
    if (!loop.isPositive()) {
      throw DraftingException.of("the rule for the strip leaves no loop")
          .value(this)
          .accepted("a rule that leaves more than 0");
    }
    return loop;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StripRule
        && ((StripRule) other).kind == kind
        && ((StripRule) other).ratio == ratio
        && ((StripRule) other).length.equals(length)
        && ((StripRule) other).joinAllowance.equals(joinAllowance);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind.name(), ratio, length, joinAllowance);
  }

  @Override
  public String toString() {
    return words() + ", " + Wording.fine(joinAllowance) + " at each end for the join";
  }

  private String words() {
    return switch (kind) {
      case RECOMMENDED -> "as recommended";
      case RATIO -> Wording.percent(ratio) + " of its edge";
      case SHORTER_BY -> Wording.amount(length) + " shorter than its edge";
      case LOOP -> "a loop of " + Wording.amount(length);
      case ALREADY_CUT -> "already cut " + Wording.amount(length) + " long";
    };
  }
}
