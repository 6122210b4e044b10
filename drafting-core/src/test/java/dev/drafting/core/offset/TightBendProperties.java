package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Assume;
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
    check(tooFar(hook, digits), hook);
  }

  /** The same bend where two cubics join, as in an edge that was traced. */
  @Property(tries = 400)
  void norDoesThatOfTwoCubicsThatJoinInTheBend(
      @ForAll @DoubleRange(min = 5, max = 30) double handle,
      @ForAll @DoubleRange(min = 0.2, max = 5) double aside,
      @ForAll @DoubleRange(min = 40, max = 120) double far,
      @ForAll @DoubleRange(min = 3, max = 9) double digits,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double beside) {
    Cubic hook = Outlines.cubic(0, 0, handle, aside, handle + aside, far / 3, handle - aside, far);
    double tail = Math.pow(10, -digits / 2);
    Assume.that(tightest(hook) > tail);
    double joint = tightest(hook) + beside * tail;
    check(tooFar(hook, digits), hook.between(0, joint), hook.between(joint, 1));
  }

  private static void check(double distance, Segment... edge) {
    Curve parallel =
        Offset.ofOpen(List.of(Outlines.edge("hook", distance, edge))).result().outline();
    String what = Arrays.toString(edge) + " at " + distance;
    assertTrue(new IsSimpleOp(JtsBridge.toJts(parallel, CHORDS)).isSimple(), what);
  }

  private static double tooFar(Cubic hook, double digits) {
    return -radius(hook, tightest(hook)) * (1 + Math.pow(10, -digits));
  }

  /** Where, away from the ends, the radius of curvature is least. */
  private static double tightest(Cubic cubic) {
    double least = Double.POSITIVE_INFINITY;
    double there = 0;
    for (int i = 1; i < STATIONS; i++) {
      double t = (double) i / STATIONS;
      double radius = radius(cubic, t);
      if (radius < least) {
        least = radius;
        there = t;
      }
    }
    return there;
  }

  private static double radius(Cubic cubic, double t) {
    Vector before = cubic.directionAt(t - 1e-5);
    Vector after = cubic.directionAt(t + 1e-5);
    double way = cubic.pointAt(t + 1e-5).distanceTo(cubic.pointAt(t - 1e-5)).toMm();
    return way / Math.abs(Math.atan2(before.cross(after), before.dot(after)));
  }
}
