package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * One horizontal line of text. Its point lies on the base line of the letters.
 *
 * <pre>{@code
 * Label label = Label.of("FOLD", new Point(10, 20), Length.mm(3.5)).withAnchor(Anchor.MIDDLE);
 * label;  // => FOLD
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Label implements Element {
  private static final long serialVersionUID = 1L;

  private final String text;
  private final Point at;
  private final Length height;
  private final Anchor anchor;
  private final boolean finding;

  private Label(String text, Point at, Length height, Anchor anchor, boolean finding) {
    this.text = Objects.requireNonNull(text, "text");
    this.at = Objects.requireNonNull(at, "at");
    this.height = height;
    this.anchor = Objects.requireNonNull(anchor, "anchor");
    this.finding = finding;
  }

  /**
   * A text that begins at a point.
   *
   * @param text one line; control characters are printed as blanks
   * @param at the left end of the base line, in mm
   * @param height the height of a capital letter
   * @return the label
   * @throws DraftingException if the height is not over zero
   */
  public static Label of(String text, Point at, Length height) {
    if (!height.isPositive()) {
      throw DraftingException.of("letters have no height").value(height).accepted("over 0 mm");
    }
    return new Label(Lettering.oneLine(text), at, height, Anchor.START, false);
  }

  /**
   * The same text held at another part.
   *
   * @param newAnchor the part that sits at the point
   * @return the label
   */
  public Label withAnchor(Anchor newAnchor) {
    return new Label(text, at, height, newAnchor, finding);
  }

  /**
   * The same text as part of a finding: printed in the accent colour.
   *
   * @return the label
   */
  public Label asFinding() {
    return new Label(text, at, height, anchor, true);
  }

  /**
   * What is written.
   *
   * @return one line of text
   */
  public String text() {
    return text;
  }

  /**
   * Where it is held.
   *
   * @return a point on the base line, in mm
   */
  public Point at() {
    return at;
  }

  /**
   * How large the letters are.
   *
   * @return the height of a capital
   */
  public Length height() {
    return height;
  }

  /**
   * Which part of the text sits at the point.
   *
   * @return the anchor
   */
  public Anchor anchor() {
    return anchor;
  }

  /**
   * Whether the text belongs to a finding.
   *
   * @return true if it is printed in the accent colour
   */
  public boolean isFinding() {
    return finding;
  }

  /**
   * The left end of the base line.
   *
   * @return where the first letter begins, in mm
   */
  public Point start() {
    double width = Lettering.width(text, height).toMm();
    double share = anchor == Anchor.START ? 0 : anchor == Anchor.MIDDLE ? 0.5 : 1;
    return new Point(at.x() - share * width, at.y());
  }

  @Override
  public Label map(Transform transform) {
    return new Label(
        text, transform.apply(at), height.times(Math.abs(transform.scale())), anchor, finding);
  }

  @Override
  public Box bounds() {
    Point left = start();
    double width = Lettering.width(text, height).toMm();
    double size = height.toMm();
    return new Box(
        left.x(),
        left.y() - Lettering.DESCENT * size,
        left.x() + width,
        left.y() + Lettering.ASCENT * size);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String text, Point at, Length height, Anchor anchor, boolean finding)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Label label = of(text, at, height).withAnchor(anchor);
      return finding ? label.asFinding() : label;
    }
  }

  private Object writeReplace() {
    return new Kept(text, at, height, anchor, finding);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a label is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Label that
        && text.equals(that.text)
        && at.equals(that.at)
        && height.equals(that.height)
        && anchor == that.anchor
        && finding == that.finding;
  }

  @Override
  public int hashCode() {
    return Objects.hash(text, at, height, anchor, finding);
  }

  @Override
  public String toString() {
    return text;
  }
}
