package dev.drafting.core.offset;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A stretch of an edge that has no parallel in the result because there was no room for it. The
 * ordinary meeting of two neighbours at a corner is not reported.
 *
 * <pre>{@code
 * Trimming trimmed = Offset.of(List.of(OffsetEdge.of("top", Curve.line(new Point(50, 0), new Point(-50, 0)), Length.ZERO), OffsetEdge.of("side", Curve.line(new Point(-50, 0), new Point(-50, -80)), Length.ZERO), OffsetEdge.of("below", Curve.line(new Point(-50, -80), new Point(50, -80)), Length.ZERO), OffsetEdge.of("slit", Curve.polyline(new Point(50, -80), new Point(50, -42), new Point(20, -40), new Point(50, -38), new Point(50, 0)), Length.mm(10)))).result().trimmings().get(0);
 * trimmed.edge();  // => slit
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Trimming implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Why a parallel was cut short. */
  public enum Cause {
    /** The distance is larger than the radius of the curve. */
    TIGHT_CURVE("the curve is tighter than the distance"),
    /** The parallel overran the parallel of another part of the outline. */
    OVERLAP("it overruns another part of the outline"),
    /** Nothing of the edge's parallel is left. */
    SWALLOWED("there is no room for any of it");

    private final String reason;

    Cause(String reason) {
      this.reason = reason;
    }
  }

  private final String edge;
  private final Point at;
  private final Cause cause;
  private final Length lost;

  Trimming(String edge, Point at, Cause cause, Length lost) {
    this.edge = edge;
    this.at = at;
    this.cause = cause;
    this.lost = lost;
  }

  /**
   * The edge whose parallel was cut short.
   *
   * @return the edge's name
   */
  public String edge() {
    return edge;
  }

  /**
   * Where the outline goes on instead.
   *
   * @return a point of the result
   */
  public Point at() {
    return at;
  }

  /**
   * Why it was cut short.
   *
   * @return the cause
   */
  public Cause cause() {
    return cause;
  }

  /**
   * Why it was cut short, in words.
   *
   * @return a clause without a full stop
   */
  public String reason() {
    return cause.reason;
  }

  /**
   * How much of the edge has no parallel.
   *
   * @return a length along the source edge
   */
  public Length lost() {
    return lost;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String edge, Point at, Cause cause, Length lost) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (lost.isNegative()) {
        throw DraftingException.of("an edge has lost less than nothing")
            .at(edge)
            .value(lost)
            .accepted("0 mm or more");
      }
      return new Trimming(
          Objects.requireNonNull(edge, "edge"),
          Objects.requireNonNull(at, "at"),
          Objects.requireNonNull(cause, "cause"),
          Objects.requireNonNull(lost, "lost"));
    }
  }

  private Object writeReplace() {
    return new Kept(edge, at, cause, lost);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a trimming is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Trimming that
        && edge.equals(that.edge)
        && at.equals(that.at)
        && cause == that.cause
        && lost.equals(that.lost);
  }

  @Override
  public int hashCode() {
    return Objects.hash(edge, at, cause, lost);
  }

  @Override
  public String toString() {
    return edge + ": " + OffsetText.rounded(lost) + " lost at " + at + ", " + reason();
  }
}
