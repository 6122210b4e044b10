package dev.drafting.core.lay;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * One piece in its place on the cloth.
 *
 * <pre>{@code
 * Curve square = Curve.polyline(new Point(0, 0), new Point(120, 0), new Point(120, 140), new Point(0, 140), new Point(0, 0));
 * LaidPiece.of("pocket", square, square, 2).along();  // => 120 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class LaidPiece implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Curve cutLine;
  private final Curve toCut;
  private final int layers;
  private final boolean onFold;
  private final boolean turned;
  private final Angle offGrain;

  LaidPiece(
      String name,
      Curve cutLine,
      Curve toCut,
      int layers,
      boolean onFold,
      boolean turned,
      Angle offGrain) {
    this.offGrain = offGrain;
    this.name = Objects.requireNonNull(name, "name");
    this.cutLine = Objects.requireNonNull(cutLine, "cutLine");
    this.toCut = Objects.requireNonNull(toCut, "toCut");
    this.layers = layers;
    this.onFold = onFold;
    this.turned = turned;
  }

  /**
   * A piece as it lies; see {@link #cutLine()} for the frame of the cloth.
   *
   * @param name what it is called
   * @param cutLine its outline on the cloth
   * @param toCut the part of the outline that is cut
   * @param layers through how many layers, 1 or more
   * @return the piece, beside the fold and not turned
   * @throws DraftingException if there is no layer
   */
  public static LaidPiece of(String name, Curve cutLine, Curve toCut, int layers) {
    if (layers < 1) {
      throw DraftingException.of("a piece is cut through no layer")
          .at(name)
          .value(layers)
          .accepted("1 or more");
    }
    return new LaidPiece(name, cutLine, toCut, layers, false, false, Angle.ZERO);
  }

  /**
   * The same piece, its half on the fold of the cloth.
   *
   * @return the piece
   */
  public LaidPiece onFold() {
    return new LaidPiece(name, cutLine, toCut, layers, true, turned, offGrain);
  }

  /**
   * The same piece, its grain turned end for end.
   *
   * @return the piece
   */
  public LaidPiece turned() {
    return new LaidPiece(name, cutLine, toCut, layers, onFold, true, offGrain);
  }

  /**
   * The same piece, laid off its grain.
   *
   * @param angle how far, counter-clockwise positive
   * @return the piece
   */
  public LaidPiece offGrain(Angle angle) {
    return new LaidPiece(name, cutLine, toCut, layers, onFold, turned, angle);
  }

  /**
   * Which piece or strip it is.
   *
   * @return its name
   */
  public String name() {
    return name;
  }

  /**
   * The line round it, along the fold too where it lies on one.
   *
   * @return a closed curve on the plan, x along the cloth and y across it
   */
  public Curve cutLine() {
    return cutLine;
  }

  /**
   * Where it is cut: the line round it without the fold.
   *
   * @return the closed curve, or an open one from fold to fold
   */
  public Curve toCut() {
    return toCut;
  }

  /**
   * Through how many layers it is cut.
   *
   * @return 1 or 2
   */
  public int layers() {
    return layers;
  }

  /**
   * Whether it lies on the fold of the cloth.
   *
   * @return true if its own fold does
   */
  public boolean isOnFold() {
    return onFold;
  }

  /**
   * Whether its head points away from the cut end.
   *
   * @return false if its head points to the cut end
   */
  public boolean isTurned() {
    return turned;
  }

  /**
   * By how much its grain is turned off that of the cloth.
   *
   * @return counter-clockwise; zero unless the lay allows it
   */
  public Angle offGrain() {
    return offGrain;
  }

  private Box box() {
    return cutLine.bounds();
  }

  /**
   * How far it begins from the cut end.
   *
   * @return along the cloth
   */
  public Length fromEnd() {
    return Length.mm(box().minX());
  }

  /**
   * How far it begins from the fold, or from the selvage of cloth that is not folded.
   *
   * @return across the cloth
   */
  public Length fromSide() {
    return Length.mm(box().minY());
  }

  /**
   * How much of the length of the cloth it takes up.
   *
   * @return along the cloth
   */
  public Length along() {
    return box().width();
  }

  /**
   * How much of the width of the cloth it takes up.
   *
   * @return across the cloth
   */
  public Length across() {
    return box().height();
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      String name,
      Curve cutLine,
      Curve toCut,
      int layers,
      boolean onFold,
      boolean turned,
      Angle offGrain)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      LaidPiece upright = of(name, cutLine, toCut, layers);
      return new LaidPiece(
          upright.name,
          upright.cutLine,
          upright.toCut,
          layers,
          onFold,
          turned,
          Objects.requireNonNull(offGrain, "offGrain"));
    }
  }

  private Object writeReplace() {
    return new Kept(name, cutLine, toCut, layers, onFold, turned, offGrain);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a laid piece is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LaidPiece that
        && that.name.equals(name)
        && that.cutLine.equals(cutLine)
        && that.toCut.equals(toCut)
        && that.layers == layers
        && that.onFold == onFold
        && that.turned == turned
        && that.offGrain.equals(offGrain);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, cutLine, toCut, layers, onFold, turned, offGrain);
  }

  @Override
  public String toString() {
    return name
        + ": "
        + fromEnd().text(LengthUnit.CM)
        + " from the cut end, "
        + (onFold ? "on the fold" : fromSide().text(LengthUnit.CM) + " from the side")
        + ", "
        + along().text(LengthUnit.CM)
        + " long, "
        + across().text(LengthUnit.CM)
        + " wide"
        + (layers == 2 && !onFold ? ", through both layers" : "")
        + (turned ? ", turned" : "")
        + (offGrain.equals(Angle.ZERO) ? "" : ", " + offGrain + " off the grain");
  }
}
