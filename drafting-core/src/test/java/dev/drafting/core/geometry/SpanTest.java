package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.ORIGIN;
import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Boxes round parts of segments and fans of their directions, against plane trigonometry. */
class SpanTest {
  private static Span whole(Segment segment) {
    return new Span(segment, 0, 1);
  }

  private static Span line(double x1, double y1, double x2, double y2) {
    return whole(new Line(p(x1, y1), p(x2, y2)));
  }

  private static Span towards(double degrees) {
    return whole(new Line(ORIGIN, ORIGIN.plus(Vector.at(Angle.degrees(degrees)).times(40))));
  }

  /** An arc with the chord's direction given. */
  private static Arc arc(double chord, double sweep) {
    double from = chord - sweep / 2 - Math.copySign(90, sweep);
    return Arc.of(ORIGIN, Length.mm(100), Angle.degrees(from), Angle.degrees(sweep));
  }

  private static double sine(double degrees) {
    return Math.sin(Math.toRadians(degrees));
  }

  @Test
  void boxesOfLinesAreAsLongAsTheLineAndHaveNoWidth() {
    assertEquals(50, line(10, 20, 40, 60).extent(), 1e-14);
    assertEquals(0, line(10, 20, 40, 60).width(), 1e-14);
  }

  /** A chord is 2 r sin(s/2) long and r (1 - cos(s/2)) off its arc. */
  @ParameterizedTest
  @ValueSource(doubles = {20, -20, 90, -120, 160})
  void boxesOfArcsAreChordTimesSagitta(double sweep) {
    Span span = whole(arc(33, sweep));
    double half = Math.abs(sweep) / 2;
    assertEquals(200 * sine(half), span.extent(), 1e-12);
    assertEquals(100 * (1 - sine(90 - half)), span.width(), 1e-12);
  }

  @Test
  void boxesOfCubicsHoldTheControlPointsAlongTheChord() {
    Span across = whole(new Cubic(p(0, 0), p(-10, 20), p(70, -15), p(60, 0)));
    assertEquals(80, across.extent(), 1e-12);
    assertEquals(35, across.width(), 1e-12);
    Span slanting = whole(new Cubic(p(0, 0), p(3 - 8, 4 + 6), p(27, 36), p(30, 40)));
    assertEquals(50, slanting.extent(), 1e-12);
    assertEquals(10, slanting.width(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, -20, 90, -120})
  void halvesOfAnArcHaveHalfItsFan(double sweep) {
    Span span = whole(arc(0, sweep));
    Span level = towards(0);
    double half = Math.abs(sweep) / 2;
    assertEquals(sine(half), span.greatestSineTo(level), 1e-12);
    assertEquals(0.5, span.halfway(), 0);
    assertEquals(sine(half), span.firstHalf().greatestSineTo(level), 1e-12);
    assertEquals(0.25, span.firstHalf().halfway(), 0);
    assertEquals(0.75, span.secondHalf().halfway(), 0);
  }

  /** The angle between lines; a line backwards is the same line. */
  @Test
  void theGreatestSineIsThatOfTheWidestAngle() {
    assertEquals(sine(30), towards(50).greatestSineTo(towards(80)), 1e-14);
    assertEquals(sine(30), towards(50).greatestSineTo(towards(260)), 1e-14);
    assertEquals(sine(40), towards(160).greatestSineTo(towards(20)), 1e-14);
    assertEquals(0, towards(70).greatestSineTo(towards(250)), 1e-14);
    assertEquals(sine(40 + 10 + 15), whole(arc(5, 20)).greatestSineTo(whole(arc(45, -30))), 1e-13);
    assertEquals(1, whole(arc(5, 60)).greatestSineTo(whole(arc(65, 60))), 1e-14);
  }

  /** The legs of a control polygon are at 60, 0 and -40 degrees to a chord of 30 degrees. */
  @Test
  void theFanOfACubicIsThatOfItsControlPolygon() {
    Point a = p(7, 3);
    Point b = a.plus(Vector.at(Angle.degrees(90)).times(sine(40) * 20));
    Point c = b.plus(Vector.at(Angle.degrees(30)).times(50));
    Point d = c.plus(Vector.at(Angle.degrees(-10)).times(sine(60) * 20));
    Span fan = whole(new Cubic(a, b, c, d));
    assertEquals(30, d.minus(a).angle().toDegrees(), 1e-12);
    assertFalse(fan.isWide());
    assertTrue(fan.isTransversalTo(towards(90.001)));
    assertFalse(fan.isTransversalTo(towards(89.999)));
    assertTrue(fan.isTransversalTo(towards(-10.001)));
    assertFalse(fan.isTransversalTo(towards(-9.999)));
    assertEquals(sine(50 + 35), fan.greatestSineTo(towards(75)), 1e-12);
  }

  @Test
  void parallelsAreNotTransversal() {
    assertFalse(towards(20).isTransversalTo(towards(20)));
    assertFalse(towards(20).isTransversalTo(towards(200)));
    assertTrue(towards(20).isTransversalTo(towards(20.001)));
    assertTrue(whole(arc(0, 30)).isTransversalTo(whole(arc(41, -50))));
    assertFalse(whole(arc(0, 30)).isTransversalTo(whole(arc(39, -50))));
  }

  /** Over 162 degrees a span is wide: it might come back to itself or to the next. */
  @Test
  void whatTurnsFarMightComeBack() {
    assertTrue(whole(arc(0, 163)).isWide());
    assertFalse(whole(arc(0, 161)).isWide());
    assertTrue(whole(arc(0, 161)).advancesWith(towards(0)));
    assertFalse(whole(arc(0, 163)).advancesWith(towards(0)));
    assertFalse(towards(0).advancesWith(whole(arc(0, -163))));
    assertTrue(towards(0).advancesWith(towards(161)));
    assertFalse(towards(0).advancesWith(towards(163)));
    assertTrue(whole(arc(0, 40)).advancesWith(whole(arc(110, 60))));
    assertFalse(whole(arc(0, 40)).advancesWith(whole(arc(114, 60))));
  }

  @Test
  void boxesThatTouchComeTogether() {
    assertTrue(line(0, 0, 10, 0).comesWithin(0, line(10, 0, 30, 0)));
    assertFalse(line(0, 0, 10, 0).comesWithin(0, line(10.001, 0, 30, 0)));
    assertTrue(line(0, 0, 10, 0).comesWithin(2, line(0, 2, 10, 2)));
    assertFalse(line(0, 0, 10, 0).comesWithin(2, line(0, 2.001, 10, 2.001)));
    assertTrue(line(0, 0, 10, 0).comesWithin(2, line(12, 0, 30, 0)));
    assertFalse(line(0, 0, 10, 0).comesWithin(2, line(12.001, 0, 30, 0)));
  }
}
