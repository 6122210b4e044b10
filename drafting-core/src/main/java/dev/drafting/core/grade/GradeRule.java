package dev.drafting.core.grade;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Piece;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * By how much a corner moves from one size to the next: the corner where two edges of a piece meet,
 * across and along the piece as it is drawn.
 *
 * <pre>{@code
 * GradeRule.of("front", "side", "armhole", Length.mm(10), Length.ZERO);
 * // => front, side to armhole: 10 mm across, 0 mm along
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class GradeRule implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String piece;
  private final String edge;
  private final String next;
  private final Length across;
  private final Length along;

  private GradeRule(String piece, String edge, String next, Length across, Length along) {
    this.piece = piece;
    this.edge = edge;
    this.next = next;
    this.across = across;
    this.along = along;
  }

  /**
   * A rule for a corner.
   *
   * @param piece the piece's name
   * @param edge one of the edges that meet there
   * @param next the other edge
   * @param across how far the corner moves away from the fold, or to the right where there is none;
   *     for a corner on the fold nothing
   * @param along how far it moves up
   * @return the rule for one size up; down it is the other way round
   */
  public static GradeRule of(String piece, String edge, String next, Length across, Length along) {
    return new GradeRule(
        Objects.requireNonNull(piece, "piece"),
        Objects.requireNonNull(edge, "edge"),
        Objects.requireNonNull(next, "next"),
        Objects.requireNonNull(across, "across"),
        Objects.requireNonNull(along, "along"));
  }

  /**
   * Which piece.
   *
   * @return its name
   */
  public String piece() {
    return piece;
  }

  /**
   * How far the corner moves across the piece.
   *
   * @return away from the fold, or to the right where there is none
   */
  public Length across() {
    return across;
  }

  /**
   * How far the corner moves along the piece.
   *
   * @return upwards
   */
  public Length along() {
    return along;
  }

  /** The edge that arrives at the corner, whichever of the two was named first. */
  EdgeRef arriving(Piece of) {
    int first = indexOf(of, edge);
    int second = indexOf(of, next);
    int count = of.edges().size();
    if ((first + 1) % count == second) {
      return checked(of, new EdgeRef(piece, edge));
    }
    if ((second + 1) % count == first) {
      return checked(of, new EdgeRef(piece, next));
    }
    throw DraftingException.of("the edges of a grade rule do not meet")
        .at(piece)
        .value(edge + " and " + next)
        .accepted("two edges that meet at a corner");
  }

  private static int indexOf(Piece of, String edge) {
    return of.edges().indexOf(of.edge(edge));
  }

  private EdgeRef checked(Piece of, EdgeRef arriving) {
    boolean onFold = of.edge(edge).isOnFold() || of.edge(next).isOnFold();
    if (onFold && !across.isZero()) {
      throw DraftingException.of("a corner on the fold moves only along it")
          .at(piece + ", " + edge + " to " + next)
          .value(across.text(LengthUnit.MM) + " across")
          .accepted("0 mm across");
    }
    return arriving;
  }

  /** The move over some steps. */
  GradeRule moving(Length newAcross, Length newAlong) {
    return new GradeRule(piece, edge, next, newAcross, newAlong);
  }

  Vector move(double steps) {
    return new Vector(across.toMm() * steps, along.toMm() * steps);
  }

  private List<Object> parts() {
    return List.of(piece, edge, next, across, along);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String piece, String edge, String next, Length across, Length along)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(piece, edge, next, across, along);
    }
  }

  private Object writeReplace() {
    return new Kept(piece, edge, next, across, along);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a grade rule is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GradeRule that && that.parts().equals(parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  @Override
  public String toString() {
    return piece
        + ", "
        + edge
        + " to "
        + next
        + ": "
        + across.text(LengthUnit.MM)
        + " across, "
        + along.text(LengthUnit.MM)
        + " along";
  }
}
