package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bends of cubics against closed forms, and where a handle is too short to say anything. */
class HodographTest {
  private static double curvature(Point a, Point b, Point c, Point d, double t) {
    return new Hodograph(new Cubic(a, b, c, d)).curvature(t);
  }

  /** The parabola y = x^2 bends by 2 / (1 + 4 x^2)^(3/2) (any calculus text). */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 0.25, 0.5, 0.9, 1})
  void parabola(double x) {
    double known = 2 / Math.pow(1 + 4 * x * x, 1.5);
    Cubic cubic = new Cubic(p(0, 0), p(1 / 3.0, 0), p(2 / 3.0, 1 / 3.0), p(1, 1));
    assertEquals(known, cubic.curvatureAt(x), 1e-14);
    assertEquals(-known, cubic.reversed().curvatureAt(1 - x), 1e-14);
  }

  /** The cubic y = x^3 bends by 6x / (1 + 9 x^4)^(3/2), to the right before the inflection. */
  @ParameterizedTest
  @ValueSource(doubles = {-1, -0.4, 0, 0.3, 1})
  void cubicParabola(double x) {
    double known = 6 * x / Math.pow(1 + 9 * x * x * x * x, 1.5);
    double bend = curvature(p(-1, -1), p(-1 / 3.0, 1), p(1 / 3.0, -1), p(1, 1), (x + 1) / 2);
    assertEquals(known, bend, 1e-14);
  }

  /**
   * At its start a cubic bends by 2/3 h / a^2, h the second control point's way off the handle a.
   */
  @ParameterizedTest
  @CsvSource({"30, 12", "3, -40", "0.01, 5"})
  void atTheStartTheHandleAndTheNextControlPointSayTheBend(double handle, double off) {
    double bend = curvature(p(0, 0), p(handle, 0), p(55, off), p(90, 7), 0);
    assertEquals(2.0 / 3 * off / (handle * handle), bend, 1e-12 * Math.abs(bend));
  }

  /** Towards a cusp the bend grows beyond every bound, to the side that it has at the cusp. */
  @ParameterizedTest
  @CsvSource({"1, 1", "1, -1", "2.5, 1", "0.04, -1"})
  void cusp(double width, double height) {
    Cubic cusp = new Cubic(p(0, 0), p(width, height), p(0, height), p(width, 0));
    double before = cusp.curvatureAt(0.499);
    double nearer = cusp.curvatureAt(0.4999);
    double at = cusp.curvatureAt(0.5);
    assertEquals(Math.signum(before) * Double.POSITIVE_INFINITY, at, 0);
    assertEquals(10, nearer / before, 0.1);
    assertEquals(Math.signum(at), Math.signum(cusp.curvatureAt(0.501)), 0);
  }

  /** A handle of no length: the bend at the end is beyond every bound, towards the other points. */
  @Test
  void handleOfNoLength() {
    assertEquals(Double.POSITIVE_INFINITY, curvature(p(0, 0), p(0, 0), p(50, 0), p(90, 30), 0), 0);
    assertEquals(Double.NEGATIVE_INFINITY, curvature(p(0, 0), p(0, 0), p(50, 0), p(90, -30), 0), 0);
    assertEquals(Double.NEGATIVE_INFINITY, curvature(p(5, 1), p(5, 1), p(9, 40), p(70, 60), 0), 0);
    assertEquals(0, curvature(p(0, 0), p(0, 0), p(30, 40), p(60, 80), 0), 0);
  }

  /**
   * A speed, three times the handle, of 1e-12 of the control polygon is a standstill: legs of 50
   * and 25 mm stand at a handle of 25e-12 mm.
   */
  @ParameterizedTest
  @CsvSource({"30, 40, 0, 25", "-30, 40, 25, 0", "48, -14, -7, -24", "0, -50, 15, -20"})
  void aHandleOfNextToNoLengthIsNone(double x, double y, double dx, double dy) {
    Point second = p(x, y);
    Point end = p(x + dx, y + dy);
    double side = Math.signum(x * dy - y * dx);
    assertEquals(
        side * Double.POSITIVE_INFINITY,
        curvature(p(0, 0), p(24.99e-12 * dy / 25, 24.99e-12 * -dx / 25), second, end, 0),
        0);
    double finite =
        curvature(p(0, 0), p(25.01e-12 * dy / 25, 25.01e-12 * -dx / 25), second, end, 0);
    assertTrue(Double.isFinite(finite) && finite != 0, "" + finite);
  }

  /**
   * Beside a cusp whose polygon is 1 + 2 sqrt(2) long: past it by e on either side the speed in the
   * middle is 1.5 e.
   */
  @Test
  void aCuspMissedByNextToNothingIsOne() {
    double standstill = 1e-12 * (1 + 2 * Math.sqrt(2)) / 1.5;
    double e = 0.99 * standstill;
    assertTrue(Double.isInfinite(curvature(p(0, 0), p(1 + e, 1), p(-e, 1), p(1, 0), 0.5)));
    double more = 1.01 * standstill;
    double bend = curvature(p(0, 0), p(1 + more, 1), p(-more, 1), p(1, 0), 0.5);
    assertTrue(Double.isFinite(bend) && Math.abs(bend) > 1e12, "" + bend);
  }

  @Test
  void extremesAreWhereOneCoordinateStandsStill() {
    Hodograph arch = new Hodograph(new Cubic(p(0, 0), p(0, 40), p(100, 40), p(100, 0)));
    double[] found = arch.turningPoints();
    assertEquals(1, found.length);
    assertEquals(0.5, found[0], 1e-15);
  }
}
