package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Points, vectors and boxes. */
class PointTest {
  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNotFiniteIsRefused(double number) {
    assertThrows(DraftingException.class, () -> p(number, 0));
    assertThrows(DraftingException.class, () -> p(0, number));
    assertThrows(DraftingException.class, () -> new Vector(number, 0));
    assertThrows(DraftingException.class, () -> new Vector(0, number));
    assertThrows(DraftingException.class, () -> new Box(0, 0, number, 1));
    assertThrows(DraftingException.class, () -> Polyline.of(0, 0, number, 1));
  }

  @Test
  void zeroHasNoSign() {
    assertEquals(p(0, 0), p(-0.0, -0.0));
    assertEquals(p(0, 3), p(0, 3).mirrored());
    assertEquals(p(0, 0).hashCode(), p(-0.0, 0).hashCode());
    assertEquals(new Vector(0, 1), new Vector(1, 0).left());
  }

  @Test
  void pointsAndWays() {
    assertEquals(new Vector(3, 4), p(4, 6).minus(p(1, 2)));
    assertEquals(p(4, 6), p(1, 2).plus(new Vector(3, 4)));
    assertEquals(Length.mm(5), p(4, 6).distanceTo(p(1, 2)));
    assertEquals(p(2.5, 4), p(4, 6).midpoint(p(1, 2)));
    assertEquals(p(7, 10), p(1, 2).between(p(4, 6), 2));
    assertEquals(p(0.3, 1), p(0.1, 1).between(p(0.3, 1), 1));
  }

  @Test
  void vectors() {
    Vector way = new Vector(3, 4);
    assertEquals(new Vector(0.6, 0.8), way.unit());
    assertEquals(11, way.dot(new Vector(1, 2)));
    assertEquals(2, way.cross(new Vector(1, 2)));
    assertEquals(new Vector(-3, -4), way.negated());
    assertEquals(new Vector(4, 6), way.plus(new Vector(1, 2)));
    assertEquals(new Vector(2, 2), way.minus(new Vector(1, 2)));
    assertEquals(Angle.degrees(-90), new Vector(0, -1).angle());
    assertEquals(Angle.degrees(90), new Vector(2, 0).turnTo(new Vector(0, 1)));
    assertEquals(Angle.degrees(180), new Vector(1, 0).turnTo(new Vector(-1, 0)));
    assertEquals(Angle.degrees(180), new Vector(1, 0).turnTo(new Vector(-1, -0.0)));
    assertEquals(new Vector(0, 1).dy(), Vector.at(Angle.degrees(90)).dy());
    assertThrows(DraftingException.class, () -> new Vector(0, 0).unit());
  }

  @Test
  void boxes() {
    Box box = Box.of(p(10, 0), p(0, 20));
    assertEquals(Length.mm(10), box.width());
    assertEquals(Length.mm(20), box.height());
    assertEquals(p(5, 10), box.centre());
    assertTrue(box.contains(p(0, 20)) && box.contains(p(5, 5)));
    assertFalse(box.contains(p(10.1, 5)) || box.contains(p(5, -0.1)));
    assertEquals(new Box(-5, 0, 10, 20), box.union(Box.of(p(-5, 3), p(-5, 3))));
    assertEquals(new Box(-1, -1, 11, 21), box.widened(Length.mm(1)));
    assertThrows(DraftingException.class, () -> new Box(1, 0, 0, 1));
    assertThrows(DraftingException.class, () -> new Box(0, 1, 1, 0));
  }

  @Test
  void printWithoutIdleZeros() {
    assertEquals("(12.5, 30)", p(12.5, 30).toString());
    assertEquals("(0, -0.001)", p(6e-17, -0.001).toString());
    assertEquals("Vector(1, 0)", new Vector(1, 0).toString());
    assertEquals("Box((0, 0) to (10, 20))", new Box(0, 0, 10, 20).toString());
    assertTrue(p(1e300, -1e300).toString().length() < 60);
  }

  @Test
  void comeBackFromStorage() {
    assertEquals(p(1, 2), SerialCopy.of(p(1, 2)));
    assertEquals(new Vector(1, 2), SerialCopy.of(new Vector(1, 2)));
    assertEquals(new Box(0, 0, 1, 2), SerialCopy.of(new Box(0, 0, 1, 2)));
  }
}
