package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * The lengths between which a strip, sewn to a loop, lies flat round an opening.
 *
 * <p>The strip is stretched at its seam and relaxed at its fold, which is the finished edge. A loop
 * no longer than the middle of the band does not wave; one that reaches the finished edge with no
 * more than the little tension that the fabric stands does not pucker. So the shortest loop is the
 * finished edge / (1 + tension), the longest the length halfway between finished edge and seam.
 *
 * <p>Where there is an outline both are measured on it. With a tape measure alone they follow from
 * the join line L, the opening's turning K (in radians) and the width w by L - wK and L - wK/2
 * (lengths of parallel curves). The turning of a round hole in flat cloth is 360 degrees, of a neck
 * with shoulder slopes 360 degrees less twice the slopes of front and back, of an armhole 180
 * degrees and the slopes. Where the opening turns outward (K below 0) the two ends change places.
 *
 * <pre>{@code
 * FlatWindow neck = FlatWindow.of(Length.cm(64), Angle.degrees(280), Length.mm(13), 0.0075);
 * neck;  // => 57.3 to 60.8 cm
 * neck.judge(Length.cm(59));  // => LIES_FLAT
 * neck.judge(Length.cm(57));  // => PUCKERS
 * Wording.fine(neck.margin(Length.cm(57)));  // => -2.2 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class FlatWindow implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Length shortest;
  private final Length longest;

  private FlatWindow(Length shortest, Length longest) {
    this.shortest = shortest;
    this.longest = longest;
  }

  /**
   * The window from tape measures.
   *
   * @param joinLine the opening measured along the seam of the strip, all the way round
   * @param turning how far the opening turns on its way round, up to 720 degrees either way
   * @param showing how wide the strip shows, over nothing
   * @param tension the share by which the strip may be stretched at its finished edge, 0 to 0.05
   * @return the window
   * @throws DraftingException if a measure is out of range, or the strip is so wide that its fold
   *     has no length left
   */
  public static FlatWindow of(Length joinLine, Angle turning, Length showing, double tension) {
    if (!joinLine.isPositive()) {
      throw DraftingException.of("the join line has no length")
          .value(joinLine)
          .accepted("more than 0");
    }
    Length lost = BandWidths.showing(showing).times(turning.toRadians());
    if (lost.compareTo(joinLine) >= 0) {
      throw DraftingException.of("the strip is too wide for its opening: its fold has no length")
          .value(showing)
          .accepted("less than " + Wording.fine(joinLine.dividedBy(turning.toRadians())));
    }
    return between(joinLine.minus(lost), joinLine.minus(lost.dividedBy(2)), checked(tension));
  }

  /**
   * The window of an edge that was measured with a tape, corners included.
   *
   * @param edge the edge
   * @param finish the band or binding that it gets
   * @param tension the share by which the strip may be stretched at its finished edge, 0 to 0.05
   * @return the window
   * @throws DraftingException if the tension is out of range, or the strip is so wide that its fold
   *     has no length left
   */
  public static FlatWindow of(TapedEdge edge, BandFinish finish, double tension) {
    return of((BandEdge) edge, finish, checked(tension));
  }

  static FlatWindow of(BandEdge edge, BandFinish finish, double tension) {
    Length seam = finish.joinDistance();
    Length halfway = finish.showing().dividedBy(2).negated();
    return between(edge.lengthAt(Length.ZERO, seam), edge.lengthAt(halfway, seam), tension);
  }

  private static double checked(double tension) {
    if (!(tension >= 0 && tension <= 0.05)) {
      throw DraftingException.of("the tension is out of range")
          .value(tension)
          .accepted("a share from 0 to 0.05");
    }
    return tension;
  }

  private static FlatWindow between(Length finishedEdge, Length middle, double tension) {
    return new FlatWindow(
        finishedEdge.min(middle).dividedBy(1 + tension), finishedEdge.max(middle));
  }

  /**
   * The shortest loop that does not pucker.
   *
   * @return a loop from seam to seam, without allowances
   */
  public Length shortest() {
    return shortest;
  }

  /**
   * The longest loop that does not gape.
   *
   * @return a loop from seam to seam, without allowances
   */
  public Length longest() {
    return longest;
  }

  /**
   * The loop halfway between the two, which forgives most either way.
   *
   * @return a loop from seam to seam, without allowances
   */
  public Length middle() {
    return loops().middle();
  }

  /**
   * The loops that lie flat.
   *
   * @return from the shortest to the longest
   */
  public LoopRange loops() {
    return new LoopRange(shortest, longest);
  }

  /**
   * What a loop of some length does. Both ends of the window still lie flat.
   *
   * @param loop from seam to seam, without allowances
   * @return gapes, lies flat or puckers
   */
  public Outcome judge(Length loop) {
    if (loop.compareTo(shortest) < 0) {
      return Outcome.PUCKERS;
    }
    return loop.compareTo(longest) > 0 ? Outcome.GAPES : Outcome.LIES_FLAT;
  }

  /**
   * How far a loop is from the nearest end of the window.
   *
   * @param loop from seam to seam, without allowances
   * @return positive inside the window: what it may still be wrong by; negative outside: what it is
   *     too short or too long by
   */
  public Length margin(Length loop) {
    return loops().margin(loop);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Length shortest, Length longest) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (shortest.isNegative() || shortest.compareTo(longest) > 0) {
        throw DraftingException.of("the shortest loop is below zero or longer than the longest")
            .value(shortest)
            .accepted("0 mm to " + longest);
      }
      return new FlatWindow(shortest, longest);
    }
  }

  private Object writeReplace() {
    return new Kept(shortest, longest);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a flat window is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FlatWindow
        && ((FlatWindow) other).shortest.equals(shortest)
        && ((FlatWindow) other).longest.equals(longest);
  }

  @Override
  public int hashCode() {
    return Objects.hash(shortest, longest);
  }

  @Override
  public String toString() {
    return loops().toString();
  }
}
