package dev.drafting.core.measure;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An angle or an amount of turning, counter-clockwise positive. It is not reduced to one turn: a
 * seam that winds twice has turned 720 degrees.
 *
 * <pre>{@code
 * Angle.degrees(360).minus(Angle.degrees(22).times(4));  // => 272°
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Angle implements Comparable<Angle>, Serializable {
  private static final long serialVersionUID = 1L;

  /** No turning at all. */
  public static final Angle ZERO = new Angle(0);

  private final double radians;

  private Angle(double radians) {
    this.radians = radians;
  }

  /**
   * An angle in radians.
   *
   * @param radians any finite number
   * @return the angle
   * @throws DraftingException if it is not a finite number
   */
  public static Angle radians(double radians) {
    if (!Double.isFinite(radians)) {
      throw DraftingException.of("an angle is not a number")
          .value(radians)
          .accepted("a finite number");
    }
    return new Angle(radians + 0.0);
  }

  /**
   * An angle in degrees.
   *
   * @param degrees any finite number
   * @return the angle
   * @throws DraftingException if it is not a finite number
   */
  public static Angle degrees(double degrees) {
    return radians(Math.toRadians(degrees));
  }

  /**
   * This angle in radians.
   *
   * @return radians
   */
  public double toRadians() {
    return radians;
  }

  /**
   * This angle in degrees.
   *
   * @return degrees
   */
  public double toDegrees() {
    return Math.toDegrees(radians);
  }

  /**
   * The sum of two angles.
   *
   * @param other the other angle
   * @return the sum, not reduced
   */
  public Angle plus(Angle other) {
    return radians(radians + other.radians);
  }

  /**
   * The difference of two angles.
   *
   * @param other the other angle
   * @return the difference, not reduced
   */
  public Angle minus(Angle other) {
    return radians(radians - other.radians);
  }

  /**
   * This angle a number of times.
   *
   * @param factor any finite number
   * @return the product
   */
  public Angle times(double factor) {
    return radians(radians * factor);
  }

  /**
   * The same turning the other way.
   *
   * @return the angle with the other sign
   */
  public Angle negated() {
    return new Angle(0.0 - radians);
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(radians, other.radians);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(double radians) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return Angle.radians(radians);
    }
  }

  private Object writeReplace() {
    return new Kept(radians);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an angle is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Angle that && that.radians == radians;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(radians);
  }

  /** Degrees to two decimals, for people to read. */
  @Override
  public String toString() {
    BigDecimal degrees = BigDecimal.valueOf(toDegrees()).setScale(2, RoundingMode.HALF_UP);
    return LengthText.plain(degrees) + "°";
  }
}
