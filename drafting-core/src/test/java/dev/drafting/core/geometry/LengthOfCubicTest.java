package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Known lengths of cubics; 1e-9 of the length is promised. */
class LengthOfCubicTest {
  private static final double KAPPA = 4 * (Math.sqrt(2) - 1) / 3;

  private static double length(Point a, Point b, Point c, Point d) {
    return new Cubic(a, b, c, d).length().toMm();
  }

  /**
   * Closed form of the parabola y = x^2 from 0 to 1, sqrt(5)/2 + ln(2 + sqrt(5))/4 (any calculus
   * text), raised to a cubic.
   */
  @Test
  void parabola() {
    double known = Math.sqrt(5) / 2 + Math.log(2 + Math.sqrt(5)) / 4;
    assertEquals(1.4789428575445973, known, 1e-15);
    assertEquals(known, length(p(0, 0), p(1 / 3.0, 0), p(2 / 3.0, 1 / 3.0), p(1, 1)), 1e-14);
  }

  /**
   * The usual cubic of a quarter circle is longer than the quarter by 1.40293e-4 of pi/2; 40 digits
   * by quadrature in a general arbitrary-precision library: 1.571016698073855651...
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.001, 1, 50, 900})
  void quarterCircle(double r) {
    double length = length(p(r, 0), p(r, KAPPA * r), p(KAPPA * r, r), p(0, r));
    assertEquals(1.5710166980738558, length / r, 1e-11);
    assertEquals(1.40293e-4, length / r / (Math.PI / 2) - 1, 1e-9);
  }

  /**
   * The same cubic strays from the circle by 0 to +2.7253e-4 of the radius (closed form in Riskus,
   * "Approximation of a cubic Bezier curve by circular arcs and vice versa", 2006).
   */
  @Test
  void quarterCircleRadius() {
    Cubic quarter = new Cubic(p(1, 0), p(1, KAPPA), p(KAPPA, 1), p(0, 1));
    double most = 0;
    double least = 0;
    for (int i = 0; i <= 10_000; i++) {
      double off = quarter.pointAt(i / 10_000.0).gap(Shapes.ORIGIN) - 1;
      most = Math.max(most, off);
      least = Math.min(least, off);
    }
    assertEquals(2.7253e-4, most, 1e-8);
    assertEquals(0, least, 1e-15);
  }

  /**
   * With kappa = 0.551915024494 (Mortensen, who lets it stray as far inside as outside) it strays
   * by 1.9608e-4 of the radius either way.
   */
  @Test
  void quarterCircleThatStraysEvenly() {
    double kappa = 0.551915024494;
    Cubic quarter = new Cubic(p(1, 0), p(1, kappa), p(kappa, 1), p(0, 1));
    double most = 0;
    double least = 0;
    for (int i = 0; i <= 10_000; i++) {
      double off = quarter.pointAt(i / 10_000.0).gap(Shapes.ORIGIN) - 1;
      most = Math.max(most, off);
      least = Math.min(least, off);
    }
    assertEquals(1.9608e-4, most, 1e-8);
    assertEquals(-1.9608e-4, least, 1e-8);
  }

  /**
   * Chords measure short. On a quarter circle of 100 mm those that stray by 0.1, 0.01 and 0.001 mm
   * are 0.050, 0.0051 and 0.00052 mm short in all (computed from the sagitta); the length of the
   * arc, and of a cubic, is not.
   */
  @ParameterizedTest
  @CsvSource({"0.1, 0.050", "0.01, 0.0051", "0.001, 0.00052"})
  void chordsMeasureShort(double sagitta, double shortBy) {
    double quarter = Math.PI / 2 * 100;
    int chords = (int) Math.ceil(Math.PI / 4 / Math.acos(1 - sagitta / 100));
    double[] xy = new double[2 * (chords + 1)];
    for (int i = 0; i <= chords; i++) {
      xy[2 * i] = 100 * Math.cos(Math.PI / 2 * i / chords);
      xy[2 * i + 1] = 100 * Math.sin(Math.PI / 2 * i / chords);
    }
    assertEquals(shortBy, quarter - Polyline.of(xy).length().toMm(), 0.02 * shortBy);
    Arc arc = Arc.of(Shapes.ORIGIN, Length.mm(100), Angle.ZERO, Angle.degrees(90));
    assertEquals(quarter, arc.length().toMm(), 1e-12);
  }

  /** Two inflection-like bends; 40 digits by quadrature in an arbitrary-precision library. */
  @Test
  void bends() {
    assertEquals(1.6765426274202857, length(p(0, 0), p(1, 0), p(0, 1), p(1, 1)), 1e-11);
    assertEquals(24.06206227892848, length(p(0, 0), p(0, 8), p(6, 14), p(14, 18)), 1e-10);
    assertEquals(10.836127254811919, length(p(0, 0), p(0, 0), p(3, 4), p(10, 0)), 1e-10);
  }

  /**
   * At the cusp the speed is 3|u| sqrt(u^2 + 1)/2 with u = 2t - 1, so the length is 2 sqrt(2) - 1.
   */
  @Test
  void cusp() {
    double known = 2 * Math.sqrt(2) - 1;
    assertEquals(known, length(p(0, 0), p(1, 1), p(0, 1), p(1, 0)), 1e-9 * known);
  }

  /**
   * From the cusp to u = 2t - 1 it is ((1 + u^2)^(3/2) - 1)/2: lengths up to places beside the
   * cusp, and places at those lengths, to 1e-9 of the length.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 1e-6, 1e-3, 0.02, 0.3, 0.9})
  void placesBesideACusp(double u) {
    Cubic cusp = new Cubic(p(0, 0), p(1, 1), p(0, 1), p(1, 0));
    double middle = Math.sqrt(2) - 0.5;
    double off = Math.expm1(1.5 * Math.log1p(u * u)) / 2;
    for (int side = -1; side <= 1; side += 2) {
      double t = (1 + side * u) / 2;
      double along = middle + side * off;
      assertEquals(along, cusp.lengthTo(t).toMm(), 1.8e-9);
      Point found = cusp.pointAt(cusp.parameterAt(Length.mm(along)));
      assertTrue(found.gap(cusp.pointAt(t)) <= 1.8e-9, found + " at u = " + side * u);
    }
  }

  /** Near cusps: the place at a length is where the length up to it is that length. */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 1e-2, 1e-4, 1e-7, 1e-11, -1e-6, -0.02})
  void placesBesideANearCusp(double past) {
    Cubic near = new Cubic(p(0, 0), p(100 + 100 * past, 100), p(-100 * past, 100), p(100, 0));
    double length = near.length().toMm();
    for (int i = 1; i < 200; i++) {
      double along = length * i / 200;
      double t = near.parameterAt(Length.mm(along));
      assertEquals(along, near.lengthTo(t).toMm(), 1e-9 * length);
      assertEquals(length - along, near.reversed().lengthTo(1 - t).toMm(), 1e-9 * length);
    }
  }

  /**
   * 40 digits by quadrature in an arbitrary-precision library, intervals graded to the near cusp.
   */
  @Test
  void nearCusps() {
    assertEquals(1.8448553379584622, length(p(0, 0), p(1.05, 1), p(-0.05, 1), p(1, 0)), 1e-9 * 1.8);
    assertEquals(
        1.828452897691993, length(p(0, 0), p(1.0001, 1), p(-0.0001, 1), p(1, 0)), 1e-9 * 1.8);
    assertEquals(
        218.8779005629264,
        length(p(6.096, 1.546), p(0.976, -0.034), p(242.515, 74.193), p(3.459, -0.19)),
        1e-9 * 218);
  }

  /** There and back on a line: x = 9t - 27t^2 + 21t^3 turns round where its derivative vanishes. */
  @Test
  void foldedLine() {
    Cubic folded = new Cubic(p(0, 0), p(3, 0), p(-3, 0), p(3, 0));
    double root = Math.sqrt(27.0 * 27 - 9 * 63);
    double first = (27 - root) / 63;
    double second = (27 + root) / 63;
    double turn1 = folded.pointAt(first).x();
    double turn2 = folded.pointAt(second).x();
    double known = turn1 + (turn1 - turn2) + (3 - turn2);
    assertEquals(known, folded.length().toMm(), 1e-9 * known);
  }

  @Test
  void straightCubicsAreAsLongAsTheirChord() {
    assertEquals(50, length(p(0, 0), p(3, 4), p(6, 8), p(30, 40)), 1e-12);
    assertEquals(50, length(p(0, 0), p(0, 0), p(30, 40), p(30, 40)), 1e-12);
  }
}
