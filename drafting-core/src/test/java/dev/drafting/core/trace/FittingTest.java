package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
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

  @Test
  void knotWeightsAddUpAndTheirSlopesAreTheirDerivatives() {
    Knots knots = Knots.single().split(0).split(1).split(0);
    assertEquals(4, knots.cubics());
    double[] value = new double[4];
    double[] slope = new double[4];
    double[] later = new double[4];
    for (double share = 0.01; share < 0.99; share += 0.037) {
      int cubic = knots.cubicAt(share);
      knots.weights(cubic, share, value, slope);
      assertEquals(1, value[0] + value[1] + value[2] + value[3], 1e-14);
      knots.weights(cubic, share + 1e-7, later, new double[4]);
      for (int i = 0; i < 4; i++) {
        assertEquals((later[i] - value[i]) / 1e-7, slope[i], 1e-4);
      }
    }
  }

  @Test
  void eachCubicOfASplineIsTheSpline() {
    Knots knots = Knots.single().split(0).split(1);
    double[] controls = {3, -1, 4, 1, -5, 9};
    double[] value = new double[4];
    for (int cubic = 0; cubic < knots.cubics(); cubic++) {
      double[] c = knots.cubicControls(cubic, controls);
      for (double t : new double[] {0, 0.2, 0.5, 0.9, 1}) {
        double share = knots.from(cubic) + (knots.to(cubic) - knots.from(cubic)) * t;
        knots.weights(cubic, share, value, new double[4]);
        double spline = 0;
        for (int i = 0; i < 4; i++) {
          spline += value[i] * controls[cubic + i];
        }
        double s = 1 - t;
        double bernstein =
            s * s * s * c[0] + 3 * s * s * t * c[1] + 3 * s * t * t * c[2] + t * t * t * c[3];
        assertEquals(spline, bernstein, 1e-12);
      }
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
