package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many straight stretches a curve takes, from closed forms. */
class FlatteningTest {
  private static int stretches(Segment segment, double tolerance) {
    return Curve.of(segment).flatten(Length.mm(tolerance)).size() - 1;
  }

  /** A chord that strays by e spans twice acos(1 - e/r); none spans over six radians. */
  @ParameterizedTest
  @CsvSource({"100, 90, 0.1", "100, 90, 0.001", "300, -250, 0.05", "2, 360, 0.01", "0.5, 30, 0.2"})
  void chordsOfArcs(double radius, double sweep, double tolerance) {
    Arc arc = Arc.of(p(70, -30), Length.mm(radius), Angle.degrees(20), Angle.degrees(sweep));
    double each = 2 * Math.acos(1 - tolerance / radius);
    int known = (int) Math.ceil(Math.toRadians(Math.abs(sweep)) / each);
    assertEquals(known, stretches(arc, tolerance));
  }

  /** Where anything would do, a chord spans three radians at most: a circle stays a triangle. */
  @ParameterizedTest
  @CsvSource({"360, 3", "-360, 3", "340, 2", "171, 1", "172, 2", "20, 1"})
  void tinyArcs(double sweep, int known) {
    Arc arc = Arc.of(p(0, 0), Length.mm(1), Angle.ZERO, Angle.degrees(sweep));
    assertEquals(known, stretches(arc, 50));
  }

  /**
   * A parabola with second derivative d strays from n equal chords by d/(8 n^2) exactly, wherever
   * it lies and however it is turned.
   */
  @ParameterizedTest
  @CsvSource({"0, 0, 0", "35, 0, 0", "90, 250, -80", "200, -17, 400", "301, 90, 90"})
  void chordsOfParabolas(double turn, double x, double y) {
    Transform place =
        Transform.rotation(p(0, 0), Angle.degrees(turn))
            .then(Transform.translation(new Vector(x, y)));
    // (300 t, 120 t^2)
    Cubic parabola = new Cubic(p(0, 0), p(100, 0), p(200, 40), p(300, 120)).map(place);
    for (int n = 1; n <= 40; n++) {
      double strays = 240 / (8.0 * n * n);
      assertEquals(n, stretches(parabola, strays * (1 + 1e-9)));
      assertEquals(n + 1, stretches(parabola, strays * (1 - 1e-9)));
    }
  }

  /** The cubic (300 t, 100 t^3) has its greatest second derivative, 600, at its end. */
  @Test
  void theSharperEndCounts() {
    Cubic cubic = new Cubic(p(0, 0), p(100, 0), p(200, 0), p(300, 100));
    assertEquals(10, stretches(cubic, 600 / 800.0 * (1 + 1e-9)));
    assertEquals(11, stretches(cubic, 600 / 800.0 * (1 - 1e-9)));
    assertEquals(10, stretches(cubic.reversed(), 600 / 800.0 * (1 + 1e-9)));
    assertEquals(11, stretches(cubic.reversed(), 600 / 800.0 * (1 - 1e-9)));
  }

  @Test
  void straightOnesTakeOneStretch() {
    assertEquals(1, stretches(new Line(p(0, 0), p(300, 400)), 1e-9));
    assertEquals(1, stretches(new Cubic(p(0, 0), p(10, 0), p(20, 0), p(30, 0)), 1e-9));
  }

  @Test
  void noToleranceIsRefused() {
    Line line = new Line(p(0, 0), p(1, 1));
    assertThrows(DraftingException.class, () -> stretches(line, 0));
    assertThrows(DraftingException.class, () -> stretches(line, -0.1));
  }
}
