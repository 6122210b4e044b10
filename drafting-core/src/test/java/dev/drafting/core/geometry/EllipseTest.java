package dev.drafting.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Perimeters of ellipses against the complete elliptic integral of the second kind, P = 4 a E(m)
 * with m = 1 - (b/a)^2: Abramowitz and Stegun, "Handbook of Mathematical Functions", table 17.1 (m
 * is the parameter, not the modulus).
 *
 * <p>An ellipse is no segment here, so it is built of cubics with the ellipse's own derivative at
 * their ends. Cubic Hermite interpolation with step h strays from a derivative by at most
 * sqrt(3)/216 h^3 max|f''''| (Birkhoff and Priver, "Hermite interpolation errors for derivatives",
 * 1967; constant from memory), so the perimeter is off by no more than 2 pi times that for both
 * coordinates.
 */
class EllipseTest {
  private static final int PIECES = 20_000;

  private static double fittingBound(double a, double b) {
    double step = 2 * Math.PI / PIECES;
    return 2 * Math.PI * Math.sqrt(3) / 216 * step * step * step * Math.hypot(a, b);
  }

  private static Curve ellipse(double a, double b) {
    List<Segment> pieces = new ArrayList<>(PIECES);
    double third = 2 * Math.PI / PIECES / 3;
    for (int i = 0; i < PIECES; i++) {
      Point from = on(a, b, i);
      Point to = on(a, b, (i + 1) % PIECES);
      pieces.add(
          new Cubic(
              from,
              from.plus(way(a, b, i).times(third)),
              to.plus(way(a, b, i + 1).times(-third)),
              to));
    }
    return Curve.of(pieces);
  }

  private static Point on(double a, double b, int i) {
    double u = 2 * Math.PI * i / PIECES;
    return new Point(a * Math.cos(u), b * Math.sin(u));
  }

  private static Vector way(double a, double b, int i) {
    double u = 2 * Math.PI * i / PIECES;
    return new Vector(-a * Math.sin(u), b * Math.cos(u));
  }

  /** What a perimeter may be off by: 1e-9 of itself is promised, and the fit. */
  private static double allowed(double a, double b) {
    return 1e-9 * ellipse(a, b).length().toMm() + fittingBound(a, b);
  }

  /**
   * Nine decimals of table 17.1. All were checked with 20 digits in a general arbitrary-precision
   * library; for m = 0.15, which is also found copied as ...831, it gives 1.51012183209.
   */
  @ParameterizedTest
  @CsvSource({
    "0.00, 1.570796327",
    "0.05, 1.550973352",
    "0.10, 1.530757637",
    "0.15, 1.510121832",
    "0.20, 1.489035058",
    "0.25, 1.467462209",
    "0.30, 1.445363064",
    "0.35, 1.422691133",
    "0.40, 1.399392139",
    "0.45, 1.375401972",
    "0.50, 1.350643881"
  })
  void tableOfAbramowitzAndStegun(double m, double e) {
    double b = Math.sqrt(1 - m);
    assertEquals(e, ellipse(1, b).length().toMm() / 4, 0.5e-9 + allowed(1, b) / 4);
  }

  /** More digits by the arithmetic-geometric mean (DLMF 19.8.6), 40 digits carried. */
  @ParameterizedTest
  @CsvSource({
    "0.50, 1.35064388104767550252",
    "0.75, 1.21105602756845952480",
    "0.90, 1.10477473270407332609",
    "0.99, 1.01599354502522393563",
    "1.00, 1"
  })
  void moreDigits(double m, double e) {
    double b = Math.sqrt(1 - m);
    assertEquals(e, ellipse(1, b).length().toMm() / 4, allowed(1, b) / 4);
  }

  /**
   * Values in the tests of the GNU Scientific Library (specfunc/test_sf.c), which takes the modulus
   * k where the table takes m = k^2.
   */
  @ParameterizedTest
  @CsvSource({
    "0.5, 1.4674622093394271555",
    "0.99, 1.0284758090288040010",
    "0.01, 1.5707570561503852873"
  })
  void valuesByTheModulus(double k, double e) {
    double b = Math.sqrt(1 - k * k);
    assertEquals(e, ellipse(1, b).length().toMm() / 4, allowed(1, b) / 4);
  }

  /** Hipparchus computes E(m) by Carlson's symmetric forms: a second implementation. */
  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.17, 0.33, 0.61, 0.87, 0.98, 0.9999})
  void againstHipparchus(double m) {
    double b = Math.sqrt(1 - m);
    double e = LegendreEllipticIntegral.bigE(m);
    assertEquals(e, ellipse(1, b).length().toMm() / 4, allowed(1, b) / 4);
  }

  /**
   * From the end of the small axis to the point (-a sin phi, b cos phi) it is a E(phi | m): places
   * at lengths against the incomplete integral.
   */
  @ParameterizedTest
  @CsvSource({"80, 79", "80, 40", "50, 5", "100, 1"})
  void placesAtLengthsAgainstHipparchus(double a, double b) {
    Curve ellipse = ellipse(a, b);
    double m = 1 - b * b / (a * a);
    double quarter = a * LegendreEllipticIntegral.bigE(m);
    for (int i = 1; i <= 50; i++) {
      double phi = Math.PI / 2 * i / 50;
      double along = quarter + a * LegendreEllipticIntegral.bigE(phi, m);
      Point found = ellipse.pointAt(Length.mm(along));
      Point known = new Point(-a * Math.sin(phi), b * Math.cos(phi));
      assertTrue(known.gap(found) <= allowed(a, b), known + " and " + found);
      assertEquals(along, ellipse.nearest(known).along().toMm(), allowed(a, b));
    }
  }

  /** Perimeters from more digits of E by the arithmetic-geometric mean (DLMF 19.8.6). */
  @ParameterizedTest
  @CsvSource({
    "2, 1, 9.688448220547676",
    "5, 4, 28.36166788897448",
    "5, 3, 25.52699886339813",
    "10, 6, 51.05399772679626",
    "10, 1, 40.63974180100896",
    "1, 0.5, 4.844224110273838",
    "1, 0.001, 4.000015588104688"
  })
  void perimeters(double a, double b, double perimeter) {
    double bound = fittingBound(a, b) + 1e-9 * perimeter;
    assertTrue(bound < 6e-8, "the fit must not hide an error: " + bound);
    assertEquals(perimeter, ellipse(a, b).length().toMm(), bound);
    assertEquals(Math.PI * a * b, ellipse(a, b).areaSquareMm(), bound * a);
    assertEquals(360, ellipse(a, b).turning().toDegrees(), 1e-7);
  }
}
