package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Whether and how deep shapes lie in each other, against areas of JTS. */
class ClashTest {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double ANY = Double.POSITIVE_INFINITY;

  @Test
  void aSquareLeavesASquareByTheShortestWay() {
    TurnedShape square = TurnedShape.of(new double[] {0, 0, 10, 0, 10, 10, 0, 10});
    Clash clash = new Clash(square, square, 0);
    assertEquals(4, clash.depth(6, 3, ANY), 1e-12);
    assertEquals(0, clash.depth(10, 3, ANY));
    assertEquals(0, clash.depth(-10, -10, ANY));
  }

  @Test
  void anLHasTwoConvexParts() {
    List<double[]> parts =
        ConvexParts.of(new double[] {0, 0, 20, 0, 20, 10, 10, 10, 10, 20, 0, 20});
    assertEquals(2, parts.size());
  }

  /**
   * A corner on the lower side is off it by rounding, to either side: the sides must still be found
   * in the order of their directions.
   */
  @Test
  void aCornerThatHardlyTurnsDoesNotHideAnOverlap() {
    double[] plain = {0, 0, 200, 0, 200, 100, 0, 100};
    for (double off : new double[] {1e-14, -1e-14, 0}) {
      double[] split = {0, 0, 100, off, 200, 0, 200, 100, 0, 100};
      TurnedShape one = TurnedShape.of(split);
      for (double[] other : List.of(plain, split)) {
        TurnedShape two = TurnedShape.of(other);
        double there = new Clash(one, two, 0).depth(120, 50, ANY);
        double back = new Clash(two, one, 0).depth(-120, -50, ANY);
        assertEquals(50, there, 1e-9, "off " + off);
        assertEquals(50, back, 1e-9, "off " + off);
      }
    }
  }

  private static double[] star(Random random, int corners) {
    double[] xy = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double radius = 3 + 7 * random.nextDouble();
      xy[2 * i] = radius * Math.cos(angle);
      xy[2 * i + 1] = radius * Math.sin(angle);
    }
    return xy;
  }

  private static Polygon polygon(double[] xy, double dx, double dy) {
    int n = xy.length / 2;
    Coordinate[] ring = new Coordinate[n + 1];
    for (int i = 0; i < n; i++) {
      ring[i] = new Coordinate(xy[2 * i] + dx, xy[2 * i + 1] + dy);
    }
    ring[n] = ring[0].copy();
    return JTS.createPolygon(ring);
  }

  /** An L, and a square in its angle that reaches 2 into its foot and 3 into its upright. */
  @Test
  void whatLiesInTwoPartsIsAsDeepAsInBoth() {
    TurnedShape el = TurnedShape.of(new double[] {0, 0, 20, 0, 20, 10, 10, 10, 10, 20, 0, 20});
    TurnedShape square = TurnedShape.of(new double[] {0, 0, 5, 0, 5, 5, 0, 5});
    Clash clash = new Clash(el, square, 0);
    assertEquals(2, clash.depth(14, 8, ANY), 1e-12);
    assertEquals(3, clash.depth(7, 13, ANY), 1e-12);
    assertEquals(0, clash.depth(10, 10, ANY));
    double both = clash.depth(7, 8, ANY);
    assertTrue(both > 2 && both >= clash.depth(7, 8, 1) && clash.depth(7, 8, 1) >= 1);
    assertEquals(0, clash.depth(7, 20, ANY));
    assertEquals(0, clash.depth(20, 8, ANY));
  }

  /** What counts as touching is taken off the depth. */
  @Test
  void squaresThatReachIntoEachOtherByNoMoreThanATouchDoNotClash() {
    TurnedShape square = TurnedShape.of(new double[] {0, 0, 10, 0, 10, 10, 0, 10});
    Clash clash = new Clash(square, square, 0.5);
    assertEquals(0, clash.depth(9.6, 0, ANY));
    assertEquals(0.5, clash.depth(9, 0, ANY), 1e-12);
    assertEquals(0.5, clash.depth(0, -9, ANY), 1e-12);
  }

  @Property(tries = 300)
  void shapesClashExactlyWhereTheyOverlap(@ForAll long seed) {
    Random random = new Random(seed);
    double[] one = star(random, 3 + random.nextInt(10));
    double[] other = star(random, 3 + random.nextInt(10));
    Clash clash = new Clash(TurnedShape.of(one), TurnedShape.of(other), 1e-9);
    for (int i = 0; i < 20; i++) {
      double dx = 30 * random.nextDouble() - 15;
      double dy = 30 * random.nextDouble() - 15;
      double area = polygon(one, 0, 0).intersection(polygon(other, dx, dy)).getArea();
      double depth = clash.depth(dx, dy, ANY);
      assertTrue((area < 1e-7) == (depth == 0) || area < 1e-6, area + " and " + depth);
    }
  }

  @Property(tries = 100)
  void partsCoverTheirShape(@ForAll long seed) {
    double[] star = star(new Random(seed), 12);
    TurnedShape shape = TurnedShape.of(star).turned(90);
    double sum = shape.parts.stream().mapToDouble(part -> polygon(part, 0, 0).getArea()).sum();
    assertEquals(shape.area, sum, 1e-9 * sum);
  }
}
