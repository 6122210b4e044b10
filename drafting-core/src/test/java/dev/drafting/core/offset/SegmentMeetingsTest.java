package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import java.util.List;
import org.junit.jupiter.api.Test;

class SegmentMeetingsTest {
  /**
   * Two strands of a long tracing 2.6 m from the origin that cross at three degrees, just beside an
   * end: rounding kept Newton's method moving, and the crossing was dropped.
   */
  @Test
  void crossingsFarFromTheOriginAreFound() {
    Line one =
        new Line(
            new Point(-2613.492063518, 317.144147259), new Point(-2613.796557748, 315.321207311));
    Line two =
        new Line(
            new Point(-2613.716161339, 315.802464331), new Point(-2613.925648278, 314.820986123));
    List<double[]> met = SegmentMeetings.of(one, two);
    assertEquals(1, met.size());
    double gapX = one.pointAt(met.get(0)[0]).x() - two.pointAt(met.get(0)[1]).x();
    assertEquals(0, gapX, 1e-9);
  }

  /** Two curves that run a millionth of a millimetre apart, and cross halfway. */
  @Test
  void curvesThatAllButCoincideStillCross() {
    Cubic one = new Cubic(new Point(0, 0), new Point(70, 0), new Point(30, 60), new Point(100, 60));
    Transform turned = Transform.rotation(new Point(50, 30), Angle.radians(2e-8));
    Cubic two = one.map(turned);
    List<double[]> met = SegmentMeetings.of(one, two);
    assertTrue(met.stream().anyMatch(at -> Math.abs(at[0] - 0.5) < 1e-3), met::toString);
    for (double[] at : met) {
      assertEquals(0, one.pointAt(at[0]).distanceTo(two.pointAt(at[1])).toMm(), 1e-8);
    }
  }
}
