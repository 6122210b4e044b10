package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Meetings of curves, with JTS on fine flattenings as the second implementation. */
class CrossingProperties {
  private static final Length FINE = Length.mm(1e-3);

  @Provide
  Arbitrary<Curve> curves() {
    return Shapes.curves();
  }

  @Provide
  Arbitrary<Curve> outlines() {
    return Shapes.outlines();
  }

  @Provide
  Arbitrary<Transform> motions() {
    return Shapes.motions();
  }

  @Property(tries = 200)
  void everyCrossingLiesOnBothCurves(@ForAll("curves") Curve curve, @ForAll("curves") Curve other) {
    double off = 3e-9 * (1 + curve.total() + other.total());
    Length before = Length.mm(-1);
    for (Crossing crossing : curve.intersections(other)) {
      assertTrue(curve.pointAt(crossing.along()).gap(crossing.point()) <= off);
      assertTrue(other.pointAt(crossing.alongOther()).gap(crossing.point()) <= off);
      assertTrue(curve.nearest(crossing.point()).distance().toMm() <= 1e-9);
      assertTrue(other.nearest(crossing.point()).distance().toMm() <= 2e-9);
      assertTrue(crossing.along().compareTo(before) >= 0, "in order");
      before = crossing.along();
    }
  }

  @Property(tries = 200)
  void crossingsAreSymmetrical(@ForAll("curves") Curve curve, @ForAll("curves") Curve other) {
    List<Crossing> there = other.intersections(curve);
    List<Crossing> here = curve.intersections(other);
    assertEquals(here.size(), there.size());
    for (Crossing crossing : here) {
      assertTrue(there.stream().anyMatch(c -> c.point().gap(crossing.point()) < 1e-6));
    }
  }

  @Property(tries = 200)
  void crossingsDoNotDependOnPlaceOrDirection(
      @ForAll("curves") Curve curve,
      @ForAll("curves") Curve other,
      @ForAll("motions") Transform motion) {
    List<Crossing> here = curve.intersections(other);
    List<Crossing> moved = curve.map(motion).intersections(other.map(motion));
    List<Crossing> back = curve.reversed().intersections(other);
    assertEquals(here.size(), moved.size());
    assertEquals(here.size(), back.size());
    for (Crossing crossing : here) {
      Point there = motion.apply(crossing.point());
      assertTrue(moved.stream().anyMatch(c -> c.point().gap(there) < 1e-6));
      assertTrue(back.stream().anyMatch(c -> c.point().gap(crossing.point()) < 1e-6));
    }
  }

  /** Where chords of the fine flattenings cross at a clear angle, the curves cross nearby. */
  @Property(tries = 100)
  void nothingThatJtsFindsIsMissed(@ForAll("curves") Curve curve, @ForAll("curves") Curve other) {
    Geometry met =
        OverlayNGRobust.overlay(
            JtsBridge.toJts(curve.flatten(FINE)),
            JtsBridge.toJts(other.flatten(FINE)),
            OverlayNG.INTERSECTION);
    List<Crossing> crossings = curve.intersections(other);
    for (Coordinate at : met.getCoordinates()) {
      Point place = p(at.x, at.y);
      Vector way = curve.directionAt(curve.nearest(place).along());
      Vector otherWay = other.directionAt(other.nearest(place).along());
      if (Math.abs(way.cross(otherWay)) > 0.2 && clearOfEnds(place, curve, other)) {
        assertTrue(
            crossings.stream().anyMatch(c -> c.point().gap(place) < 0.1),
            "missed " + place + " of " + curve + " and " + other);
      }
    }
  }

  private static boolean clearOfEnds(Point place, Curve... curves) {
    for (Curve curve : curves) {
      if (curve.start().gap(place) < 0.1 || curve.end().gap(place) < 0.1) {
        return false;
      }
    }
    return true;
  }

  /**
   * Half the times an outline is crossed by a closed curve, the way leads in: the count is even.
   */
  @Property(tries = 200)
  void closedCurvesThatOnlyCrossDoSoAnEvenNumberOfTimes(
      @ForAll("outlines") Curve outline, @ForAll("outlines") Curve other) {
    List<Crossing> crossings = outline.intersections(other);
    Assume.that(crossings.stream().allMatch(c -> isClear(outline, other, c)));
    assertEquals(0, crossings.size() % 2);
  }

  private static boolean isClear(Curve one, Curve two, Crossing crossing) {
    for (int i = 0; i < one.segments().size(); i++) {
      if (one.segments().get(i).start().gap(crossing.point()) < 1e-3) {
        return false;
      }
    }
    for (int i = 0; i < two.segments().size(); i++) {
      if (two.segments().get(i).start().gap(crossing.point()) < 1e-3) {
        return false;
      }
    }
    Vector way = one.directionAt(crossing.along());
    return Math.abs(way.cross(two.directionAt(crossing.alongOther()))) > 1e-3;
  }

  @Property(tries = 200)
  void outlinesThatJtsCallsSimpleDoNotMeetThemselves(@ForAll("outlines") Curve outline) {
    assertTrue(JtsBridge.toJts(outline, FINE).isSimple());
    assertEquals(List.of(), outline.selfCrossings());
    assertEquals(List.of(), outline.reversed().selfCrossings());
  }

  @Property(tries = 100)
  void selfCrossingsAreFoundOnceWithTheEarlierPlaceFirst(@ForAll("curves") Curve curve) {
    for (Crossing crossing : curve.selfCrossings()) {
      assertTrue(crossing.along().compareTo(crossing.alongOther()) < 0);
      double off = 3e-9 * (1 + curve.total());
      assertTrue(curve.pointAt(crossing.along()).gap(crossing.point()) <= off);
      assertTrue(curve.pointAt(crossing.alongOther()).gap(crossing.point()) <= off);
    }
    if (!touchesItself(curve)) {
      assertEquals(curve.selfCrossings().size(), curve.reversed().selfCrossings().size());
    }
    if (!JtsBridge.toJts(curve.flatten(Length.mm(1e-4))).isSimple() && !curve.isClosed()) {
      assertTrue(!curve.selfCrossings().isEmpty() || touchesItself(curve));
    }
  }

  /** Joints that turn straight back, where chords may overlap although the curve does not. */
  private static boolean touchesItself(Curve curve) {
    for (int i = 1; i < curve.segments().size(); i++) {
      Vector arrival = curve.segments().get(i - 1).directionAt(1);
      if (Math.abs(arrival.turnInRadians(curve.segments().get(i).directionAt(0))) > 3.0) {
        return true;
      }
    }
    return false;
  }

  @Example
  void circlesMeetWhereGeometrySays() {
    Curve circle = Shapes.circle(50);
    Curve right = circle.map(Transform.translation(new Vector(60, 0)));
    List<Crossing> two = circle.intersections(right);
    assertEquals(2, two.size());
    for (Crossing crossing : two) {
      assertEquals(30, crossing.point().x(), 1e-9);
      assertEquals(40, Math.abs(crossing.point().y()), 1e-9);
    }
    List<Crossing> touch =
        circle.intersections(circle.map(Transform.translation(new Vector(100, 0))));
    assertEquals(1, touch.size());
    assertTrue(touch.get(0).point().gap(p(50, 0)) < 1e-4);
    assertEquals(
        List.of(), circle.intersections(circle.map(Transform.translation(new Vector(100.001, 0)))));
  }

  @Example
  void aTangentTouchesOnce() {
    List<Crossing> touch = Shapes.circle(50).intersections(Curve.line(p(-60, 50), p(60, 50)));
    assertEquals(1, touch.size());
    assertTrue(touch.get(0).point().gap(p(0, 50)) < 1e-4);
    assertEquals(
        List.of(), Shapes.circle(50).intersections(Curve.line(p(-60, 50.001), p(60, 50.001))));
  }

  /**
   * A copy a millionth of a millimetre aside lies within 1e-9 mm for a stretch at top and bottom.
   */
  @Example
  void aStretchOfTouchingIsNamedOnce() {
    Curve oval =
        Curve.of(
            new Cubic(p(50, 0), p(50, 40), p(-50, 40), p(-50, 0)),
            new Cubic(p(-50, 0), p(-50, -40), p(50, -40), p(50, 0)));
    List<Crossing> met = oval.intersections(oval.map(Transform.translation(new Vector(1e-6, 0))));
    assertEquals(2, met.size());
    assertTrue(met.get(0).point().gap(p(0, 30)) < 0.2);
    assertTrue(met.get(1).point().gap(p(0, -30)) < 0.2);
  }

  /**
   * The closer the copy, the longer the stretches that touch, and the tinier the parts that are
   * clearly apart: comparing all of them once took seconds.
   */
  @Property
  void aCopyHardlyAsideIsComparedInBoundedWork(@ForAll @IntRange(min = 3, max = 12) int digits) {
    Cubic upper = new Cubic(p(50, 0), p(50, 40), p(-50, 40), p(-50, 0));
    Transform aside = Transform.translation(new Vector(Math.pow(10, -digits), 0));
    assertTrue(SegmentCrossings.pairsCompared(upper, upper.map(aside)) < 30_000);
    List<Crossing> met = Curve.of(upper).intersections(Curve.of(upper.map(aside)));
    assertTrue(!met.isEmpty() && met.size() <= 2, met.toString());
    if (digits < 9) {
      assertEquals(1, met.size());
      assertEquals(0, met.get(0).point().x(), 100 * Math.pow(10, digits - 9) + 1e-3);
    }
  }

  @Example
  void endsCount() {
    Curve edge = Curve.line(p(0, 0), p(100, 0));
    assertEquals(
        "[(30, 0) at 30 mm and 0 mm]",
        edge.intersections(Curve.line(p(30, 0), p(30, 40))).toString());
    assertEquals(
        "[(100, 0) at 100 mm and 0 mm]",
        edge.intersections(Curve.line(p(100, 0), p(100, 40))).toString());
    assertEquals(List.of(), edge.intersections(Curve.line(p(30, 1e-6), p(30, 40))));
  }

  @Example
  void curvesThatRunTogetherMeetAtBothEndsOfTheStretch() {
    Curve edge = Curve.line(p(0, 0), p(100, 0));
    assertEquals(
        "[(40, 0) at 40 mm and 0 mm, (100, 0) at 100 mm and 60 mm]",
        edge.intersections(Curve.line(p(40, 0), p(180, 0))).toString());
    Curve bent = Curve.of(new Cubic(p(0, 0), p(100, 0), p(100, 100), p(0, 200)));
    Curve part = bent.between(Length.mm(50), Length.mm(120));
    List<Crossing> met = bent.intersections(part);
    assertEquals(2, met.size());
    assertEquals(50, met.get(0).along().toMm(), 1e-6);
    assertEquals(120, met.get(1).along().toMm(), 1e-6);
    Curve half = Curve.of(Arc.of(p(0, 0), Length.mm(50), Angle.degrees(30), Angle.degrees(80)));
    assertEquals(2, Shapes.circle(50).intersections(half).size());
  }

  /** A loop that is symmetrical about x = 1/2 crosses itself at (1/2, 3/8): solved by hand. */
  @Example
  void aLoopOfOneCubicIsFound() {
    Curve loop = Curve.of(new Cubic(p(0, 0), p(3, 2), p(-2, 2), p(1, 0)));
    List<Crossing> crossings = loop.selfCrossings();
    assertEquals(1, crossings.size());
    assertTrue(crossings.get(0).point().gap(p(0.5, 0.375)) < 1e-9);
    assertEquals(
        List.of(), Curve.of(new Cubic(p(0, 0), p(1, 2), p(2, -2), p(3, 0))).selfCrossings());
  }

  @Example
  void aFigureOfEightCrossesOnceAndAClosedCurveNotWhereItCloses() {
    Curve eight = Curve.polyline(p(0, 0), p(10, 10), p(10, 0), p(0, 10), p(0, 0));
    assertEquals("[(5, 5) at 7.071 mm and 31.213 mm]", eight.selfCrossings().toString());
    assertEquals(List.of(), Shapes.circle(50).selfCrossings());
    Curve twoArcs =
        Curve.of(
            Arc.through(p(50, 0), p(0, 50), p(-50, 0)),
            Arc.through(p(-50, 0), p(0, -50), p(50, 0)));
    assertEquals(List.of(), twoArcs.selfCrossings());
  }

  @Example
  void aCornerThatTouchesAnotherEdgeIsNamedOnce() {
    Curve touching = Curve.polyline(p(0, 0), p(100, 0), p(100, 50), p(50, 0), p(0, 50), p(0, 0));
    assertEquals("[(50, 0) at 50 mm and 220.711 mm]", touching.selfCrossings().toString());
  }

  /** Beside a joint that turns nearly straight back both sides touch: that is the joint's own. */
  @Example
  void touchingBesideAJointIsNoCrossing() {
    Curve back =
        Curve.of(
            new Cubic(p(0.925, 0.38), p(30, 0), p(-59.898, 0), p(-59.898, 0)),
            new Line(p(-59.898, 0), p(178.607, 0.001)));
    assertEquals(back.selfCrossings().size(), back.reversed().selfCrossings().size());
    for (Crossing crossing : back.selfCrossings()) {
      assertTrue(crossing.point().gap(p(-59.898, 0)) > 1e-3, crossing.toString());
    }
  }

  @Example
  void aSpikeIsNamedAtItsShorterEnd() {
    Curve spike = Curve.polyline(p(0, 0), p(100, 0), p(60, 0), p(60, 30));
    assertEquals("[(60, 0) at 60 mm and 140 mm]", spike.selfCrossings().toString());
  }

  /** Ten thousand edges: comparing all pairs would be fifty million. */
  @Example
  void longOutlinesAreSearchedByTheirBoxes() {
    List<Point> points = new ArrayList<>();
    int count = 10_000;
    for (int i = 0; i <= count; i++) {
      double angle = 2 * Math.PI * (i % count) / count;
      double radius = 300 + 20 * Math.sin(40 * angle);
      points.add(p(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    Curve wavy = Curve.from(Polyline.of(points));
    int[] pairs = {0};
    wavy.tree().pairsWithin(1e-9, (a, b) -> pairs[0]++);
    assertTrue(pairs[0] < 3 * count, "pairs compared: " + pairs[0]);
    assertEquals(List.of(), wavy.selfCrossings());
    assertEquals(80, wavy.intersections(Shapes.circle(300)).size());
  }
}
