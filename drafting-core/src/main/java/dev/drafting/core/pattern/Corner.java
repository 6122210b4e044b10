package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.offset.CornerTreatment;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where two edges of a piece meet.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * top.piece("front").corners().get(0);  // => fold to hem, 90°
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Corner implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String before;
  private final String after;
  private final Point at;
  private final Angle interior;
  private final boolean pointed;
  private final @Nullable CornerTreatment treatment;

  Corner(
      String before,
      String after,
      Point at,
      Angle interior,
      boolean pointed,
      @Nullable CornerTreatment treatment) {
    this.before = before;
    this.after = after;
    this.at = at;
    this.interior = interior;
    this.pointed = pointed;
    this.treatment = treatment;
  }

  /**
   * The edge that arrives at the corner, counter-clockwise.
   *
   * @return the edge's name
   */
  public String before() {
    return before;
  }

  /**
   * The edge that leaves the corner.
   *
   * @return the edge's name
   */
  public String after() {
    return after;
  }

  /**
   * Where the corner is on the finished outline.
   *
   * @return the point
   */
  public Point at() {
    return at;
  }

  /**
   * The angle of the piece at this corner: 90 degrees at a square one, more than 180 where the
   * outline turns inwards.
   *
   * @return 0 to 360 degrees
   */
  public Angle interiorAngle() {
    return interior;
  }

  /**
   * Tells whether the corner is meant to be a point, as at a V neck or a pointed hem, and so need
   * not run smoothly across the seam or the fold.
   *
   * @return true where declared
   */
  public boolean isPointed() {
    return pointed;
  }

  /**
   * How the allowances are brought together at this corner.
   *
   * @return the treatment asked for, or empty where the usual one will do
   */
  public Optional<CornerTreatment> treatment() {
    return Optional.ofNullable(treatment);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      String before,
      String after,
      Point at,
      Angle interior,
      boolean pointed,
      @Nullable CornerTreatment treatment)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new Corner(
          Objects.requireNonNull(before, "before"),
          Objects.requireNonNull(after, "after"),
          Objects.requireNonNull(at, "at"),
          Objects.requireNonNull(interior, "interior"),
          pointed,
          treatment);
    }
  }

  private Object writeReplace() {
    return new Kept(before, after, at, interior, pointed, treatment);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a corner is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Corner
        && ((Corner) other).before.equals(before)
        && ((Corner) other).after.equals(after)
        && ((Corner) other).at.equals(at)
        && ((Corner) other).interior.equals(interior)
        && ((Corner) other).pointed == pointed
        && Objects.equals(((Corner) other).treatment, treatment);
  }

  @Override
  public int hashCode() {
    return Objects.hash(before, after, at, interior, pointed, treatment);
  }

  @Override
  public String toString() {
    return before
        + " to "
        + after
        + ", "
        + interior
        + (pointed ? ", pointed" : "")
        + treatment().map(t -> ", " + t).orElse("");
  }
}
