package dev.drafting.core.trace;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What became of one traced edge: what it was taken for, how the points scatter about it, and which
 * were refused.
 *
 * <pre>{@code
 * Tracing pocket = Tracing.of("pocket", Extent.HALF_ON_FOLD, List.of(TracedEdge.of("bottom", 0, 0, 20, 0.2, 40, -0.1, 60, 0), TracedEdge.of("side", 60, 0, 60.2, 30, 59.9, 60, 60, 80), TracedEdge.of("top", 60, 80, 40, 80.2, 20, 79.9, 0, 80)));
 * EdgeReport side = Truing.of(pocket).result().report().edge("side");
 * side.points();  // => 4
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class EdgeReport implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String edge;
  private final int points;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<RefusedPoint> refused;

  private final Length noise;
  private final Length rms;
  private final Length largest;
  private final Length tracedLength;
  private final Length length;
  private final Length lengthUncertainty;
  private final int cubics;

  EdgeReport(
      String edge,
      int points,
      List<RefusedPoint> refused,
      Length noise,
      Length rms,
      Length largest,
      Length tracedLength,
      Length length,
      Length lengthUncertainty,
      int cubics) {
    this.edge = edge;
    this.points = points;
    this.refused = List.copyOf(refused);
    this.noise = noise;
    this.rms = rms;
    this.largest = largest;
    this.tracedLength = tracedLength;
    this.length = length;
    this.lengthUncertainty = lengthUncertainty;
    this.cubics = cubics;
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
   * How many different places were marked, on both sides of a whole piece together.
   *
   * @return two or more
   */
  public int points() {
    return points;
  }

  /**
   * The points taken for slips of the pencil and left out.
   *
   * @return an unmodifiable list, often empty
   */
  public List<RefusedPoint> refused() {
    return refused;
  }

  /**
   * How far the pencil was taken to wander square to this edge: the standard deviation judged from
   * the points, or what the maker said.
   *
   * @return zero or more
   */
  public Length noise() {
    return noise;
  }

  /**
   * The root of the mean square distance of the points that count from the trued edge.
   *
   * @return zero or more
   */
  public Length rms() {
    return rms;
  }

  /**
   * The largest distance of a point that counts from the trued edge.
   *
   * @return zero or more
   */
  public Length largest() {
    return largest;
  }

  /**
   * The way from point to point as drawn, averaged over the two sides of a whole piece, slips left
   * out. A wandering pencil makes it longer than the edge.
   *
   * @return the length before truing
   */
  public Length tracedLength() {
    return tracedLength;
  }

  /**
   * The length of the trued edge.
   *
   * @return the length after truing
   */
  public Length length() {
    return length;
  }

  /**
   * How far the length may be off because the pencil wandered: its standard deviation, as the
   * points and their noise let it be reckoned. In two cases of three the true length lies within
   * it, in 19 of 20 within twice as much. Where the points are too few to tell it is the length
   * itself.
   *
   * @return zero to the length
   */
  public Length lengthUncertainty() {
    return lengthUncertainty;
  }

  /**
   * Whether the edge is a straight line.
   *
   * @return false if it is made of cubics
   */
  public boolean isStraight() {
    return cubics == 0;
  }

  /**
   * Of how many cubics a curved edge is made.
   *
   * @return 0 for a straight edge
   */
  public int cubics() {
    return cubics;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String edge,
      int points,
      List<RefusedPoint> refused,
      Length noise,
      Length rms,
      Length largest,
      Length tracedLength,
      Length length,
      Length lengthUncertainty,
      int cubics)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      boolean below =
          Stream.of(noise, rms, largest, tracedLength, length, lengthUncertainty)
              .anyMatch(Length::isNegative);
      if (below || points < 0 || cubics < 0) {
        throw DraftingException.of("a figure of an edge is below zero")
            .at(edge)
            .accepted("numbers and lengths of 0 or more");
      }
      return new EdgeReport(
          Objects.requireNonNull(edge, "edge"),
          points,
          refused,
          Objects.requireNonNull(noise, "noise"),
          Objects.requireNonNull(rms, "rms"),
          Objects.requireNonNull(largest, "largest"),
          Objects.requireNonNull(tracedLength, "tracedLength"),
          Objects.requireNonNull(length, "length"),
          Objects.requireNonNull(lengthUncertainty, "lengthUncertainty"),
          cubics);
    }
  }

  private Object writeReplace() {
    return new Kept(
        edge,
        points,
        refused,
        noise,
        rms,
        largest,
        tracedLength,
        length,
        lengthUncertainty,
        cubics);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a report of an edge is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof EdgeReport that
        && edge.equals(that.edge)
        && points == that.points
        && refused.equals(that.refused)
        && noise.equals(that.noise)
        && rms.equals(that.rms)
        && largest.equals(that.largest)
        && tracedLength.equals(that.tracedLength)
        && length.equals(that.length)
        && lengthUncertainty.equals(that.lengthUncertainty)
        && cubics == that.cubics;
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        edge,
        points,
        refused,
        noise,
        rms,
        largest,
        tracedLength,
        length,
        lengthUncertainty,
        cubics);
  }

  @Override
  public String toString() {
    String form =
        isStraight()
            ? "straight"
            : cubics == 1 ? "curved, 1 cubic" : "curved, " + cubics + " cubics";
    return edge
        + ": "
        + form
        + ", "
        + length.text(LengthUnit.MM)
        + "; "
        + points
        + " points, "
        + refused.size()
        + " refused, RMS "
        + rms.text(LengthUnit.MM, 2)
        + ", largest "
        + largest.text(LengthUnit.MM, 2);
  }
}
