package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A stitch as it is set on the machine: its type, how long and how wide, and by how much the
 * machine feeds the lower layer faster.
 *
 * <p>The lengths that are set unless others are given: 2.5 mm (about 10 stitches to an inch), for a
 * zigzag 1.4 mm at 3.5 mm width, for an overlock 2.5 mm, for a cover stitch or twin needle 3 mm
 * (trade articles; common practice).
 *
 * <pre>{@code
 * Stitch.of(StitchType.ZIGZAG);  // => zigzag (304), 1.4 mm long, 3.5 mm wide
 * Stitch.of(StitchType.TWIN_NEEDLE).withWidth(Length.mm(4));  // => twin needle, 3 mm long, rows 4 mm apart
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Stitch implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double LONGEST_MM = 8;
  private static final double WIDEST_MM = 12;

  private final StitchType type;
  private final Length length;
  private final Length width;

  private Stitch(StitchType type, Length length, Length width) {
    this.type = type;
    this.length = length;
    this.width = width;
  }

  /**
   * A stitch with the usual length and width of its type.
   *
   * @param type the sort of stitch
   * @return the stitch
   */
  public static Stitch of(StitchType type) {
    return switch (type) {
      case LOCKSTITCH, CHAIN -> new Stitch(type, Length.mm(2.5), Length.ZERO);
      case ZIGZAG -> new Stitch(type, Length.mm(1.4), Length.mm(3.5));
      case TWIN_NEEDLE -> new Stitch(type, Length.mm(3), Length.mm(4));
      case COVER_TWO, COVER_THREE -> new Stitch(type, Length.mm(3), Length.mm(5));
      case OVERLOCK_THREE -> new Stitch(type, Length.mm(2.5), Length.mm(5));
      case OVERLOCK_FOUR, OVERLOCK_AND_CHAIN, FLAT_TWO, FLAT_THREE, FLAT_FOUR ->
          new Stitch(type, Length.mm(2.5), Length.mm(6));
    };
  }

  /**
   * The same stitch with another length.
   *
   * @param newLength more than zero, at most 8 mm
   * @return the stitch
   * @throws DraftingException if the length is out of range
   */
  public Stitch withLength(Length newLength) {
    if (!newLength.isPositive() || newLength.toMm() > LONGEST_MM) {
      throw DraftingException.of("the stitch length is out of range")
          .value(newLength)
          .accepted("more than 0 mm, at most 8 mm");
    }
    return new Stitch(type, newLength, width);
  }

  /**
   * The same stitch with another width: that of a zigzag or overlock, or from needle to needle.
   *
   * @param newWidth zero for a single row, at most 12 mm
   * @return the stitch
   * @throws DraftingException if the width is out of range
   */
  public Stitch withWidth(Length newWidth) {
    if (newWidth.isNegative() || newWidth.toMm() > WIDEST_MM) {
      throw DraftingException.of("the stitch width is out of range")
          .value(newWidth)
          .accepted("0 mm to 12 mm");
    }
    return new Stitch(type, length, newWidth);
  }

  /**
   * The sort of stitch.
   *
   * @return its type
   */
  public StitchType type() {
    return type;
  }

  /**
   * The length of one stitch.
   *
   * @return more than zero
   */
  public Length length() {
    return length;
  }

  /**
   * The width, or the gap between the needles.
   *
   * @return zero for a single row
   */
  public Length width() {
    return width;
  }

  /**
   * Tells whether its needles sew rows that are seen side by side.
   *
   * @return true for a twin needle and for cover stitches
   */
  public boolean hasRows() {
    return type == StitchType.TWIN_NEEDLE
        || type == StitchType.COVER_TWO
        || type == StitchType.COVER_THREE;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(StitchType type, Length length, Length width) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(type).withLength(length).withWidth(width);
    }
  }

  private Object writeReplace() {
    return new Kept(type, length, width);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a stitch is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Stitch
        && ((Stitch) other).type == type
        && ((Stitch) other).length.equals(length)
        && ((Stitch) other).width.equals(width);
  }

  @Override
  public int hashCode() {
    return Objects.hash(type, length, width);
  }

  @Override
  public String toString() {
    String text = type + ", " + Wording.fine(length) + " long";
    if (width.isZero()) {
      return text;
    }
    return text
        + (hasRows()
            ? ", rows " + Wording.fine(width) + " apart"
            : ", " + Wording.fine(width) + " wide");
  }
}
