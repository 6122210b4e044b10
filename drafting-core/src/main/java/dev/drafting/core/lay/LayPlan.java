package dev.drafting.core.lay;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Where every piece and strip lies on the cloth, none on another, and how much cloth that takes.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * LayPlan plan = Lay.on(Cloth.of(Length.cm(160)).foldedToTheMiddle()).with(CutPlan.of(top).pieces()).plan(1, 20);
 * plan.pieces().size();  // => 2
 * plan.fits();  // => true
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class LayPlan implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double LARGEST_SHARE = 0.5;
  private static final double ROUNDED_TO_MM = 100;

  private final Lay lay;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<LaidPiece> pieces;

  private final Length length;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> notes;

  private LayPlan(Lay lay, List<LaidPiece> pieces, Length length, List<String> notes) {
    this.lay = Objects.requireNonNull(lay, "lay");
    this.pieces = List.copyOf(pieces);
    this.length = length;
    this.notes = List.copyOf(notes);
  }

  /**
   * A plan as it was kept. Whether the pieces still lie where they may is not looked at again.
   *
   * @param lay what was to be laid
   * @param pieces where everything lies
   * @param length how much cloth that takes, over zero
   * @param notes what is to be known of it
   * @return the plan
   * @throws DraftingException if nothing is laid or the length is not over zero
   */
  public static LayPlan of(Lay lay, List<LaidPiece> pieces, Length length, List<String> notes) {
    if (pieces.isEmpty() || !length.isPositive()) {
      throw DraftingException.of("a lay plan is empty")
          .value(pieces.size() + " pieces on " + length)
          .accepted("one piece or more on some length of cloth");
    }
    return new LayPlan(lay, pieces, length, notes);
  }

  /** The same plan with a note of what a remnant is short of, if it is. */
  LayPlan withShortage() {
    if (fits()) {
      return this;
    }
    List<String> more = new ArrayList<>(notes);
    Length whole = cloth().length().orElse(Length.ZERO);
    more.add(
        "the cloth is "
            + length.minus(whole).text(LengthUnit.CM)
            + " too short for "
            + String.join(", ", beyond())
            + "; cut less from it, fold it otherwise or piece it");
    return new LayPlan(lay, pieces, length, more);
  }

  /**
   * What was to be laid, and on what.
   *
   * @return the lay
   */
  public Lay lay() {
    return lay;
  }

  /**
   * The cloth that is cut from.
   *
   * @return the cloth
   */
  public Cloth cloth() {
    return lay.cloth();
  }

  /**
   * Every piece in its place, in the order in which they were given; what is cut several times is
   * there several times.
   *
   * @return an unmodifiable list
   */
  public List<LaidPiece> pieces() {
    return pieces;
  }

  /**
   * How much cloth the lay takes, along the selvage; of cloth folded crosswise both layers.
   *
   * @return the length as it is cut
   */
  public Length length() {
    return length;
  }

  /**
   * How much to buy: the length before the cloth was washed, and a share of it for ends that were
   * not cut square, rounded up to 10 cm.
   *
   * @param shrinkage what the cloth loses in length when it is washed before it is cut, as a share
   * @param endLoss what the ends lose, as a share; 2 to 5 % are usual
   * @return the length to buy
   * @throws DraftingException if a share is negative or over a half
   */
  public Length toBuy(double shrinkage, double endLoss) {
    check("shrinkage", shrinkage);
    check("end loss", endLoss);
    double mm = length.toMm() / (1 - shrinkage) * (1 + endLoss);
    return Length.mm(Math.ceil(mm / ROUNDED_TO_MM - 1e-9) * ROUNDED_TO_MM);
  }

  private static void check(String what, double share) {
    if (!(share >= 0 && share <= LARGEST_SHARE)) {
      throw DraftingException.of("the " + what + " is out of range")
          .value(share)
          .accepted("0 to 0.5");
    }
  }

  /**
   * How much of the cloth ends up in pieces, of its full width and the length of the lay.
   *
   * @return a share from 0 to 1
   */
  public double use() {
    double area = 0;
    for (LaidPiece piece : pieces) {
      area += Math.abs(piece.cutLine().areaSquareMm()) * piece.layers();
    }
    double layers = cloth().fold() == Cloth.Fold.TUBULAR ? 2 : 1;
    return area / (length.toMm() * cloth().width().toMm() * layers);
  }

  /**
   * Whether the lay is no longer than the cloth.
   *
   * @return true for cloth that is bought as long as needed
   */
  public boolean fits() {
    return cloth().length().map(whole -> length.compareTo(whole) <= 0).orElse(true);
  }

  /**
   * What reaches beyond the end of a remnant.
   *
   * @return the names of those pieces; empty if it suffices
   */
  public List<String> beyond() {
    double end =
        cloth().length().map(Length::toMm).orElse(Double.POSITIVE_INFINITY)
            / (cloth().fold() == Cloth.Fold.CROSSWISE ? 2 : 1);
    return pieces.stream()
        .filter(piece -> piece.fromEnd().plus(piece.along()).toMm() > end)
        .map(LaidPiece::name)
        .distinct()
        .toList();
  }

  /**
   * What is left of a remnant behind the lay.
   *
   * @return its length; zero if nothing is left or the cloth is bought as long as needed
   */
  public Length remainder() {
    return cloth().length().map(whole -> whole.minus(length).max(Length.ZERO)).orElse(Length.ZERO);
  }

  /**
   * What is left between the pieces in rectangles, and of a remnant behind them: large enough for a
   * pocket, a strip or a trial seam. Found on a grid of 20 mm, so each may be a little larger.
   *
   * @param least how long and how wide a piece has to be to be kept
   * @return the largest first, none on another; as they lie on the table, in all layers there
   * @throws DraftingException if it is under 20 mm
   */
  public List<Remnant> remnants(Length least) {
    return new Remnants(this, least).all();
  }

  /**
   * What else has to be known to cut it: strips that are pieced, pieces cut from one layer of two,
   * and what a remnant is short of.
   *
   * @return sentences without a full stop
   */
  public List<String> notes() {
    return notes;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Lay lay, List<LaidPiece> pieces, Length length, List<String> notes)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(lay, pieces, length, notes);
    }
  }

  private Object writeReplace() {
    return new Kept(lay, pieces, length, notes);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a lay plan is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LayPlan that
        && that.lay.equals(lay)
        && that.pieces.equals(pieces)
        && that.length.equals(length)
        && that.notes.equals(notes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(lay, pieces, length, notes);
  }

  @Override
  public String toString() {
    return pieces.size()
        + " pieces on "
        + length.text(LengthUnit.CM)
        + " of cloth "
        + cloth()
        + "; "
        + Math.round(100 * use())
        + " % of it used";
  }
}
