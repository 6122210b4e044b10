package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/**
 * An edge with a bend that is hardly too tight for its allowance: the parallel turns back for some
 * nanometres to some millimetres.
 */
class TightBendProperties {
  private static final int STATIONS = 20_000;

  /** A cut line is drawn in chords of about this. */
  private static final Length CHORDS = Length.mm(0.005);

  @Property(tries = 400)
  void theParallelCrossesItselfNowhere(
      @ForAll @DoubleRange(min = 5, max = 30) double handle,
      @ForAll @DoubleRange(min = 0.2, max = 5) double aside,
      @ForAll @DoubleRange(min = 40, max = 120) double far,
      @ForAll @DoubleRange(min = 1, max = 9) double digits) {
    Cubic hook = Outlines.cubic(0, 0, handle, aside, handle + aside, far / 3, handle - aside, far);
    double distance = -tightest(hook) * (1 + Math.pow(10, -digits));
    Curve parallel =
        Offset.ofOpen(List.of(Outlines.edge("hook", distance, hook))).result().outline();
    assertTrue(
        new IsSimpleOp(JtsBridge.toJts(parallel, CHORDS)).isSimple(), hook + " at " + distance);
  }

  /** The least radius of curvature away from the ends, in mm. */
  private static double tightest(Cubic cubic) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < STATIONS; i++) {
      double t = (double) i / STATIONS;
      Vector before = cubic.directionAt(t - 1e-5);
      Vector after = cubic.directionAt(t + 1e-5);
      double way = cubic.pointAt(t + 1e-5).distanceTo(cubic.pointAt(t - 1e-5)).toMm();
      least = Math.min(least, way / Math.abs(Math.atan2(before.cross(after), before.dot(after))));
    }
    return least;
  }
}
