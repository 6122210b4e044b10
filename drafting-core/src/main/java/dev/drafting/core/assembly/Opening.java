package dev.drafting.core.assembly;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Piece;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A closed edge of the sewn garment, such as the neck, an armhole or the hem.
 *
 * <p>Its loop runs with the cloth on the left and the right side up, and begins at the start of its
 * first part.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * Opening neck = Assembly.of(top).opening("neck");
 * neck.length().text(LengthUnit.CM);  // => 48.32 cm
 * neck.turning();  // => 274.71°
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Opening implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<OpeningPart> parts;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<OpeningStation> stations;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Piece> pieces;

  Opening(String name, List<OpeningPart> parts, List<OpeningStation> stations, List<Piece> pieces) {
    this.name = name;
    this.parts = List.copyOf(parts);
    this.stations = List.copyOf(stations);
    this.pieces = List.copyOf(pieces);
  }

  /**
   * What the opening is called: the common name of its edges. Of two with one name, the one of the
   * drawn copies is "(right)" and its image "(left)".
   *
   * @return for instance "neck" or "armhole (right)"
   */
  public String name() {
    return name;
  }

  /**
   * The edges in the order of the loop.
   *
   * @return an unmodifiable list of one or more
   */
  public List<OpeningPart> parts() {
    return parts;
  }

  /**
   * How the opening is finished.
   *
   * @return the finish of its first edge
   */
  public Finish finish() {
    OpeningPart first = parts.get(0);
    return piece(first.edge().piece()).edge(first.edge().edge()).finish();
  }

  private Piece piece(String piece) {
    return pieces.stream().filter(p -> p.name().equals(piece)).findFirst().orElseThrow();
  }

  /**
   * The length of the finished edge all round.
   *
   * @return more than zero
   */
  public Length length() {
    return parts.stream().map(p -> p.curve().length()).reduce(Length.ZERO, Length::plus);
  }

  /**
   * The length all round at a distance from the finished edge, measured on the parallels of the
   * edges as they are trimmed and mitred at the corners, seams and folds of each piece.
   *
   * @param distance outward, away from the cloth, is positive; a band's seam lies at a negative one
   * @return the length
   * @throws DraftingException if a piece has no room for such a parallel
   */
  public Length lengthAt(Length distance) {
    return lengthsAt(distance).stream().reduce(Length.ZERO, Length::plus);
  }

  /**
   * The lengths of its parts at a distance from the finished edge; together they are {@link
   * #lengthAt}.
   *
   * @param distance outward, away from the cloth, is positive
   * @return an unmodifiable list, one length for each part
   * @throws DraftingException if a piece has no room for such a parallel
   */
  public List<Length> lengthsAt(Length distance) {
    try {
      return distance.isZero()
          ? parts.stream().map(part -> part.curve().length()).toList()
          : new LoopAtDistance(parts, pieces, distance).lengths();
    } catch (DraftingException e) {
      throw e.at("opening " + name);
    }
  }

  /**
   * The turning K of the opening: how much shorter its edge gets for every unit of width that a
   * band covers. It is the integral of curvature along the finished edge, positive where the
   * opening is convex, plus at every station the angle of the garment less 180 degrees. A round
   * hole in flat cloth has 360 degrees, the hem of a tube none.
   *
   * @return the turning, not reduced
   */
  public Angle turning() {
    double sum = 0;
    for (OpeningPart part : parts) {
      sum -= turningAlong(part);
    }
    for (OpeningStation station : stations) {
      sum += station.angle().toRadians() - Math.PI;
    }
    return Angle.radians(sum);
  }

  /** The turning between the ends; the joint at which a closed curve closes is a station. */
  private static double turningAlong(OpeningPart part) {
    double turning = part.curve().turning().toRadians();
    if (!part.curve().isClosed()) {
      return turning;
    }
    var arriving = part.curve().directionAt(part.curve().length());
    var leaving = part.curve().directionAt(Length.ZERO);
    return turning - arriving.turnTo(leaving).toRadians();
  }

  /**
   * The places where its edges meet, in the order of the loop; the first is at its start.
   *
   * @return an unmodifiable list, one for each part
   */
  public List<OpeningStation> stations() {
    return stations;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String name, List<OpeningPart> parts, List<OpeningStation> stations, List<Piece> pieces)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new Opening(Objects.requireNonNull(name, "name"), parts, stations, pieces);
    }
  }

  private Object writeReplace() {
    return new Kept(name, parts, stations, pieces);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an opening is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Opening
        && ((Opening) other).name.equals(name)
        && ((Opening) other).parts.equals(parts)
        && ((Opening) other).stations.equals(stations)
        && ((Opening) other).pieces.equals(pieces);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, parts, stations, pieces);
  }

  @Override
  public String toString() {
    return name
        + ": "
        + length().text(LengthUnit.MM)
        + ", turning "
        + turning()
        + ", by "
        + stations.stream().limit(12).map(OpeningStation::label).collect(Collectors.joining(", "));
  }
}
