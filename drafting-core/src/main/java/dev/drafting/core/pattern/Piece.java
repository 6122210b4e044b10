package dev.drafting.core.pattern;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.offset.CornerTreatment;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A pattern piece: its finished outline in named edges, without any allowance, and how it is cut.
 *
 * <p>The edges run counter-clockwise and meet. A piece with an edge on the fold is drawn as its
 * half at x of zero or more. What is not said has the usual value: raw edges, grain along y, cut
 * once, from the cloth "body".
 *
 * <pre>{@code
 * Point a = new Point(0, 0), b = new Point(200, 0), c = new Point(200, 300), d = new Point(0, 300);
 * Piece half = Piece.of("half", List.of(Edge.of("hem", Curve.line(a, b)), Edge.of("side", Curve.line(b, c)), Edge.of("top", Curve.line(c, d)), Edge.onFold(Curve.line(d, a))));
 * half.cutting();  // => cut 1 on the fold
 * half.withFinish("side", SeamFinish.of(Length.mm(7))).edge("side");  // => side, 300 mm, seam with 7 mm allowance
 * half.corner("hem", "side");  // => hem to side, 90°
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Piece implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The widest gap, in mm, that still counts as meeting: what curves themselves accept. */
  static final double GAP_MM = 1e-9;

  private static final int MOST_EDGES_IN_TEXT = 12;

  private final String name;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Edge> edges;

  private final Curve outline;
  private final PieceDetails details;

  private Piece(String name, List<Edge> edges, Curve outline, PieceDetails details) {
    this.name = name;
    this.edges = edges;
    this.outline = outline;
    this.details = details;
  }

  /**
   * A piece with these edges.
   *
   * @param name what the maker calls it: "front", "sleeve"
   * @param edges the finished edges, counter-clockwise, each beginning where the one before ends
   * @return the piece, cut once: on the fold if it has an edge there
   * @throws DraftingException if the outline is open, runs clockwise, encloses nothing, has two
   *     edges of one name or more than a million segments, or reaches across its fold
   */
  public static Piece of(String name, List<Edge> edges) {
    Names.check("a piece", name);
    boolean onFold = edges.stream().anyMatch(Edge::isOnFold);
    return of(name, edges, PieceDetails.usual(onFold));
  }

  static Piece of(String name, List<Edge> edges, PieceDetails details) {
    try {
      List<Edge> copy = List.copyOf(edges);
      Curve outline = PieceCheck.outline(copy);
      details.check(copy);
      return new Piece(name, copy, outline, details);
    } catch (DraftingException e) {
      throw e.at(name);
    }
  }

  /** The outline stays, and need not be looked at again. */
  private Piece with(UnaryOperator<PieceDetails> change) {
    PieceDetails changed = change.apply(details);
    try {
      changed.check(edges);
    } catch (DraftingException e) {
      throw e.at(name);
    }
    return new Piece(name, edges, outline, changed);
  }

  PieceDetails details() {
    return details;
  }

  /**
   * What the maker calls the piece.
   *
   * @return its name
   */
  public String name() {
    return name;
  }

  /**
   * The finished edges, counter-clockwise.
   *
   * @return an unmodifiable list
   */
  public List<Edge> edges() {
    return edges;
  }

  /**
   * One edge.
   *
   * @param edge its name
   * @return the edge
   * @throws DraftingException if the piece has no such edge
   */
  public Edge edge(String edge) {
    return edges.get(indexOf(edge));
  }

  private int indexOf(String edge) {
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i).name().equals(edge)) {
        return i;
      }
    }
    throw PieceCheck.unknownEdge(edge, edges).at(name);
  }

  /**
   * The finished outline.
   *
   * @return a closed curve, counter-clockwise, beginning with the first edge
   */
  public Curve outline() {
    return outline;
  }

  /**
   * The corners, in the order of the edges that arrive at them.
   *
   * @return an unmodifiable list, one corner for each edge
   */
  public List<Corner> corners() {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      corners.add(cornerAfter(i));
    }
    return List.copyOf(corners);
  }

  private Corner cornerAfter(int index) {
    Edge before = edges.get(index);
    Edge after = edges.get((index + 1) % edges.size());
    return new Corner(
        before.name(),
        after.name(),
        after.curve().start(),
        PieceCheck.interiorAngle(before.curve(), after.curve()),
        details.pointed().contains(before.name()),
        details.treatments().get(before.name()));
  }

  /**
   * The corner where one edge meets the next.
   *
   * @param before the edge that arrives, counter-clockwise
   * @param after the edge that leaves
   * @return the corner
   * @throws DraftingException if the edges do not meet in this order
   */
  public Corner corner(String before, String after) {
    Corner corner = cornerAfter(indexOf(before));
    if (!corner.after().equals(edge(after).name())) {
      throw DraftingException.of("edge " + after + " does not follow edge " + before)
          .at(name)
          .value(before + " is followed by " + corner.after())
          .accepted("two edges that meet, counter-clockwise");
    }
    return corner;
  }

  /**
   * The notches.
   *
   * @return an unmodifiable list in the order of adding
   */
  public List<Notch> notches() {
    return details.notches();
  }

  /**
   * The lines to transfer to the cloth.
   *
   * @return an unmodifiable list in the order of adding
   */
  public List<MarkingLine> markings() {
    return details.markings();
  }

  /**
   * The direction of the grain: the wales of a knit.
   *
   * @return counter-clockwise from the x axis, 90 degrees unless set
   */
  public Angle grain() {
    return details.grain();
  }

  /**
   * How often the piece is cut, and how.
   *
   * @return the cutting
   */
  public Cutting cutting() {
    return details.cutting();
  }

  /**
   * The cloth it is cut from, by its part in the garment.
   *
   * @return "body" unless set
   */
  public String cloth() {
    return details.cloth();
  }

  /**
   * Tells whether the piece is drawn as a half with one edge on the fold.
   *
   * @return true if it has a fold edge
   */
  public boolean isOnFold() {
    return edges.stream().anyMatch(Edge::isOnFold);
  }

  /**
   * Finishes one edge in another way.
   *
   * @param edge the edge's name
   * @param finish how it is finished
   * @return the piece with this finish
   * @throws DraftingException if the piece has no such edge
   */
  public Piece withFinish(String edge, Finish finish) {
    return withEdge(edge(edge).withFinish(finish));
  }

  /**
   * Replaces the edge of the same name.
   *
   * @param edge the new edge; it begins and ends where the old one did
   * @return the piece with this edge
   * @throws DraftingException if there is no edge of this name, or the outline is no longer closed
   */
  public Piece withEdge(Edge edge) {
    List<Edge> changed = new ArrayList<>(edges);
    changed.set(indexOf(edge.name()), edge);
    return of(name, changed, details);
  }

  /**
   * Turns the directions in which an edge leaves its corners. The corners stay; a straight edge
   * becomes a curve, and notches keep their share of its length.
   *
   * @param edge the name of the edge
   * @param atStart the turn where the edge begins, counter-clockwise if positive
   * @param atEnd the turn where it ends
   * @return the piece with this edge turned
   * @throws DraftingException if there is no such edge
   */
  public Piece withTurnedEdge(String edge, Angle atStart, Angle atEnd) {
    int at = indexOf(edge);
    List<Edge> changed = new ArrayList<>(edges);
    changed.set(at, edges.get(at).turned(atStart, atEnd));
    return of(name, changed, details.withNotches(CornerMoves.notches(this, changed)));
  }

  /**
   * Draws the edges along other curves that meet at their ends; names, finishes and corners stay,
   * and every notch keeps its share of its edge.
   *
   * @param curves one for each edge, in their order
   * @return the piece with these edges
   * @throws DraftingException if there are more or fewer curves than edges, or they do not close
   */
  @Experimental
  public Piece withCurves(List<Curve> curves) {
    if (curves.size() != edges.size()) {
      throw DraftingException.of("a piece is redrawn edge by edge")
          .at(name)
          .value(curves.size() + " curves")
          .accepted(edges.size() + " curves");
    }
    List<Edge> changed = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      changed.add(edges.get(i).redrawn(edges.get(i).name(), curves.get(i)));
    }
    return of(name, changed, details.withNotches(CornerMoves.notches(this, changed)));
  }

  /**
   * Declares that a corner is meant to be a point, as at a V neck or a pointed hem.
   *
   * @param before the edge that arrives, counter-clockwise
   * @param after the edge that leaves
   * @return the piece with this corner pointed
   * @throws DraftingException if the edges do not meet in this order
   */
  public Piece withPointedCorner(String before, String after) {
    Corner corner = corner(before, after);
    return with(d -> d.withPointed(corner.before()));
  }

  /**
   * Says how the allowances are brought together at a corner.
   *
   * @param before the edge that arrives, counter-clockwise
   * @param after the edge that leaves
   * @param treatment instead of the usual one
   * @return the piece with this corner
   * @throws DraftingException if the edges do not meet in this order
   */
  public Piece withCorner(String before, String after, CornerTreatment treatment) {
    Corner corner = corner(before, after);
    return with(d -> d.withTreatment(corner.before(), treatment));
  }

  /**
   * Adds a notch.
   *
   * @param notch the notch, within its edge
   * @return the piece with this notch
   * @throws DraftingException if there is no such edge or the notch lies beyond its end
   */
  public Piece withNotch(Notch notch) {
    return with(d -> d.withNotch(notch));
  }

  /**
   * Adds a line to transfer to the cloth.
   *
   * @param marking the line
   * @return the piece with this line
   */
  public Piece withMarking(MarkingLine marking) {
    return with(d -> d.withMarking(marking));
  }

  /**
   * Turns the grain.
   *
   * @param grain counter-clockwise from the x axis
   * @return the piece with this grain
   */
  public Piece withGrain(Angle grain) {
    return with(d -> d.withGrain(grain));
  }

  /**
   * Says how often the piece is cut.
   *
   * @param cutting on the fold only for a piece with an edge there, and for such a piece nothing
   *     else
   * @return the piece cut like this
   * @throws DraftingException if the cutting does not suit the piece
   */
  public Piece withCutting(Cutting cutting) {
    return with(d -> d.withCutting(cutting));
  }

  /**
   * Says what cloth the piece is cut from.
   *
   * @param cloth its part in the garment: "body", "rib"
   * @return the piece cut from this cloth
   * @throws DraftingException if the name cannot be used
   */
  public Piece withCloth(String cloth) {
    Names.check("a cloth", cloth);
    return with(d -> d.withCloth(cloth));
  }

  /**
   * The mirror image. Edges keep their names and still run counter-clockwise, so each begins where
   * it ended before; a half on the fold is symmetrical already and stays as it is.
   *
   * @return the piece seen from the other side of the paper
   */
  public Piece mirrored() {
    return isOnFold() ? this : Unfolding.mirror(this);
  }

  /**
   * Both halves of a piece on the fold as one whole piece. Edges that meet the fold become one with
   * their image; the others are called after their half, "side (right)" for the one drawn and "side
   * (left)" for its image. A piece without a fold stays as it is.
   *
   * @return the whole piece, with no edge on the fold
   */
  public Piece unfolded() {
    return isOnFold() ? Unfolding.unfold(this) : this;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(String name, List<Edge> edges, PieceDetails details) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Names.check("a piece", name);
      return of(name, edges, details);
    }
  }

  private Object writeReplace() {
    return new Kept(name, edges, details);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a piece is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Piece
        && ((Piece) other).name.equals(name)
        && ((Piece) other).edges.equals(edges)
        && ((Piece) other).details.equals(details);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, edges, details);
  }

  @Override
  public String toString() {
    String shown =
        edges.stream()
            .limit(MOST_EDGES_IN_TEXT)
            .map(e -> e.name() + " " + Text.mm(e.length()))
            .collect(Collectors.joining(", "));
    String more =
        edges.size() > MOST_EDGES_IN_TEXT
            ? " and " + (edges.size() - MOST_EDGES_IN_TEXT) + " edges more"
            : "";
    return name + ": " + shown + more + "; " + cutting();
  }
}
