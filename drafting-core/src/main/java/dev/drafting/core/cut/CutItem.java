package dev.drafting.core.cut;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Piece;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * One line of the cut list: so many pieces or strips of this size from this cloth.
 *
 * <pre>{@code
 * CutItem.ofStrip("neck band", "rib", Length.mm(560), Length.mm(40), "cut 1, stretch along the strip");
 * // => neck band: 1 from rib cloth, 560 x 40 mm, cut 1, stretch along the strip
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class CutItem implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final String cloth;
  private final int count;
  private final Length length;
  private final Length width;
  private final String how;

  private CutItem(String name, String cloth, int count, Length length, Length width, String how) {
    this.name = Objects.requireNonNull(name, "name");
    this.cloth = Objects.requireNonNull(cloth, "cloth");
    this.count = count;
    this.length = length;
    this.width = width;
    this.how = Objects.requireNonNull(how, "how");
  }

  /**
   * A piece of the pattern. Its size is that of the whole piece with all allowances, opened out if
   * it is on the fold: length along the grain, width across it.
   *
   * @param cut the piece as it is cut
   * @return the line of the cut list
   */
  public static CutItem ofPiece(CutPiece cut) {
    Piece piece = cut.piece();
    Transform upright = Transform.rotation(new Point(0, 0), Angle.degrees(90).minus(piece.grain()));
    Box box = cut.cutLine().map(upright).bounds();
    if (piece.cutting().kind() == Cutting.Kind.ON_FOLD) {
      box = box.union(cut.cutLine().mirrored().map(upright).bounds());
    }
    return new CutItem(
        piece.name(),
        piece.cloth(),
        piece.cutting().pieces(),
        box.height(),
        box.width(),
        piece.cutting().describe());
  }

  /**
   * A strip for a band or a binding.
   *
   * @param name what it is for
   * @param cloth the cloth it is cut from, by its part in the garment
   * @param length how long it is cut, with what its ends need to be joined
   * @param width how wide it is cut
   * @param how how it is cut: "cut 1, greatest stretch along the strip"
   * @return the line of the cut list
   * @throws DraftingException if length or width is not above zero
   */
  public static CutItem ofStrip(
      String name, String cloth, Length length, Length width, String how) {
    if (!length.isPositive() || !width.isPositive()) {
      throw DraftingException.of("a strip has no size")
          .at(name)
          .value(length + " by " + width)
          .accepted("length and width above zero");
    }
    return new CutItem(name, cloth, 1, length, width, how);
  }

  /**
   * The same line for several that are cut alike.
   *
   * @param newCount how many there are in the end; 1 or more
   * @return the line of the cut list
   * @throws DraftingException if there are none
   */
  public CutItem withCount(int newCount) {
    if (newCount < 1) {
      throw DraftingException.of("nothing is to be cut")
          .at(name)
          .value(newCount)
          .accepted("1 or more");
    }
    return new CutItem(name, cloth, newCount, length, width, how);
  }

  /**
   * What is cut.
   *
   * @return the name of the piece or strip
   */
  public String name() {
    return name;
  }

  /**
   * What cloth it is cut from.
   *
   * @return the cloth by its part in the garment
   */
  public String cloth() {
    return cloth;
  }

  /**
   * How many pieces of cloth there are in the end; a pair counts twice.
   *
   * @return 1 or more
   */
  public int count() {
    return count;
  }

  /**
   * The size along the grain, or along a strip.
   *
   * @return the length of the rectangle that it needs
   */
  public Length length() {
    return length;
  }

  /**
   * The size across.
   *
   * @return the width of the rectangle that it needs
   */
  public Length width() {
    return width;
  }

  /**
   * The size as it is printed.
   *
   * @return for instance "560 x 40 mm"
   */
  public String size() {
    String along = length.text(LengthUnit.MM, 0).replace(" mm", "");
    return along + " x " + width.text(LengthUnit.MM, 0);
  }

  /**
   * How it is cut.
   *
   * @return for instance "cut 1 on the fold"
   */
  public String how() {
    return how;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String name, String cloth, int count, Length length, Length width, String how)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (count < 1 || !length.isPositive() || !width.isPositive()) {
        throw DraftingException.of("a part has no size, or is never cut")
            .at(name)
            .value(count + " of " + length + " by " + width)
            .accepted("one or more, length and width above zero");
      }
      return new CutItem(name, cloth, count, length, width, how);
    }
  }

  private Object writeReplace() {
    return new Kept(name, cloth, count, length, width, how);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a part to cut is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CutItem that
        && that.name.equals(name)
        && that.cloth.equals(cloth)
        && that.count == count
        && that.length.equals(length)
        && that.width.equals(width)
        && that.how.equals(how);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, cloth, count, length, width, how);
  }

  @Override
  public String toString() {
    return name + ": " + count + " from " + cloth + " cloth, " + size() + ", " + how;
  }
}
