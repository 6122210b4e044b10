package dev.drafting.core.offset;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A stretch of an offset outline that came from one edge or one corner.
 *
 * <pre>{@code
 * OffsetResult wider = Offset.of(List.of(OffsetEdge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0)), Length.mm(20)), OffsetEdge.of("side", Curve.line(new Point(200, 0), new Point(0, 150)), Length.mm(7)), OffsetEdge.of("front", Curve.line(new Point(0, 150), new Point(0, 0)), Length.ZERO))).result();
 * wider.parts("hem").get(0);  // => EDGE hem, 238.33 mm, from 0 mm to 200 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class OffsetPart implements Serializable {
  private static final long serialVersionUID = 1L;

  private final OffsetTag tag;
  private final int source;
  private final String sourceName;
  private final Curve curve;
  private final Length from;
  private final Length to;

  OffsetPart(OffsetTag tag, int source, String sourceName, Curve curve, Length from, Length to) {
    this.tag = tag;
    this.source = source;
    this.sourceName = sourceName;
    this.curve = curve;
    this.from = from;
    this.to = to;
  }

  /**
   * Whether this is parallel to an edge, added at a corner, or a step.
   *
   * @return the tag
   */
  public OffsetTag tag() {
    return tag;
  }

  /**
   * The edge it came from; for a corner the edge before the corner.
   *
   * @return the position of the edge in the outline, from 0
   */
  public int source() {
    return source;
  }

  /**
   * The name of the edge it came from; for a corner the edge before the corner.
   *
   * @return the edge's name
   */
  public String sourceName() {
    return sourceName;
  }

  /**
   * The stretch itself.
   *
   * @return the curve, in the direction of the outline
   */
  public Curve curve() {
    return curve;
  }

  /**
   * Where the stretch begins, measured along its edge; zero for a corner.
   *
   * @return a length along the source edge
   */
  public Length from() {
    return from;
  }

  /**
   * Where the stretch ends, measured along its edge; zero for a corner. A straight continuation
   * beyond the end of the edge does not count here.
   *
   * @return a length along the source edge
   */
  public Length to() {
    return to;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      OffsetTag tag, int source, String sourceName, Curve curve, Length from, Length to)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (source < 0) {
        throw DraftingException.of("an offset line comes from no edge")
            .at(sourceName)
            .value(source)
            .accepted("0 or more");
      }
      return new OffsetPart(
          Objects.requireNonNull(tag, "tag"),
          source,
          Objects.requireNonNull(sourceName, "sourceName"),
          Objects.requireNonNull(curve, "curve"),
          Objects.requireNonNull(from, "from"),
          Objects.requireNonNull(to, "to"));
    }
  }

  private Object writeReplace() {
    return new Kept(tag, source, sourceName, curve, from, to);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a part of an offset line is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OffsetPart that
        && tag == that.tag
        && source == that.source
        && sourceName.equals(that.sourceName)
        && curve.equals(that.curve)
        && from.equals(that.from)
        && to.equals(that.to);
  }

  @Override
  public int hashCode() {
    return Objects.hash(tag, source, sourceName, curve, from, to);
  }

  @Override
  public String toString() {
    String length = OffsetText.rounded(curve.length());
    if (tag != OffsetTag.EDGE) {
      return tag + " after " + sourceName + ", " + length;
    }
    return "EDGE "
        + sourceName
        + ", "
        + length
        + ", from "
        + OffsetText.rounded(from)
        + " to "
        + OffsetText.rounded(to);
  }
}
