package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Where two segments cross, or one crosses itself, against hand-computed places and JTS. */
class CrossingsOfSegmentsTest {
  /** y = x² / 150 from x = -30 to 30: nowhere steeper than 0.4. */
  private static final Cubic SHALLOW = Outlines.cubic(-30, 6, -10, -2, 10, -2, 30, 6);

  /** y = 2 x² / 15 from x = -30 to 30. */
  private static final Cubic DEEP = Outlines.cubic(-30, 120, -10, -40, 10, -40, 30, 120);

  /** An S about (50, 30). */
  private static final Cubic S = Outlines.cubic(0, 0, 70, 0, 30, 60, 100, 60);

  private static Line line(double x0, double y0, double x1, double y1) {
    return new Line(new Point(x0, y0), new Point(x1, y1));
  }

  /** (12 s³ - 3 s, 12 s²): at s = 1/2 and -1/2 it is at (0, 3). */
  private static Cubic loop(double fromS, double toS) {
    return Outlines.cubic(
        12 * fromS * fromS * fromS - 3 * fromS,
        12 * fromS * fromS,
        12 * fromS * fromS * toS - (2 * fromS + toS),
        4 * (fromS * fromS + 2 * fromS * toS),
        12 * fromS * toS * toS - (fromS + 2 * toS),
        4 * (toS * toS + 2 * fromS * toS),
        12 * toS * toS * toS - 3 * toS,
        12 * toS * toS);
  }

  private static List<double[]> sorted(List<double[]> met) {
    List<double[]> sorted = new ArrayList<>(met);
    sorted.sort(Comparator.comparingDouble(at -> at[0]));
    return sorted;
  }

  private static void assertMet(List<double[]> met, double... pairs) {
    List<double[]> sorted = sorted(met);
    assertEquals(pairs.length / 2, sorted.size());
    for (int i = 0; i < sorted.size(); i++) {
      assertEquals(pairs[2 * i], sorted.get(i)[0], 1e-11);
      assertEquals(pairs[2 * i + 1], sorted.get(i)[1], 1e-11);
    }
  }

  @Test
  void linesCrossAtTheSharesTheyAreDividedIn() {
    assertMet(SegmentMeetings.of(line(0, 0, 40, 0), line(10, -10, 10, 30)), 0.25, 0.25);
    assertMet(SegmentMeetings.of(line(3, 1, 7, 9), line(3, 5, 9, 2)), 0.4, 4 / 15.0);
    assertMet(SegmentMeetings.of(line(0, 0, 40, 0), line(10, 1, 10, 30)));
    assertMet(SegmentMeetings.of(line(0, 0, 40, 40), line(30, 10, 60, -10)));
    assertMet(SegmentMeetings.of(line(0, 0, 40, 40), line(10, 0, 60, 50)));
    assertMet(SegmentMeetings.of(line(0, 0, 40, 30), line(0, 30, 15, 15)));
    assertMet(SegmentMeetings.of(line(0, 30, 15, 15), line(0, 0, 40, 30)));
  }

  @Test
  void aLineThatEndsOnAnotherCrossesItThere() {
    Line waist = line(0, 0, 40, 0);
    assertMet(SegmentMeetings.of(waist, line(10, 0, 10, 30)), 0.25, 0);
    assertMet(SegmentMeetings.of(waist, line(10, -30, 10, 0)), 0.25, 1);
    assertMet(SegmentMeetings.of(line(10, 0, 10, 30), waist), 0, 0.25);
    assertMet(SegmentMeetings.of(line(10, -30, 10, 0), waist), 1, 0.25);
  }

  /** Four nanometres short is a long way beside what rounding moves. */
  @Test
  void whatStopsShortOfALineDoesNotCrossIt() {
    Line bias = line(0, 0, 40, 40);
    Line notch = line(40, 0, 20 + 3e-9, 20 - 3e-9);
    assertMet(SegmentMeetings.of(bias, notch));
    assertMet(SegmentMeetings.of(notch, bias));
    assertMet(SegmentMeetings.of(bias, notch.reversed()));
    Cubic dart = Outlines.cubic(40, 0, 30, 0, 20, 10, 20 + 3e-9, 20 - 3e-9);
    assertMet(SegmentMeetings.of(bias, dart));
    assertMet(SegmentMeetings.of(dart, bias));
    assertMet(SegmentMeetings.of(bias, dart.reversed()));
  }

  @Test
  void aLineCrossesAShallowBowTwice() {
    double low = (7.5 - Math.sqrt(1125) / 2 + 30) / 60;
    double high = (7.5 + Math.sqrt(1125) / 2 + 30) / 60;
    // x² / 150 = 1.5 + x / 10
    Line slanting = line(-30, -1.5, 30, 4.5);
    assertMet(SegmentMeetings.of(SHALLOW, slanting), low, low, high, high);
    assertMet(SegmentMeetings.of(SHALLOW, line(-30, 1.5, 50, 1.5)), 0.25, 0.1875, 0.75, 0.5625);
    assertMet(SegmentMeetings.of(line(-30, 1.5, 50, 1.5), SHALLOW), 0.1875, 0.25, 0.5625, 0.75);
  }

  @Test
  void aLineCrossesADeepBowTwice() {
    assertMet(SegmentMeetings.of(DEEP, line(-30, 30, 50, 30)), 0.25, 0.1875, 0.75, 0.5625);
    assertMet(SegmentMeetings.of(line(-30, 30, 50, 30), DEEP), 0.1875, 0.25, 0.5625, 0.75);
  }

  /** y = 2 x² / 15 and y = 60 - 2 x² / 15 are at the same height where x² = 225. */
  @Test
  void twoBowsCrossTwice() {
    Cubic upsideDown = Outlines.cubic(-30, -60, -10, 100, 10, 100, 30, -60);
    assertMet(SegmentMeetings.of(DEEP, upsideDown), 0.25, 0.25, 0.75, 0.75);
  }

  /**
   * x = 210 t - 330 t² + 220 t³ and y = 180 t² - 120 t³ are on y = x - 20 where 0 = (t - 1/2) (-34
   * t² + 34 t - 4). At a half it is halved again and again, and yet the place there is counted
   * once.
   */
  @Test
  void aLineThroughTheMiddleOfAnSCrossesItThreeTimes() {
    assertMet(SegmentMeetings.of(S, line(0, 60, 100, 0)), 0.5, 0.5);
    double low = 0.5 - Math.sqrt(612) / 68;
    double high = 0.5 + Math.sqrt(612) / 68;
    Line steep = line(-10, -30, 110, 90);
    assertMet(SegmentMeetings.of(S, steep), low, onSteep(low), 0.5, 0.5, high, onSteep(high));
  }

  private static double onSteep(double t) {
    return (180 * t * t - 120 * t * t * t + 30) / 120;
  }

  @Test
  void aSegmentThatEndsOnAnotherCrossesItThere() {
    Point quarter = SHALLOW.pointAt(0.25);
    Cubic away =
        Outlines.cubic(quarter.x(), quarter.y(), quarter.x() + 3, 20, quarter.x(), 30, 9, 40);
    assertMet(SegmentMeetings.of(SHALLOW, away), 0.25, 0);
    assertMet(SegmentMeetings.of(SHALLOW, away.reversed()), 0.25, 1);
    assertMet(SegmentMeetings.of(away, SHALLOW), 0, 0.25);
    assertMet(SegmentMeetings.of(away.reversed(), SHALLOW), 1, 0.25);
  }

  /** Circles of radius 50 about (0, 0) and (60, 0) cross at (30, 40) and (30, -40). */
  @Test
  void circlesCrossWhereTheRightTriangleIs() {
    Arc left = Outlines.arc(0, 0, 50, -90, 180);
    Arc right = Outlines.arc(60, 0, 50, 90, 180);
    double up = Math.toDegrees(Math.atan2(40, 30));
    double later = (90 + up) / 180;
    double sooner = (90 - up) / 180;
    assertMet(SegmentMeetings.of(left, right), sooner, later, later, sooner);
  }

  /** Straight across each other, in the directions (1, 1) and (1, -1), one with uneven speed. */
  @Test
  void straightCubicsOfUnevenSpeedCrossWhereTheyOught() {
    Cubic uneven = Outlines.cubic(0, 0, 10, 10, 20, 20, 100, 100);
    Cubic even = Outlines.cubic(-10, 70, 10, 50, 30, 30, 50, 10);
    // x = 30 t + 70 t³ is at 30
    double t = 0.66;
    for (int i = 0; i < 50; i++) {
      t -= (30 * t + 70 * t * t * t - 30) / (30 + 210 * t * t);
    }
    assertMet(SegmentMeetings.of(uneven, even), t, 2 / 3.0);
    Cubic centred = Outlines.cubic(10, 50, 70 / 3.0, 110 / 3.0, 110 / 3.0, 70 / 3.0, 50, 10);
    assertMet(SegmentMeetings.of(uneven, centred), t, 0.5);
    assertMet(SegmentMeetings.of(centred, uneven), 0.5, t);
  }

  @Test
  void straightCubicsTenMetresLongCrossAsExactly() {
    double t = 0.4;
    for (double factor : new double[] {1, 10, 100, 1000, 1e4}) {
      Transform scaled = Transform.scaling(factor);
      double x = 30 * t + 70 * t * t * t;
      Segment uneven = Outlines.cubic(0, 0, 10, 10, 20, 20, 100, 100).map(scaled);
      Segment centred =
          Outlines.cubic(x - 30, x + 30, x - 10, x + 10, x + 10, x - 10, x + 30, x - 30)
              .map(scaled);
      assertMet(SegmentMeetings.of(uneven, centred), t, 0.5);
      assertMet(SegmentMeetings.of(centred, uneven), 0.5, t);
    }
  }

  /** Beside a handle of no length the curve hardly gets away: x = 180 t² - 80 t³. */
  @Test
  void besideAHandleOfNoLengthTheCrossingIsFoundNearTheStart() {
    Cubic late = Outlines.cubic(0, 0, 0, 0, 60, 0, 100, 0);
    for (double t : new double[] {0.1, 0.01, 1e-3, 1e-4}) {
      double x = 180 * t * t - 80 * t * t * t;
      Cubic across = Outlines.cubic(x, -30, x, -10, x, 10, x, 30);
      List<double[]> met = SegmentMeetings.of(late, across);
      assertEquals(1, met.size());
      assertEquals(x, late.pointAt(met.get(0)[0]).x(), 1e-8);
      assertEquals(0.5, met.get(0)[1], 1e-9);
    }
  }

  /** Both have a handle of no length, beside which a step of Newton's goes far. */
  @Test
  void bothCrossingsOfTwoPausingCurvesAreFoundInWhateverOrder() {
    Cubic one = Outlines.cubic(184, 129, 184, 129, 141, 99, 109, 68);
    Cubic two = Outlines.cubic(107, 69, 107, 69, 160, 88, 71, 56);
    assertEquals(2, flattened(one).intersection(flattened(two)).getNumPoints());
    for (Cubic first : List.of(one, one.reversed())) {
      for (Cubic second : List.of(two, two.reversed())) {
        assertEquals(2, SegmentMeetings.of(first, second).size());
        assertEquals(2, SegmentMeetings.of(second, first).size());
      }
    }
  }

  @Test
  void fromAMillimetreToTenMetresTheParametersAreTheSame() {
    Cubic neck = Outlines.cubic(1, 9, 3, 2, 7, 1, 9, 8);
    Cubic strap = Outlines.cubic(0, 3, 4, 6, 5, 8, 10, 1);
    List<double[]> expected = sorted(SegmentMeetings.of(neck, strap));
    assertEquals(2, expected.size());
    for (double factor : new double[] {0.01, 0.1, 10, 100, 1000, 1e4}) {
      Transform scaled = Transform.scaling(factor);
      List<double[]> met = sorted(SegmentMeetings.of(neck.map(scaled), strap.map(scaled)));
      assertEquals(2, met.size(), () -> "at " + factor);
      for (int i = 0; i < 2; i++) {
        assertEquals(expected.get(i)[0], met.get(i)[0], 1e-9);
        assertEquals(expected.get(i)[1], met.get(i)[1], 1e-9);
      }
    }
  }

  private static Cubic random(Random random) {
    double[] at = random.doubles(8, 0, 200).toArray();
    return Outlines.cubic(at[0], at[1], at[2], at[3], at[4], at[5], at[6], at[7]);
  }

  private static Geometry flattened(Segment segment) {
    Coordinate[] points = new Coordinate[1501];
    for (int i = 0; i < points.length; i++) {
      Point at = segment.pointAt(i / 1500.0);
      points[i] = new Coordinate(at.x(), at.y());
    }
    return new GeometryFactory().createLineString(points);
  }

  @Test
  void randomCurvesCrossAsOftenAsTheirPolylinesInJts() {
    Random random = new Random(20);
    int all = 0;
    for (int i = 0; i < 60; i++) {
      Cubic one = random(random);
      Cubic two = random(random);
      List<double[]> met = SegmentMeetings.of(one, two);
      int expected = flattened(one).intersection(flattened(two)).getNumPoints();
      assertEquals(expected, met.size(), () -> one + " and " + two);
      all += met.size();
      for (double[] at : met) {
        assertEquals(0, one.pointAt(at[0]).distanceTo(two.pointAt(at[1])).toMm(), 1e-10);
      }
    }
    assertTrue(all > 30, "crossings: " + all);
  }

  /**
   * Twenty metres from the origin rounding moves a crossing at a narrow angle by ten picometres.
   */
  @Test
  void curvesFarFromTheOriginCrossAtNarrowAngles() {
    for (int i = 0; i < 20; i++) {
      Transform away = Transform.translation(new Vector(20000 + 7 * i, -15000 + 3 * i));
      Cubic one = Outlines.cubic(0, 0, 30, 4, 60, 4, 90, 0).map(away);
      Transform turned = Transform.rotation(one.pointAt(0.4), Angle.radians(0.02));
      Cubic two = one.map(turned);
      List<double[]> met = SegmentMeetings.of(one, two);
      assertTrue(met.stream().anyMatch(at -> Math.abs(at[0] - 0.4) < 1e-6), () -> met.toString());
    }
  }

  @Test
  void aLoopCrossesItselfOnce() {
    assertMet(SegmentMeetings.within(loop(-1, 1)), 0.25, 0.75);
    assertMet(SegmentMeetings.within(loop(-1, 1).reversed()), 0.25, 0.75);
  }

  @Test
  void aLoopAtTheStartOrTheEndIsFoundAsWell() {
    assertMet(SegmentMeetings.within(loop(-1, 3)), 0.125, 0.375);
    assertMet(SegmentMeetings.within(loop(-3, 1)), 0.625, 0.875);
    assertMet(SegmentMeetings.within(loop(-0.75, 7.25)), 0.25 / 8, 1.25 / 8);
  }

  @Test
  void aBowThatEndsBeforeItClosesDoesNotCrossItself() {
    assertMet(SegmentMeetings.within(loop(-1, 0.49)));
    assertMet(SegmentMeetings.within(DEEP));
    assertMet(SegmentMeetings.within(S));
  }

  @Test
  void whatGoesOnTheSameWayDoesNotCrossWhatWentBefore() {
    Cubic back = SHALLOW.between(0, 0.5);
    Cubic front = SHALLOW.between(0.5, 1);
    assertMet(SegmentMeetings.following(back, front));
  }

  /** Three quarters of a circle to the left, and then straight on across its beginning. */
  @Test
  void whatTurnsRoundIsCrossedByWhatFollows() {
    Arc round = Outlines.arc(0, 0, 50, 0, 270);
    Line across = line(0, -50, 0, 100);
    List<double[]> met = sorted(SegmentMeetings.following(round, across));
    assertMet(met, 1 / 3.0, 2 / 3.0, 1, 0);
    Line along = line(-200, 0, 0, -50);
    Cubic hook = Outlines.cubic(0, -50, 100, -25, -250, 150, -100, -100);
    List<double[]> behind = SegmentMeetings.following(along, hook);
    assertTrue(behind.stream().anyMatch(at -> at[0] < 0.9), behind::toString);
  }
}
