package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Hems between sides that are square to them but for little. */
class FoldedBackProperties {
  private static final List<Length> ONCE = List.of(Length.ZERO);

  /**
   * The parallels of such sides end a hair beside the fold, those of such hems beside the sides.
   */
  @Property
  void theCutLineNeverStepsBack(
      @ForAll @DoubleRange(min = -10, max = -4) double size,
      @ForAll boolean leftwards,
      @ForAll @DoubleRange(max = 9) double allowance,
      @ForAll boolean noAllowance,
      @ForAll boolean straight,
      @ForAll @DoubleRange(min = -20, max = 20) double bend) {
    double tilt = (leftwards ? -1 : 1) * Math.pow(10, size);
    Length sides = Length.mm(noAllowance ? 0 : allowance);
    Curve hem = cubic(0, 0, 70, 0, 130, bend, 200, bend);
    Curve right = side(200, bend, tilt, straight);
    Curve left = side(0, 0, tilt, straight).reversed();
    Offset offset =
        Offset.of(
                List.of(
                    OffsetEdge.of("hem", hem, Length.mm(20)),
                    OffsetEdge.of("right side", right, sides),
                    Outlines.line("top", 0, 200, 300, 0, 300),
                    OffsetEdge.of("left side", left, sides)))
            .withCorner(0, CornerTreatment.foldedBack(CornerSide.BEFORE, ONCE))
            .withCorner(3, CornerTreatment.foldedBack(CornerSide.AFTER, ONCE));
    List<Segment> outline = offset.result().outline().segments();
    for (int i = 0; i < outline.size(); i++) {
      Vector in = outline.get(i).directionAt(1);
      Vector out = outline.get((i + 1) % outline.size()).directionAt(0);
      assertTrue(in.dot(out) > -0.2, "back after " + outline.get(i));
    }
  }

  /** Rising to 300 mm, the first 50 of them straight or bent a little as the rest. */
  private static Curve side(double x, double y, double tilt, boolean straight) {
    if (!straight) {
      return cubic(x, y, x + 100 * tilt, y + 100, x - 100 * tilt, 200, x, 300);
    }
    double at = x + 50 * tilt;
    return Curve.line(new Point(x, y), new Point(at, y + 50))
        .then(cubic(at, y + 50, at, 120, x, 200, x, 300));
  }

  private static Curve cubic(double... xy) {
    return Curve.of(
        new Cubic(
            new Point(xy[0], xy[1]),
            new Point(xy[2], xy[3]),
            new Point(xy[4], xy[5]),
            new Point(xy[6], xy[7])));
  }
}
