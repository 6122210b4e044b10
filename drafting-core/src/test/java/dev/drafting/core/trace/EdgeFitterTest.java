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
}
