package dev.drafting.core.offset;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * How the parallels of two edges are brought together at the corner between them.
 *
 * <p>A treatment shapes the corner where the two parallels leave a gap. Where they overrun each
 * other they are trimmed where they really meet, whatever the treatment.
 *
 * <pre>{@code
 * CornerTreatment.mitre();  // => mitre up to 4 times the distance
 * CornerTreatment.squareTo(CornerSide.BEFORE);  // => square to the edge before
 * CornerTreatment.foldedBack(CornerSide.AFTER, List.of(Length.ZERO, Length.mm(20)));  // => folded back at 0 mm and 20 mm on the edge after
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class CornerTreatment implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double DEFAULT_LIMIT = 4;

  /**
   * The families of treatments.
   *
   * @since 0.1
   */
  public enum Kind {
    /** Both parallels run on until they meet. */
    MITRE,
    /** One allowance ends square to its edge. */
    SQUARE,
    /** A straight cut across the gap. */
    BEVEL,
    /** An arc about the corner. */
    ROUND,
    /** The wider allowance ends square at the corner. */
    STEP,
    /** Mirrored across the folds of a hem. */
    FOLDED_BACK
  }

  private final Kind kind;
  private final double limit;
  private final CornerSide side;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Length> folds;

  private CornerTreatment(Kind kind, double limit, CornerSide side, List<Length> folds) {
    this.kind = kind;
    this.limit = limit;
    this.side = side;
    this.folds = folds;
  }

  private static CornerTreatment plain(Kind kind) {
    return new CornerTreatment(kind, DEFAULT_LIMIT, CornerSide.BEFORE, List.of());
  }

  /**
   * Both parallels run on straight until they meet, up to four times the distance from the corner.
   *
   * @return the mitre with the usual limit
   */
  public static CornerTreatment mitre() {
    return plain(Kind.MITRE);
  }

  /**
   * Both parallels run on straight until they meet. A tip that would lie further from the corner
   * than the limit times the wider distance is cut off square to the line from corner to tip,
   * exactly at the limit, so that nothing jumps when a corner passes the limit.
   *
   * @param limit from 1; |corner to tip| / max(|d before|, |d after|)
   * @return the mitre
   * @throws DraftingException if the limit is under 1 or not finite
   */
  public static CornerTreatment mitre(double limit) {
    if (!(limit >= 1 && limit <= 1e6)) {
      throw DraftingException.of("a mitre has no such limit")
          .value(limit)
          .accepted("a number from 1 to 1000000");
    }
    return new CornerTreatment(Kind.MITRE, limit, CornerSide.BEFORE, List.of());
  }

  /**
   * The allowance of one edge ends square to that edge, where the parallel of the other edge
   * crosses it: an allowance pressed open stays within the garment's shape.
   *
   * @param side the edge whose allowance is cut square
   * @return the treatment
   */
  public static CornerTreatment squareTo(CornerSide side) {
    return new CornerTreatment(
        Kind.SQUARE, DEFAULT_LIMIT, Objects.requireNonNull(side, "side"), List.of());
  }

  /**
   * A straight cut from the end of one parallel to the start of the other.
   *
   * @return the treatment
   */
  public static CornerTreatment bevel() {
    return plain(Kind.BEVEL);
  }

  /**
   * An arc about the corner. Where the distances differ the arc has the wider one and runs into the
   * continuation of the narrower parallel.
   *
   * @return the treatment
   */
  public static CornerTreatment round() {
    return plain(Kind.ROUND);
  }

  /**
   * The wider allowance ends square to its edge at the corner and the narrower parallel runs into
   * that end. Where the corner turns too much for that, it is a mitre.
   *
   * @return the treatment
   */
  public static CornerTreatment step() {
    return plain(Kind.STEP);
  }

  /**
   * The corner of a hem that is turned up: the neighbour's parallel is mirrored across each fold,
   * so that the turned cloth meets the garment above it. Folded once: a fold at 0, the hem's
   * finished edge. Folded twice: folds at 0 and at the depth of the second fold.
   *
   * <p>Where the hem is a curve, the mirror is the tangent of the fold at the corner. The mirrored
   * line then differs from one that follows the turned curve by about half the depth squared over
   * the radius of the hem (1 mm at a depth of 20 mm and a radius of 200 mm), and less near the
   * fold.
   *
   * @param hem which of the two edges is the hem
   * @param folds distances of the folds from the hem's finished edge, outward, rising; at least one
   * @return the treatment
   * @throws DraftingException if there are no folds, or they are negative or do not rise
   */
  public static CornerTreatment foldedBack(CornerSide hem, List<Length> folds) {
    boolean rising = !folds.isEmpty() && !folds.get(0).isNegative();
    for (int i = 1; i < folds.size(); i++) {
      rising &= folds.get(i).compareTo(folds.get(i - 1)) > 0;
    }
    if (!rising) {
      throw DraftingException.of("the folds of a hem do not follow each other")
          .value(folds)
          .accepted("distances that start at 0 or more and rise");
    }
    return new CornerTreatment(
        Kind.FOLDED_BACK, DEFAULT_LIMIT, Objects.requireNonNull(hem, "hem"), List.copyOf(folds));
  }

  /**
   * The family of this treatment.
   *
   * @return what it was made as
   */
  public Kind kind() {
    return kind;
  }

  /**
   * How far a mitre reaches.
   *
   * @return a multiple of the wider distance, from 1; 4 where it was not set
   */
  public double limit() {
    return limit;
  }

  /**
   * The edge that is cut square, or that is the hem.
   *
   * @return a side; before where the treatment has none
   */
  public CornerSide side() {
    return side;
  }

  /**
   * Where a hem is folded.
   *
   * @return unmodifiable distances from its finished edge, outward, rising; none but for a corner
   *     that is folded back
   */
  public List<Length> folds() {
    return folds;
  }

  /**
   * The same corner when the outline is run through the other way, for instance when mirrored.
   *
   * @return the treatment with before and after exchanged
   */
  public CornerTreatment reversed() {
    if (kind != Kind.SQUARE && kind != Kind.FOLDED_BACK) {
      return this;
    }
    CornerSide other = side == CornerSide.BEFORE ? CornerSide.AFTER : CornerSide.BEFORE;
    return new CornerTreatment(kind, limit, other, folds);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Kind kind, double limit, CornerSide side, List<Length> folds)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return switch (kind) {
        case MITRE -> mitre(limit);
        case SQUARE -> squareTo(side);
        case BEVEL -> bevel();
        case ROUND -> round();
        case STEP -> step();
        case FOLDED_BACK -> foldedBack(side, folds);
      };
    }
  }

  private Object writeReplace() {
    return new Kept(kind, limit, side, folds);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a corner treatment is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CornerTreatment that
        && kind == that.kind
        && Double.compare(limit, that.limit) == 0
        && side == that.side
        && folds.equals(that.folds);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, limit, side, folds);
  }

  @Override
  public String toString() {
    String edge = side == CornerSide.BEFORE ? "the edge before" : "the edge after";
    return switch (kind) {
      case MITRE -> "mitre up to " + number(limit) + " times the distance";
      case SQUARE -> "square to " + edge;
      case BEVEL -> "bevel";
      case ROUND -> "round";
      case STEP -> "step";
      case FOLDED_BACK -> "folded back at " + foldText() + " on " + edge;
    };
  }

  private String foldText() {
    return String.join(" and ", folds.stream().map(Length::toString).toList());
  }

  private static String number(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }
}
