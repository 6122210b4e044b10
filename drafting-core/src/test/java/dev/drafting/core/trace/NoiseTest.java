package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What divided differences tell of the hand, by hand and by many hands. */
class NoiseTest {
  private static Samples line(double wander, int points, Random random) {
    double[] x = IntStream.range(0, points).mapToDouble(i -> 12 * i).toArray();
    return Samples.traced(x, Arrays.stream(x).map(i -> wander * random.nextGaussian()).toArray());
  }

  /**
   * Second divided differences: weights 2, -4, 2 of three points at equal distances, 3, -4.5, 1.5
   * where the second way is twice the first, over the root of their squares.
   */
  @Test
  void aPointBesideItsNeighboursIsAsFarOffAsItsWeight() {
    double off = 1e-4;
    double[] even =
        Samples.traced(new double[] {0, 10, 20}, new double[] {0, off, 0}).differences(2);
    assertEquals(1, even.length);
    assertEquals(-4 * off / Math.sqrt(24), even[0], 1e-12);
    double[] uneven =
        Samples.traced(new double[] {0, 10, 30}, new double[] {0, off, 0}).differences(2);
    assertEquals(-4.5 * off / Math.sqrt(31.5), uneven[0], 1e-12);
  }

  @Test
  void differencesDoNotDependOnWhereTheEdgeLies() {
    Random random = new Random(3);
    double[] x = new double[12];
    double[] y = new double[12];
    double[] turnedX = new double[12];
    double[] turnedY = new double[12];
    for (int i = 0; i < 12; i++) {
      x[i] = 15 * i + random.nextDouble();
      y[i] = x[i] * x[i] / 400 + random.nextGaussian();
      turnedX[i] = 70 + 0.6 * x[i] - 0.8 * y[i];
      turnedY[i] = -30 + 0.8 * x[i] + 0.6 * y[i];
    }
    for (int order : new int[] {2, 4, 6}) {
      double[] here = Samples.traced(x, y).differences(order);
      double[] there = Samples.traced(turnedX, turnedY).differences(order);
      assertEquals(12 - order, here.length);
      for (int i = 0; i < here.length; i++) {
        assertEquals(here[i], there[i], 1e-9);
      }
    }
    assertEquals(0, Samples.traced(new double[] {0, 10}, new double[2]).differences(2).length);
  }

  /** Sixth differences need seven points; six of them in all are enough, else fourth or second. */
  @Test
  void shortEdgesAreJudgedByLowerDifferences() {
    Random random = new Random(1);
    assertEquals(6 / 3.2, Noise.of(List.of(line(1, 12, random))).freedom, 1e-12);
    assertEquals(7 / 3.2, Noise.of(List.of(line(1, 11, random))).freedom, 1e-12);
    assertEquals(7 / 3.2, Noise.of(List.of(line(1, 9, random))).freedom, 1e-12);
    List<Samples> three = List.of(line(1, 5, random), line(1, 5, random), line(1, 5, random));
    assertEquals(9 / 3.2, Noise.of(three).freedom, 1e-12);
  }

  @Test
  void whatIsDeclaredIsTaken() {
    Noise declared = Noise.declared(0.7);
    assertEquals(0.7, declared.mm);
    assertEquals(Noise.LEAST_MM, Noise.declared(0).mm);
    assertEquals(1e6, declared.freedom);
  }

  /** Twelve sixth differences let an edge speak for itself, if it is the rougher. */
  @Test
  void aRoughEdgeHasItsOwnNoise() {
    Random random = new Random(2);
    Noise steady = Noise.declared(0.1);
    List<Samples> rough = List.of(line(2, 18, random));
    assertEquals(Noise.of(rough).mm, steady.orOwn(rough).mm);
    assertSame(steady, steady.orOwn(List.of(line(2, 17, random))));
    Noise wild = Noise.declared(9);
    assertSame(wild, wild.orOwn(rough));
  }

  @Test
  void cornersOfALineDrawnRoundAreNotTakenForNoise() {
    double mean = 0;
    for (int seed = 0; seed < 40; seed++) {
      Random random = new Random(seed);
      List<double[]> points = new ArrayList<>();
      double[][] corners = {{0, 0}, {400, 0}, {400, 300}, {0, 300}, {0, 0}};
      for (int side = 0; side < 4; side++) {
        for (int i = 0; i < 25; i++) {
          double share = i / 25.0;
          points.add(
              new double[] {
                corners[side][0] * (1 - share)
                    + corners[side + 1][0] * share
                    + random.nextGaussian(),
                corners[side][1] * (1 - share)
                    + corners[side + 1][1] * share
                    + random.nextGaussian()
              });
        }
      }
      double[] x = points.stream().mapToDouble(p -> p[0]).toArray();
      double[] y = points.stream().mapToDouble(p -> p[1]).toArray();
      mean += Noise.ofRound(Samples.traced(x, y)).mm / 40;
    }
    assertEquals(1, mean, 0.25);
    Noise few = Noise.ofRound(line(1, 5, new Random(1)));
    assertEquals(Noise.LEAST_MM, few.mm);
    assertEquals(1, few.freedom);
  }
}
