package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * The parallel on the inside of the parabola y = x² / (2 R), R being the radius at its vertex, at a
 * distance d above R. In closed form it has cusps at x² = (d R²)^(2/3) - R² and crosses itself on
 * the axis where x² = d² - R², at the height (d² + R²) / (2 R).
 */
class CuspsTest {
  private static final double R = 10;
  private static final double TOLERANCE = 0.01;

  private static Cubic parabola(double from, double to) {
    double third = (to - from) / 3;
    double y0 = from * from / (2 * R);
    double y3 = to * to / (2 * R);
    return Outlines.cubic(
        from, y0, from + third, y0 + third * from / R, to - third, y3 - third * to / R, to, y3);
  }

  private static Point parallel(double x, double d) {
    double slant = Math.sqrt(R * R + x * x);
    return new Point(x - d * x / slant, x * x / (2 * R) + d * R / slant);
  }

  private static double cusp(double d) {
    return Math.sqrt(Math.pow(d * R * R, 2 / 3.0) - R * R);
  }

  private static double crossing(double d) {
    return Math.sqrt(d * d - R * R);
  }

  /** From the cusps to the crossing. */
  private static double height(double d) {
    return (d * d + R * R) / (2 * R) - parallel(cusp(d), d).y();
  }

  /** The distance at which the tail is of a height. */
  private static double distance(double height) {
    double low = R;
    double high = 2 * R;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (height(middle) < height) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static List<Strand> strands(double from, double to, double d) {
    return Parallels.of(parabola(from, to), 0, 0, -d, TOLERANCE);
  }

  private static boolean hasTail(List<Strand> strands) {
    return strands.stream().anyMatch(Strand::turnedBack);
  }

  private static Origin origin(Strand strand) {
    return Objects.requireNonNull(strand.origin());
  }

  @Test
  void withinTheRadiusThereIsNoTail() {
    assertFalse(hasTail(strands(-20, 30, 9.99)));
    assertFalse(hasTail(Parallels.of(parabola(-20, 30), 0, 0, 30, TOLERANCE)));
  }

  @Test
  void aTallTailIsTurnedBackFromCuspToCusp() {
    for (double d : new double[] {12, 15, 25}) {
      List<Strand> strands = strands(-40, 50, d);
      List<Strand> back = strands.stream().filter(Strand::turnedBack).toList();
      double cusp = cusp(d);
      assertEquals(8, back.size());
      Point first = back.get(0).start();
      Point last = back.get(7).end();
      assertEquals(0, first.distanceTo(parallel(-cusp, d)).toMm(), TOLERANCE / 10);
      assertEquals(0, last.distanceTo(parallel(cusp, d)).toMm(), TOLERANCE / 10);
      for (int i = 0; i + 1 < strands.size(); i++) {
        assertEquals(strands.get(i).end(), strands.get(i + 1).start());
      }
    }
  }

  @Test
  void aFlatTailIsLeftOutAndTheParallelGoesOnFromTheCrossing() {
    for (double tolerance : new double[] {0.1, 0.01, 1e-3, 1e-4}) {
      for (double times : new double[] {0.1, 0.5, 1, 2, 3, 3.9}) {
        double d = distance(times * tolerance);
        List<Strand> strands = Parallels.of(parabola(-20, 30), 0, 0, -d, tolerance);
        assertFalse(hasTail(strands));
        int after = 1;
        while (origin(strands.get(after - 1)).to() == origin(strands.get(after)).from()) {
          after++;
        }
        Strand before = strands.get(after - 1);
        double crossing = crossing(d);
        assertEquals(-crossing, -20 + 50 * origin(before).to(), crossing / 10);
        assertEquals(crossing, -20 + 50 * origin(strands.get(after)).from(), crossing / 10);
        Point meeting = new Point(0, (d * d + R * R) / (2 * R));
        assertEquals(0, before.end().distanceTo(meeting).toMm(), tolerance / 2);
        assertEquals(before.end(), strands.get(after).start());
        assertEquals(1, origin(strands.get(strands.size() - 1)).to());
      }
    }
  }

  @Test
  void aTailMoreThanFourTolerancesTallIsKept() {
    for (double tolerance : new double[] {0.1, 0.01, 1e-3, 1e-4}) {
      for (double times : new double[] {4.1, 6, 20}) {
        double d = distance(times * tolerance);
        assertTrue(hasTail(Parallels.of(parabola(-20, 30), 0, 0, -d, tolerance)));
      }
    }
  }

  /** A neckline that bends most beside its middle, at a distance just over its least radius. */
  @Test
  void besideACurveThatIsNotSymmetricTheSidesOfAFlatTailMeetAsWell() {
    Cubic neckline = Outlines.cubic(0, 0, 5, 60, 40, 90, 130, 100);
    double strongest = 0;
    for (int i = 0; i <= 1000; i++) {
      strongest = Math.max(strongest, -neckline.curvatureAt(i / 1000.0));
    }
    int flat = 0;
    for (double times : new double[] {1.001, 1.003, 1.01, 1.02}) {
      double d = times / strongest;
      List<Strand> strands = Parallels.of(neckline, 0, 0, d, TOLERANCE);
      for (int i = 1; i < strands.size(); i++) {
        double before = origin(strands.get(i - 1)).to();
        double after = origin(strands.get(i)).from();
        if (before < after) {
          Point one = parallel(neckline, before, d);
          Point two = parallel(neckline, after, d);
          assertEquals(0, one.distanceTo(two).toMm(), TOLERANCE / 2);
          flat++;
        }
      }
    }
    assertEquals(4, flat);
  }

  private static Point parallel(Cubic source, double t, double d) {
    return source.pointAt(t).plus(source.directionAt(t).left().times(-d));
  }

  @Test
  void aFlatTailIsKeptWhereTheSourceBeginsOrEndsBeforeTheCrossing() {
    double d = distance(2 * TOLERANCE);
    double near = 1.6 * cusp(d);
    double far = 1.9 * cusp(d);
    assertTrue(hasTail(strands(-near, 30, d)));
    assertTrue(hasTail(strands(-30, near, d)));
    assertFalse(hasTail(strands(-far, 30, d)));
    assertFalse(hasTail(strands(-30, far, d)));
  }

  @Test
  void aCurveThatBeginsOrEndsTurnedBackHasOneCusp() {
    double d = 14;
    double cusp = cusp(d);
    List<Strand> late = strands(0, 30, d);
    assertTrue(late.get(0).turnedBack());
    assertFalse(late.get(late.size() - 1).turnedBack());
    assertEquals(0, late.get(7).end().distanceTo(parallel(cusp, d)).toMm(), TOLERANCE / 10);
    List<Strand> early = strands(-30, 0, d);
    assertFalse(early.get(0).turnedBack());
    assertTrue(early.get(early.size() - 1).turnedBack());
    Point start = early.get(early.size() - 8).start();
    assertEquals(0, start.distanceTo(parallel(-cusp, d)).toMm(), TOLERANCE / 10);
    assertTrue(strands(-1, 1, d).stream().allMatch(Strand::turnedBack));
  }

  /** The speed beside a quarter circle drawn as a cubic changes its sign at its own distance. */
  @Test
  void whatRunsBackwardsIsMarkedAndNothingElse() {
    double k = 0.5522847498307935 * R;
    Cubic quarter = Outlines.cubic(R, 0, R, k, k, R, 0, R);
    for (double tolerance : new double[] {1e-2, 1e-3, 1e-4}) {
      for (double d : new double[] {R, 1.0001 * R, 0.9999 * R}) {
        for (Strand strand : Parallels.of(quarter, 0, 0, -d, tolerance)) {
          double t = (origin(strand).from() + origin(strand).to()) / 2;
          assertEquals(quarter.curvatureAt(t) * d > 1, strand.turnedBack());
        }
      }
    }
  }

  @Test
  void aSourceShorterThanTheToleranceHasAChordForItsParallel() {
    Cubic hair = Outlines.cubic(0, 0, 0.002, 0, 0.004, 0, 0.006, 0);
    List<Strand> strands = Parallels.of(hair, 0, 0, 5, TOLERANCE);
    assertEquals(1, strands.size());
    assertInstanceOf(Line.class, strands.get(0).segment());
    assertEquals(new Point(0, -5), strands.get(0).start());
    assertEquals(new Point(0.006, -5), strands.get(0).end());
  }

  @Test
  void soHasASourceJustAsLongAsTheTolerance() {
    double tolerance = 1 / 128.0;
    Cubic hair = Outlines.cubic(0, 0, 1 / 256.0, 0, 1.5 / 256, 0, 2 / 256.0, 0);
    assertInstanceOf(Line.class, Parallels.of(hair, 0, 0, 5, tolerance).get(0).segment());
    Cubic longer = Outlines.cubic(0, 0, 1 / 256.0, 0, 1.5 / 256, 0, 2.1 / 256.0, 0);
    assertInstanceOf(Cubic.class, Parallels.of(longer, 0, 0, 5, tolerance).get(0).segment());
  }

  /** A keyhole closed at its foot: its parallel ends where it begins, and is no point. */
  @Test
  void aParallelThatEndsWhereItBeginsIsNoPoint() {
    Cubic keyhole = Outlines.cubic(0, 0, 60, 80, -60, 80, 0, 0);
    for (Strand strand : Parallels.of(keyhole, 0, 0, 0.001, TOLERANCE)) {
      assertInstanceOf(Cubic.class, strand.segment());
    }
  }

  /** A step too far from a guess that was near enough once kept these tails. */
  @Test
  void aTailOfSomeNanometresIsLeftOut() {
    Cubic hook = Outlines.cubic(0, 0, 5, 0.2, 5.2, 14.483333333, 4.8, 43.45);
    assertFalse(hasTail(Parallels.of(hook, 0, 0, -2.336960023188122, TOLERANCE)));
    Cubic other = Outlines.cubic(0, 0, 5.28, 0.35, 5.63, 16.446666667, 4.93, 49.34);
    assertFalse(hasTail(Parallels.of(other, 0, 0, -2.415166919421125, TOLERANCE)));
  }
}
