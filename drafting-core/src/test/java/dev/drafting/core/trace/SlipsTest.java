package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Points off a line whose other points are exact. */
class SlipsTest {
  private static final int POINTS = 16;

  /** Every 10 mm, at heights over the way. */
  private static Samples line(DoubleUnaryOperator height) {
    double[] x = IntStream.range(0, POINTS).mapToDouble(i -> 10 * i).toArray();
    return Samples.traced(x, Arrays.stream(x).map(height).toArray());
  }

  private static Samples straight(double off, int... slips) {
    Samples line = line(x -> 0);
    for (int slip : slips) {
      line.y[slip] = off;
    }
    return line;
  }

  /** The numbers of the points that do not belong to the line. */
  private static List<Integer> slips(Samples samples, double noise) {
    boolean[] kept = Slips.kept(samples, noise);
    List<Integer> slips = new ArrayList<>();
    for (int i = 0; i < kept.length; i++) {
      if (!kept[i]) {
        slips.add(i);
      }
    }
    return slips;
  }

  @Test
  void oneToThreePointsOffAStraightLineAreSlips() {
    assertEquals(List.of(), slips(straight(0), 0.5));
    assertEquals(List.of(7), slips(straight(30, 7), 0.5));
    assertEquals(List.of(7, 8), slips(straight(-30, 7, 8), 0.5));
    assertEquals(List.of(7, 8, 9), slips(straight(30, 7, 8, 9), 0.5));
    assertEquals(List.of(), slips(straight(30, 7, 8, 9, 10), 0.5));
    assertEquals(List.of(4, 11), slips(straight(30, 4, 11), 0.5));
  }

  /** Three points on either side tell how the line runs on. */
  @Test
  void nearerToAnEndThanThreePointsNothingIsASlip() {
    assertEquals(List.of(), slips(straight(30, 2), 0.5));
    assertEquals(List.of(3), slips(straight(30, 3), 0.5));
    assertEquals(List.of(12), slips(straight(30, 12), 0.5));
    assertEquals(List.of(), slips(straight(30, 13), 0.5));
    assertEquals(List.of(3, 4, 5), slips(straight(30, 3, 4, 5), 0.5));
    assertEquals(List.of(10, 11, 12), slips(straight(30, 10, 11, 12), 0.5));
  }

  /** Five times what the pencil wanders, and never less than a millimetre. */
  @Test
  void aSlipIsFarOff() {
    assertEquals(List.of(), slips(straight(9.9, 7), 2));
    assertEquals(List.of(7), slips(straight(10.1, 7), 2));
    assertEquals(List.of(), slips(straight(0.99, 7), 0));
    assertEquals(List.of(7), slips(straight(1.01, 7), 0));
  }

  /**
   * To and fro by 1 mm, seven points left out: six points of a parabola leave 2 (6 - 3) = 6 numbers
   * over, and the heights -1, 1, -1 before and 1, -1, 1 behind scatter by less than 1. Eight times
   * as far is far.
   */
  @Test
  void besideAnUnsteadyLineASlipIsFartherOff() {
    DoubleUnaryOperator unsteady = x -> Math.round(x / 10) % 2 == 0 ? 1 : -1;
    Samples little = line(unsteady);
    little.y[7] = 5;
    assertEquals(List.of(), slips(little, 0));
    Samples much = line(unsteady);
    much.y[7] = 12;
    assertEquals(List.of(7), slips(much, 0));
  }

  @Test
  void curvesAndCornersAreNoSlips() {
    assertEquals(List.of(), slips(line(x -> x * x / 100), 0.5));
    Samples arc = line(x -> 200 - Math.sqrt(200 * 200 - x * x));
    assertEquals(List.of(), slips(arc, 0.5));
    arc.y[7] += 20;
    assertEquals(List.of(7), slips(arc, 0.5));
    double[] x = new double[POINTS];
    double[] y = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      x[i] = 10 * Math.min(i, 8);
      y[i] = 10 * Math.max(i - 8, 0);
    }
    assertEquals(List.of(), slips(Samples.traced(x, y), 0.5));
  }

  /** Where the line lies and how it is turned makes no difference. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 1.6, 3.2, 4.9})
  void theLineMayRunAnyWay(double turn) {
    Samples line = line(x -> x * x / 150);
    line.y[6] += 25;
    line.y[7] += 25;
    double[] x = new double[POINTS];
    double[] y = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      x[i] = 500 + Math.cos(turn) * line.x[i] - Math.sin(turn) * line.y[i];
      y[i] = -90 + Math.sin(turn) * line.x[i] + Math.cos(turn) * line.y[i];
    }
    assertEquals(List.of(6, 7), slips(Samples.traced(x, y), 0.5));
  }

  /** Points are near each other and far apart by turns; a slip goes back on the way as well. */
  @Test
  void pointsMayBeUnevenlySpaced() {
    double[] x = {0, 4, 22, 27, 50, 54, 58, 80, 83, 110, 119, 121};
    double[] y = Arrays.stream(x).map(at -> at * at / 90).toArray();
    assertEquals(List.of(), slips(Samples.traced(x, y), 0.2));
    x[6] = 51;
    y[6] += 18;
    assertEquals(List.of(6), slips(Samples.traced(x, y), 0.2));
  }
}
