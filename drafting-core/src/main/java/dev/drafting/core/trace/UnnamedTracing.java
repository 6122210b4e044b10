package dev.drafting.core.trace;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A piece that was traced past its corners, in one stroke or in several that are not named: finds
 * the corners, so that the stretches between them can be named and trued.
 *
 * <p>A corner is where the line stands off every smooth run of it by more than the pencil wandered,
 * as judged from the points themselves. What the search missed or saw too many of is put right with
 * {@link #withCorner} and {@link #withoutCorner}.
 *
 * <p>The stretches run counter-clockwise. Those of a half on the fold start at the lower end of the
 * fold; those of a closed outline with the one whose middle lies lowest. Where the pencil was set
 * down does not matter.
 *
 * <pre>{@code
 * UnnamedTracing pocket = UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, Polyline.of(
 *     0, 0, 20, 0, 40, 0, 60, 0, 60, 20, 60, 40, 60, 60, 60, 80, 40, 80, 20, 80, 0, 80));
 * pocket.stretches();
 * // => [1: (0, 0) to (60, 0), 60 mm apart, 2: (60, 0) to (60, 80), 80 mm apart, 3: (60, 80) to (0, 80), 60 mm apart]
 * Truing.of(pocket.named("bottom", "side", "top")).result().report().edge("side");
 * // => side: straight, 80 mm; 5 points, 0 refused, RMS 0 mm, largest 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class UnnamedTracing implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int MOST_POINTS = 1_000_000;

  private final String piece;
  private final Extent extent;

  /** Counter-clockwise; a closed outline does not repeat its first point. */
  private final Polyline round;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Corner> corners;

  /** The points of strokes that were put in order. */
  @SuppressWarnings("serial") // always an unmodifiable set of the JDK
  private final Set<Point> reordered;

  private UnnamedTracing(
      String piece, Extent extent, Polyline round, Set<Point> reordered, List<Corner> corners) {
    this.piece = piece;
    this.extent = extent;
    this.round = round;
    this.reordered = Collections.unmodifiableSet(reordered);
    this.corners = List.copyOf(corners);
  }

  private UnnamedTracing with(List<Corner> others) {
    return new UnnamedTracing(piece, extent, round, reordered, others);
  }

  /**
   * A piece traced in one stroke.
   *
   * @param piece the name of the piece: "front"
   * @param extent half on the fold or whole
   * @param round the points in millimetres, y up, in either direction, from anywhere; of a half on
   *     the fold from one end of the fold round to the other
   * @return the tracing with the corners that were found
   * @throws DraftingException if the line does not end at the fold or where it began, or has no
   *     corner
   */
  public static UnnamedTracing of(String piece, Extent extent, Polyline round) {
    return of(piece, extent, List.of(round));
  }

  /**
   * A piece traced in one stroke, some of whose corners are known, as from a file that tells them.
   * Others are searched for.
   *
   * @param piece the name of the piece
   * @param extent half on the fold or whole
   * @param round the points in millimetres
   * @param known where corners are; each is put on the nearest point of the line
   * @return the tracing with the corners that were known and found
   * @throws DraftingException if the name is blank, the line does not end at the fold or where it
   *     began, or has no corner
   */
  public static UnnamedTracing of(
      String piece, Extent extent, Polyline round, Collection<Point> known) {
    UnnamedTracing tracing = joined(piece, extent, List.of(round));
    for (Point corner : known) {
      tracing = tracing.withCorner(corner);
    }
    return tracing.checked();
  }

  /**
   * A piece traced in several strokes, in any order and direction. A stroke may run past corners,
   * and the pencil may be lifted anywhere. A stroke of up to 3,000 points that was drawn there and
   * back, or written down out of order, is put in order; edges found on it say so when they are
   * trued.
   *
   * @param piece the name of the piece
   * @param extent half on the fold or whole
   * @param strokes the points of each stroke in millimetres; neighbouring strokes end within 15 mm
   *     of each other
   * @return the tracing with the corners that were found
   * @throws DraftingException if the name is blank, the strokes do not join up, the line does not
   *     end at the fold or where it began, there is no corner, or there are more than a million
   *     points
   */
  public static UnnamedTracing of(String piece, Extent extent, List<Polyline> strokes) {
    return joined(piece, extent, strokes).checked();
  }

  private static UnnamedTracing joined(String piece, Extent extent, List<Polyline> strokes) {
    Tracing.checkName(piece);
    boolean closed = Objects.requireNonNull(extent, "extent") != Extent.HALF_ON_FOLD;
    List<Stroke> numbered = new ArrayList<>();
    long points = 0;
    for (Polyline stroke : strokes) {
      points += stroke.size();
      TracedEdge drawn = TracedEdge.of("stroke " + (numbered.size() + 1), stroke);
      numbered.add(Stroke.of(drawn, closed && strokes.size() == 1));
    }
    if (numbered.isEmpty() || points > MOST_POINTS) {
      throw DraftingException.of("a tracing has too few or too many points")
          .at(piece)
          .value(points)
          .accepted("one stroke or more, a million points or fewer");
    }
    List<Stroke> joined = closed ? Joining.whole(piece, numbered) : Joining.half(piece, numbered);
    Polyline round = RoundLine.of(joined, closed);
    Set<Point> reordered = new HashSet<>();
    for (Stroke stroke : joined) {
      for (int i = 0; stroke.reordered && i < stroke.samples.size(); i++) {
        reordered.add(stroke.point(i));
      }
    }
    List<Corner> corners = RoundLine.corners(round, closed);
    return new UnnamedTracing(piece, extent, round, reordered, corners);
  }

  private UnnamedTracing checked() {
    if (corners.isEmpty()) {
      throw DraftingException.of("no corner stands out of the line")
          .at(piece)
          .accepted("a line with corners; an edge without corners is traced under its name");
    }
    return this;
  }

  /**
   * Puts a corner that was not found on the traced point nearest to a place.
   *
   * @param near where the corner is, in millimetres
   * @return a tracing with this corner
   */
  public UnnamedTracing withCorner(Point near) {
    int at = nearestPoint(near);
    List<Corner> more = new ArrayList<>(corners);
    if (more.stream().noneMatch(corner -> corner.first() == at || corner.last() == at)) {
      more.add(new Corner(at, at));
      more.sort(Comparator.comparingInt(Corner::first));
    }
    return with(more);
  }

  /**
   * Lets the line run through at the corner nearest to a place.
   *
   * @param near near which corner, in millimetres
   * @return a tracing without this corner
   * @throws DraftingException if there is no other corner
   */
  public UnnamedTracing withoutCorner(Point near) {
    if (corners.size() < 2) {
      throw DraftingException.of("a tracing needs corners to have edges")
          .at(piece)
          .value(near)
          .accepted("a tracing with two corners or more");
    }
    List<Corner> fewer = new ArrayList<>(corners);
    fewer.remove(
        fewer.stream().min(Comparator.comparing(c -> point(c).distanceTo(near))).orElseThrow());
    return with(fewer);
  }

  private int nearestPoint(Point near) {
    int nearest = 0;
    for (int i = 1; i < round.size(); i++) {
      boolean nearer =
          near.distanceTo(round.point(i)).compareTo(near.distanceTo(round.point(nearest))) < 0;
      nearest = nearer ? i : nearest;
    }
    return nearest;
  }

  /**
   * Where edges meet: a traced point, or the middle between the two nearest. Truing finds the
   * corner itself, where the edges cross.
   *
   * @return the corners, counter-clockwise
   */
  public List<Point> corners() {
    return corners.stream().map(this::point).collect(Collectors.toUnmodifiableList());
  }

  private Point point(Corner corner) {
    Point last = round.point(corner.last());
    return last.plus(round.point(corner.first()).minus(last).times(0.5));
  }

  /**
   * What lies between the corners: the edges, still without names.
   *
   * @return the stretches, counter-clockwise
   */
  public List<TracedStretch> stretches() {
    List<Polyline> found = RoundLine.stretches(round, corners, extent != Extent.HALF_ON_FOLD);
    List<TracedStretch> stretches = new ArrayList<>();
    for (Polyline points : found) {
      stretches.add(new TracedStretch(stretches.size() + 1, points, isReordered(points)));
    }
    return List.copyOf(stretches);
  }

  /** Whether more of them than the two ends, which neighbours share, were put in order. */
  private boolean isReordered(Polyline points) {
    int count = 0;
    for (int i = 0; i < points.size(); i++) {
      count += reordered.contains(points.point(i)) ? 1 : 0;
    }
    return count > Math.min(2, points.size() - 1);
  }

  /**
   * Names the stretches, in their order. A whole piece has every name twice, left and right, but
   * for edges that cross the fold.
   *
   * @param names one for every stretch
   * @return the tracing, ready for {@link Truing}
   * @throws DraftingException if there are more or fewer names than stretches, or as {@link
   *     Tracing#of} does
   */
  public Tracing named(String... names) {
    List<TracedStretch> stretches = stretches();
    if (names.length != stretches.size()) {
      throw DraftingException.of("there are not as many names as stretches between corners")
          .at(piece)
          .value(names.length + " names")
          .accepted(stretches.size() + " names, or other corners (withCorner, withoutCorner)");
    }
    List<TracedEdge> edges = new ArrayList<>();
    for (TracedStretch stretch : stretches) {
      edges.add(stretch.named(names[stretch.number() - 1]));
    }
    return Tracing.of(piece, extent, edges);
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

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always a collection of the JDK
  private record Kept(
      String piece, Extent extent, Polyline round, Set<Point> reordered, List<Corner> corners)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      for (Corner corner : corners) {
        if (Math.min(corner.first(), corner.last()) < 0
            || Math.max(corner.first(), corner.last()) >= round.size()) {
          throw DraftingException.of("a corner lies on no point of the line")
              .at(piece)
              .value(corner)
              .accepted("one of " + round.size() + " points");
        }
      }
      return new UnnamedTracing(
              Objects.requireNonNull(piece, "piece"),
              Objects.requireNonNull(extent, "extent"),
              Objects.requireNonNull(round, "round"),
              new HashSet<>(reordered),
              corners)
          .checked();
    }
  }

  private Object writeReplace() {
    return new Kept(piece, extent, round, reordered, corners);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an unnamed tracing is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof UnnamedTracing that
        && piece.equals(that.piece)
        && extent == that.extent
        && round.equals(that.round)
        && reordered.equals(that.reordered)
        && corners.equals(that.corners);
  }

  @Override
  public int hashCode() {
    return Objects.hash(piece, extent, round, reordered, corners);
  }

  @Override
  public String toString() {
    return piece
        + ", "
        + round.size()
        + " points, "
        + corners.size()
        + (corners.size() == 1 ? " corner" : " corners");
  }
}
