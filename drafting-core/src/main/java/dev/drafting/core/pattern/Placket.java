package dev.drafting.core.pattern;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An opening that is cut into a piece from one of its edges and closed by two strips, of which the
 * overlap lies on the underlap: at a neckline, so that the head goes through, or at a sleeve.
 *
 * <p>It runs from the edge into the piece: down the fold of a piece on the fold, else along the
 * grain. Both strips are folded in half along their length and sewn, with both their long sides, to
 * the sides of a box as wide as the finished placket, in whose middle the piece is cut; what is
 * sewn in is half the width, there and at the lower ends (common practice, no source). The strips
 * are pieces of their own, called after the piece: "front overlap", "front underlap".
 *
 * <pre>{@code
 * Placket neck = Placket.of("front neck", Length.cm(14), Length.mm(25)).withFasteners(3);
 * neck;  // => placket at front / neck, 140 mm long, 25 mm wide, with 3 fasteners
 * Pattern tee = Templates.installed().get("t-shirt").pattern().withPlacket(neck);
 * tee.withPlacketPieces().piece("front overlap").cutting();  // => cut 1 on the fold
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Placket implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length NARROWEST = Length.mm(8);
  private static final Length WIDEST = Length.mm(80);
  private static final Length LONGEST = Length.cm(100);
  private static final Length BEYOND_END = Length.mm(15);
  private static final int USUAL_FASTENERS = 3;
  private static final int MOST_FASTENERS = 30;

  private final EdgeRef edge;
  private final @Nullable Length along;
  private final Length length;
  private final Length width;
  private final int fasteners;

  private Placket(
      EdgeRef edge, @Nullable Length along, Length length, Length width, int fasteners) {
    this.edge = edge;
    this.along = along;
    this.length = length;
    this.width = width;
    this.fasteners = fasteners;
  }

  /**
   * A placket with three buttons or snaps, at the fold of its piece.
   *
   * @param edge the edge that it opens, as {@link EdgeRef#parse} reads it
   * @param length from the finished edge to the end of the opening, at least as long as it is wide
   *     and at most 1 m
   * @param width of the finished placket, 8 to 80 mm
   * @return the placket
   * @throws DraftingException if a length is out of range
   */
  public static Placket of(String edge, Length length, Length width) {
    EdgeRef opened = EdgeRef.parse(edge);
    within(opened, "the width of the placket is out of range", width, NARROWEST, WIDEST);
    within(opened, "the length of the placket is out of range", length, width, LONGEST);
    return new Placket(opened, null, length, width, USUAL_FASTENERS);
  }

  private static void within(EdgeRef at, String what, Length value, Length least, Length most) {
    if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
      throw DraftingException.of(what)
          .at("placket at " + at)
          .value(Text.mm(value))
          .accepted(Text.mm(least) + " to " + Text.mm(most));
    }
  }

  /**
   * Opens the edge at another place than the fold; needed where the piece has no fold.
   *
   * @param fromStart how far from the start of the edge, along it
   * @return the placket there
   * @throws DraftingException if the distance is negative
   */
  public Placket at(Length fromStart) {
    if (fromStart.isNegative()) {
      throw DraftingException.of("the placket lies before its edge")
          .at("placket at " + edge)
          .value(Text.mm(fromStart))
          .accepted("zero or more");
    }
    return new Placket(edge, fromStart, length, width, fasteners);
  }

  /**
   * Closes it with so many buttons or snaps, spaced evenly.
   *
   * @param count 0 to 30
   * @return the placket with these fasteners
   * @throws DraftingException if the number is out of range
   */
  public Placket withFasteners(int count) {
    if (count < 0 || count > MOST_FASTENERS) {
      throw DraftingException.of("the number of fasteners is out of range")
          .at("placket at " + edge)
          .value(count)
          .accepted("0 to " + MOST_FASTENERS);
    }
    return new Placket(edge, along, length, width, count);
  }

  /** The same in a piece of another scale, not held to the usual widths and lengths. */
  Placket in(Pattern pattern, PieceScale scale) {
    PlacketPlace place = PlacketPlace.of(pattern, this);
    Length before = pattern.edge(edge).length();
    Length after = scale.of(pattern.piece(edge.piece())).edge(edge.edge()).length();
    return new Placket(
        edge,
        along == null ? null : along.times(after.ratioTo(before)),
        length.times(place.deeper(scale)),
        width.times(place.wider(scale)),
        fasteners);
  }

  /**
   * The edge that it opens.
   *
   * @return piece and edge
   */
  public EdgeRef edge() {
    return edge;
  }

  /**
   * Where it opens the edge.
   *
   * @return the distance from the start of the edge; empty at the fold
   */
  public Optional<Length> along() {
    return Optional.ofNullable(along);
  }

  /**
   * How long the opening is.
   *
   * @return from the finished edge to its end
   */
  public Length length() {
    return length;
  }

  /**
   * How wide the finished placket is.
   *
   * @return the width of each folded strip
   */
  public Length width() {
    return width;
  }

  /**
   * How many buttons or snaps close it.
   *
   * @return the number, which may be none
   */
  public int fasteners() {
    return fasteners;
  }

  /**
   * What is sewn in: half the width, at the long sides of the strips, at their lower ends, and
   * beside the cut.
   *
   * @return the allowance
   */
  public Length allowance() {
    return width.dividedBy(2);
  }

  /**
   * How long a stay is pressed on the piece and on half of each strip, before anything is cut.
   *
   * @return the length of the opening and 15 mm (common practice, no source)
   */
  public Length stayLength() {
    return length.plus(BEYOND_END);
  }

  /**
   * How far the opening reaches below what is sewn on the edge, such as a band.
   *
   * @param pattern a pattern with this placket
   * @return a length that is not positive where the placket ends within the band
   * @throws DraftingException if the pattern has no such edge
   */
  public Length belowFinish(Pattern pattern) {
    Length join = pattern.edge(edge).finish().profile().join().orElse(Length.ZERO);
    return join.isNegative() ? length.plus(join) : length;
  }

  /**
   * The two strips, the overlap first. Their tops are long enough to be cut even with the edge once
   * they are sewn on.
   *
   * @param pattern a pattern with this placket
   * @return two pieces
   * @throws DraftingException if the placket does not suit the pattern
   */
  public List<Piece> strips(Pattern pattern) {
    return new PlacketStrips(pattern, this).pieces();
  }

  /**
   * What shows of the closed placket, below the edge.
   *
   * @param pattern a pattern with this placket
   * @return a closed curve on the piece that it opens, half of it where that lies on the fold
   * @throws DraftingException if the placket does not suit the pattern
   */
  public Curve outline(Pattern pattern) {
    return PlacketPlace.of(pattern, this).outline();
  }

  /**
   * Tells whether the opening runs more across the grain of its piece than along it.
   *
   * @param pattern a pattern with this placket
   * @return true only in a piece that is folded across its grain
   * @throws DraftingException if the placket does not suit the pattern
   */
  public boolean isAcrossGrain(Pattern pattern) {
    return PlacketPlace.of(pattern, this).isAcrossGrain(pattern.piece(edge.piece()));
  }

  /** The piece with the lines along which it is cut and the strips are sewn. */
  Piece marked(Pattern pattern) {
    Piece marked = pattern.piece(edge.piece());
    for (MarkingLine line : PlacketPlace.of(pattern, this).lines()) {
      marked = marked.withMarking(line);
    }
    return marked;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      String edge, @Nullable Length along, Length length, Length width, int fasteners)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Placket placket = of(edge, length, width).withFasteners(fasteners);
      return along == null ? placket : placket.at(along);
    }
  }

  private Object writeReplace() {
    return new Kept(edge.toString(), along, length, width, fasteners);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a placket is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Placket
        && ((Placket) other).edge.equals(edge)
        && Objects.equals(((Placket) other).along, along)
        && ((Placket) other).length.equals(length)
        && ((Placket) other).width.equals(width)
        && ((Placket) other).fasteners == fasteners;
  }

  @Override
  public int hashCode() {
    return Objects.hash(edge, along, length, width, fasteners);
  }

  @Override
  public String toString() {
    return "placket at "
        + edge
        + (along == null ? "" : ", " + Text.mm(along) + " from its start")
        + ", "
        + Text.mm(length)
        + " long, "
        + Text.mm(width)
        + " wide, with "
        + (fasteners == 1 ? "1 fastener" : fasteners + " fasteners");
  }
}
