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
 * An edge of an outline with the distance at which its parallel shall run.
 *
 * <pre>{@code
 * OffsetEdge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0)), Length.mm(20));  // => hem at 20 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class OffsetEdge implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Curve curve;
  private final Length distance;

  private OffsetEdge(String name, Curve curve, Length distance) {
    this.name = name;
    this.curve = curve;
    this.distance = distance;
  }

  /**
   * An edge and its distance.
   *
   * @param name what the edge is called, not blank
   * @param curve the edge, in the direction of the counter-clockwise outline
   * @param distance + outward, - inward, zero for none
   * @return the edge
   * @throws DraftingException if the name is blank
   */
  public static OffsetEdge of(String name, Curve curve, Length distance) {
    if (name.isBlank()) {
      throw DraftingException.of("an edge has no name").accepted("a name such as \"side\"");
    }
    return new OffsetEdge(
        name, Objects.requireNonNull(curve, "curve"), Objects.requireNonNull(distance, "distance"));
  }

  /**
   * What the edge is called.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * The edge itself.
   *
   * @return the curve, in the direction of the outline
   */
  public Curve curve() {
    return curve;
  }

  /**
   * How far off the parallel runs.
   *
   * @return + outward, - inward
   */
  public Length distance() {
    return distance;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String name, Curve curve, Length distance) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(name, curve, distance);
    }
  }

  private Object writeReplace() {
    return new Kept(name, curve, distance);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an edge to offset is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OffsetEdge that
        && name.equals(that.name)
        && curve.equals(that.curve)
        && distance.equals(that.distance);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, curve, distance);
  }

  @Override
  public String toString() {
    return name + " at " + distance;
  }
}
