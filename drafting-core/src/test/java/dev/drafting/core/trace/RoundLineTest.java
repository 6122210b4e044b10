package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
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

  /** The stretches of a triangle, wherever the pencil was set down and whichever way it went. */
  @Property(tries = 30)
  void setDownElsewhereTheCornersAreTheSamePoints(@ForAll @IntRange(min = 0, max = 57) int by) {
    List<Point> points = along(5, 0, 0, 80, 0, 0, 60);
    points.set(7, points.get(7).plus(points.get(1).minus(points.get(0)).times(0.1)));
    List<Point> round = new ArrayList<>(points.subList(0, 48));
    Collections.rotate(round, -by % 48);
    Polyline elsewhere = Polyline.of(round);
    List<Point> corners = new ArrayList<>();
    RoundLine.corners(elsewhere, true).forEach(c -> corners.add(elsewhere.point(c.first())));
    corners.sort((a, b) -> Double.compare(a.x() - a.y(), b.x() - b.y()));
    assertEquals(List.of(new Point(0, 60), new Point(0, 0), new Point(80, 0)), corners);
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
  void aLineWithOneCornerIsOneStretchBackToIt() {
    Polyline round = Polyline.of(60, 0, 60, 80, 0, 0);
    assertEquals(
        List.of(Polyline.of(60, 80, 0, 0, 60, 0, 60, 80)),
        RoundLine.stretches(round, shared(1), true));
  }

  /** Halfway along the first it is 20 mm up, along the second 19, along the third 35. */
  @Test
  void theLowestStretchIsThatWhoseMiddleLiesLowest() {
    Polyline round = Polyline.of(0, 32, 12, 20, 16, 20, 40, 20, 40, 14, 50, 14, 50, 24, 50, 36);
    List<Polyline> stretches = RoundLine.stretches(round, shared(0, 3, 7), true);
    assertEquals(new Point(40, 20), stretches.get(0).point(0));
  }
}
