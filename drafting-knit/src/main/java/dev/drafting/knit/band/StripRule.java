package dev.drafting.knit.band;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningStation;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

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
@Stable
public final class StripRule implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Making USUAL = new Making(Length.mm(10), "", MarkSpacing.EVEN, Length.ZERO);

  /**
   * How the length of a strip was settled.
   *
   * @since 0.1
   */
  public enum Kind {
    /** As the library recommends. */
    RECOMMENDED,
    /** A share of the join line. */
    RATIO,
    /** The join line less a fixed length. */
    SHORTER_BY,
    /** A loop of this length. */
    LOOP,
    /** A strip that is cut already. */
    ALREADY_CUT
  }

  private final Kind kind;
  private final double ratio;
  private final Length length;
  private final Making making;

  /** How the strip is joined and marked, whatever its length. */
  private record Making(Length joinAllowance, String joinAt, MarkSpacing spacing, Length lap)
      implements Serializable {}

  private StripRule(Kind kind, double ratio, Length length, Making making) {
    this.kind = kind;
    this.ratio = ratio;
    this.length = length;
    this.making = making;
  }

  /**
   * The loop in the middle of those that do what the strip is meant to do, such as the flat window;
   * longer, as far as they go, where the strip's fabric does not give enough for that.
   *
   * @return the rule
   */
  public static StripRule recommended() {
    return new StripRule(Kind.RECOMMENDED, 1, Length.ZERO, USUAL);
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
    return new StripRule(Kind.RATIO, ofJoinLine, Length.ZERO, USUAL);
  }

  /**
   * A fixed length less than the join line.
   *
   * @param shortening what the loop is shorter by; negative for a longer loop
   * @return the rule
   */
  public static StripRule shorterBy(Length shortening) {
    return new StripRule(Kind.SHORTER_BY, 1, shortening, USUAL);
  }

  /**
   * A loop of this length.
   *
   * @param loop from seam to seam, without allowances, over nothing
   * @return the rule
   * @throws DraftingException if it has no length
   */
  public static StripRule loop(Length loop) {
    return new StripRule(Kind.LOOP, 1, positive("loop", loop), USUAL);
  }

  /**
   * A strip that is cut already; what is sewn in at its join comes off.
   *
   * @param cutLength from cut end to cut end, over nothing
   * @return the rule
   * @throws DraftingException if it has no length
   */
  public static StripRule alreadyCut(Length cutLength) {
    return new StripRule(Kind.ALREADY_CUT, 1, positive("cut strip", cutLength), USUAL);
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
    return with(new Making(checked, making.joinAt(), making.spacing(), making.lap()));
  }

  /**
   * The same rule with the strip's join at another place. Unless set it lies at the centre back, or
   * under the arm, where it shows least.
   *
   * @param place what the opening has there, such as "shoulder" or "centre front"
   * @return the rule
   * @throws DraftingException if the place has no name
   */
  public StripRule withJoinAt(String place) {
    if (place.isBlank()) {
      throw DraftingException.of("the place of the join has no name")
          .accepted("such as \"shoulder\"");
    }
    return with(new Making(making.joinAllowance(), place, making.spacing(), making.lap()));
  }

  /**
   * The same rule with the strip stretched evenly or more on curves.
   *
   * @param spacing how its marks are spaced; evenly unless set
   * @return the rule
   */
  public StripRule withMarks(MarkSpacing spacing) {
    Objects.requireNonNull(spacing, "spacing");
    return with(new Making(making.joinAllowance(), making.joinAt(), spacing, making.lap()));
  }

  /**
   * Leaves its ends open at a placket, where they lie over each other when that is closed; what is
   * cut for the join is turned in at each end.
   *
   * @param width how far they lie over each other, 0 to 100 mm
   * @return the rule for such a strip
   * @throws DraftingException if the width is out of range
   */
  @Experimental
  public StripRule withLap(Length width) {
    Length checked = BandWidths.within("lap of the ends", width, Length.ZERO, Length.mm(100));
    return with(new Making(making.joinAllowance(), making.joinAt(), making.spacing(), checked));
  }

  /**
   * How far its ends lie over each other at a placket.
   *
   * @return zero where they are joined
   */
  @Experimental
  public Length lap() {
    return making.lap();
  }

  /** Whether its ends lie over each other where its marks begin. */
  boolean lapsAtJoin() {
    return lap().isPositive() && joinAt().isPresent();
  }

  private StripRule with(Making changed) {
    return new StripRule(kind, ratio, length, changed);
  }

  /**
   * How the length was settled.
   *
   * @return what the rule was made as
   */
  public Kind kind() {
    return kind;
  }

  /**
   * The share of the join line.
   *
   * @return 0.3 to 1.5; 1 unless the rule is a {@link Kind#RATIO}
   */
  public double share() {
    return ratio;
  }

  /**
   * The length that the maker gave.
   *
   * @return how much shorter, the loop or the cut strip; none where no length was given
   */
  public Length length() {
    return length;
  }

  /**
   * What is sewn in at each end of the strip.
   *
   * @return zero or more
   */
  public Length joinAllowance() {
    return making.joinAllowance();
  }

  /**
   * Where the strip is joined.
   *
   * @return the place that was set, or empty for the usual one
   */
  public Optional<String> joinAt() {
    return Optional.of(making.joinAt()).filter(place -> !place.isEmpty());
  }

  /**
   * How its marks are spaced.
   *
   * @return evenly unless set
   */
  public MarkSpacing marks() {
    return making.spacing();
  }

  /**
   * Refuses an opening that has no such place for the join.
   *
   * @param opening the opening that the strip goes round
   * @throws DraftingException if none of its seams and centres has the name that was set
   */
  public void requireJoinOn(Opening opening) {
    List<String> places =
        opening.stations().stream().map(OpeningStation::label).distinct().toList();
    if (!joinAt().map(places::contains).orElse(true)) {
      throw DraftingException.of("the strip cannot be joined there: its opening has no such place")
          .at("opening " + opening.name())
          .value(making.joinAt())
          .accepted(String.join(", ", places));
    }
  }

  /** Tells whether the strip lies there already, so that it can only be made shorter. */
  boolean isAlreadyCut() {
    return kind == Kind.ALREADY_CUT;
  }

  /**
   * The loop by this rule.
   *
   * @param joinLine the opening along the strip's seam
   * @param wanted the loops that do what the strip is meant to do
   * @param shortestThatStretches the loop that just reaches its seam
   * @return the loop from seam to seam
   * @throws DraftingException if the rule leaves no loop
   */
  Length loop(Length joinLine, LoopRange wanted, Length shortestThatStretches) {
    return switch (kind) {
      case RECOMMENDED -> wanted.middle().max(shortestThatStretches.min(wanted.longest()));
      case RATIO -> joinLine.times(ratio);
      case SHORTER_BY -> left(joinLine.minus(length));
      case LOOP -> length;
      case ALREADY_CUT -> left(length.minus(joinAllowance().times(2)).minus(lap()));
    };
  }

  private Length left(Length loop) {
    if (!loop.isPositive()) {
      throw DraftingException.of("the rule for the strip leaves no loop")
          .value(this)
          .accepted("a rule that leaves more than 0");
    }
    return loop;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Kind kind, double ratio, Length length, Making making)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      StripRule rule =
          switch (kind) {
            case RECOMMENDED -> recommended();
            case RATIO -> StripRule.ratio(ratio);
            case SHORTER_BY -> shorterBy(length);
            case LOOP -> loop(length);
            case ALREADY_CUT -> alreadyCut(length);
          };
      rule = rule.withJoinAllowance(making.joinAllowance).withMarks(making.spacing);
      rule = rule.withLap(making.lap);
      return making.joinAt.isEmpty() ? rule : rule.withJoinAt(making.joinAt);
    }
  }

  private Object writeReplace() {
    return new Kept(kind, ratio, length, making);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a strip rule is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StripRule
        && ((StripRule) other).kind == kind
        && ((StripRule) other).ratio == ratio
        && ((StripRule) other).length.equals(length)
        && ((StripRule) other).making.equals(making);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        kind.name(), ratio, length, joinAllowance(), making.joinAt(), marks().name(), lap());
  }

  @Override
  public String toString() {
    return words()
        + ", "
        + Wording.fine(joinAllowance())
        + (lap().isZero()
            ? " at each end for the join"
            : " at each end to turn in, which lap by " + Wording.fine(lap()))
        + joinAt().map(place -> " at the " + place).orElse("")
        + (marks() == MarkSpacing.EVEN ? "" : ", " + marks().plainName());
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
