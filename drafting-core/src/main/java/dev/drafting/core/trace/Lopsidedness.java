package dev.drafting.core.trace;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * How far the left side of one edge of a whole tracing lies from its right side when the piece is
 * folded along its best fold line, measured between the fitted edges and square to them.
 *
 * <pre>{@code
 * Tracing apron = Tracing.of("apron", Extent.WHOLE, List.of(TracedEdge.of("hem", -60, 0, -30, 0, 0, 0, 30, 0, 62, 0), TracedEdge.of("side", 62, 0, 61, 40, 62, 80), TracedEdge.of("side", -60, 80, -61, 40, -60, 0), TracedEdge.of("top", 62, 80, 30, 80, 0, 80, -30, 80, -60, 80)));
 * Truing.of(apron).result().report().lopsidedness().get(0).edge();  // => hem
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Lopsidedness implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String edge;
  private final Length largest;
  private final Length rms;
  private final Point where;

  private Lopsidedness(String edge, Length largest, Length rms, Point where) {
    this.edge = edge;
    this.largest = largest;
    this.rms = rms;
    this.where = where;
  }

  static Lopsidedness of(String edge, Length largest, Length rms, Point where) {
    return new Lopsidedness(edge, largest, rms, where);
  }

  Lopsidedness lowered(double by) {
    return new Lopsidedness(edge, largest, rms, new Point(where.x(), where.y() - by));
  }

  /**
   * The name of the edge.
   *
   * @return the name
   */
  public String edge() {
    return edge;
  }

  /**
   * The largest difference between the two sides.
   *
   * @return zero or more
   */
  public Length largest() {
    return largest;
  }

  /**
   * The root of the mean square of the differences.
   *
   * @return zero or more
   */
  public Length rms() {
    return rms;
  }

  /**
   * Where the difference is largest, in the frame of the trued piece.
   *
   * @return a point on the averaged edge
   */
  public Point where() {
    return where;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String edge, Length largest, Length rms, Point where)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (largest.isNegative() || rms.isNegative()) {
        throw DraftingException.of("a deviation is below zero")
            .at(edge)
            .value(largest + ", " + rms)
            .accepted("0 mm or more");
      }
      return new Lopsidedness(
          Objects.requireNonNull(edge, "edge"),
          Objects.requireNonNull(largest, "largest"),
          Objects.requireNonNull(rms, "rms"),
          Objects.requireNonNull(where, "where"));
    }
  }

  private Object writeReplace() {
    return new Kept(edge, largest, rms, where);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a lopsidedness is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Lopsidedness
        && ((Lopsidedness) other).edge.equals(edge)
        && ((Lopsidedness) other).largest.equals(largest)
        && ((Lopsidedness) other).rms.equals(rms)
        && ((Lopsidedness) other).where.equals(where);
  }

  @Override
  public int hashCode() {
    return Objects.hash(edge, largest, rms, where);
  }

  @Override
  public String toString() {
    return edge
        + ": left and right differ by up to "
        + largest.text(LengthUnit.MM)
        + ", RMS "
        + rms.text(LengthUnit.MM, 2);
  }
}
