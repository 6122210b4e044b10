package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * An edge of which a tape measure is all that is known: how long it is, along the seam of its strip
 * or along its finished edge, and how far it turns on its way round.
 *
 * <p>Away from the finished edge by w it is longer by w times the turning; at a mitred corner of
 * turn q by {@code 2 w tan(q / 2)} instead of w times q. The turning follows from the shoulder
 * slopes, see {@link #turningOfNeck} and {@link #turningOfArmhole}; of a round hole in flat cloth
 * it is 360 degrees, of a straight hem or cuff none.
 *
 * <pre>{@code
 * TapedEdge neck = TapedEdge.alongSeam("neck", Length.cm(62), Angle.degrees(360)).withCorners(Angle.degrees(80));
 * neck;  // => neck: 62 cm along the seam, turning 360°, 1 mitred corner
 * FlatWindow window = FlatWindow.of(neck, FoldedBand.of(Length.cm(2), Length.mm(7)), 0);
 * window;  // => 48.9 to 55.4 cm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class TapedEdge implements BandEdge {
  private static final long serialVersionUID = 1L;
  private static final double MOST_TURNING = 720;
  private static final double SHARPEST = 170;

  private final String name;
  private final Length measured;
  private final boolean alongSeam;
  private final Angle turning;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Angle> corners;

  private TapedEdge(
      String name, Length measured, boolean alongSeam, Angle turning, List<Angle> corners) {
    this.name = Objects.requireNonNull(name, "name");
    this.measured = measured;
    this.alongSeam = alongSeam;
    this.turning = turning;
    this.corners = corners;
  }

  /**
   * An edge that was measured along the seam of its strip.
   *
   * @param name what the opening is called
   * @param length all the way round, over nothing
   * @param turning how far it turns on its way round, up to 720 degrees either way
   * @return the edge
   * @throws DraftingException if it has no length or turns further
   */
  public static TapedEdge alongSeam(String name, Length length, Angle turning) {
    return new TapedEdge(name, positive(length), true, within(turning), List.of());
  }

  /**
   * An edge that was measured where the finished garment ends.
   *
   * @param name what the opening is called
   * @param length all the way round, over nothing
   * @param turning how far it turns on its way round, up to 720 degrees either way
   * @return the edge
   * @throws DraftingException if it has no length or turns further
   */
  public static TapedEdge alongFinishedEdge(String name, Length length, Angle turning) {
    return new TapedEdge(name, positive(length), false, within(turning), List.of());
  }

  private static Length positive(Length length) {
    if (!length.isPositive()) {
      throw DraftingException.of("the edge has no length").value(length).accepted("more than 0");
    }
    return length;
  }

  private static Angle within(Angle turning) {
    if (Math.abs(turning.toDegrees()) > MOST_TURNING) {
      throw DraftingException.of("the turning is out of range")
          .value(turning)
          .accepted("-720 to 720 degrees");
    }
    return turning;
  }

  /**
   * The same edge with corners at which its strip is mitred, as at the point of a V.
   *
   * @param turns how far the edge turns at each, -170 to 170 degrees; the turning of the whole edge
   *     counts them already
   * @return the edge
   * @throws DraftingException if a corner turns further
   */
  public TapedEdge withCorners(Angle... turns) {
    for (Angle turn : turns) {
      if (Math.abs(turn.toDegrees()) > SHARPEST) {
        throw DraftingException.of("a mitred corner turns too far")
            .value(turn)
            .accepted("-170 to 170 degrees");
      }
    }
    return new TapedEdge(name, measured, alongSeam, turning, List.copyOf(Arrays.asList(turns)));
  }

  /**
   * How far a neck turns: 360 degrees less twice the slopes of front and back.
   *
   * @param slope of the shoulder seam, downward from the neck, the same on front and back
   * @return 280 degrees for a slope of 20
   */
  public static Angle turningOfNeck(Angle slope) {
    return Angle.degrees(360 - 4 * slope.toDegrees());
  }

  /**
   * How far an armhole turns: 180 degrees and the slopes of front and back, where the sides are
   * upright.
   *
   * @param slope of the shoulder seam, downward from the neck, the same on front and back
   * @return 220 degrees for a slope of 20
   */
  public static Angle turningOfArmhole(Angle slope) {
    return Angle.degrees(180 + 2 * slope.toDegrees());
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Angle turning() {
    return turning;
  }

  /**
   * The length all round.
   *
   * @param distance from the finished edge, outward positive
   * @param seam where the strip's seam lies: a negative distance
   * @return over nothing
   * @throws DraftingException if nothing is left there
   */
  @Override
  public Length lengthAt(Length distance, Length seam) {
    double finished = measured.toMm() - (alongSeam ? growth(seam.negated().toMm()) : 0);
    double length = finished + growth(distance.negated().toMm());
    if (length <= 0) {
      throw DraftingException.of("the strip is too wide for its edge: nothing is left of its fold")
          .at(name)
          .value(seam.abs())
          .accepted("less than " + Wording.fine(Length.mm(measured.toMm() / growth(1))));
    }
    return Length.mm(length);
  }

  /** How much longer it is so many millimetres further in. */
  private double growth(double inward) {
    double growth = inward * turning.toRadians();
    for (Angle corner : corners) {
      double q = corner.toRadians();
      growth += inward * (2 * Math.tan(q / 2) - q);
    }
    return growth;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String name, Length measured, boolean alongSeam, Angle turning, List<Angle> corners)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      TapedEdge edge =
          alongSeam
              ? TapedEdge.alongSeam(name, measured, turning)
              : TapedEdge.alongFinishedEdge(name, measured, turning);
      return edge.withCorners(corners.toArray(Angle[]::new));
    }
  }

  private Object writeReplace() {
    return new Kept(name, measured, alongSeam, turning, corners);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a taped edge is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TapedEdge
        && ((TapedEdge) other).name.equals(name)
        && ((TapedEdge) other).measured.equals(measured)
        && ((TapedEdge) other).alongSeam == alongSeam
        && ((TapedEdge) other).turning.equals(turning)
        && ((TapedEdge) other).corners.equals(corners);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, measured, alongSeam, turning, corners);
  }

  @Override
  public String toString() {
    return name
        + ": "
        + Wording.amount(measured)
        + (alongSeam ? " along the seam" : " along the finished edge")
        + ", turning "
        + turning
        + (corners.isEmpty()
            ? ""
            : ", " + corners.size() + (corners.size() == 1 ? " mitred corner" : " mitred corners"));
  }
}
