package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A line on a piece that is transferred to the cloth and not cut: a pocket's place, another size's
 * neckline.
 *
 * <pre>{@code
 * MarkingLine.of("waist", Curve.line(new Point(0, 250), new Point(230, 250)));  // => marking line waist, 230 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class MarkingLine implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String label;
  private final Curve curve;

  private MarkingLine(String label, Curve curve) {
    this.label = label;
    this.curve = curve;
  }

  /**
   * A marking line.
   *
   * @param label what is printed beside it
   * @param curve where it lies, in the piece's coordinates
   * @return the line
   * @throws DraftingException if the label is empty
   */
  public static MarkingLine of(String label, Curve curve) {
    if (label.isBlank()) {
      throw DraftingException.of("a marking line has no label").accepted("a few words");
    }
    return new MarkingLine(label, Objects.requireNonNull(curve, "curve"));
  }

  /**
   * What is printed beside the line.
   *
   * @return the label
   */
  public String label() {
    return label;
  }

  /**
   * Where the line lies.
   *
   * @return the curve, in the piece's coordinates
   */
  public Curve curve() {
    return curve;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String label, Curve curve) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(label, curve);
    }
  }

  private Object writeReplace() {
    return new Kept(label, curve);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a marking line is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MarkingLine
        && ((MarkingLine) other).label.equals(label)
        && ((MarkingLine) other).curve.equals(curve);
  }

  @Override
  public int hashCode() {
    return Objects.hash(label, curve);
  }

  @Override
  public String toString() {
    return "marking line " + label + ", " + Text.mm(curve.length());
  }
}
