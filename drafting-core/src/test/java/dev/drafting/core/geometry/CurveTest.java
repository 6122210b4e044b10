package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CurveTest {
  private static final Curve SQUARE =
      Curve.polyline(p(0, 0), p(10, 0), p(10, 10), p(0, 10), p(0, 0));

  private static String refused(Executable work) {
    return String.valueOf(assertThrows(DraftingException.class, work).getMessage());
  }

  @Test
  void jointsWithinAHairAreMadeExact() {
    Curve curve =
        Curve.of(
            new Line(p(0, 0), p(10, 0)),
            new Cubic(p(10, 5e-10), p(10, 5e-10), p(20, 5), p(20, 10)),
            Arc.through(p(20, 10 + 5e-10), p(15, 15), p(10, 10)));
    for (int i = 1; i < curve.segments().size(); i++) {
      assertEquals(curve.segments().get(i - 1).end(), curve.segments().get(i).start());
    }
    Cubic cubic = (Cubic) curve.segments().get(1);
    assertEquals(cubic.start(), cubic.control1(), "a handle of no length stays one");
  }

  @Test
  void aClosingJointWithinAHairCloses() {
    Curve nearly =
        Curve.of(
            new Line(p(0, 0), p(10, 0)),
            new Line(p(10, 0), p(5, 5)),
            new Line(p(5, 5), p(5e-10, 0)));
    assertTrue(nearly.isClosed());
    assertEquals(25, nearly.areaSquareMm(), 1e-8);
  }

  @Test
  void gapsAreRefusedWithTheirSizeAndPlace() {
    assertEquals(
        "a curve has a gap before segment 2. Found: 0.5 mm from (10, 0) to (10, 0.5). "
            + "Accepted: segments that meet within 1e-9 mm.",
        refused(() -> Curve.of(new Line(p(0, 0), p(10, 0)), new Line(p(10, 0.5), p(20, 0)))));
    assertThrows(DraftingException.class, () -> SQUARE.then(Curve.line(p(0, 1), p(5, 5))));
  }

  @Test
  void segmentsOfNoLengthAreDropped() {
    Curve curve =
        Curve.of(
            new Line(p(0, 0), p(0, 0)),
            new Line(p(0, 0), p(10, 0)),
            new Cubic(p(10, 0), p(10, 0), p(10, 0), p(10, 0)),
            new Line(p(10, 0), p(10, 5e-10)),
            new Line(p(10, 5e-10), p(20, 0)));
    assertEquals(2, curve.segments().size());
    assertEquals(Length.mm(20), curve.length());
    assertTrue(refused(() -> Curve.line(p(1, 1), p(1, 1))).contains("no length"));
    assertTrue(refused(() -> Curve.of(List.of())).contains("no segments"));
  }

  /** Many hairs in a row are a real way: they do not drift away unnoticed. */
  @Test
  void manyShortSegmentsKeepTheirLength() {
    List<Segment> hairs = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      hairs.add(new Line(p(i * 4e-10, 0), p((i + 1) * 4e-10, 0)));
    }
    assertEquals(4e-6, Curve.of(hairs).length().toMm(), 2e-9);
  }

  @Test
  void placesAreMeasuredFromTheStart() {
    assertEquals(p(10, 2), SQUARE.pointAt(Length.mm(12)));
    assertEquals(p(10, 10), SQUARE.pointAt(Length.mm(20)));
    assertEquals(p(0, 0), SQUARE.pointAt(Length.mm(40)));
    assertEquals(new Vector(-1, 0), SQUARE.directionAt(Length.mm(20)), "after the corner");
    assertEquals(new Vector(0, -1), SQUARE.directionAt(Length.mm(40)), "as it arrives");
    assertEquals(0, SQUARE.curvatureAt(Length.mm(3)));
    assertEquals(p(0, 0), SQUARE.pointAt(Length.mm(40 + 1e-8)), "a hair over is the end");
    assertTrue(refused(() -> SQUARE.pointAt(Length.mm(40.1))).contains("Accepted: 0 to 40 mm"));
    assertThrows(DraftingException.class, () -> SQUARE.directionAt(Length.mm(-0.1)));
  }

  @Test
  void cutsComeInOrderAndInside() {
    List<Curve> parts = SQUARE.split(Length.mm(5), Length.mm(10), Length.mm(25));
    assertEquals(4, parts.size());
    assertEquals("Curve of 1 line, 5 mm, open, (5, 0) to (10, 0)", parts.get(1).toString());
    assertEquals("Curve of 2 lines, 15 mm, open, (10, 0) to (5, 10)", parts.get(2).toString());
    assertEquals(List.of(SQUARE), SQUARE.split());
    assertThrows(DraftingException.class, () -> SQUARE.split(Length.ZERO));
    assertThrows(DraftingException.class, () -> SQUARE.split(Length.mm(40)));
    Curve open = Curve.line(p(0, 0), p(10, 0));
    assertThrows(DraftingException.class, () -> open.split(Length.mm(5), Length.mm(3)));
    assertThrows(DraftingException.class, () -> open.between(Length.mm(5), Length.mm(5)));
  }

  @Test
  void aWholePartIsTheCurveItself() {
    assertEquals(SQUARE, SQUARE.between(Length.ZERO, SQUARE.length()));
  }

  @Test
  void turningCountsJointsAndTheClosingOne() {
    assertEquals(360, SQUARE.turning().toDegrees(), 1e-12);
    assertEquals(-360, SQUARE.mirrored().turning().toDegrees(), 1e-12);
    assertEquals(90, Curve.polyline(p(0, 0), p(1, 0), p(1, 1)).turning().toDegrees(), 1e-12);
    assertEquals(180, Curve.polyline(p(0, 0), p(2, 0), p(1, 0)).turning().toDegrees(), 1e-12);
    Curve eight = Curve.polyline(p(0, 0), p(10, 10), p(10, 0), p(0, 10), p(0, 0));
    assertEquals(0, eight.turning().toDegrees(), 1e-12);
  }

  @Test
  void directionAtHandlesOfNoLengthIsThatOfTheNextControlPoint() {
    Cubic cubic = new Cubic(p(0, 0), p(0, 0), p(3, 4), p(3, 4));
    assertEquals(new Vector(0.6, 0.8), cubic.directionAt(0));
    assertEquals(new Vector(0.6, 0.8), cubic.directionAt(1));
    Cubic hook = new Cubic(p(0, 0), p(0, 0), p(0, 10), p(10, 10));
    assertEquals(new Vector(0, 1), hook.directionAt(0));
    assertEquals(90, -hook.turning().toDegrees(), 1e-12);
    assertEquals(Double.NEGATIVE_INFINITY, hook.curvatureAt(0));
    Cubic point = new Cubic(p(1, 1), p(1, 1), p(1, 1), p(1, 1));
    assertThrows(DraftingException.class, () -> point.directionAt(0));
  }

  /**
   * At an exact cusp: half a turn to the side of the rest, so the mirror image turns as far back.
   */
  @Test
  void turningOfACusp() {
    Curve cusp = Curve.of(new Cubic(p(0, 0), p(1, 1), p(0, 1), p(1, 0)));
    double turned = cusp.turning().toDegrees();
    assertEquals(270, turned, 1e-9);
    assertEquals(-turned, cusp.mirrored().turning().toDegrees(), 1e-9);
    assertEquals(-turned, cusp.reversed().turning().toDegrees(), 1e-9);
  }

  /** Area under the parabola y = x^2 from 0 to 1 is 1/3. */
  @Test
  void areas() {
    assertEquals(100, SQUARE.areaSquareMm(), 0);
    Curve parabola =
        Curve.of(
            new Line(p(0, 0), p(1, 0)),
            new Line(p(1, 0), p(1, 1)),
            new Cubic(p(1, 1), p(2 / 3.0, 1 / 3.0), p(1 / 3.0, 0), p(0, 0)));
    assertEquals(1 / 3.0, parabola.areaSquareMm(), 1e-15);
    assertTrue(refused(() -> Curve.line(p(0, 0), p(1, 1)).areaSquareMm()).contains("open"));
  }

  @Test
  void parametersOffTheSegmentAreRefused() {
    for (Segment segment :
        List.of(
            new Line(p(0, 0), p(1, 1)),
            new Cubic(p(0, 0), p(1, 0), p(2, 1), p(3, 3)),
            Arc.through(p(1, 0), p(0, 1), p(-1, 0)))) {
      assertThrows(DraftingException.class, () -> segment.pointAt(-1e-9));
      assertThrows(DraftingException.class, () -> segment.derivativeAt(1.1));
      assertThrows(DraftingException.class, () -> segment.directionAt(Double.NaN));
      assertThrows(DraftingException.class, () -> segment.curvatureAt(2));
      assertThrows(DraftingException.class, () -> segment.lengthTo(-1));
      assertThrows(DraftingException.class, () -> segment.parameterAt(Length.mm(50)));
      assertThrows(DraftingException.class, () -> segment.between(0.5, 0.5));
      assertThrows(DraftingException.class, () -> segment.between(0.5, 1.5));
      assertEquals(segment, segment.between(0, 1));
      assertEquals(0, segment.parameterAt(Length.ZERO));
      assertEquals(1, segment.parameterAt(segment.length()));
    }
  }

  @Test
  void listsCannotBeChanged() {
    assertThrows(UnsupportedOperationException.class, () -> SQUARE.segments().remove(0));
    assertThrows(UnsupportedOperationException.class, () -> SQUARE.reversed().segments().remove(0));
    assertThrows(UnsupportedOperationException.class, () -> SQUARE.mirrored().segments().remove(0));
  }

  @Test
  void printsItsKindsItsLengthAndItsEnds() {
    assertEquals("Curve of 4 lines, 40 mm, closed, (0, 0) to (0, 0)", SQUARE.toString());
    Curve mixed =
        Curve.of(
            new Line(p(0, 0), p(10, 0)),
            new Cubic(p(10, 0), p(15, 0), p(20, 5), p(20, 10)),
            Arc.through(p(20, 10), p(15, 15), p(10, 10)));
    assertEquals(
        "Curve of 1 line, 1 cubic, 1 arc, 41.197 mm, open, (0, 0) to (10, 10)", mixed.toString());
    assertFalse(mixed.equals(SQUARE));
  }

  @Test
  void polylinesAreBulkPoints() {
    Polyline points = Polyline.of(0, 0, 30, 0, 30, 40);
    assertEquals(points, Polyline.of(List.of(p(0, 0), p(30, 0), p(30, 40))));
    assertEquals(points.hashCode(), Polyline.of(points.toArray()).hashCode());
    assertEquals(Length.mm(70), points.length());
    assertEquals(p(30, 40), points.point(2));
    assertEquals(new Box(-30, 0, 0, 40), points.map(Transform.mirrorInFold()).bounds());
    assertEquals("Polyline of 3 points, 70 mm, open, (0, 0) to (30, 40)", points.toString());
    assertEquals(points, JtsBridge.fromJts(JtsBridge.toJts(points)));
    assertEquals(Curve.polyline(p(0, 0), p(30, 0), p(30, 40)), Curve.from(points));
    points.toArray()[0] = 99;
    assertEquals(0, points.x(0));
    assertThrows(DraftingException.class, () -> Polyline.of(0, 0));
    assertThrows(DraftingException.class, () -> Polyline.of(0, 0, 1));
    assertThrows(DraftingException.class, () -> Polyline.of(new double[2_000_002]));
  }

  @Test
  void whatJtsCannotHoldIsRefused() {
    assertThrows(
        DraftingException.class,
        () -> JtsBridge.toPolygon(Curve.line(p(0, 0), p(1, 1)), Length.mm(1)));
    Curve flat = Curve.polyline(p(0, 0), p(10, 0), p(0, 0));
    assertThrows(DraftingException.class, () -> JtsBridge.toJts(flat, Length.mm(1)));
  }
}
