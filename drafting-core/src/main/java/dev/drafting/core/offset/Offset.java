package dev.drafting.core.offset;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What to draw parallel to an outline or to a line that is open: edges with a distance each, and
 * how the corners are treated.
 *
 * <p>An outline is closed and counter-clockwise; positive distances are outward, that is to the
 * right of the direction of travel, beside an open line too. Corners without a treatment of their
 * own are mitred. Where an edge is made of several segments that do not run on smoothly, those
 * joints are mitred as well.
 *
 * <pre>{@code
 * OffsetEdge side = OffsetEdge.of("side", Curve.polyline(new Point(0, 0), new Point(100, 0), new Point(100, 50)), Length.mm(10));
 * OffsetEdge neck = OffsetEdge.of("neck", Curve.polyline(new Point(100, 50), new Point(0, 50), new Point(0, 0)), Length.ZERO);
 * OffsetResult result = Offset.of(List.of(side, neck)).result();
 * result.length("side");  // => 170 mm
 * result.outline().areaSquareMm();  // => 6600.0
 * Offset.ofOpen(List.of(side)).result().outline();  // => Curve of 2 lines, 170 mm, open, (0, -10) to (110, 50)
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Offset implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length USUAL_TOLERANCE = Length.mm(0.01);
  private static final Length FINEST_TOLERANCE = Length.mm(1e-6);

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<OffsetEdge> edges;

  private final TreeMap<Integer, CornerTreatment> corners;
  private final boolean closed;
  private final Length tolerance;

  private Offset(
      List<OffsetEdge> edges,
      Map<Integer, CornerTreatment> corners,
      boolean closed,
      Length tolerance) {
    this.edges = edges;
    this.closed = closed;
    this.corners = new TreeMap<>(corners);
    this.tolerance = tolerance;
  }

  /**
   * An outline with a distance for each edge, all corners mitred.
   *
   * @param closedOutline edges end to end, counter-clockwise, the last ending where the first
   *     begins (within 1e-6 mm)
   * @return the offset, not yet computed
   * @throws DraftingException if there are no edges, they do not join up, they run clockwise, or
   *     they cross
   */
  public static Offset of(List<OffsetEdge> closedOutline) {
    return new Offset(SourceCheck.outline(closedOutline), Map.of(), true, USUAL_TOLERANCE);
  }

  /**
   * A line that does not close, with a distance for each edge, all corners mitred. The result ends
   * square to its ends: it begins and stops at the distance straight beside the first and the last
   * point.
   *
   * @param openLine edges end to end (within 1e-6 mm), in either direction; the line may touch
   *     itself but not cross
   * @return the offset, not yet computed
   * @throws DraftingException if there are no edges, they do not join up, or they cross
   */
  public static Offset ofOpen(List<OffsetEdge> openLine) {
    return new Offset(SourceCheck.openLine(openLine), Map.of(), false, USUAL_TOLERANCE);
  }

  /**
   * The same offset with one corner treated otherwise.
   *
   * @param edgeBefore the position, from 0, of the edge that arrives at the corner
   * @param treatment how the corner is closed
   * @return a new offset
   * @throws DraftingException if there is no such edge
   */
  public Offset withCorner(int edgeBefore, CornerTreatment treatment) {
    int count = closed ? edges.size() : edges.size() - 1;
    if (edgeBefore < 0 || edgeBefore >= count) {
      throw DraftingException.of("the outline has no such corner")
          .value(edgeBefore)
          .accepted(
              count == 0
                  ? "none: a single open edge has no corner"
                  : "a number from 0 to " + (count - 1));
    }
    TreeMap<Integer, CornerTreatment> all = new TreeMap<>(corners);
    all.put(edgeBefore, Objects.requireNonNull(treatment, "treatment"));
    return new Offset(edges, all, closed, tolerance);
  }

  /**
   * The same offset with another tolerance: how far the fitted curves may lie from the true
   * parallels, anywhere. Lines and arcs are exact in any case.
   *
   * @param wanted from 0.000001 mm; 0.01 mm if never set
   * @return a new offset
   * @throws DraftingException if it is smaller
   */
  public Offset withTolerance(Length wanted) {
    if (wanted.compareTo(FINEST_TOLERANCE) < 0) {
      throw DraftingException.of("the tolerance of an offset is too small")
          .value(wanted)
          .accepted(FINEST_TOLERANCE + " or more");
    }
    return new Offset(edges, corners, closed, wanted);
  }

  /**
   * Computes the outline.
   *
   * @return an outline, or an open line, that does not cross itself, with its parts and trimmings
   * @throws DraftingException naming an edge, if no simple outline exists at these distances
   */
  public OffsetResult result() {
    double within = tolerance.toMm();
    RawOutline raw = RawOutline.of(edges, corners, closed, within);
    Trimmer simple =
        closed
            ? Trimmer.trim(raw.chain(), edges, within)
            : OpenTrimmer.trim(raw.chain(), edges, within);
    Trimmer trimmed = TooNear.untagged(simple, edges, within);
    List<Trimming> trimmings = new ArrayList<>(raw.trimmings());
    trimmings.addAll(trimmed.trimmings());
    List<Segment> outline = trimmed.strands().stream().map(Strand::segment).toList();
    return new OffsetResult(
        Curve.of(outline),
        edges.stream().map(OffsetEdge::name).toList(),
        new PartBuilder(edges).parts(trimmed.strands()),
        trimmings);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      List<OffsetEdge> edges,
      SortedMap<Integer, CornerTreatment> corners,
      boolean closed,
      Length tolerance)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Offset offset = (closed ? of(edges) : ofOpen(edges)).withTolerance(tolerance);
      for (Map.Entry<Integer, CornerTreatment> corner : corners.entrySet()) {
        offset = offset.withCorner(corner.getKey(), corner.getValue());
      }
      return offset;
    }
  }

  private Object writeReplace() {
    return new Kept(edges, corners, closed, tolerance);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an offset is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Offset that
        && edges.equals(that.edges)
        && corners.equals(that.corners)
        && closed == that.closed
        && tolerance.equals(that.tolerance);
  }

  @Override
  public int hashCode() {
    return Objects.hash(edges, corners, closed, tolerance);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(closed ? "Offset of " : "Open offset of ");
    for (int i = 0; i < edges.size() && text.length() < 800; i++) {
      text.append(i == 0 ? "" : ", ").append(edges.get(i));
      CornerTreatment treatment = corners.get(i);
      if (treatment != null) {
        text.append(" (then ").append(treatment).append(')');
      }
    }
    return text.toString();
  }
}
