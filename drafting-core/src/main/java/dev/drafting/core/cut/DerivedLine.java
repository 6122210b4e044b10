package dev.drafting.core.cut;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.LineRole;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A line that follows from an edge and its finish: where it is sewn, folded or topstitched.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * CutPlan.of(top).pieces().get(0).lines().get(0).label();  // => side: join line
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class DerivedLine implements Serializable {
  private static final long serialVersionUID = 1L;

  private final LineRole role;
  private final String edge;
  private final Curve curve;
  private final Length edgeLength;

  DerivedLine(LineRole role, Edge edge, Curve curve) {
    this(role, edge.name(), curve, edge.curve().length());
  }

  private DerivedLine(LineRole role, String edge, Curve curve, Length edgeLength) {
    this.role = Objects.requireNonNull(role, "role");
    this.edge = Objects.requireNonNull(edge, "edge");
    this.curve = Objects.requireNonNull(curve, "curve");
    this.edgeLength = Objects.requireNonNull(edgeLength, "edgeLength");
  }

  /**
   * What the line is for.
   *
   * @return join, fold or topstitch
   */
  public LineRole role() {
    return role;
  }

  /**
   * The edge that it follows.
   *
   * @return the edge's name
   */
  public String edge() {
    return edge;
  }

  /**
   * Where it lies on the flat cloth, from cut edge to cut edge.
   *
   * @return the curve, in the direction of the edge
   */
  public Curve curve() {
    return curve;
  }

  /**
   * How long it is.
   *
   * @return the length from cut edge to cut edge
   */
  public Length length() {
    return curve.length();
  }

  /**
   * How long the edge is that it follows. Beside a curve or slanting ends a line is longer or
   * shorter than its edge, and that is what must be eased in or stretched.
   *
   * @return the length of the finished edge
   */
  public Length edgeLength() {
    return edgeLength;
  }

  /**
   * How much longer it is than the edge that it follows.
   *
   * @return below zero where it is shorter
   */
  public Length longerBy() {
    return length().minus(edgeLength);
  }

  /**
   * What is printed beside it.
   *
   * @return for instance "hem: fold"
   */
  public String label() {
    return edge.equals("fold") ? "fold of the cloth" : edge + ": " + word();
  }

  private String word() {
    return switch (role) {
      case CUT -> "cut";
      case JOIN -> "join line";
      case FOLD -> "fold";
      case TOPSTITCH -> "topstitching";
    };
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(LineRole role, String edge, Curve curve, Length edgeLength)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (edgeLength.isNegative()) {
        throw DraftingException.of("an edge is shorter than nothing")
            .at(edge)
            .value(edgeLength)
            .accepted("0 mm or more");
      }
      return new DerivedLine(role, edge, curve, edgeLength);
    }
  }

  private Object writeReplace() {
    return new Kept(role, edge, curve, edgeLength);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a derived line is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DerivedLine that
        && that.role == role
        && that.edge.equals(edge)
        && that.curve.equals(curve)
        && that.edgeLength.equals(edgeLength);
  }

  @Override
  public int hashCode() {
    return Objects.hash(role.name(), edge, curve, edgeLength);
  }

  @Override
  public String toString() {
    return label()
        + ", "
        + length().text(LengthUnit.MM)
        + " beside "
        + edgeLength.text(LengthUnit.MM)
        + " of edge";
  }
}
