package dev.drafting.core.lay;

import dev.drafting.core.Experimental;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Pieces and strips to be laid on a cloth in the least length. Pieces of several sizes or garments
 * may lie together.
 *
 * <pre>{@code
 * Piece pocket = Piece.of("pocket", List.of(Edge.of("hem", Curve.line(new Point(0, 0), new Point(120, 0))), Edge.of("side", Curve.line(new Point(120, 0), new Point(120, 150))), Edge.of("top", Curve.line(new Point(120, 150), new Point(0, 150))), Edge.of("other side", Curve.line(new Point(0, 150), new Point(0, 0))))).withCutting(Cutting.pairs(2));
 * Lay lay = Lay.on(Cloth.of(Length.cm(50))).with(CutPlan.of(Pattern.of("pockets", List.of(pocket), List.of())).pieces());
 * LayPlan plan = lay.plan(1, 20);
 * plan.pieces().size();  // => 4
 * plan.length().compareTo(Length.cm(35)) < 0;  // => true
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Lay implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double MOST_OFF_GRAIN = 15;

  private final Cloth cloth;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<CutPiece> pieces;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<StripSize> strips;

  private final Angle grainWithin;

  /** Notches on a repeat, by pieces. */
  @SuppressWarnings("serial") // always an unmodifiable map of the JDK
  private final Map<String, String> matching;

  /** A strip to be cut. */
  private record StripSize(String name, Length length, Length width, boolean along)
      implements Serializable {}

  private Lay(
      Cloth cloth,
      List<CutPiece> pieces,
      List<StripSize> strips,
      Angle grainWithin,
      Map<String, String> matching) {
    this.grainWithin = grainWithin;
    this.matching = Collections.unmodifiableMap(matching);
    this.cloth = cloth;
    this.pieces = List.copyOf(pieces);
    this.strips = List.copyOf(strips);
  }

  /**
   * Nothing on the cloth yet.
   *
   * @param cloth what is cut from
   * @return an empty lay
   */
  public static Lay on(Cloth cloth) {
    return new Lay(
        Objects.requireNonNull(cloth, "cloth"), List.of(), List.of(), Angle.ZERO, new TreeMap<>());
  }

  /**
   * More pieces, each as often as it is cut.
   *
   * @param more the pieces
   * @return the lay
   */
  public Lay with(List<CutPiece> more) {
    List<CutPiece> all = new ArrayList<>(pieces);
    all.addAll(more);
    return new Lay(cloth, all, strips, grainWithin, matching);
  }

  /**
   * One strip more. It lies across the cloth, where knits stretch most; two of one name and size
   * are cut at once from doubled cloth; one that is longer than the cloth is wide is pieced.
   *
   * @param name what it is for
   * @param length how long it is cut
   * @param width how wide it is cut
   * @return the lay
   * @throws DraftingException if length or width is not above zero
   */
  public Lay withStrip(String name, Length length, Length width) {
    return with(new StripSize(name, length, width, false));
  }

  /**
   * One strip more, along the selvage, from one layer.
   *
   * @param name what it is for
   * @param length how long it is cut
   * @param width how wide it is cut
   * @return the lay
   * @throws DraftingException if length or width is not above zero
   */
  public Lay withStripAlong(String name, Length length, Length width) {
    return with(new StripSize(name, length, width, true));
  }

  private Lay with(StripSize strip) {
    if (!strip.length().isPositive() || !strip.width().isPositive()) {
      throw DraftingException.of("a strip has no size")
          .at(strip.name())
          .value(strip.length() + " x " + strip.width())
          .accepted("more than 0 mm");
    }
    List<StripSize> all = new ArrayList<>(strips);
    all.add(strip);
    return new Lay(cloth, pieces, all, grainWithin, matching);
  }

  /**
   * Lets pieces be turned off their grain by a little. Strips, and what lies on a fold or a repeat,
   * keep to the grain in any case.
   *
   * @param within by how much at most, 0 to 15°; common practice, no source: 2 or 3° do not show in
   *     a plain knit
   * @return the lay
   * @throws DraftingException if it is out of range
   */
  public Lay withGrainWithin(Angle within) {
    double degrees = within.toDegrees();
    if (!(degrees >= 0 && degrees <= MOST_OFF_GRAIN)) {
      throw DraftingException.of("pieces cannot be turned off their grain so far")
          .value(within)
          .accepted("0 to 15°");
    }
    return new Lay(cloth, pieces, strips, within, matching);
  }

  /**
   * Puts a notch on a repeat of the cloth, so that stripes or checks meet where pieces are joined
   * there; name the notch that meets it on the other piece, too.
   *
   * @param piece the name of a piece
   * @param notch the label of a notch of it
   * @return the lay
   */
  public Lay matching(String piece, String notch) {
    Map<String, String> more = new TreeMap<>(matching);
    more.put(piece, notch);
    return new Lay(cloth, pieces, strips, grainWithin, more);
  }

  /**
   * How far pieces may be turned off their grain.
   *
   * @return zero unless it was said
   */
  public Angle grainWithin() {
    return grainWithin;
  }

  /**
   * Which notch of which piece is laid on the repeat of the cloth.
   *
   * @return an unmodifiable map from the names of pieces to the labels of notches
   */
  public Map<String, String> matching() {
    return matching;
  }

  /**
   * The cloth that is cut from.
   *
   * @return the cloth
   */
  public Cloth cloth() {
    return cloth;
  }

  /**
   * Lays everything, the same way every time.
   *
   * @param seed which of many equally good beginnings
   * @param rounds how long to search for a shorter lay; 0 for the first one found, 100 for a good
   *     one
   * @return a plan without overlaps
   * @throws DraftingException if there is nothing to lay, or a piece is wider than the cloth
   */
  public LayPlan plan(long seed, int rounds) {
    int[] done = {0};
    return LayPlanner.of(this)
        .plan(seed, () -> rounds == 0 ? 1 : Math.min(1, (double) done[0]++ / rounds), length -> {});
  }

  /**
   * The same pieces on the same cloth folded otherwise: what to try where a remnant does not
   * suffice.
   *
   * @param seed which of many equally good beginnings
   * @param rounds how long to search for each, as in {@link #plan(long, int)}
   * @return a plan for each of the other folds on which everything has room, the shortest first
   * @throws DraftingException if a piece or a notch that is to be matched is not there
   */
  public List<LayPlan> foldedOtherwise(long seed, int rounds) {
    checkMatching();
    List<LayPlan> plans = new ArrayList<>();
    for (Cloth other : otherFolds()) {
      try {
        plans.add(new Lay(other, pieces, strips, grainWithin, matching).plan(seed, rounds));
      } catch (DraftingException tooNarrow) {
        // a fold on which a piece has no room is no choice
      }
    }
    plans.sort(Comparator.comparing(LayPlan::length));
    return List.copyOf(plans);
  }

  /** The cloth folded in every other way that it can be; a tube stays a tube. */
  private List<Cloth> otherFolds() {
    List<Cloth> others = new ArrayList<>();
    for (Cloth.Fold other : Cloth.Fold.values()) {
      boolean possible =
          other != cloth.fold()
              && cloth.fold() != Cloth.Fold.TUBULAR
              && other != Cloth.Fold.TUBULAR
              && other != Cloth.Fold.PARTLY
              && !(other == Cloth.Fold.CROSSWISE && cloth.isOneWay());
      if (possible) {
        others.add(cloth.folded(other, Length.ZERO));
      }
    }
    return others;
  }

  /**
   * Lays everything and searches for some time for a shorter lay.
   *
   * @param seed which of many equally good beginnings
   * @param time how long to search
   * @param goOn is told the length of every shorter lay, and says whether to search on
   * @return a plan without overlaps
   * @throws DraftingException as {@link #plan(long, int)} does
   */
  public LayPlan plan(long seed, Duration time, Predicate<Length> goOn) {
    TimeBudget budget = new TimeBudget(time);
    return LayPlanner.of(this).plan(seed, budget::spent, length -> budget.tell(goOn, length));
  }

  private void checkMatching() {
    Map<String, CutPiece> byName = new LinkedHashMap<>();
    pieces.forEach(piece -> byName.put(piece.name(), piece));
    matching.forEach(
        (name, notch) -> {
          CutPiece piece = byName.get(name);
          if (piece == null) {
            throw DraftingException.of("no such piece is laid")
                .value(name)
                .accepted(String.join(", ", byName.keySet()));
          }
          LayParts.checkNotch(piece, notch);
        });
  }

  LayParts parts() {
    LayParts parts = new LayParts(cloth);
    checkMatching();
    for (CutPiece piece : pieces) {
      parts.add(piece, matching.get(piece.name()));
    }
    Map<StripSize, Integer> alike = new LinkedHashMap<>();
    for (StripSize strip : strips) {
      if (strip.along()) {
        parts.addStripAlong(strip.name(), strip.length(), strip.width());
      } else {
        alike.merge(strip, 1, Integer::sum);
      }
    }
    alike.forEach(
        (strip, times) -> parts.addStrips(strip.name(), strip.length(), strip.width(), times));
    return parts;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Cloth cloth,
      List<CutPiece> pieces,
      List<StripSize> strips,
      Angle grainWithin,
      Map<String, String> matching)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Lay lay = on(cloth).with(pieces).withGrainWithin(grainWithin);
      for (StripSize strip : strips) {
        lay = lay.with(strip);
      }
      for (Map.Entry<String, String> match : matching.entrySet()) {
        lay = lay.matching(match.getKey(), match.getValue());
      }
      return lay;
    }
  }

  private Object writeReplace() {
    return new Kept(cloth, pieces, strips, grainWithin, matching);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a lay is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Lay that
        && that.cloth.equals(cloth)
        && that.pieces.equals(pieces)
        && that.strips.equals(strips)
        && that.grainWithin.equals(grainWithin)
        && that.matching.equals(matching);
  }

  @Override
  public int hashCode() {
    return Objects.hash(cloth, pieces, strips, grainWithin, matching);
  }

  @Override
  public String toString() {
    return pieces.size() + " pieces and " + strips.size() + " strips on cloth " + cloth;
  }
}
