package dev.drafting.core.assembly;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/**
 * Trues pieces together that were traced apart: both sides of every seam as long as they should be,
 * edges smooth where they cross a seam and square at the fold, all at once and with the least
 * movement. Straight edges stay straight, smooth ones smooth; points that are meant stay points.
 *
 * <p>One constrained least squares over all pieces: the squares of how far the edges move, summed
 * along them, are the least that meet all demands. A piece that was traced with an unsteadier hand
 * gives way more. Where that would take more movement than a pencil makes, the demand is dropped
 * and said; nothing is bent out of shape.
 *
 * <pre>{@code
 * Point a = new Point(0, 0), b = new Point(200, 0), c = new Point(200, 301), d = new Point(0, 300);
 * Piece front = Piece.of("front", List.of(Edge.of("hem", Curve.line(a, b)), Edge.of("side", Curve.line(b, c)), Edge.of("top", Curve.line(c, d)), Edge.onFold(Curve.line(d, a))));
 * Piece back = Piece.of("back", List.of(Edge.of("hem", Curve.line(a, b)), Edge.of("side", Curve.line(b, new Point(200, 299))), Edge.of("top", Curve.line(new Point(200, 299), d)), Edge.onFold(Curve.line(d, a))));
 * Pattern apart = Pattern.of("tube", List.of(front, back), List.of(Seam.of("side", "front side", "back side")));
 * TruedPattern trued = PatternTruing.of(apart).evened(Length.mm(3)).result();
 * Assembly.of(trued.pattern()).seamChecks();  // => [side: 300 mm to 300 mm, off by 0 mm]
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class PatternTruing implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length LIMIT = Length.mm(10);
  private static final Length ANYTHING = Length.mm(100_000);
  private static final Angle WIDEST = Angle.degrees(90);
  private static final Length LEAST_WANDER = Length.mm(0.01);

  private final Pattern pattern;
  private final Length evened;
  private final Angle smoothed;
  private final Length limit;
  private final boolean cornersHeld;

  @SuppressWarnings("serial") // always an unmodifiable set of the JDK
  private final Set<EdgeRef> kept;

  @SuppressWarnings("serial") // always an unmodifiable map of the JDK
  private final Map<String, Length> wandering;

  private PatternTruing(
      Pattern pattern,
      Length evened,
      Angle smoothed,
      Length limit,
      boolean cornersHeld,
      Set<EdgeRef> kept,
      Map<String, Length> wandering) {
    this.pattern = pattern;
    this.evened = evened;
    this.smoothed = smoothed;
    this.limit = limit;
    this.cornersHeld = cornersHeld;
    this.kept = Collections.unmodifiableSet(kept);
    this.wandering = Collections.unmodifiableMap(wandering);
  }

  /**
   * Nothing asked for yet: all seams and crossings stay as they are.
   *
   * @param pattern the pieces and their seams
   * @return the truing, ready to be told what to true
   */
  public static PatternTruing of(Pattern pattern) {
    return new PatternTruing(
        Objects.requireNonNull(pattern, "pattern"),
        Length.ZERO,
        Angle.ZERO,
        LIMIT,
        false,
        Set.of(),
        Map.of());
  }

  /**
   * Makes the sides of seams match, one as long as the other but for the ease.
   *
   * @param most seams that are off by more stay as they are: that is no wandering of a pencil
   * @return a truing that evens seams
   * @throws DraftingException if it is negative
   */
  public PatternTruing evened(Length most) {
    if (most.isNegative()) {
      throw DraftingException.of("seams cannot be off by less than nothing")
          .value(most)
          .accepted("0 mm or more");
    }
    return new PatternTruing(
        pattern, most, smoothed, limit.max(most), cornersHeld, kept, wandering);
  }

  /**
   * Draws edges smoothly across seams, and square to the fold.
   *
   * @param most edges that bend by more there stay as they are: that is no wandering of a pencil; 0
   *     to 90 degrees
   * @return a truing that smooths crossings
   * @throws DraftingException if it is out of range
   */
  public PatternTruing smoothed(Angle most) {
    if (most.compareTo(Angle.ZERO) < 0 || most.compareTo(WIDEST) > 0) {
      throw DraftingException.of("edges cannot be smoothed across seams by so much")
          .at(pattern.name())
          .value(most)
          .accepted("0 to 90 degrees");
    }
    return new PatternTruing(pattern, evened, most, limit, cornersHeld, kept, wandering);
  }

  /**
   * Sets how far an edge may move.
   *
   * @param most demands that would take more are dropped and said; 10 mm unless set, or as much as
   *     seams are evened if that is more
   * @return a truing with this limit
   * @throws DraftingException if it is not above 0
   */
  public PatternTruing withLimit(Length most) {
    if (!most.isPositive()) {
      throw DraftingException.of("nothing can be trued that may not move")
          .at(pattern.name())
          .value(most)
          .accepted("more than 0 mm");
    }
    return new PatternTruing(pattern, evened, smoothed, most, cornersHeld, kept, wandering);
  }

  /**
   * Says how unsteady the hand was that traced a piece, as its report does: pieces traced with a
   * steadier hand give way less.
   *
   * @param piece its name
   * @param wander the standard deviation of its points; below 0.01 mm counts as that
   * @return a truing that knows it
   * @throws DraftingException if there is no such piece
   */
  public PatternTruing withWandering(String piece, Length wander) {
    Map<String, Length> more = new TreeMap<>(wandering);
    more.put(pattern.piece(piece).name(), wander.max(LEAST_WANDER));
    return new PatternTruing(pattern, evened, smoothed, limit, cornersHeld, kept, more);
  }

  /**
   * Keeps an edge as long as it is, whatever else moves: one whose growth in wear was taken back,
   * for instance.
   *
   * @param edge the edge
   * @return a truing that keeps this length
   * @throws DraftingException if there is no such edge
   */
  public PatternTruing keepingLengthOf(EdgeRef edge) {
    Objects.requireNonNull(pattern.edge(edge));
    Set<EdgeRef> more = new LinkedHashSet<>(kept);
    more.add(edge);
    return new PatternTruing(pattern, evened, smoothed, limit, cornersHeld, more, wandering);
  }

  /**
   * The corners stay where they are and the edges in seams as they are, however far others move.
   */
  PatternTruing withCornersHeld() {
    return new PatternTruing(pattern, evened, smoothed, ANYTHING, true, kept, wandering);
  }

  /**
   * Trues the pieces.
   *
   * @return the pattern, how far its edges moved, and what was dropped; the pattern as given if it
   *     meets all demands
   * @throws DraftingException if the edges named for one side of a seam do not follow one another
   */
  public TruedPattern result() {
    boolean asked = evened.isPositive() || smoothed.compareTo(Angle.ZERO) > 0;
    return asked
        ? new TruingTogether(this).result()
        : new TruedPattern(pattern, Map.of(), List.of());
  }

  Pattern pattern() {
    return pattern;
  }

  double mostOff() {
    return evened.toMm();
  }

  double mostBent() {
    return smoothed.toRadians();
  }

  Length limit() {
    return limit;
  }

  Set<EdgeRef> kept() {
    return kept;
  }

  boolean areCornersHeld() {
    return cornersHeld;
  }

  /** How much a move of this piece costs, against that of a piece of which nothing is known. */
  double trust(String piece) {
    double wander = wandering.getOrDefault(piece, Length.mm(1)).toMm();
    return 1 / (wander * wander);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Pattern pattern,
      Length evened,
      Angle smoothed,
      Length limit,
      boolean cornersHeld,
      Set<EdgeRef> kept,
      Map<String, Length> wandering)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      PatternTruing truing = of(pattern).evened(evened).smoothed(smoothed);
      truing = (cornersHeld ? truing.withCornersHeld() : truing).withLimit(limit);
      for (Map.Entry<String, Length> piece : wandering.entrySet()) {
        truing = truing.withWandering(piece.getKey(), piece.getValue());
      }
      for (EdgeRef edge : kept) {
        truing = truing.keepingLengthOf(edge);
      }
      return truing;
    }
  }

  private Object writeReplace() {
    return new Kept(pattern, evened, smoothed, limit, cornersHeld, kept, wandering);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a truing of pieces together is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PatternTruing that
        && that.pattern.equals(pattern)
        && that.evened.equals(evened)
        && that.smoothed.equals(smoothed)
        && that.limit.equals(limit)
        && that.cornersHeld == cornersHeld
        && that.kept.equals(kept)
        && that.wandering.equals(wandering);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pattern, evened, smoothed, limit, cornersHeld, kept, wandering);
  }

  @Override
  public String toString() {
    return pattern.name()
        + " trued: seams evened up to "
        + evened
        + ", crossings smoothed up to "
        + smoothed;
  }
}
