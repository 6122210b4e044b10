package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class RoundLineTest {
  private static Stroke stroke(double... xy) {
    return Stroke.of(TracedEdge.of("stroke", Polyline.of(xy)));
  }

  /** The outline through these corners with a point every so many millimetres. */
  private static List<Point> along(double step, double... xy) {
    List<Point> points = new ArrayList<>();
    int corners = xy.length / 2;
    for (int i = 0; i < corners; i++) {
      Point from = new Point(xy[2 * i], xy[2 * i + 1]);
      Point to = new Point(xy[(2 * i + 2) % xy.length], xy[(2 * i + 3) % xy.length]);
      int steps = (int) Math.round(from.distanceTo(to).toMm() / step);
      for (int k = 0; k < steps; k++) {
        points.add(from.plus(to.minus(from).times(k / (double) steps)));
      }
    }
    return points;
  }

  private static List<Corner> shared(int... at) {
    List<Corner> corners = new ArrayList<>();
    for (int i : at) {
      corners.add(new Corner(i, i));
    }
    return corners;
  }

  @Test
  void aPointWhereStrokesMeetIsCountedOnce() {
    List<Stroke> strokes = List.of(stroke(0, 0, 60, 0), stroke(60, 0, 60, 80, 0, 0));
    assertEquals(Polyline.of(0, 0, 60, 0, 60, 80), RoundLine.of(strokes, true));
    assertEquals(Polyline.of(0, 0, 60, 0, 60, 80, 0, 0), RoundLine.of(strokes, false));
    assertEquals(
        Polyline.of(0, 0, 60, 0, 61, 0, 60, 80),
        RoundLine.of(List.of(stroke(0, 0, 60, 0), stroke(61, 0, 60, 80)), true));
  }

  @Test
  void theCornersOfARectangleAreThoseWhereItTurns() {
    Polyline round = Polyline.of(along(5, 0, 0, 100, 0, 100, 60, 0, 60));
    assertEquals(shared(0, 20, 32, 52), RoundLine.corners(round, true));
  }

  @Test
  void anOpenLineHasNoCornerAtItsEnds() {
    List<Point> points = along(5, 0, 0, 100, 0, 100, 60, 0, 60);
    assertEquals(shared(20, 32), RoundLine.corners(Polyline.of(points.subList(0, 50)), false));
    assertEquals(List.of(), RoundLine.corners(Polyline.of(0, 0, 60, 0), false));
    assertEquals(shared(1), RoundLine.corners(Polyline.of(0, 0, 60, 0, 60, 60), false));
  }

  @Test
  void aRoundLineHasNoCorners() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 90; i++) {
      double turn = Math.toRadians(4 * i);
      points.add(new Point(80 * Math.cos(turn), 80 * Math.sin(turn)));
    }
    assertEquals(List.of(), RoundLine.corners(Polyline.of(points), true));
  }

  /** Two tangents of a circle, at 30 degrees to the x axis, and the circle beyond them. */
  @Test
  void aDropHasACornerAtItsTipOnly() {
    double far = 150;
    double radius = far * Math.tan(Math.PI / 6);
    double middle = far / Math.cos(Math.PI / 6);
    List<Point> drop = new ArrayList<>();
    for (int i = 30; i > 0; i--) {
      drop.add(new Point(far * i / 30 * Math.cos(Math.PI / 6), far * i / 60));
    }
    for (int i = 0; i < 30; i++) {
      drop.add(new Point(far * i / 30 * Math.cos(Math.PI / 6), -far * i / 60));
    }
    for (int turn = -120; turn < 120; turn += 4) {
      double angle = Math.toRadians(turn);
      drop.add(new Point(middle + radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    assertEquals(shared(30), RoundLine.corners(Polyline.of(drop), true));
  }

  /** A pocket 70 mm wide with a slanting top, drawn with a hand that wanders by 1 mm. */
  private static List<Point> pocket(long seed, boolean farAway) {
    Random random = new Random(seed);
    List<Point> points = new ArrayList<>();
    for (Point point : along(4, 0, 0, 70, 0, 66, 58, 34, 72, 0, 44)) {
      double x = point.x() + random.nextGaussian() + (farAway ? 900 : 0);
      points.add(new Point(x, point.y() + random.nextGaussian() - (farAway ? 700 : 0)));
    }
    return points;
  }

  private static Set<Point> corners(List<Point> round) {
    Polyline line = Polyline.of(round);
    Set<Point> points = new HashSet<>();
    for (Corner corner : RoundLine.corners(line, true)) {
      points.add(line.point(corner.first()));
      points.add(line.point(corner.last()));
    }
    return points;
  }

  @Property(tries = 30)
  void aClosedLineHasTheSameCornersWhereverItWasBegunAndWhicheverWayItWent(
      @ForAll @LongRange(min = 0, max = 10_000) long seed,
      @ForAll @IntRange(min = 1, max = 66) int start,
      @ForAll boolean farAway) {
    List<Point> round = pocket(seed, farAway);
    Set<Point> corners = corners(round);
    List<Point> elsewhere = new ArrayList<>(round);
    Collections.rotate(elsewhere, start);
    assertEquals(corners, corners(elsewhere));
    Collections.reverse(elsewhere);
    assertEquals(corners, corners(elsewhere));
  }

  @Property(tries = 30)
  void anOpenLineHasTheSameCornersFromItsOtherEnd(
      @ForAll @LongRange(min = 0, max = 10_000) long seed) {
    List<Point> line = new ArrayList<>(pocket(seed, true).subList(3, 60));
    int last = line.size() - 1;
    List<Corner> turned = new ArrayList<>();
    for (Corner corner : RoundLine.corners(Polyline.of(line), false)) {
      turned.add(0, new Corner(last - corner.first(), last - corner.last()));
    }
    Collections.reverse(line);
    assertEquals(turned, RoundLine.corners(Polyline.of(line), false));
  }

  @Test
  void stretchesOfAnOpenLineRunFromItsFirstPointToItsLast() {
    Polyline round = Polyline.of(0, 0, 30, 0, 60, 0, 61, 5, 61, 40, 61, 80, 0, 80);
    assertEquals(
        List.of(
            Polyline.of(0, 0, 30, 0, 60, 0),
            Polyline.of(61, 5, 61, 40, 61, 80),
            Polyline.of(61, 80, 0, 80)),
        RoundLine.stretches(round, List.of(new Corner(2, 3), new Corner(5, 5)), false));
  }

  @Test
  void stretchesOfAClosedLineStartWithTheLowest() {
    Polyline round = Polyline.of(60, 80, 0, 80, 0, 40, 0, 0, 30, 0, 60, 0);
    assertEquals(
        List.of(
            Polyline.of(0, 0, 30, 0, 60, 0),
            Polyline.of(60, 0, 60, 80),
            Polyline.of(60, 80, 0, 80),
            Polyline.of(0, 80, 0, 40, 0, 0)),
        RoundLine.stretches(round, shared(0, 1, 3, 5), true));
  }

  @Test
  void theSidesOfATriangleFollowFromTheLowest() {
    Polyline round = Polyline.of(0, 80, 0, 0, 60, 0);
    List<Polyline> sides =
        List.of(Polyline.of(0, 0, 60, 0), Polyline.of(60, 0, 0, 80), Polyline.of(0, 80, 0, 0));
    assertEquals(sides, RoundLine.stretches(round, shared(0, 1, 2), true));
  }

  @Test
  void aLineWithOneCornerIsOneStretchBackToIt() {
    Polyline round = Polyline.of(60, 0, 60, 80, 0, 0);
    assertEquals(
        List.of(Polyline.of(60, 80, 0, 0, 60, 0, 60, 80)),
        RoundLine.stretches(round, shared(1), true));
  }

  /** Steps of 20, 50 and 30 mm; halfway it is 30 mm along the second, which rises from 20 to 60. */
  @Test
  void theLowestStretchIsThatWhoseMiddleLiesLowest() {
    assertMiddleAt(44, 0, 40, 0, 20, 30, 60, 30, 90);
  }

  @Test
  void theMiddleOfAStretchMayLieOnItsFirstStepOrItsLast() {
    assertMiddleAt(95, 0, 40, 0, 100, 30, 140);
    assertMiddleAt(20, 0, 0, 30, 0, 30, 10, 30, 70);
    assertMiddleAt(30, 0, 20, 0, 40);
  }

  /** The way back runs far to both sides, level at its middle, just below or above this. */
  private static void assertMiddleAt(double height, double... xy) {
    for (double back : new double[] {height - 0.5, height + 0.5}) {
      double[] round = Arrays.copyOf(xy, xy.length + 4);
      System.arraycopy(new double[] {300, back, -200, back}, 0, round, xy.length, 4);
      int end = xy.length / 2 - 1;
      Point lowest = RoundLine.stretches(Polyline.of(round), shared(0, end), true).get(0).point(0);
      Point first = new Point(xy[0], xy[1]);
      assertEquals(back < height ? new Point(xy[2 * end], xy[2 * end + 1]) : first, lowest);
    }
  }
}
