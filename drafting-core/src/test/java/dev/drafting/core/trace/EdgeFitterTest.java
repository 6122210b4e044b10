package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EdgeFitterTest {
  private static final int SEEDS = Integer.getInteger("seeds", 500);
  private static final double WANDER = 0.85;

  private static EdgeFit fit(List<Point> points) {
    return fit(points, WANDER);
  }

  private static EdgeFit fit(List<Point> points, double wander) {
    Stroke stroke = Stroke.of(TracedEdge.of("armhole", points));
    List<Samples> samples = List.of(stroke.samples);
    Noise noise = Noise.declared(wander).orOwn(samples);
    return new EdgeFitter(noise, Straightness.JUDGED, new Effort("armhole", points.size()))
        .fit(stroke.samples, Ends.FREE);
  }

  /** An armhole that is nearly straight but for its last two centimetres under the arm. */
  @Test
  void anEdgeThatHooksAtItsEndIsNotTakenForAStraightOneWithASlip() {
    Point arm = new Point(144.045, 462.793);
    Point shoulder = new Point(140.753, 613.4);
    Curve armhole =
        Curve.of(
            new Cubic(arm, new Point(123.409, 462.682), new Point(132.518, 530.977), shoulder));
    for (long seed = 0; seed < SEEDS; seed++) {
      EdgeFit fit = fit(new Vest.Pencil(seed, WANDER, 6).trace(armhole));
      assertFalse(fit.form.isStraight(), "seed " + seed);
    }
  }

  /** A pencil that sets down beside a straight edge and finds it after two points. */
  @Test
  void aSlipWhereThePencilSetsDownIsStillASlip() {
    Curve edge = Curve.line(new Point(0, 0), new Point(0, 200));
    int found = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      List<Point> points = new ArrayList<>(new Vest.Pencil(seed, WANDER, 6).trace(edge));
      points.set(0, points.get(0).plus(new Vector(12, 0)));
      points.set(1, points.get(1).plus(new Vector(12, 0)));
      EdgeFit fit = fit(points);
      found += fit.form.isStraight() && fit.keptCount() == points.size() - 2 ? 1 : 0;
    }
    assertTrue(found >= SEEDS * 0.98, found + " of " + SEEDS);
  }

  /** Up, over in two curves, and down again. */
  private static Curve crown(double width, double side, double top) {
    double half = width / 2;
    double across = 0.5519 * half;
    double up = 0.5519 * (top - side);
    Point left = new Point(0, side);
    Point right = new Point(width, side);
    Point over = new Point(half, top);
    return Curve.of(
        new Line(new Point(width, 0), right),
        new Cubic(right, new Point(width, side + up), new Point(half + across, top), over),
        new Cubic(over, new Point(half - across, top), new Point(0, side + up), left),
        new Line(left, new Point(0, 0)));
  }

  /** Crowns of beanies, marked as exactly as a computer does it. */
  @Test
  void anEdgeOfSeveralCurvesDoesNotWindBetweenItsPoints() {
    List<Curve> crowns =
        List.of(
            crown(292.09, 161.99, 230.82),
            crown(218.8, 127.97, 211.65),
            crown(301.42, 130.43, 266.36));
    for (Curve crown : crowns) {
      for (long seed = 0; seed < 40; seed++) {
        EdgeFit fit = fit(new Vest.Pencil(seed, 1e-7, 6).trace(crown), 2e-7);
        assertEquals(crown.length().toMm(), fit.track().length(), 2, crown + ", seed " + seed);
      }
    }
  }

  private static List<Point> over(double step, int count, DoubleUnaryOperator height) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      points.add(new Point(step * i, height.applyAsDouble(step * i)));
    }
    return points;
  }

  private static EdgeFit fit(List<Point> points, double wander, Straightness straightness) {
    Stroke stroke = Stroke.of(TracedEdge.of("side", points));
    return new EdgeFitter(Noise.declared(wander), straightness, new Effort("side", points.size()))
        .fit(stroke.samples, Ends.FREE);
  }

  private static void near(EdgeFit fit, double most) {
    for (int i = 0; i < fit.samples.size(); i++) {
      assertEquals(0, fit.fitted.distance(i), most, "point " + i);
    }
  }

  private static List<Double> joints(EdgeFit fit) {
    return IntStream.range(1, fit.form.cubics()).mapToObj(fit.form.knots::from).toList();
  }

  /** Level for 300 mm, then twice up and down in 100 mm: there the cubics are short. */
  @Test
  void cubicsAreAddedWhereTheyAreNeeded() {
    DoubleUnaryOperator waves =
        x -> x < 300 ? 0 : 12 * Math.pow(Math.sin((x - 300) * Math.PI / 50), 2);
    EdgeFit end = fit(over(8, 51, waves), 0.05, Straightness.JUDGED);
    near(end, 0.2);
    assertEquals(List.of(0.25, 0.5, 0.75, 0.875, 0.9375, 0.96875), joints(end));
    EdgeFit start = fit(over(8, 51, x -> waves.applyAsDouble(400 - x)), 0.05, Straightness.JUDGED);
    near(start, 0.2);
    assertEquals(List.of(0.03125, 0.0625, 0.125, 0.25, 0.5, 0.75), joints(start));
  }

  @Test
  void whatIsSaidToBeStraightOrCurvedIsNotJudged() {
    List<Point> bowed = over(10, 21, x -> x * (200 - x) / 500);
    List<Point> level = over(10, 21, x -> 0);
    assertEquals(0, fit(bowed, 0.5, Straightness.STRAIGHT).form.cubics());
    assertEquals(1, fit(bowed, 0.5, Straightness.JUDGED).form.cubics());
    assertEquals(1, fit(level, 0.5, Straightness.CURVED).form.cubics());
    assertEquals(0, fit(level, 0.5, Straightness.JUDGED).form.cubics());
    assertEquals(0, fit(level.subList(0, 2), 0.5, Straightness.CURVED).form.cubics());
  }

  /** A cubic for every four points at most. */
  @Test
  void fewPointsGiveFewCubics() {
    List<Point> wave = over(20, 9, x -> 15 * Math.sin(x * Math.PI / 40));
    assertTrue(fit(wave, 0.2, Straightness.JUDGED).form.cubics() <= 2);
  }

  /** One point in seven may be a slip. */
  @Test
  void slipsAreFew() {
    List<Point> two = over(10, 14, x -> x == 40 || x == 90 ? 30 : 0);
    assertEquals(12, fit(two, 0.5, Straightness.STRAIGHT).keptCount());
    List<Point> three = over(10, 14, x -> x == 30 || x == 60 || x == 100 ? 30 : 0);
    assertEquals(14, fit(three, 0.5, Straightness.STRAIGHT).keptCount());
    List<Point> threeOfMore = over(10, 21, x -> x == 30 || x == 80 || x == 140 ? 30 : 0);
    assertEquals(18, fit(threeOfMore, 0.5, Straightness.STRAIGHT).keptCount());
    EdgeFit line = fit(threeOfMore, 0.5, Straightness.JUDGED);
    assertEquals(0, line.form.cubics());
    assertEquals(0, line.fitted.distance(10), 1e-6);
    assertEquals(30, Math.abs(line.fitted.distance(8)), 1e-6);
  }

  /** Nor are three points at an end; two may be. */
  @Test
  void anEdgeDoesNotEndWithThreeSlips() {
    List<Point> two = over(10, 22, x -> x < 15 ? 30 : 0);
    assertEquals(20, fit(two, 0.5, Straightness.STRAIGHT).keptCount());
    List<Point> three = over(10, 22, x -> x < 25 ? 30 : 0);
    assertEquals(22, fit(three, 0.5, Straightness.STRAIGHT).keptCount());
  }
}
