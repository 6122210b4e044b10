package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The parts of the fit: noise, weights, knots. */
class FittingTest {
  private static List<Samples> strokes(long seed, double wander) {
    List<Samples> all = new ArrayList<>();
    Vest.Pencil pencil = new Vest.Pencil(seed, wander, 10);
    Vest.half()
        .forEach(
            (name, curve) -> all.add(Stroke.of(TracedEdge.of(name, pencil.trace(curve))).samples));
    return all;
  }

  @Test
  void theNoiseIsFoundFromThePointsAlone() {
    for (double wander : new double[] {0.3, 1, 2}) {
      double mean = 0;
      for (int seed = 0; seed < 50; seed++) {
        mean += Noise.of(strokes(seed, wander)).mm / 50;
      }
      // Measured 0.94 to 0.97: a wandering point makes its window longer.
      assertEquals(1, mean / wander, 0.1);
    }
  }

  @Test
  void exactPointsShowNoNoise() {
    assertTrue(Noise.of(strokes(1, 0)).mm < 1e-3);
  }

  @Test
  void aSlipIsNotNoise() {
    List<Samples> all = strokes(3, 1);
    double before = Noise.of(all).mm;
    all.get(1).x[15] += 25;
    assertEquals(before, Noise.of(all).mm, 0.15);
  }

  @Test
  void robustScalesOfANormalSampleAreItsDeviation() {
    Random random = new Random(5);
    double[] sample = random.doubles(20_000).map(x -> 3 * random.nextGaussian()).toArray();
    assertEquals(3, Robust.scale(sample), 0.06);
    assertEquals(3, Robust.deviation(sample), 0.06);
    assertEquals(1, Robust.weight(0, 3));
    assertEquals(0, Robust.weight(14.06, 3));
    assertTrue(Robust.weight(-14.05, 3) > 0);
  }

  private static Track track() {
    Knots knots = Knots.single().split(0).split(1);
    return new Track(knots, new double[] {3, 8, 14, 21, 30, 36}, new double[] {0, 2, 7, 11, 8, 4});
  }

  @Test
  void knotWeightsAddUpAndTheirSlopesAreTheirDerivatives() {
    Knots knots = Knots.single().split(0).split(1).split(0);
    assertEquals(4, knots.parts());
    double[] here = new double[4];
    double[] later = new double[4];
    double[] slopes = new double[4];
    for (int part = 0; part < 4; part++) {
      for (double u = 0.01; u < 0.99; u += 0.037) {
        knots.weights(part, u, here);
        knots.weights(part, u + 1e-7, later);
        knots.slopes(part, u, slopes);
        assertEquals(1, here[0] + here[1] + here[2] + here[3], 1e-14);
        for (int i = 0; i < 4; i++) {
          double rate = (later[i] - here[i]) / 1e-7 * knots.rate(part);
          assertEquals(rate, slopes[i], 1e-4);
        }
      }
    }
  }

  @Test
  void eachCubicOfASplineIsTheSpline() {
    Track track = track();
    Curve curve = Curve.of(track.segments());
    double[] ends = {0, 0.5, 0.75, 1};
    double[] passed = new double[4];
    for (int i = 1; i < 4; i++) {
      passed[i] = passed[i - 1] + curve.segments().get(i - 1).length().toMm();
    }
    for (int i = 0; i < 4; i++) {
      track.look(ends[i]);
      Point point = curve.pointAt(Length.mm(passed[i]));
      assertEquals(point.x(), track.x, 1e-9);
      assertEquals(point.y(), track.y, 1e-9);
    }
    assertEquals(curve.length().toMm(), track.length(), 1e-6);
  }

  @Test
  void aSplineCutInTwoIsTheSameSpline() {
    Track track = track();
    Knots more = track.knots.split(0);
    Track cut =
        new Track(
            more, track.knots.splitControls(0, track.cx), track.knots.splitControls(0, track.cy));
    for (double share = 0; share <= 1; share += 0.01) {
      track.look(share);
      cut.look(share);
      assertEquals(track.x, cut.x, 1e-12);
      assertEquals(track.y, cut.y, 1e-12);
    }
  }

  @Test
  void theLengthGradientIsItsDerivative() {
    Track track = track();
    int[] xs = {0, 1, 2, 3, 4, 5};
    int[] none = {-1, -1, -1, -1, -1, -1};
    double[] gradient = new double[6];
    track.addLengthGradient(xs, none, gradient);
    double length = track.length();
    for (int i = 0; i < 6; i++) {
      double[] moved = track.cx.clone();
      moved[i] += 1e-6;
      double rate = (new Track(track.knots, moved, track.cy).length() - length) / 1e-6;
      assertEquals(rate, gradient[i], 1e-5);
    }
  }

  @Test
  void densePointsCountAsFewer() {
    List<Point> dense = new ArrayList<>();
    for (int i = 0; i <= 1000; i++) {
      dense.add(new Point(0, 0).plus(new Vector(0.1 * i, 0)));
    }
    Samples samples = Stroke.of(TracedEdge.of("side", dense)).samples;
    assertEquals(21, samples.independent, 1);
    assertEquals(0.5, samples.share[500], 1e-9);
  }
}
