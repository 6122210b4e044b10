package dev.drafting.core.geometry;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.jspecify.annotations.Nullable;

/**
 * Gauss-Legendre quadrature on the interval from -1 to 1, and when it is surely exact enough.
 *
 * <p>With n nodes it is exact up to degree 2n - 1, its weights are positive and add up to 2, and by
 * symmetry odd terms cancel. So the error is at most the sum of |ak| (2 + 2/(k^2 - 1)) over the
 * Chebyshev coefficients ak from k = 2n on. In a function whose sum of |ak| (rho^k + rho^-k)/2 is
 * M, that is under 4.1 M rho^-2n from four nodes on. A function that is analytic in the ellipse
 * with foci at -1 and 1 and half axes that add up to rho, and no greater there than M, has
 * coefficients of at most 2 M rho^-k, and the error is under 64/15 M rho^-2n / (1 - rho^-2)
 * (Trefethen, "Is Gauss quadrature better than Clenshaw-Curtis?", SIAM Review 50, 2008, section 4).
 */
final class GaussRule {
  private static final int FEWEST = 4;
  private static final int MOST = 24;

  /** Every even number of nodes, fewest first. */
  private static final GaussRule[] RULES = rules();

  private final double[] nodes;
  private final double[] weights;

  private GaussRule(GaussIntegrator rule) {
    int count = rule.getNumberOfPoints();
    nodes = new double[count / 2];
    weights = new double[count / 2];
    for (int i = 0; i < nodes.length; i++) {
      nodes[i] = rule.getPoint(count / 2 + i);
      weights[i] = rule.getWeight(count / 2 + i);
    }
  }

  private static GaussRule[] rules() {
    GaussIntegratorFactory factory = new GaussIntegratorFactory();
    GaussRule[] rules = new GaussRule[(MOST - FEWEST) / 2 + 1];
    for (int i = 0; i < rules.length; i++) {
      rules[i] = new GaussRule(factory.legendre(FEWEST + 2 * i));
    }
    return rules;
  }

  /** The number of rules there are. */
  static int count() {
    return RULES.length;
  }

  /** A rule by its place, 0 for the one with the fewest nodes. */
  static GaussRule of(int place) {
    return RULES[place];
  }

  static GaussRule greatest() {
    return RULES[RULES.length - 1];
  }

  int nodes() {
    return 2 * nodes.length;
  }

  /** The number of pairs of nodes that are opposite each other. */
  int pairs() {
    return nodes.length;
  }

  /** The node of a pair that is above zero; the other one is opposite. */
  double node(int pair) {
    return nodes[pair];
  }

  /** The weight of either node of a pair. */
  double weight(int pair) {
    return weights[pair];
  }

  /** A bound of the error for a function whose sum of |ak| (rho^k + rho^-k)/2 is 1. */
  double bound(double rho) {
    return 4.1 * Math.pow(rho, -2.0 * nodes());
  }

  /**
   * The fewest nodes whose error is surely allowed, or null if none has enough.
   *
   * @param major the larger half axis of an ellipse with foci at -1 and 1 in which the integrand is
   *     analytic
   * @param most a bound of the integrand there, already scaled to the interval
   * @param allowed the error allowed
   */
  static @Nullable GaussRule within(double major, double most, double allowed) {
    if (2 * 2 * most <= allowed) {
      return RULES[0]; // even nothing and twice the truth would do
    }
    double rho = major + Math.sqrt(major * major - 1);
    double shrink = 1 / (rho * rho);
    double twoMore = shrink * shrink;
    double bound = 64.0 / 15 * most * twoMore * twoMore / (1 - shrink);
    for (GaussRule rule : RULES) {
      if (bound <= allowed) {
        return rule;
      }
      bound *= twoMore;
    }
    return null;
  }
}
