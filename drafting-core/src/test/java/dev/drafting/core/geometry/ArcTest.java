package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.ORIGIN;
import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArcTest {
  private static Arc arc(double radius, double from, double sweep) {
    return Arc.of(ORIGIN, Length.mm(radius), Angle.degrees(from), Angle.degrees(sweep));
  }

  @Test
  void quarters() {
    Arc quarter = arc(50, 0, 90);
    assertEquals(p(50, 0), quarter.start());
    assertEquals(p(0, 50), quarter.end());
    assertEquals(25 * Math.PI, quarter.length().toMm(), 1e-12);
    assertEquals(Angle.degrees(90), quarter.turning());
    assertEquals(1 / 50.0, quarter.curvatureAt(0.3), 0);
    assertEquals(-1 / 50.0, quarter.reversed().curvatureAt(0.3), 0);
    assertEquals(new Vector(0, 1), quarter.directionAt(0));
    assertEquals(new Vector(0, -1), quarter.reversed().directionAt(1));
    assertEquals(new Box(0, 0, 50, 50), quarter.bounds());
    assertEquals(new Box(-50, -50, 50, 50), arc(50, 10, 360).bounds());
    assertEquals(new Box(-50, -50, 50, 50), arc(50, 10, -360).bounds());
  }

  @Test
  void onceRoundEndsWhereItStarts() {
    assertTrue(Curve.of(arc(50, 33, 360)).isClosed());
    assertEquals(2500 * Math.PI, Curve.of(arc(50, 33, 360)).areaSquareMm(), 1e-9);
    assertEquals(-2500 * Math.PI, Curve.of(arc(50, 33, -360)).areaSquareMm(), 1e-9);
  }

  @Test
  void throughThreePoints() {
    Arc half = Arc.through(p(50, 0), p(0, 50), p(-50, 0));
    assertEquals(Length.mm(50), half.radius());
    assertEquals(ORIGIN, half.centre());
    assertEquals(180, half.sweep().toDegrees(), 1e-12);
    assertEquals(-180, Arc.through(p(50, 0), p(0, -50), p(-50, 0)).sweep().toDegrees(), 1e-12);
    Arc most = Arc.through(p(50, 0), p(-50, 0), p(0, -50));
    assertEquals(270, most.sweep().toDegrees(), 1e-12);
    assertEquals(-90, Arc.through(p(50, 0), p(30, -40), p(0, -50)).sweep().toDegrees(), 1e-12);
    assertThrows(DraftingException.class, () -> Arc.through(p(0, 0), p(1, 1), p(3, 3)));
    assertThrows(DraftingException.class, () -> Arc.through(p(0, 0), p(0, 0), p(3, 3)));
  }

  @Test
  void refusals() {
    assertThrows(DraftingException.class, () -> arc(0, 0, 90));
    assertThrows(DraftingException.class, () -> arc(-1, 0, 90));
    assertThrows(DraftingException.class, () -> arc(1, 0, 0));
    assertThrows(DraftingException.class, () -> arc(1, 0, 361));
  }

  /** The bound in the comment of toCubics is met, and nearly reached. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 0.1, 0.01, 1e-4, 1e-7})
  void cubicsStayWithinTheTolerance(double tolerance) {
    Arc arc = arc(300, 20, -250);
    List<Cubic> cubics = arc.toCubics(Length.mm(tolerance));
    assertEquals(arc.start(), cubics.get(0).start());
    assertEquals(arc.end(), cubics.get(cubics.size() - 1).end());
    for (Cubic cubic : cubics) {
      for (int i = 0; i <= 200; i++) {
        assertEquals(300, cubic.pointAt(i / 200.0).gap(ORIGIN), tolerance + 1e-12);
      }
    }
    assertEquals(arc.length().toMm(), Curve.of(cubics).length().toMm(), 3 * tolerance);
    assertEquals(-250, Curve.of(cubics).turning().toDegrees(), 1e-9);
  }

  /** Radial error of the usual cubic of a quarter: 2.7253e-4 R (Riskus 2006). */
  @Test
  void aQuarterIsOneCubicFromItsKnownErrorOn() {
    assertEquals(1, arc(1000, 0, 90).toCubics(Length.mm(0.27254)).size());
    assertEquals(2, arc(1000, 0, 90).toCubics(Length.mm(0.27252)).size());
  }

  @Test
  void comesBackFromItsNumbersToTheLastBit() {
    Arc arc = Arc.through(new Point(0.1, 0.2), new Point(31.7, 4.4), new Point(60.03, -1.9));
    assertEquals(arc, Arc.of(arc.toArray()));
    assertEquals(8, arc.toArray().length);
    double[] off = arc.toArray();
    off[4] += 0.01;
    DraftingException refused = assertThrows(DraftingException.class, () -> Arc.of(off));
    assertEquals("these are not the numbers of an arc", refused.what());
    assertThrows(DraftingException.class, () -> Arc.of(0, 0, 1, 0, 0, 1, 1));
    assertThrows(DraftingException.class, () -> Arc.of(0, 0, 1, 0, 1, 0, 1, Double.NaN));
  }

  @Test
  void isAValue() {
    assertEquals(arc(50, 0, 90), arc(50, 0, 90));
    assertEquals(arc(50, 0, 90).hashCode(), arc(50, 0, 90).hashCode());
    assertNotEquals(arc(50, 0, 90), arc(50, 0, 91));
    assertEquals("Arc of radius 50 mm and 90°, (50, 0) to (0, 50)", arc(50, 0, 90).toString());
  }
}
