package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;
import org.junit.jupiter.api.Test;

class MomentsTest {
  private static final double[] WAYS = {0, 1, 2, 3};

  /** Points at x = way whose y is given. */
  private static Moments over(double... heights) {
    Moments moments = new Moments(0, 0, 0);
    for (int i = 0; i < heights.length; i++) {
      moments.add(WAYS[i], WAYS[i], heights[i]);
    }
    return moments;
  }

  /** The best line through 0, 1, 0, 1 is 0.2 + 0.2 t, which misses by 0.2, 0.6, 0.6, 0.2. */
  @Test
  void aLineLeavesWhatItMisses() {
    Moments zigzag = over(0, 1, 0, 1);
    assertEquals(4, zigzag.count());
    assertEquals(0.8, zigzag.left(1), 1e-12);
    assertEquals(5 + 1, zigzag.left(0), 1e-12);
    assertEquals(0.04, zigzag.off(1, 0, 0, 0), 1e-12);
    assertEquals(0.36, zigzag.off(1, 1, 1, 1), 1e-12);
    assertEquals(Math.atan(0.2), zigzag.direction(1, 2), 1e-12);
  }

  @Test
  void aPointOffTheLineToBothSidesCountsBoth() {
    Moments straight = over(0, 0, 0);
    assertEquals(25, straight.off(1, 1, 4, 4), 1e-12);
  }

  @Test
  void nothingIsLeftOfPointsThatAPolynomialRunsThrough() {
    Random random = new Random(5);
    for (int time = 0; time < 50; time++) {
      for (int degree = 0; degree <= 3; degree++) {
        Moments few = new Moments(7, -3, 2);
        for (int i = 0; i <= degree; i++) {
          few.add(7 + i + random.nextDouble(), 50 * random.nextDouble(), random.nextDouble());
        }
        assertEquals(0, few.left(degree), 0.0);
      }
    }
  }

  @Test
  void pointsAtOnePlaceOfTheWayLeaveNothingToJudge() {
    Moments still = new Moments(4, 0, 0);
    for (double x : new double[] {0, 1, 5}) {
      still.add(4, x, 0);
    }
    assertEquals(0, still.left(1), 0.0);
  }

  @Test
  void fewPointsAreFollowedByTheHighestPolynomialTheyGive() {
    Moments two = over(0, 0);
    assertEquals(1, two.off(3, 2, 2, 1), 1e-12);
    assertEquals(0, two.direction(3, 5), 1e-12);
    Moments three = over(0, 1, 4);
    assertEquals(0, three.off(3, 3, 3, 9), 1e-12);
    assertEquals(Math.atan(6), three.direction(3, 3), 1e-12);
  }

  /** Along y = t (t - 1) (t - 2) the slope is 3 t t - 6 t + 2. */
  @Test
  void aCubicTellsTheDirectionOfTheLineAnywhere() {
    Moments cubic = over(0, 0, 0, 6);
    assertEquals(Math.atan(2), cubic.direction(3, 0), 1e-12);
    assertEquals(Math.atan(-1), cubic.direction(3, 1), 1e-12);
    assertEquals(Math.atan(26), cubic.direction(3, 4), 1e-12);
    assertEquals(0, cubic.off(3, 4, 4, 24), 1e-12);
  }

  @Test
  void theLineMayRunLeftAndDown() {
    Moments back = new Moments(0, 0, 0);
    for (double way : WAYS) {
      back.add(way, -way, -way);
    }
    assertEquals(-0.75 * Math.PI, back.direction(1, 1), 1e-12);
  }

  @Property(tries = 40)
  void polynomialsAreThoseOfLeastSquares(
      @ForAll @LongRange(min = 0, max = 10_000) long seed,
      @ForAll @IntRange(min = 0, max = 3) int degree,
      @ForAll @IntRange(min = 5, max = 12) int count) {
    Random random = new Random(seed);
    Moments moments = new Moments(103, 20, -30);
    WeightedObservedPoints xs = new WeightedObservedPoints();
    WeightedObservedPoints ys = new WeightedObservedPoints();
    double[][] points = new double[count][];
    for (int i = 0; i < count; i++) {
      double way = i + 0.5 * random.nextDouble();
      points[i] = new double[] {way, 20 + 3 * random.nextGaussian(), random.nextGaussian() - 30};
      moments.add(100 + way, points[i][1], points[i][2]);
      xs.add(way, points[i][1]);
      ys.add(way, points[i][2]);
    }
    PolynomialFunction x = fitted(degree, xs);
    PolynomialFunction y = fitted(degree, ys);
    double left = 0;
    for (double[] point : points) {
      double offX = point[1] - x.value(point[0]);
      double offY = point[2] - y.value(point[0]);
      left += offX * offX + offY * offY;
      double off = moments.off(degree, 100 + point[0], point[1], point[2]);
      assertEquals(offX * offX + offY * offY, off, 1e-6);
    }
    assertEquals(left, moments.left(degree), 1e-6);
    double slopeX = x.polynomialDerivative().value(2);
    double slopeY = y.polynomialDerivative().value(2);
    if (degree > 0) {
      double expected = Math.atan2(slopeY, slopeX);
      double turn = moments.direction(degree, 102) - expected;
      assertTrue(Math.abs(Math.sin(turn)) < 1e-6 && Math.cos(turn) > 0);
    }
  }

  private static PolynomialFunction fitted(int degree, WeightedObservedPoints points) {
    return new PolynomialFunction(PolynomialCurveFitter.create(degree).fit(points.toList()));
  }

  /** What is asked first says nothing about what is asked next, nor do points added later. */
  @Test
  void answersDoNotDependOnWhatWasAskedBefore() {
    Moments asked = over(0, 1, 0);
    double line = asked.left(1);
    assertEquals(2 / 3.0, line, 1e-12);
    asked.add(3, 3, 1);
    assertEquals(0.8, asked.left(1), 1e-12);
    assertEquals(0.8, asked.left(2), 1e-12);
    assertEquals(0, asked.left(3), 1e-12);
    assertEquals(0.8, asked.left(1), 1e-12);
  }
}
