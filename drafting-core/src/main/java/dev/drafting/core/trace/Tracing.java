package dev.drafting.core.trace;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Transform;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What was traced of one piece: its strokes, in any order and direction. Neighbouring strokes must
 * end within 15 mm of each other; the corners between them are computed.
 *
 * <p>Half a piece has every edge once and starts and ends at the fold, which is not traced. A whole
 * piece has every edge twice, left and right, but for those that cross the fold in one stroke.
 *
 * <pre>{@code
 * Tracing.of("pocket", Extent.HALF_ON_FOLD, List.of(
 *     TracedEdge.of("top", List.of(new Point(0, 120), new Point(60, 120))),
 *     TracedEdge.of("side", List.of(new Point(60, 120), new Point(60, 0))),
 *     TracedEdge.of("bottom", List.of(new Point(60, 0), new Point(0, 0)))));
 * // => pocket, half on the fold: top 2 points, side 2 points, bottom 2 points
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Tracing implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int MOST_POINTS = 1_000_000;
  private static final int MOST_SHOWN = 12;
  private static final String FOLD = "fold";

  private final String piece;
  private final Extent extent;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<TracedEdge> edges;

  private Tracing(String piece, Extent extent, List<TracedEdge> edges) {
    this.piece = piece;
    this.extent = extent;
    this.edges = edges;
  }

  /**
   * Collects the strokes of one piece.
   *
   * @param piece the name of the piece: "front"
   * @param extent half on the fold or whole
   * @param edges the strokes
   * @return the tracing
   * @throws DraftingException if the name is blank, there are no strokes, an edge is traced too
   *     often, the fold itself is traced, or there are more than a million points
   */
  public static Tracing of(String piece, Extent extent, List<TracedEdge> edges) {
    checkName(piece);
    Objects.requireNonNull(extent, "extent");
    List<TracedEdge> all = List.copyOf(edges);
    if (all.isEmpty()) {
      throw DraftingException.of("a tracing has no edges").at(piece).accepted("one edge or more");
    }
    checkPoints(piece, all);
    checkNames(piece, extent, all);
    return new Tracing(piece, extent, all);
  }

  static void checkName(String piece) {
    if (piece.isBlank()) {
      throw DraftingException.of("a tracing has no name").accepted("a name such as front or back");
    }
  }

  private static void checkPoints(String piece, List<TracedEdge> edges) {
    long points = edges.stream().mapToLong(edge -> edge.points().size()).sum();
    if (points > MOST_POINTS) {
      throw DraftingException.of("a tracing has too many points")
          .at(piece)
          .value(points)
          .accepted("a million points or fewer");
    }
  }

  private static void checkNames(String piece, Extent extent, List<TracedEdge> edges) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    edges.forEach(edge -> counts.merge(edge.name(), 1, Integer::sum));
    int most = extent == Extent.WHOLE ? 2 : 1;
    counts.forEach(
        (name, count) -> {
          if (name.equals(FOLD)) {
            throw DraftingException.of("the fold is not traced: it is the middle of the piece")
                .at(piece)
                .value(name)
                .accepted("the other edges only");
          }
          if (count > most) {
            throw DraftingException.of("an edge is traced too often")
                .at(name)
                .at(piece)
                .value(count + " times")
                .accepted(
                    most == 1 ? "each edge once" : "each edge of a whole piece once or twice");
          }
        });
  }

  /**
   * This tracing laid elsewhere, turned or mirrored.
   *
   * @param transform where its points go
   * @return the tracing there
   * @throws DraftingException if a point would be over 100 m away
   */
  public Tracing map(Transform transform) {
    List<TracedEdge> mapped =
        edges.stream()
            .map(edge -> edge.through(edge.points().map(transform)))
            .collect(Collectors.toList());
    return of(piece, extent, mapped);
  }

  /**
   * This tracing with another line for an edge: the back of a garment with the front's, its own
   * neckline traced through both layers.
   *
   * @param name what the other piece is called
   * @param edge the line that takes the place of all strokes of that name
   * @return the tracing of the other piece
   * @throws DraftingException if no edge of that name was traced
   */
  public Tracing withLine(String name, TracedEdge edge) {
    List<TracedEdge> others =
        edges.stream().filter(e -> !e.name().equals(edge.name())).collect(Collectors.toList());
    if (others.size() == edges.size()) {
      throw DraftingException.of("no such edge was traced")
          .at(piece)
          .value(edge.name())
          .accepted(
              edges.stream().map(TracedEdge::name).distinct().collect(Collectors.joining(", ")));
    }
    others.add(edge);
    return of(name, extent, others);
  }

  /**
   * The name of the piece.
   *
   * @return the name as given
   */
  public String piece() {
    return piece;
  }

  /**
   * How much of the piece was traced.
   *
   * @return half on the fold or whole
   */
  public Extent extent() {
    return extent;
  }

  /**
   * The strokes in the order given.
   *
   * @return an unmodifiable list
   */
  public List<TracedEdge> edges() {
    return edges;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(String piece, Extent extent, List<TracedEdge> edges) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return Tracing.of(piece, extent, edges);
    }
  }

  private Object writeReplace() {
    return new Kept(piece, extent, edges);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a tracing is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Tracing
        && ((Tracing) other).piece.equals(piece)
        && ((Tracing) other).extent == extent
        && ((Tracing) other).edges.equals(edges);
  }

  @Override
  public int hashCode() {
    return Objects.hash(piece, extent, edges);
  }

  @Override
  public String toString() {
    String strokes =
        edges.stream()
            .limit(MOST_SHOWN)
            .map(edge -> edge.name() + " " + edge.points().size() + " points")
            .collect(Collectors.joining(", "));
    String more = edges.size() > MOST_SHOWN ? ", and more" : "";
    String much =
        switch (extent) {
          case HALF_ON_FOLD -> "half on the fold";
          case WHOLE -> "whole";
          case AS_IT_LIES -> "as it lies";
        };
    return piece + ", " + much + ": " + strokes + more;
  }
}
