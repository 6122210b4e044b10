package dev.drafting.core.pattern;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A piece that is laid on another one and stitched down along its edges, such as a pocket or a
 * patch at the elbow. Edges that stay open, as a pocket's mouth does, are finished by themselves
 * before: turned, faced or raw.
 *
 * <p>The patch lies as it is drawn, its origin moved to a point of the piece beneath. On a piece on
 * the fold a pair lies on both halves, a single patch on one; a patch on the fold lies with its
 * fold on that of the piece beneath.
 *
 * <pre>{@code
 * Patch.of("pocket", "front", new Point(0, 10)).openAt("mouth");  // => pocket on front at x 0 mm, y 10 mm, open at mouth
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Patch implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String piece;
  private final String base;
  private final Point at;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> openEdges;

  private Patch(String piece, String base, Point at, List<String> openEdges) {
    this.piece = piece;
    this.base = base;
    this.at = at;
    this.openEdges = openEdges;
  }

  /**
   * A piece stitched down along all its edges.
   *
   * @param piece the name of the piece that is laid on
   * @param base the name of the piece beneath
   * @param at where the origin of the patch lies, in millimetres on the piece beneath
   * @return the patch
   * @throws DraftingException if a name cannot be used or a piece is to lie on itself
   */
  public static Patch of(String piece, String base, Point at) {
    Names.check("a piece", piece);
    Names.check("a piece", base);
    if (piece.equals(base)) {
      throw DraftingException.of("a piece cannot lie on itself")
          .at("patch " + piece)
          .value(base)
          .accepted("two pieces");
    }
    return new Patch(piece, base, Objects.requireNonNull(at, "at"), List.of());
  }

  /**
   * Leaves one more edge open.
   *
   * @param edge the name of an edge of the patch
   * @return the patch with this edge open
   * @throws DraftingException if the name cannot be used, or the edge is open already
   */
  public Patch openAt(String edge) {
    Names.check("an edge", edge);
    if (openEdges.contains(edge)) {
      throw DraftingException.of("the edge is open already")
          .at("patch " + piece)
          .value(edge)
          .accepted("every open edge once");
    }
    List<String> more = new ArrayList<>(openEdges);
    more.add(edge);
    return new Patch(piece, base, at, List.copyOf(more));
  }

  Patch movedTo(Point newAt) {
    return new Patch(piece, base, newAt, openEdges);
  }

  /**
   * The piece that is laid on.
   *
   * @return the piece's name
   */
  public String piece() {
    return piece;
  }

  /**
   * The piece beneath.
   *
   * @return the piece's name
   */
  public String base() {
    return base;
  }

  /**
   * Where the origin of the patch lies.
   *
   * @return a point of the piece beneath, in millimetres
   */
  public Point at() {
    return at;
  }

  /**
   * The edges that are not stitched down.
   *
   * @return an unmodifiable list of names in the order of adding
   */
  public List<String> openEdges() {
    return openEdges;
  }

  /**
   * The edges that are stitched down: all that are neither open nor on the fold.
   *
   * @param pattern a pattern with this patch
   * @return an unmodifiable list in the order of the piece's edges
   * @throws DraftingException if the pattern has no such piece
   */
  public List<EdgeRef> stitchedEdges(Pattern pattern) {
    return pattern.piece(piece).edges().stream()
        .filter(this::isStitched)
        .map(edge -> new EdgeRef(piece, edge.name()))
        .toList();
  }

  private boolean isStitched(Edge edge) {
    return !edge.isOnFold() && !openEdges.contains(edge.name());
  }

  /**
   * The outline of the patch where it lies.
   *
   * @param pattern a pattern with this patch
   * @return a closed curve, in the coordinates of the piece beneath
   * @throws DraftingException if the pattern has no such piece
   */
  public Curve outline(Pattern pattern) {
    return pattern.piece(piece).outline().map(placing());
  }

  private Transform placing() {
    return Transform.translation(at.minus(new Point(0, 0)));
  }

  /** The piece beneath with a line for every run of edges that are stitched to it. */
  Piece marked(Pattern pattern) {
    Piece marked = pattern.piece(base);
    for (Curve run : runs(pattern.piece(piece).edges())) {
      marked = marked.withMarking(MarkingLine.of(piece + ": place", run.map(placing())));
    }
    return marked;
  }

  private List<Curve> runs(List<Edge> all) {
    List<Edge> edges = new ArrayList<>(all);
    for (int i = 0; i < all.size() && isStitched(edges.get(edges.size() - 1)); i++) {
      Collections.rotate(edges, 1);
    }
    List<Curve> runs = new ArrayList<>();
    boolean goesOn = false;
    for (Edge edge : edges) {
      boolean stitched = isStitched(edge);
      if (stitched && goesOn) {
        runs.set(runs.size() - 1, runs.get(runs.size() - 1).then(edge.curve()));
      } else if (stitched) {
        runs.add(edge.curve());
      }
      goesOn = stitched;
    }
    return runs;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(String piece, String base, Point at, List<String> openEdges)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Patch patch = of(piece, base, at);
      for (String edge : openEdges) {
        patch = patch.openAt(edge);
      }
      return patch;
    }
  }

  private Object writeReplace() {
    return new Kept(piece, base, at, openEdges);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a patch is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Patch
        && ((Patch) other).piece.equals(piece)
        && ((Patch) other).base.equals(base)
        && ((Patch) other).at.equals(at)
        && ((Patch) other).openEdges.equals(openEdges);
  }

  @Override
  public int hashCode() {
    return Objects.hash(piece, base, at, openEdges);
  }

  @Override
  public String toString() {
    return piece
        + " on "
        + base
        + " at x "
        + Text.mm(Length.mm(at.x()))
        + ", y "
        + Text.mm(Length.mm(at.y()))
        + (openEdges.isEmpty()
            ? ""
            : ", open at " + openEdges.stream().collect(Collectors.joining(" and ")));
  }
}
