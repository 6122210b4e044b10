package dev.drafting.core.lay;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is laid once: a cut line with the grain along -x, so that heads point to the cut end.
 *
 * @param name of its piece or strip
 * @param cutLine with its fold, if it has one, on y = 0 and above it
 * @param toCut the same without the fold
 * @param hasFold whether it is half a piece with its fold on y = 0
 * @param layers through how many layers it is cut
 * @param isStrip whether it may lie either way on any cloth
 * @param onRepeat the point that lies on a repeat of the cloth; null for the hem and the middle
 */
record LayPart(
    String name,
    Curve cutLine,
    Curve toCut,
    boolean hasFold,
    int layers,
    boolean isStrip,
    @Nullable Point onRepeat)
    implements Serializable {

  /**
   * A way in which a part may lie.
   *
   * @param there how it is turned
   * @param turned whether it lies end for end
   * @param offGrain by how much it is turned off its grain, counter-clockwise
   */
  record Way(Transform there, boolean turned, Angle offGrain) {}

  /** Without a fold: the whole line is cut. */
  static LayPart open(String name, Curve cutLine, int layers, boolean isStrip) {
    return new LayPart(name, cutLine, cutLine, false, layers, isStrip, null);
  }

  /** The same part with a point that lies on a repeat. */
  LayPart withOnRepeat(@Nullable Point point) {
    return new LayPart(name, cutLine, toCut, hasFold, layers, isStrip, point);
  }

  /** All ways in which it may lie; the first is as drawn. */
  List<Way> ways(Cloth cloth, Angle grainWithin) {
    List<Way> ways = new ArrayList<>();
    boolean twoFolds = cloth.fold().isAbove();
    boolean repeats =
        !isStrip && (cloth.repeatAlong().isPositive() || cloth.repeatAcross().isPositive());
    for (boolean upper :
        hasFold && twoFolds ? new boolean[] {false, true} : new boolean[] {false}) {
      Transform flip =
          upper ? Transform.mirrorIn(new Point(0, 0), new Point(1, 0)) : Transform.identity();
      for (Angle off : offGrain(grainWithin, repeats)) {
        Transform there = flip.then(Transform.rotation(new Point(0, 0), off));
        ways.add(new Way(off.equals(Angle.ZERO) ? flip : there, false, off));
        if (!cloth.isOneWay() && !repeats) {
          Transform turned = off.equals(Angle.ZERO) ? flip.then(turn()) : there.then(turn());
          ways.add(new Way(turned, true, off));
        }
      }
    }
    return ways;
  }

  /** Neither strips, nor what lies on a fold or a repeat, may be turned off the grain. */
  private List<Angle> offGrain(Angle within, boolean repeats) {
    if (isStrip || hasFold || repeats || within.equals(Angle.ZERO)) {
      return List.of(Angle.ZERO);
    }
    Angle half = within.times(0.5);
    return List.of(Angle.ZERO, half, half.negated(), within, within.negated());
  }

  /** End for end: half a piece on the fold is mirrored, which its whole cannot tell from a turn. */
  private Transform turn() {
    return hasFold
        ? Transform.mirrorInFold()
        : Transform.rotation(new Point(0, 0), Angle.degrees(180));
  }
}
