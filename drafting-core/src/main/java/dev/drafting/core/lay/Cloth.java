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
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A length of goods to cut from: how wide, folded how, and what has to be heeded on it. Knits are
 * laid one way unless it is said otherwise, because of shading and the direction in which ladders
 * run.
 *
 * <pre>{@code
 * Cloth.of(Length.cm(150)).withEdge(Length.cm(1)).foldedLengthwise();
 * // => 150 cm wide, 148 cm of it used, folded lengthwise, one way
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Cloth implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How the cloth is folded before pieces are laid on it. */
  public enum Fold {
    /** Not at all: everything is cut from one layer, and what lies on a fold is opened out. */
    SINGLE("in one layer"),
    /** Selvage on selvage: pieces are cut twice, or on the fold. */
    LENGTHWISE("folded lengthwise"),
    /** Both selvages turned to the middle: two layers with a fold on either side. */
    TO_THE_MIDDLE("both selvages folded to the middle"),
    /** One selvage turned over by some way: two layers there, one beyond. */
    PARTLY("partly folded"),
    /** End on end: pieces are cut twice, none on the fold. */
    CROSSWISE("folded crosswise"),
    /** As it was knitted, two layers with a fold on either side. */
    TUBULAR("tubular");

    private final String words;

    Fold(String words) {
      this.words = words;
    }

    /**
     * Whether the cloth has a fold along its lower side, that from which places are measured.
     *
     * @return true for all folds along the cloth
     */
    public boolean isBelow() {
      return this == LENGTHWISE || this == PARTLY || isAbove();
    }

    /**
     * Whether it has a fold along its upper side too.
     *
     * @return true for cloth folded to the middle, and for a tube
     */
    public boolean isAbove() {
      return this == TO_THE_MIDDLE || this == TUBULAR;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  /**
   * A place that nothing may be cut from.
   *
   * @param fromEnd how far along the cloth it begins, from the cut end
   * @param fromSide how far across it begins, from the fold of folded cloth, else from the selvage
   * @param along how long it is
   * @param across how wide it is
   */
  public record Flaw(Length fromEnd, Length fromSide, Length along, Length across)
      implements Serializable {

    /**
     * Refuses what is no place.
     *
     * @param fromEnd how far along the cloth it begins
     * @param fromSide how far across it begins
     * @param along how long it is
     * @param across how wide it is
     */
    public Flaw {
      if (fromEnd.isNegative() || fromSide.isNegative()) {
        throw DraftingException.of("a flaw lies off the cloth")
            .value(fromEnd + ", " + fromSide)
            .accepted("zero or more from the end and from the side");
      }
      requirePositive("a flaw", along);
      requirePositive("a flaw", across);
    }
  }

  private final Length width;
  private final Length edge;
  private final Fold fold;
  private final Length turnedOver;
  private final @Nullable Length length;
  private final boolean oneWay;
  private final Length spacing;
  private final Length repeatAlong;
  private final Length repeatAcross;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Flaw> flaws;

  private Cloth(Builder built) {
    width = built.width;
    edge = built.edge;
    fold = built.fold;
    turnedOver = built.turnedOver;
    length = built.length;
    oneWay = built.oneWay;
    spacing = built.spacing;
    repeatAlong = built.repeatAlong;
    repeatAcross = built.repeatAcross;
    flaws = List.copyOf(built.flaws);
  }

  /** The same cloth with one thing changed. */
  private static final class Builder {
    private Length width = Length.ZERO;
    private Length edge = Length.ZERO;
    private Fold fold = Fold.SINGLE;
    private Length turnedOver = Length.ZERO;
    private @Nullable Length length;
    private boolean oneWay = true;
    private Length spacing = Length.ZERO;
    private Length repeatAlong = Length.ZERO;
    private Length repeatAcross = Length.ZERO;
    private List<Flaw> flaws = List.of();
  }

  private Builder changed() {
    Builder builder = new Builder();
    builder.width = width;
    builder.edge = edge;
    builder.fold = fold;
    builder.turnedOver = turnedOver;
    builder.length = length;
    builder.oneWay = oneWay;
    builder.spacing = spacing;
    builder.repeatAlong = repeatAlong;
    builder.repeatAcross = repeatAcross;
    builder.flaws = flaws;
    return builder;
  }

  private static void requirePositive(String what, Length length) {
    if (!length.isPositive()) {
      throw DraftingException.of(what + " has no usable size")
          .value(length)
          .accepted("over 0 mm, to 100 m");
    }
  }

  /**
   * Cloth as it comes, in one layer, one way, as long as needed.
   *
   * @param width from selvage to selvage; of tubular cloth as it lies flat
   * @return the cloth
   * @throws DraftingException if the width is not above zero, or over 100 m
   */
  public static Cloth of(Length width) {
    Builder builder = new Builder();
    requirePositive("a cloth", width);
    builder.width = width;
    return new Cloth(builder);
  }

  /**
   * The same cloth with edges that cannot be used, such as a selvage that is glued or rolls.
   *
   * @param eachSide how wide at each selvage
   * @return the cloth
   * @throws DraftingException if nothing of the width is left
   */
  public Cloth withEdge(Length eachSide) {
    if (eachSide.isNegative() || eachSide.times(2).compareTo(width) >= 0) {
      throw DraftingException.of("the selvages leave nothing of the cloth")
          .value(eachSide)
          .accepted("less than half of " + width.text(LengthUnit.CM));
    }
    Builder builder = changed();
    builder.edge = eachSide;
    return new Cloth(builder);
  }

  /**
   * A remnant.
   *
   * @param whole how long it is
   * @return the cloth with this length
   * @throws DraftingException if it is not above zero
   */
  public Cloth withLength(Length whole) {
    Builder builder = changed();
    requirePositive("a remnant", whole);
    builder.length = whole;
    return new Cloth(builder);
  }

  /**
   * The cloth folded with its right sides together, selvage on selvage.
   *
   * @return the folded cloth
   */
  public Cloth foldedLengthwise() {
    return folded(Fold.LENGTHWISE, Length.ZERO);
  }

  /**
   * The cloth with both selvages turned to the middle, so that pieces lie on a fold on either side.
   *
   * @return the folded cloth
   */
  public Cloth foldedToTheMiddle() {
    return folded(Fold.TO_THE_MIDDLE, Length.ZERO);
  }

  /**
   * The cloth with one selvage turned over, as far as the pieces on the fold need.
   *
   * @param over how far
   * @return the folded cloth
   * @throws DraftingException if it is turned over by more than half of its usable width
   */
  public Cloth foldedOver(Length over) {
    requirePositive("a fold", over);
    if (over.times(2).compareTo(usableWidth()) > 0) {
      throw DraftingException.of("the cloth cannot be turned over so far")
          .value(over)
          .accepted("up to half of " + usableWidth().text(LengthUnit.CM));
    }
    return folded(Fold.PARTLY, over);
  }

  /**
   * The cloth folded end on end. The upper layer then runs the other way, so it must not be cloth
   * that has to be laid one way.
   *
   * @return the folded cloth
   * @throws DraftingException if the cloth is laid one way
   */
  public Cloth foldedCrosswise() {
    if (oneWay) {
      throw DraftingException.of("folded crosswise, the upper layer would run the other way")
          .accepted("a cloth that may be laid both ways");
    }
    return folded(Fold.CROSSWISE, Length.ZERO);
  }

  /**
   * The cloth as it was knitted, in a tube.
   *
   * @return the tubular cloth
   */
  public Cloth tubular() {
    return folded(Fold.TUBULAR, Length.ZERO);
  }

  Cloth folded(Fold newFold, Length over) {
    Builder builder = changed();
    builder.fold = newFold;
    builder.turnedOver = over;
    return new Cloth(builder);
  }

  /**
   * The cloth without direction: pieces may be turned end for end.
   *
   * @return the cloth
   */
  public Cloth bothWays() {
    Builder builder = changed();
    builder.oneWay = false;
    return new Cloth(builder);
  }

  /**
   * The cloth with room between pieces.
   *
   * @param between how far they stay apart, at least
   * @return the cloth
   * @throws DraftingException if it is negative
   */
  public Cloth withSpacing(Length between) {
    if (between.isNegative()) {
      throw DraftingException.of("pieces cannot lie closer than touching")
          .value(between)
          .accepted("zero or more");
    }
    Builder builder = changed();
    builder.spacing = between;
    return new Cloth(builder);
  }

  /**
   * Cloth with stripes or checks: hems lie on a repeat along the cloth and the middles of pieces on
   * one across it, or notches that {@link Lay#matching} names. No piece is turned end for end.
   *
   * @param along how far a repeat is along the cloth; zero for stripes that run along it
   * @param across how far a repeat is across the cloth; zero for stripes that run across
   * @return the cloth
   * @throws DraftingException if a repeat is negative
   */
  public Cloth withRepeat(Length along, Length across) {
    if (along.isNegative() || across.isNegative()) {
      throw DraftingException.of("a repeat is negative")
          .value(along + ", " + across)
          .accepted("zero or more");
    }
    Builder builder = changed();
    builder.repeatAlong = along;
    builder.repeatAcross = across;
    return new Cloth(builder);
  }

  /**
   * The cloth with one more flaw.
   *
   * @param flaw the place to leave out
   * @return the cloth
   */
  public Cloth withFlaw(Flaw flaw) {
    Builder builder = changed();
    builder.flaws = new ArrayList<>(flaws);
    builder.flaws.add(Objects.requireNonNull(flaw, "flaw"));
    return new Cloth(builder);
  }

  /**
   * From selvage to selvage.
   *
   * @return the width
   */
  public Length width() {
    return width;
  }

  /**
   * What of either side cannot be used, such as a selvage.
   *
   * @return zero or more
   */
  public Length edge() {
    return edge;
  }

  /**
   * What of the width can be used, between the edges that cannot.
   *
   * @return the usable width
   */
  public Length usableWidth() {
    return width.minus(edge.times(2));
  }

  /**
   * How wide the cloth lies on the table, between what cannot be used.
   *
   * @return half of the usable width if it is folded lengthwise or to the middle, less what is
   *     turned over if partly
   */
  public Length tableWidth() {
    return switch (fold) {
      case LENGTHWISE, TO_THE_MIDDLE -> usableWidth().dividedBy(2);
      case PARTLY -> usableWidth().minus(turnedOver);
      default -> usableWidth();
    };
  }

  /**
   * How it is folded.
   *
   * @return the fold
   */
  public Fold fold() {
    return fold;
  }

  /**
   * How far it is turned over if it is partly folded.
   *
   * @return zero unless it is
   */
  public Length turnedOver() {
    return turnedOver;
  }

  /**
   * How long a remnant is.
   *
   * @return empty if as much can be bought as is needed
   */
  public Optional<Length> length() {
    return Optional.ofNullable(length);
  }

  /**
   * Whether all pieces must lie the same way.
   *
   * @return true unless it may be laid both ways
   */
  public boolean isOneWay() {
    return oneWay;
  }

  /**
   * How far pieces stay apart.
   *
   * @return zero or more
   */
  public Length spacing() {
    return spacing;
  }

  /**
   * The repeat along the cloth.
   *
   * @return zero if there is none
   */
  public Length repeatAlong() {
    return repeatAlong;
  }

  /**
   * The repeat across the cloth.
   *
   * @return zero if there is none
   */
  public Length repeatAcross() {
    return repeatAcross;
  }

  /**
   * The places that nothing may be cut from.
   *
   * @return an unmodifiable list
   */
  public List<Flaw> flaws() {
    return flaws;
  }

  private List<Object> parts() {
    List<Object> parts = new ArrayList<>(List.of(width, edge, fold, turnedOver, oneWay));
    parts.addAll(List.of(Optional.ofNullable(length), spacing, repeatAlong, repeatAcross, flaws));
    return parts;
  }

  private Object writeReplace() {
    return KeptCloth.of(this);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a cloth is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Cloth that && that.parts().equals(parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(width.text(LengthUnit.CM) + " wide");
    if (!edge.isZero()) {
      text.append(", ").append(usableWidth().text(LengthUnit.CM)).append(" of it used");
    }
    if (length != null) {
      text.append(", ").append(length.text(LengthUnit.CM)).append(" long");
    }
    text.append(", ").append(fold).append(oneWay ? ", one way" : ", both ways");
    if (!repeatAlong.isZero() || !repeatAcross.isZero()) {
      text.append(", with a repeat");
    }
    if (!flaws.isEmpty()) {
      text.append(", ").append(flaws.size()).append(flaws.size() == 1 ? " flaw" : " flaws");
    }
    return text.toString();
  }
}
