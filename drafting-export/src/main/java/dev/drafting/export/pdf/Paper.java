package dev.drafting.export.pdf;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A sheet of paper, upright.
 *
 * <pre>{@code
 * Paper.A4;  // => A4, 210 x 297 mm
 * Paper.LETTER.width();  // => 215.9 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Paper implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length LEAST_WIDTH = Length.mm(200);
  private static final Length LEAST_HEIGHT = Length.mm(270);

  /** A4 of ISO 216: 210 by 297 mm. */
  public static final Paper A4 = of("A4", Length.mm(210), Length.mm(297));

  /** US Letter (ANSI A): 8.5 by 11 in. */
  public static final Paper LETTER = of("Letter", Length.inches(8.5), Length.inches(11));

  /** A3 of ISO 216: 297 by 420 mm. */
  public static final Paper A3 = of("A3", Length.mm(297), Length.mm(420));

  /** US Legal: 8.5 by 14 in. */
  public static final Paper LEGAL = of("Legal", Length.inches(8.5), Length.inches(14));

  /** A0 of ISO 216: 841 by 1189 mm, as copy shops print it. */
  public static final Paper A0 = of("A0", Length.mm(841), Length.mm(1189));

  private final String name;
  private final Length width;
  private final Length height;

  private Paper(String name, Length width, Length height) {
    this.name = name;
    this.width = width;
    this.height = height;
  }

  /**
   * A sheet of another size.
   *
   * @param name what the maker asks for in a shop
   * @param width the shorter side, at least 200 mm
   * @param height the longer side, at least 270 mm
   * @return the paper
   * @throws DraftingException if the test squares do not fit on it, or a side is over 5 m
   */
  public static Paper of(String name, Length width, Length height) {
    Objects.requireNonNull(name, "name");
    Length longest = Length.mm(5000);
    boolean fits = width.compareTo(LEAST_WIDTH) >= 0 && height.compareTo(LEAST_HEIGHT) >= 0;
    if (!fits || width.max(height).compareTo(longest) > 0) {
      throw DraftingException.of("the paper does not serve")
          .at(name)
          .value(width + " x " + height)
          .accepted("from 200 x 270 mm to 5 x 5 m");
    }
    return new Paper(name, width, height);
  }

  /**
   * What the paper is called.
   *
   * @return for instance "A4"
   */
  public String name() {
    return name;
  }

  /**
   * The side that lies across when the sheet is upright.
   *
   * @return the width
   */
  public Length width() {
    return width;
  }

  /**
   * The side that stands up when the sheet is upright.
   *
   * @return the height
   */
  public Length height() {
    return height;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String name, Length width, Length height) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(name, width, height);
    }
  }

  private Object writeReplace() {
    return new Kept(name, width, height);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a paper is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Paper that
        && name.equals(that.name)
        && width.equals(that.width)
        && height.equals(that.height);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, width, height);
  }

  @Override
  public String toString() {
    return name + ", " + number(width) + " x " + height;
  }

  private static String number(Length length) {
    return length.toString().replace(" mm", "");
  }
}
