package dev.drafting.core.lay;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * What is laid once: a cut line with the grain along -x, so that heads point to the cut end.
 *
 * @param name of its piece or strip
 * @param cutLine with its fold, if it has one, on y = 0 and above it
 * @param toCut the same without the fold
 * @param hasFold whether it is half a piece with its fold on y = 0
 * @param layers through how many layers it is cut
 * @param isStrip whether it may lie either way on any cloth
 */
record LayPart(
    String name, Curve cutLine, Curve toCut, boolean hasFold, int layers, boolean isStrip)
    implements Serializable {

  /** Without a fold: the whole line is cut. */
  static LayPart open(String name, Curve cutLine, int layers, boolean isStrip) {
    return new LayPart(name, cutLine, cutLine, false, layers, isStrip);
  }

  /** All ways in which it may lie; the first is as drawn, and odd ones are end for end. */
  List<Transform> ways(Cloth cloth) {
    List<Transform> ways = new ArrayList<>();
    boolean twoFolds = cloth.fold().isAbove();
    for (boolean upper :
        hasFold && twoFolds ? new boolean[] {false, true} : new boolean[] {false}) {
      Transform flip =
          upper ? Transform.mirrorIn(new Point(0, 0), new Point(1, 0)) : Transform.identity();
      ways.add(flip);
      if (!cloth.isOneWay()) {
        ways.add(flip.then(turn()));
      }
    }
    return ways;
  }

  /** End for end: half a piece on the fold is mirrored, which its whole cannot tell from a turn. */
  private Transform turn() {
    return hasFold
        ? Transform.mirrorInFold()
        : Transform.rotation(new Point(0, 0), Angle.degrees(180));
  }
}
