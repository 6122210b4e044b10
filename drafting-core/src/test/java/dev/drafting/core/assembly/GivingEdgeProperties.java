package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** How an edge gives way: its ends move, its directions there turn, and all between follows. */
class GivingEdgeProperties {
  private static final double LENGTH = 120;
  private static final Point START = new Point(10, 20);

  @Provide
  Arbitrary<double[]> gives() {
    return Arbitraries.doubles().between(-5, 5).array(double[].class).ofSize(8);
  }

  private static Curve straight(double... shares) {
    Point[] points = new Point[shares.length + 2];
    points[0] = START;
    for (int i = 0; i < shares.length; i++) {
      points[i + 1] = START.plus(new Vector(LENGTH * shares[i], 0));
    }
    points[shares.length + 1] = START.plus(new Vector(LENGTH, 0));
    return Curve.polyline(points);
  }

  /**
   * Hermite's cubic: from place to place by where its ends are and by its slopes there (every
   * textbook of numerical analysis).
   */
  private static Vector hermite(double u, double[] give) {
    double[] shares = {
      2 * u * u * u - 3 * u * u + 1,
      -2 * u * u * u + 3 * u * u,
      u * u * u - 2 * u * u + u,
      u * u * u - u * u
    };
    double x = 0;
    double y = 0;
    for (int i = 0; i < 4; i++) {
      x += shares[i] * give[2 * i];
      y += shares[i] * give[2 * i + 1];
    }
    return new Vector(x, y);
  }

  /** However it is divided, a straight edge that may bend follows Hermite's cubic. */
  @Property(tries = 100)
  void anEdgeBendsAlikeHoweverItIsDivided(
      @ForAll("gives") double[] give,
      @ForAll @DoubleRange(min = 0.1, max = 0.45) double first,
      @ForAll @DoubleRange(min = 0.5, max = 0.9) double second) {
    Curve whole = new GivingEdge(straight(), true).curve(give);
    Curve divided = new GivingEdge(straight(first, second), true).curve(give);
    assertEquals(3, divided.segments().size());
    assertEquals(whole.length().toMm(), divided.length().toMm(), 1e-7);
    for (int i = 0; i <= 20; i++) {
      double u = i / 20.0;
      Point expected = START.plus(new Vector(LENGTH * u, 0)).plus(hermite(u, give));
      assertEquals(0, whole.segments().get(0).pointAt(u).distanceTo(expected).toMm(), 1e-9);
      assertEquals(0, divided.nearest(expected).distance().toMm(), 1e-9);
    }
  }

  /** Two segments that bend, moved as a whole, keep their shape. */
  @Property(tries = 100)
  void anEdgeThatIsMovedAsAWholeKeepsItsShape(
      @ForAll @DoubleRange(min = -9, max = 9) double across,
      @ForAll @DoubleRange(min = -9, max = 9) double up) {
    Cubic bent = new Cubic(START, new Point(40, 60), new Point(70, 70), new Point(100, 20));
    Line on = new Line(new Point(100, 20), new Point(160, 10));
    GivingEdge edge = new GivingEdge(Curve.of(List.of(bent, on)), false);
    double[] give = {across, up, across, up, 0, 0, 0, 0};
    Curve moved = edge.curve(give);
    Vector way = new Vector(across, up);
    Cubic first = (Cubic) moved.segments().get(0);
    assertEquals(0, first.control1().distanceTo(bent.control1().plus(way)).toMm(), 1e-9);
    assertEquals(0, first.control2().distanceTo(bent.control2().plus(way)).toMm(), 1e-9);
    assertEquals(0, moved.end().distanceTo(on.end().plus(way)).toMm(), 1e-9);
    assertEquals(Math.hypot(across, up), edge.farthest(give), 1e-9);
  }

  /** A straight edge stays straight and takes no heed of turns; unmoved it is itself. */
  @Test
  void aStraightEdgeStaysStraight() {
    GivingEdge edge = new GivingEdge(straight(0.25), false);
    assertTrue(edge.isStraight());
    assertSame(edge.curve(new double[8]), edge.curve(new double[8]));
    Curve moved = edge.curve(new double[] {0, 0, 0, 8, 50, 50, 50, 50});
    assertEquals(2, moved.segments().size());
    assertEquals(0, moved.start().distanceTo(START).toMm(), 1e-12);
    assertEquals(0, moved.end().distanceTo(new Point(130, 28)).toMm(), 1e-12);
    Point quarter = moved.segments().get(0).end();
    assertEquals(0, quarter.distanceTo(new Point(40, 22)).toMm(), 1e-12);
    assertTrue(GivingEdge.isStraight(moved));
  }

  /** A quarter of an arc of 60 mm, its end moved 3 mm out: 4 thousandths of it are allowed for. */
  @Test
  void anArcGivesWayAsACurve() {
    Arc arc = Arc.of(new Point(0, 0), Length.mm(60), Angle.ZERO, Angle.degrees(90));
    GivingEdge edge = new GivingEdge(Curve.of(arc), false);
    Curve still = edge.curve(new double[] {1e-12, 0, 0, 0, 0, 0, 0, 0});
    assertEquals(30 * Math.PI, still.length().toMm(), 1e-3);
    for (int i = 0; i <= 10; i++) {
      Point on = arc.pointAt(i / 10.0);
      assertEquals(0, still.nearest(on).distance().toMm(), 1e-4);
    }
  }

  /**
   * What a move costs is the integral of its square along the edge; here by Simpson's rule, which
   * is summed so finely that it is exact to ten digits.
   */
  @Test
  void aMoveCostsItsSquareAlongTheEdge() {
    GivingEdge curve = new GivingEdge(straight(), true);
    GivingEdge line = new GivingEdge(straight(), false);
    for (int one = 0; one < 8; one++) {
      for (int other = 0; other < 8; other++) {
        assertEquals(integral(one, other), curve.weight(one, other), 1e-7);
      }
    }
    assertEquals(LENGTH / 3, line.weight(0, 0), 1e-12);
    assertEquals(LENGTH / 6, line.weight(3, 1), 1e-12);
    assertEquals(0, line.weight(0, 1), 0);
  }

  private static double integral(int one, int other) {
    double sum = 0;
    int parts = 1000;
    for (int i = 0; i <= parts; i++) {
      double[] first = new double[8];
      first[one] = 1;
      double[] second = new double[8];
      second[other] = 1;
      double u = (double) i / parts;
      int times = i == 0 || i == parts ? 1 : 2 + 2 * (i % 2);
      sum += times * hermite(u, first).dot(hermite(u, second));
    }
    return LENGTH * sum / (3 * parts);
  }

  /**
   * Of a straight edge of 120 mm: its length follows its end along it, and its direction by 1 / 120
   * for a millimetre across; bending, its end turns by 1 / 120 for a millimetre of slope there.
   */
  @Test
  void whatIsSeenChangesWithEachFreedom() {
    double[][] line = new GivingEdge(straight(), false).slopes(new double[8]);
    double[][] curve = new GivingEdge(straight(), true).slopes(new double[8]);
    double[] length = {-1, 0, 1, 0, 0, 0, 0, 0};
    double[] turned = {0, -1 / LENGTH, 0, 1 / LENGTH, 0, 0, 0, 0};
    for (int f = 0; f < 8; f++) {
      assertEquals(length[f], line[0][f], 1e-6);
      assertEquals(turned[f], line[1][f], 1e-6);
      assertEquals(turned[f], line[2][f], 1e-6);
      assertEquals(length[f], curve[0][f], 1e-6);
      assertEquals(f == 5 ? 1 / LENGTH : 0, curve[1][f], 1e-6, "at its start by " + f);
      assertEquals(f == 7 ? 1 / LENGTH : 0, curve[2][f], 1e-6, "at its end by " + f);
    }
  }
}
