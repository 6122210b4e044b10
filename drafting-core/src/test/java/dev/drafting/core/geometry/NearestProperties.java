package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class NearestProperties {
  @Provide
  Arbitrary<Curve> curves() {
    return Shapes.curves();
  }

  @Provide
  Arbitrary<Point> points() {
    return Shapes.points();
  }

  @Provide
  Arbitrary<Transform> motions() {
    return Shapes.motions();
  }

  @Property(tries = 200)
  void noSampleIsNearer(@ForAll("curves") Curve curve, @ForAll("points") Point point) {
    Nearest nearest = curve.nearest(point);
    assertEquals(nearest.distance().toMm(), nearest.point().gap(point), 0);
    assertTrue(curve.pointAt(nearest.along()).gap(nearest.point()) < 3e-9 * curve.total());
    for (Segment segment : curve.segments()) {
      for (int i = 0; i <= 400; i++) {
        double sample = segment.pointAt(i / 400.0).gap(point);
        assertTrue(sample >= nearest.distance().toMm() - 1e-9, sample + " beats " + nearest);
      }
    }
  }

  @Property(tries = 200)
  void aPointOfTheCurveIsItsOwnNearest(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(min = 0, max = 1) double t) {
    for (Segment segment : curve.segments()) {
      assertTrue(curve.nearest(segment.pointAt(t)).distance().toMm() <= 1e-9);
    }
  }

  @Property(tries = 200)
  void theDistanceDoesNotDependOnDirectionOrPlace(
      @ForAll("curves") Curve curve,
      @ForAll("points") Point point,
      @ForAll("motions") Transform motion) {
    double distance = curve.nearest(point).distance().toMm();
    assertEquals(distance, curve.reversed().nearest(point).distance().toMm(), 1e-9);
    assertEquals(distance, curve.mirrored().nearest(point.mirrored()).distance().toMm(), 1e-9);
    assertEquals(distance, curve.map(motion).nearest(motion.apply(point)).distance().toMm(), 1e-9);
  }

  @Property(tries = 200)
  void fromAnInnerPointOfASegmentTheWayIsSquareToIt(
      @ForAll("curves") Curve curve, @ForAll("points") Point point) {
    for (Segment segment : curve.segments()) {
      double t = NearestSearch.onSegment(segment, point);
      if (t > 0 && t < 1) {
        Vector way = point.minus(segment.pointAt(t));
        double along = way.dot(segment.derivativeAt(t));
        double scale = 1000 * (1 + segment.derivativeAt(t).norm());
        assertEquals(0, along / scale, 1e-9);
      }
    }
  }

  /** Found by the law above: the search stopped a part in eight thousand away from the nearest. */
  @Example
  void besideAnEndWithoutAHandleTheNearestPointIsFoundExactly() {
    assertSquare(
        new Cubic(p(0.001, -300), p(0.001, -300), p(-3.995, 220.008), p(-3.995, 220.008)),
        p(-0.001, -300));
  }

  /** Found by the law above: half a curve away, points 4e-6 mm apart are equally near. */
  @Example
  void atTheMiddleOfACurveTheNearestPointIsFoundExactly() {
    assertSquare(
        new Cubic(p(0.001, -300), p(0.001, -300), p(-300, -0.001), p(-300, -0.001)), p(-1, -1));
  }

  private static void assertSquare(Cubic cubic, Point point) {
    double t = NearestSearch.onSegment(cubic, point);
    Vector way = point.minus(cubic.pointAt(t));
    assertEquals(0, way.dot(cubic.derivativeAt(t)) / cubic.derivativeAt(t).norm(), 1e-9);
  }

  @Example
  void ofEquallyNearPointsTheFirstIsTaken() {
    Curve square = Curve.polyline(p(0, 0), p(10, 0), p(10, 10), p(0, 10), p(0, 0));
    assertEquals(Length.mm(5), square.nearest(p(5, 5)).along());
    assertEquals(Length.ZERO, square.nearest(p(-1, -1)).along());
    assertEquals(Length.ZERO, Shapes.circle(30).nearest(Shapes.ORIGIN).along());
  }

  @Example
  void printsPlaceAndDistance() {
    Curve line = Curve.line(p(0, 0), p(10, 0));
    assertEquals("(4, 0) at 4 mm, 3 mm away", line.nearest(p(4, 3)).toString());
  }
}
