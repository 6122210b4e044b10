package dev.drafting.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which rules there are, and the bounds of their errors. */
class GaussRuleTest {
  private static double integral(GaussRule rule, int power) {
    double sum = 0;
    for (int i = 0; i < rule.pairs(); i++) {
      sum += rule.weight(i) * (Math.pow(rule.node(i), power) + Math.pow(-rule.node(i), power));
    }
    return sum;
  }

  @Test
  void everyEvenNumberOfNodesFromFourToTwentyFour() {
    assertEquals(11, GaussRule.count());
    for (int i = 0; i < GaussRule.count(); i++) {
      assertEquals(4 + 2 * i, GaussRule.of(i).nodes());
      assertEquals(2 + i, GaussRule.of(i).pairs());
    }
    assertEquals(24, GaussRule.greatest().nodes());
    assertSame(GaussRule.of(10), GaussRule.greatest());
  }

  /** The integral of x^k from -1 to 1 is 2/(k + 1) for even k. */
  @Test
  void powersBelowTwiceTheNumberOfNodesAreExact() {
    for (int i = 0; i < GaussRule.count(); i++) {
      GaussRule rule = GaussRule.of(i);
      for (int power = 0; power < 2 * rule.nodes(); power += 2) {
        assertEquals(2.0 / (power + 1), integral(rule, power), 1e-14);
      }
    }
  }

  /** For a sum of |ak| (rho^k + rho^-k)/2 of one it is 4.1 rho^-2n. */
  @ParameterizedTest
  @CsvSource({"0, 2, 256", "0, 10, 1e8", "1, 2, 4096", "2, 3, 43046721", "10, 2, 281474976710656"})
  void theBoundFallsWithTwiceTheNumberOfNodes(int place, double rho, double share) {
    double bound = 4.1 / share;
    assertEquals(bound, GaussRule.of(place).bound(rho), 1e-14 * bound);
  }

  /** Chebyshev's polynomial Tk has one coefficient, and the integral 2/(1 - k^2) for even k. */
  @ParameterizedTest
  @ValueSource(doubles = {1.01, 1.2, 2, 10})
  void noChebyshevPolynomialBreaksTheBound(double rho) {
    for (int i = 0; i < GaussRule.count(); i++) {
      GaussRule rule = GaussRule.of(i);
      for (int k = 2; k <= 100; k += 2) {
        double sum = 0;
        for (int pair = 0; pair < rule.pairs(); pair++) {
          sum += 2 * rule.weight(pair) * Math.cos(k * Math.acos(rule.node(pair)));
        }
        double error = Math.abs(sum - 2 / (1.0 - k * k));
        double scale = (Math.pow(rho, k) + Math.pow(rho, -k)) / 2;
        assertTrue(error <= rule.bound(rho) * scale + 1e-12, rule.nodes() + " nodes, T" + k);
      }
    }
  }

  /**
   * Half axes of 5/4 and 3/4 add up to 2, where the bound of Trefethen (SIAM Review 50, 2008,
   * theorem 4.5) is 64/15 M 4^-n / (1 - 1/4): a rule is taken from its bound on.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 0.3, 70})
  void theFewestNodesWhoseBoundIsAllowed(double most) {
    for (int i = 0; i < GaussRule.count(); i++) {
      GaussRule rule = GaussRule.of(i);
      double bound = 64.0 / 15 * most * Math.pow(4, -rule.nodes()) / 0.75;
      assertSame(rule, GaussRule.within(1.25, most, bound * (1 + 1e-12)));
      GaussRule more = i + 1 < GaussRule.count() ? GaussRule.of(i + 1) : null;
      assertSame(more, GaussRule.within(1.25, most, bound * (1 - 1e-12)));
    }
  }

  /** A function no greater than M has an integral of 2M at most, and so has the rule. */
  @Test
  void whateverIsTooSmallToMatterTakesTheFewestNodes() {
    assertSame(GaussRule.of(0), GaussRule.within(1, 0.5, 2));
    assertNull(GaussRule.within(1, 0.5, 1.999));
    assertSame(GaussRule.of(0), GaussRule.within(1, 3, 12));
    assertNull(GaussRule.within(1, 3, 11.999));
  }
}
