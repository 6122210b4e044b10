package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A mark on an edge that is matched with another when sewing.
 *
 * <pre>{@code
 * Notch.of("side", Length.mm(200), "waist");  // => notch waist on side at 200 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Notch implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String edge;
  private final Length along;
  private final String label;

  private Notch(String edge, Length along, String label) {
    this.edge = edge;
    this.along = along;
    this.label = label;
  }

  /**
   * A notch.
   *
   * @param edge the name of its edge
   * @param along how far along the finished edge from its start, counter-clockwise, zero or more
   * @param label what it is matched with: "front", "quarter", "shoulder"
   * @return the notch
   * @throws DraftingException if a name cannot be used or the distance is negative
   */
  public static Notch of(String edge, Length along, String label) {
    Names.check("an edge", edge);
    Names.check("a notch", label);
    if (along.isNegative()) {
      throw DraftingException.of("a notch lies before the start of its edge")
          .at(edge)
          .value(along)
          .accepted("zero or more");
    }
    return new Notch(edge, along, label);
  }

  /**
   * The edge it lies on.
   *
   * @return the edge's name
   */
  public String edge() {
    return edge;
  }

  /**
   * How far along the finished edge it lies.
   *
   * @return the distance from the edge's start
   */
  public Length along() {
    return along;
  }

  /**
   * What it is matched with.
   *
   * @return the label
   */
  public String label() {
    return label;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String edge, Length along, String label) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return Notch.of(edge, along, label);
    }
  }

  private Object writeReplace() {
    return new Kept(edge, along, label);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a notch is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Notch
        && ((Notch) other).edge.equals(edge)
        && ((Notch) other).along.equals(along)
        && ((Notch) other).label.equals(label);
  }

  @Override
  public int hashCode() {
    return Objects.hash(edge, along, label);
  }

  @Override
  public String toString() {
    return "notch " + label + " on " + edge + " at " + Text.mm(along);
  }
}
