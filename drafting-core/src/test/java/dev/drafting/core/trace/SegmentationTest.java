package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.trace.Segmentation.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class SegmentationTest {
  private static final double NOISE = 0.5;

  @Test
  void aStraightLineIsOneStretch() {
    double[] x = new double[20];
    for (int i = 0; i < x.length; i++) {
      x[i] = 5 * i;
    }
    assertEquals(List.of(new Part(0, 19)), Segmentation.of(Walk.of(x, new double[20], 0), NOISE));
  }

  /** The lines y = 0 and x = 54 cross between the 11th point and the 12th. */
  @Test
  void twoLinesThatCrossBetweenPointsAreKeptApart() {
    double[] x = new double[22];
    double[] y = new double[22];
    for (int i = 0; i < x.length; i++) {
      x[i] = i < 11 ? 5 * i : 54;
      y[i] = i < 11 ? 0 : 5 * i - 51;
    }
    assertEquals(
        List.of(new Part(0, 10), new Part(11, 21)), Segmentation.of(Walk.of(x, y, 0), NOISE));
  }

  /** Up 5 mm, along 40 mm and down: the sides have no points of their own but the corners. */
  @Test
  void aStretchOfTwoPointsSharesThemWithItsNeighbours() {
    double[] x = new double[13];
    double[] y = new double[13];
    for (int i = 1; i < 12; i++) {
      x[i] = 4 * (i - 1);
      y[i] = 30;
    }
    x[12] = 40;
    assertEquals(
        List.of(new Part(0, 1), new Part(1, 11), new Part(11, 12)),
        Segmentation.of(Walk.of(x, y, 0), NOISE));
  }

  /** All ways of cutting a short line are tried one by one, each with its own regression. */
  @Property(tries = 40)
  void noOtherWayOfCuttingCostsLess(
      @ForAll @LongRange(min = 0, max = 10_000) long seed,
      @ForAll @IntRange(min = 2, max = 9) int size) {
    Random random = new Random(seed);
    double[] x = new double[size];
    double[] y = new double[size];
    double direction = 0;
    for (int i = 1; i < size; i++) {
      direction += random.nextInt(3) == 0 ? 0.8 * random.nextGaussian() : 0.1;
      x[i] = x[i - 1] + 5 * Math.cos(direction) + 0.05 * random.nextGaussian();
      y[i] = y[i - 1] + 5 * Math.sin(direction) + 0.05 * random.nextGaussian();
    }
    Walk walk = Walk.of(x, y, 0);
    List<Part> found = Segmentation.of(walk, NOISE);
    double least = Double.POSITIVE_INFINITY;
    List<Part> best = List.of();
    for (List<Part> cut : cuts(size)) {
      double cost = cut.stream().mapToDouble(part -> cost(walk, part)).sum();
      if (cost < least - 1e-9) {
        least = cost;
        best = cut;
      }
    }
    assertEquals(least, found.stream().mapToDouble(part -> cost(walk, part)).sum(), 1e-6);
    assertEquals(0, found.get(0).from());
    assertEquals(size - 1, found.get(found.size() - 1).to());
    assertEquals(best, found);
  }

  /** Neighbours share a point, or, with three points or more each, lie side by side. */
  private static List<List<Part>> cuts(int size) {
    List<List<Part>> all = new ArrayList<>();
    for (int end = 1; end < size; end++) {
      extend(List.of(new Part(0, end)), size, all);
    }
    return all;
  }

  private static void extend(List<Part> done, int size, List<List<Part>> all) {
    Part last = done.get(done.size() - 1);
    if (last.to() == size - 1) {
      all.add(done);
    }
    for (int end = last.to() + 1; end < size; end++) {
      extend(and(done, new Part(last.to(), end)), size, all);
      if (last.to() - last.from() >= 2 && end - last.to() >= 3) {
        extend(and(done, new Part(last.to() + 1, end)), size, all);
      }
    }
  }

  private static List<Part> and(List<Part> done, Part next) {
    List<Part> more = new ArrayList<>(done);
    more.add(next);
    return more;
  }

  /** In variances, with the logarithm of the coordinates for every number of the model. */
  private static double cost(Walk walk, Part part) {
    double number = Math.log(2 * walk.size());
    int count = part.to() - part.from() + 1;
    double line = left(walk, part, 1) / (NOISE * NOISE) + 4 * number;
    return count < 5 ? line : Math.min(line, left(walk, part, 3) / (NOISE * NOISE) + 8 * number);
  }

  private static double left(Walk walk, Part part, int degree) {
    int count = part.to() - part.from() + 1;
    if (count <= degree + 1) {
      return 0;
    }
    double[][] powers = new double[count][degree];
    double[] x = new double[count];
    double[] y = new double[count];
    for (int i = 0; i < count; i++) {
      int block = part.from() + i;
      for (int k = 0; k < degree; k++) {
        powers[i][k] = Math.pow((walk.way[block] - walk.way[part.from()]) / 10, k + 1);
      }
      x[i] = walk.x[block];
      y[i] = walk.y[block];
    }
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
    regression.newSampleData(x, powers);
    double left = regression.calculateResidualSumOfSquares();
    regression.newSampleData(y, powers);
    return left + regression.calculateResidualSumOfSquares();
  }
}
