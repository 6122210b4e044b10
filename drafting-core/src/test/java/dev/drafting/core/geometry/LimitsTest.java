package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.ORIGIN;
import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is promised up to a limit holds at the limit, and not beyond it. */
class LimitsTest {
  private static final double HAIR = 1e-9;

  private static List<Segment> thereAndBack(int count) {
    Line there = new Line(p(0, 0), p(1e-3, 0));
    Line back = there.reversed();
    List<Segment> segments = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      segments.add(i % 2 == 0 ? there : back);
    }
    return segments;
  }

  @Test
  void aMillionSegmentsAreTheMost() {
    assertEquals(1_000_000, Curve.of(thereAndBack(1_000_000)).segments().size());
    DraftingException refused =
        assertThrows(DraftingException.class, () -> Curve.of(thereAndBack(1_000_001)));
    assertEquals("a curve has too many segments", refused.what());
  }

  /** The parabola (300 t, 120 t^2) strays from n equal chords by 30/n^2. */
  @Test
  void aMillionPointsAreTheMostOfAFlatCurve() {
    Curve parabola = Curve.of(new Cubic(p(0, 0), p(100, 0), p(200, 40), p(300, 120)));
    double finest = 30 / (999_999.0 * 999_999.0);
    assertEquals(1_000_000, parabola.flatten(Length.mm(finest * (1 + 1e-9))).size());
    assertThrows(DraftingException.class, () -> parabola.flatten(Length.mm(finest * (1 - 1e-9))));
  }

  @Test
  void segmentsMeetWithinAHair() {
    Line first = new Line(p(0, 10), p(0, 0));
    Curve met = Curve.of(first, new Line(p(HAIR, 0), p(20, 0)));
    assertEquals(p(0, 0), met.segments().get(1).start());
    assertThrows(
        DraftingException.class, () -> Curve.of(first, new Line(p(HAIR * 1.001, 0), p(20, 0))));
  }

  @Test
  void aCurveClosesWithinAHair() {
    Line out = new Line(p(0, 0), p(10, 0));
    assertTrue(Curve.of(out, new Line(p(10, 0), p(HAIR, 0))).isClosed());
    assertFalse(Curve.of(out, new Line(p(10, 0), p(HAIR * 1.001, 0))).isClosed());
  }

  @Test
  void aHairIsAPoint() {
    Line first = new Line(p(-10, 0), p(0, 0));
    Line hair = new Line(p(0, 0), p(HAIR, 0));
    assertEquals(1, Curve.of(first, hair).segments().size());
    Line more = new Line(p(0, 0), p(HAIR * 1.001, 0));
    assertEquals(2, Curve.of(first, more).segments().size());
  }

  /** A curve of one segment is that segment, also if its ends all but meet. */
  @Test
  void oneSegmentIsKeptAsItIs() {
    Cubic drop = new Cubic(p(0, 0), p(100, 100), p(-100, 100), p(0.5 * HAIR, 0));
    assertEquals(List.of(drop), Curve.of(drop).segments());
    assertFalse(Curve.of(drop).isClosed());
  }

  @Test
  void aLengthAMillionthOfAMillimetreOffAnEndIsTheEnd() {
    Line scrap = new Line(p(0, 0), p(2, 0));
    assertEquals(0, scrap.parameterAt(Length.mm(-1e-6)), 0);
    assertEquals(1, scrap.parameterAt(Length.mm(2 + 1e-6)), 0);
    assertThrows(DraftingException.class, () -> scrap.parameterAt(Length.mm(-1.001e-6)));
    assertThrows(DraftingException.class, () -> scrap.parameterAt(Length.mm(2 + 1.001e-6)));
  }

  @Test
  void anArcGoesRoundOnceAtMost() {
    Arc round = Arc.of(ORIGIN, Length.mm(50), Angle.degrees(10), Angle.degrees(-360));
    assertEquals(round, Arc.of(round.toArray()));
    double[] more = round.toArray();
    more[7] = Math.nextDown(more[7]);
    assertThrows(DraftingException.class, () -> Arc.of(more));
  }

  @Test
  void anArcHasARadiusAndThreePlaces() {
    assertThrows(DraftingException.class, () -> Arc.of(0, 0, 0, 0, 0, 0, 0, 1));
    assertThrows(DraftingException.class, () -> Arc.through(p(1, 2), p(1, 2), p(1, 2)));
  }

  /** A thousand cubics round a circle of 300 mm are within 1e-15 mm: more would change no digit. */
  @Test
  void aThousandCubicsAreTheMostOfAnArc() {
    Arc round = Arc.of(ORIGIN, Length.mm(300), Angle.ZERO, Angle.degrees(360));
    assertEquals(1000, round.toCubics(Length.mm(1e-30)).size());
  }

  /** Four points, the last on the first, are the fewest round something. */
  @Test
  void aTriangleHoldsSomething() {
    Curve triangle = Curve.polyline(p(0, 0), p(30, 0), p(0, 40), p(0, 0));
    assertEquals(600, JtsBridge.toPolygon(triangle, Length.mm(1)).getArea(), 1e-12);
  }
}
