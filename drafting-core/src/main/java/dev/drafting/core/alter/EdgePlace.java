package dev.drafting.core.alter;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A place on an edge as a maker tells it: how far from the edge next to it. The centre of a piece
 * on the fold is at its {@code "fold"}.
 *
 * <pre>{@code
 * EdgePlace.from("shoulder", Length.cm(6));  // => 60 mm from the shoulder
 * EdgePlace.at("fold");                      // => at the fold
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class EdgePlace implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String neighbour;
  private final Length distance;

  private EdgePlace(String neighbour, Length distance) {
    this.neighbour = neighbour;
    this.distance = distance;
  }

  /**
   * Where the edge meets its neighbour.
   *
   * @param neighbour the name of the edge before or after it
   * @return the place
   */
  public static EdgePlace at(String neighbour) {
    return from(neighbour, Length.ZERO);
  }

  /**
   * Some way along the edge.
   *
   * @param neighbour the name of the edge before or after it
   * @param distance how far from there, along the edge
   * @return the place
   * @throws DraftingException if the distance is negative
   */
  public static EdgePlace from(String neighbour, Length distance) {
    if (distance.isNegative()) {
      throw DraftingException.of("a place lies before its edge")
          .at(neighbour)
          .value(distance)
          .accepted("zero or more");
    }
    return new EdgePlace(Objects.requireNonNull(neighbour, "neighbour"), distance);
  }

  /** Where it is on a curve as long as that, counted from the start of the edge. */
  Length along(SeamSide side, Length length) {
    int n = side.piece().edges().size();
    String before = side.piece().edges().get((side.index() + n - 1) % n).name();
    String after = side.piece().edges().get((side.index() + 1) % n).name();
    if (!neighbour.equals(before) && !neighbour.equals(after)) {
      throw DraftingException.of("the edge does not meet this one")
          .at(side.ref().toString())
          .value(neighbour)
          .accepted(before + ", " + after);
    }
    if (distance.compareTo(length) > 0) {
      throw DraftingException.of("the place lies beyond the end of the edge")
          .at(side.ref().toString())
          .value(this)
          .accepted("0 mm to " + Settings.amount(length));
    }
    return neighbour.equals(before) ? distance : length.minus(distance);
  }

  /**
   * Reads a place from the words for it, as the settings of an alteration give them.
   *
   * @param text such as {@code "60 mm from shoulder"}
   * @return the place
   * @throws DraftingException if there is no distance with its unit, or no neighbour
   */
  public static EdgePlace parse(String text) {
    String[] parts = text.split(" from ", 2);
    if (parts.length < 2 || parts[1].isBlank()) {
      throw DraftingException.of("a place on an edge is told by a distance and the edge next to it")
          .value(text)
          .accepted("such as \"60 mm from shoulder\"");
    }
    return from(parts[1], Length.parse(parts[0]));
  }

  /** The exact words that {@link #parse} reads. */
  String setting() {
    return distance + " from " + neighbour;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String neighbour, Length distance) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return from(neighbour, distance);
    }
  }

  private Object writeReplace() {
    return new Kept(neighbour, distance);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a place on an edge is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof EdgePlace that
        && that.neighbour.equals(neighbour)
        && that.distance.equals(distance);
  }

  @Override
  public int hashCode() {
    return Objects.hash(neighbour, distance);
  }

  @Override
  public String toString() {
    return distance.isZero()
        ? "at the " + neighbour
        : Settings.amount(distance) + " from the " + neighbour;
  }
}
