package dev.drafting.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How many nodes the length of a cubic takes, and that they are enough. */
class SquaredSpeedTest {
  private static int nodes(SquaredSpeed speed) {
    GaussRule rule = speed.rule();
    return rule == null ? 0 : rule.nodes();
  }

  /** Derivatives a w^2 + b w + c, a strength in front of what varies: x and y of a, b and c. */
  private static double[] derivative(String kind, double s) {
    return switch (kind) {
      case "faster" -> new double[] {0, 0, s, 0, 1, 0};
      case "turning" -> new double[] {0, 0, 0, s, 1, 0};
      case "slowest in the middle" -> new double[] {s, 0, 0, 0, 1, 0};
      case "there and back" -> new double[] {0, s, 0, 0, 1, 0};
      case "all of them" -> new double[] {s, 0.5 * s, 0.7 * s, -0.2 * s, 1, 0.3};
      default -> new double[] {-0.8 * s, 0.1 * s, 0.9 * s, 0.4 * s, 0.6, -0.8};
    };
  }

  private static SquaredSpeed of(String kind, double s) {
    double[] d = derivative(kind, s);
    return new SquaredSpeed(d[0], d[1], d[2], d[3], d[4], d[5]);
  }

  /**
   * The strengths at which the bound named in the class's comment asks for the next rule, 0 for
   * none; from an independent computation: Chebyshev coefficients by a general-purpose numerical
   * library, the tail of the binomial series summed up term by term.
   */
  @ParameterizedTest
  @CsvSource({
    "faster, 0.060649034, 4, 6",
    "faster, 0.275182918, 10, 12",
    "faster, 0.414670042, 22, 24",
    "faster, 0.423263596, 24, 0",
    "turning, 0.150349543, 4, 6",
    "turning, 1.456007819, 16, 18",
    "turning, 2.213128268, 24, 0",
    "slowest in the middle, 0.009371260, 4, 6",
    "slowest in the middle, 0.577856884, 16, 18",
    "slowest in the middle, 0.955128223, 24, 0",
    "there and back, 0.022670852, 4, 6",
    "there and back, 0.856821391, 16, 18",
    "there and back, 1.222928886, 24, 0",
    "all of them, 0.008162719, 4, 6",
    "all of them, 0.282990547, 16, 18",
    "all of them, 0.377701215, 24, 0",
    "'all of them against', 0.013417325, 4, 6",
    "'all of them against', 0.662352715, 16, 18",
    "'all of them against', 0.806473827, 24, 0",
  })
  void theNextRuleIsTakenWhereTheBoundAsksForIt(String kind, double strength, int to, int from) {
    assertEquals(to, nodes(of(kind, strength * (1 - 1e-6))));
    assertEquals(from, nodes(of(kind, strength * (1 + 1e-6))));
  }

  @Test
  void anEvenSpeedTakesTheFewestNodes() {
    SquaredSpeed even = new SquaredSpeed(0, 0, 0, 0, 3, 4);
    GaussRule rule = even.rule();
    assertNotNull(rule);
    assertEquals(4, rule.nodes());
    assertEquals(10, even.integralOfRoot(rule), 1e-14);
  }

  @Test
  void aStandstillTakesMoreThanAnyRule() {
    assertNull(new SquaredSpeed(0, 0, 1, 0, 0, 0).rule());
    assertNull(new SquaredSpeed(1, 0, 0, 0, 0, 0).rule());
    assertNull(new SquaredSpeed(0, 0, 1, 0, 0.5, 0).rule());
  }

  /** 8e-10 of the length is promised, and a general quadrature knows the length. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "faster",
        "turning",
        "slowest in the middle",
        "there and back",
        "all of them",
        "all of them against"
      })
  void theNodesAreEnough(String kind) {
    for (double s = 0.01; s < 2.3; s += 0.01) {
      SquaredSpeed speed = of(kind, s);
      GaussRule rule = speed.rule();
      if (rule != null) {
        double known = known(kind, s);
        assertEquals(known, speed.integralOfRoot(rule), 8e-10 * known, kind + " by " + s);
      }
    }
  }

  private static double known(String kind, double s) {
    double[] d = derivative(kind, s);
    return new IterativeLegendreGaussIntegrator(20, 1e-13, 1e-15)
        .integrate(
            100_000,
            w -> Math.hypot((d[0] * w + d[2]) * w + d[4], (d[1] * w + d[3]) * w + d[5]),
            -1,
            1);
  }
}
