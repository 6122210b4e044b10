package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * A pattern whose corners and edges are moved, or whose pieces are made wider and longer, with
 * everything else kept: names, finishes, notches, seams.
 *
 * <p>A corner goes by the edge that arrives at it, counter-clockwise. Where a corner moves, the
 * edges at it follow: a straight edge stays straight, a curved one keeps its directions at both
 * ends and the move fades along it. A notch keeps its share of its edge's length, so that notches
 * that met before meet afterwards. Marking lines stay where they are when corners move, and are
 * scaled with their piece.
 *
 * <p>At last the corners that may give way are moved by the least that keeps both sides of every
 * seam as well matched as before.
 *
 * <pre>{@code
 * Point a = new Point(0, 0), b = new Point(200, 0), c = new Point(200, 300), d = new Point(0, 300);
 * Piece half = Piece.of("half", List.of(Edge.of("hem", Curve.line(a, b)), Edge.of("side", Curve.line(b, c)), Edge.of("top", Curve.line(c, d)), Edge.onFold(Curve.line(d, a))));
 * Reshaping wider = Reshaping.of(Pattern.of("tube", List.of(half), List.of())).moved(EdgeRef.parse("half hem"), new Vector(10, 0)).moved(EdgeRef.parse("half side"), new Vector(10, 0));
 * wider.result().piece("half");  // => half: hem 210 mm, side 300 mm, top 210 mm, fold 300 mm; cut 1 on the fold
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Reshaping implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Pattern pattern;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<SideShift> shifts;

  @SuppressWarnings("serial") // always LinkedHashMaps, never changed once they are here
  private final Map<String, PieceScale> scales;

  @SuppressWarnings("serial")
  private final Map<EdgeRef, Vector> moves;

  @SuppressWarnings("serial") // always LinkedHashSets, never changed once they are here
  private final Set<EdgeRef> yielding;

  @SuppressWarnings("serial")
  private final Set<EdgeRef> turning;

  /** Seams that differ by no more than this from what they should are made to match. */
  private final Length evened;

  /** How long edges are to be. */
  @SuppressWarnings("serial")
  private final Map<EdgeRef, Length> lengths;

  private Reshaping(
      Pattern pattern,
      List<SideShift> shifts,
      Map<String, PieceScale> scales,
      Map<EdgeRef, Vector> moves,
      Set<EdgeRef> yielding,
      Set<EdgeRef> turning,
      Length evened,
      Map<EdgeRef, Length> lengths) {
    this.evened = evened;
    this.lengths = lengths;
    this.pattern = pattern;
    this.shifts = shifts;
    this.scales = scales;
    this.moves = moves;
    this.yielding = yielding;
    this.turning = turning;
  }

  /**
   * Nothing changed yet.
   *
   * @param pattern what to reshape
   * @return the pattern as it is
   */
  public static Reshaping of(Pattern pattern) {
    return new Reshaping(
        Objects.requireNonNull(pattern, "pattern"),
        List.of(),
        Map.of(),
        Map.of(),
        Set.of(),
        Set.of(),
        Length.ZERO,
        Map.of());
  }

  /**
   * Moves a corner; a second move of it is added to the first.
   *
   * @param arriving the edge that arrives at the corner
   * @param move how far, in the piece's coordinates; a corner on the fold moves along it only
   * @return the reshaping with this move
   * @throws DraftingException if there is no such edge
   */
  public Reshaping moved(EdgeRef arriving, Vector move) {
    Objects.requireNonNull(pattern.edge(arriving));
    Map<EdgeRef, Vector> more = new LinkedHashMap<>(moves);
    more.merge(arriving, move, Vector::plus);
    return new Reshaping(pattern, shifts, scales, more, yielding, turning, evened, lengths);
  }

  /**
   * Moves an edge sideways between two places, before pieces are scaled and corners moved. The move
   * is nothing at the first place, largest at the second and nothing again at the third, growing
   * and fading smoothly. Where it is largest at an end of the edge, the corner there moves too, on
   * the fold along the fold, and the next edge follows it.
   *
   * @param edge the edge
   * @param from where it begins, along the edge counter-clockwise
   * @param at where it is largest: between the two, or at an end of the edge
   * @param to where it ends
   * @param outward how far the edge moves there; inward if negative
   * @return the reshaping with this move
   * @throws DraftingException if there is no such edge, or the places are out of order or off the
   *     edge
   */
  public Reshaping shifted(EdgeRef edge, Length from, Length at, Length to, Length outward) {
    SideShift shift = new SideShift(edge, from, at, to, outward);
    shift.check(pattern.edge(edge).length());
    List<SideShift> more = new ArrayList<>(shifts);
    more.add(shift);
    return new Reshaping(
        pattern, List.copyOf(more), scales, moves, yielding, turning, evened, lengths);
  }

  /**
   * Makes a piece wider and longer before its corners are moved. Its corners may give way.
   *
   * @param piece its name
   * @param across the factor square to the grain, 0.2 to 5
   * @param along the factor along the grain, 0.2 to 5
   * @return the reshaping with this scale
   * @throws DraftingException if there is no such piece, a factor is out of range, or the piece
   *     lies on the fold with its grain aslant
   */
  public Reshaping scaled(String piece, double across, double along) {
    PieceScale scale = PieceScale.of(pattern.piece(piece), across, along);
    Map<String, PieceScale> more = new LinkedHashMap<>(scales);
    more.put(piece, scale);
    Set<EdgeRef> free = new LinkedHashSet<>(yielding);
    pattern.piece(piece).edges().forEach(edge -> free.add(new EdgeRef(piece, edge.name())));
    return new Reshaping(pattern, shifts, more, moves, free, turning, evened, lengths);
  }

  /**
   * Lets a corner give way, so that the seams at it stay as well matched as they were.
   *
   * @param arriving the edge that arrives at the corner
   * @return the reshaping with this corner free
   * @throws DraftingException if there is no such edge
   */
  public Reshaping yielding(EdgeRef arriving) {
    Objects.requireNonNull(pattern.edge(arriving));
    Set<EdgeRef> more = new LinkedHashSet<>(yielding);
    more.add(arriving);
    return new Reshaping(pattern, shifts, scales, moves, more, turning, evened, lengths);
  }

  /**
   * Makes the sides of seams as long as they should be, one as the other but for the ease: what is
   * left between pieces that were traced apart. All corners may give way, each by the least; {@code
   * PatternTruing} also draws edges smoothly across seams.
   *
   * @param most seams that are off by more are kept as they are: that is no wandering of a pencil
   * @return the reshaping with matched seams
   * @throws DraftingException if it is negative
   */
  public Reshaping evened(Length most) {
    if (most.isNegative()) {
      throw DraftingException.of("seams cannot be off by less than nothing")
          .value(most)
          .accepted("0 mm or more");
    }
    Set<EdgeRef> free = new LinkedHashSet<>(yielding);
    for (Piece piece : pattern.pieces()) {
      piece.edges().forEach(edge -> free.add(new EdgeRef(piece.name(), edge.name())));
    }
    return new Reshaping(pattern, shifts, scales, moves, free, turning, most, lengths);
  }

  /**
   * Makes an edge as long as wanted: one that has stretched in wear, for instance. Both its corners
   * give way, by the least. An edge that is sewn to it keeps the length it has; where that should
   * change too, say so.
   *
   * @param edge the edge
   * @param length how long it is to be
   * @return the reshaping with this length
   * @throws DraftingException if there is no such edge, or the length is not above 0
   */
  public Reshaping withLength(EdgeRef edge, Length length) {
    if (!length.isPositive()) {
      throw DraftingException.of("an edge must have some length")
          .at(edge.toString())
          .value(length)
          .accepted("more than 0 mm");
    }
    Piece piece = pattern.piece(edge.piece());
    int at = piece.edges().indexOf(pattern.edge(edge));
    Edge before = piece.edges().get(Math.floorMod(at - 1, piece.edges().size()));
    Map<EdgeRef, Length> more = new LinkedHashMap<>(lengths);
    more.put(edge, length);
    Set<EdgeRef> free = new LinkedHashSet<>(yielding);
    free.add(new EdgeRef(edge.piece(), before.name()));
    free.add(edge);
    return new Reshaping(pattern, shifts, scales, moves, free, turning, evened, more);
  }

  /**
   * Lets the edges beside one keep their angles to it when it is turned because its ends are moved,
   * so that what runs smoothly across its seam still does. A straight edge beside it becomes a
   * gentle curve; one on the fold stays as it is.
   *
   * @param edge the edge that is turned
   * @return the reshaping with these angles kept
   * @throws DraftingException if there is no such edge
   */
  public Reshaping keepingAnglesTo(EdgeRef edge) {
    Objects.requireNonNull(pattern.edge(edge));
    Set<EdgeRef> more = new LinkedHashSet<>(turning);
    more.add(edge);
    return new Reshaping(pattern, shifts, scales, moves, yielding, more, evened, lengths);
  }

  /**
   * Draws the pattern anew.
   *
   * @return the reshaped pattern
   * @throws DraftingException if a piece cannot be drawn so, for instance because it would reach
   *     across its fold
   */
  public Pattern result() {
    Pattern scaled = pattern;
    for (SideShift shift : shifts) {
      scaled = scaled.withPiece(shift.of(scaled.piece(shift.edge().piece())));
    }
    for (Map.Entry<String, PieceScale> scale : scales.entrySet()) {
      scaled = scaled(scaled, scale.getKey(), scale.getValue());
    }
    Turns turns = new Turns(scaled, turning);
    Map<EdgeRef, Vector> all =
        SeamFit.of(pattern, scaled, moves, yielding, turns, evened, lengths).moves();
    Pattern result = scaled;
    for (Piece piece : scaled.pieces()) {
      result = result.withPiece(CornerMoves.of(piece, all, turns).piece());
    }
    return result;
  }

  /** The piece, the places of what is laid on it, and what is cut into it. */
  private static Pattern scaled(Pattern pattern, String piece, PieceScale scale) {
    List<Patch> patches = new ArrayList<>();
    for (Patch patch : pattern.patches()) {
      patches.add(patch.base().equals(piece) ? patch.movedTo(scale.of(patch.at())) : patch);
    }
    List<Placket> plackets = new ArrayList<>();
    for (Placket placket : pattern.plackets()) {
      plackets.add(placket.edge().piece().equals(piece) ? placket.in(pattern, scale) : placket);
    }
    return pattern
        .withPlackets(List.of())
        .withPiece(scale.of(pattern.piece(piece)))
        .withPatches(patches)
        .withPlackets(plackets);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Pattern pattern,
      List<SideShift> shifts,
      Map<String, PieceScale> scales,
      Map<EdgeRef, Vector> moves,
      Set<EdgeRef> yielding,
      Set<EdgeRef> turning,
      Length evened,
      Map<EdgeRef, Length> lengths)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Reshaping reshaping = of(pattern);
      for (EdgeRef edge : yielding) {
        reshaping = reshaping.yielding(edge);
      }
      for (SideShift shift : shifts) {
        reshaping =
            reshaping.shifted(shift.edge(), shift.from(), shift.at(), shift.to(), shift.outward());
      }
      for (Map.Entry<String, PieceScale> scale : scales.entrySet()) {
        reshaping =
            reshaping.scaled(scale.getKey(), scale.getValue().across(), scale.getValue().along());
      }
      for (Map.Entry<EdgeRef, Vector> move : moves.entrySet()) {
        reshaping = reshaping.moved(move.getKey(), move.getValue());
      }
      for (EdgeRef edge : turning) {
        reshaping = reshaping.keepingAnglesTo(edge);
      }
      for (Map.Entry<EdgeRef, Length> length : lengths.entrySet()) {
        reshaping = reshaping.withLength(length.getKey(), length.getValue());
      }
      return evened.isZero() ? reshaping : reshaping.evened(evened);
    }
  }

  private Object writeReplace() {
    return new Kept(pattern, shifts, scales, moves, yielding, turning, evened, lengths);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a reshaping is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reshaping that
        && that.pattern.equals(pattern)
        && that.shifts.equals(shifts)
        && that.scales.equals(scales)
        && that.moves.equals(moves)
        && that.yielding.equals(yielding)
        && that.turning.equals(turning)
        && that.evened.equals(evened)
        && that.lengths.equals(lengths);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pattern, shifts, scales, moves, yielding, turning, evened, lengths);
  }

  @Override
  public String toString() {
    return pattern.name()
        + " reshaped: "
        + scales.size()
        + (scales.size() == 1 ? " piece" : " pieces")
        + " scaled, "
        + moves.size()
        + (moves.size() == 1 ? " corner" : " corners")
        + " moved"
        + (shifts.isEmpty() ? "" : ", " + shifts.size() + " moved sideways")
        + (lengths.isEmpty() ? "" : ", " + lengths.size() + " given a length")
        + (evened.isZero() ? "" : ", seams evened up to " + evened);
  }
}
