package dev.drafting.core.geometry;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Nodes and weights of Gauss-Legendre quadrature on the interval from -1 to 1. */
final class GaussTable {
  private static final int[] SIZES = {4, 8, 12, 16, 24};
  private static final GaussTable[] TABLES = new GaussTable[25];

  static {
    GaussIntegratorFactory factory = new GaussIntegratorFactory();
    for (int size : SIZES) {
      TABLES[size] = new GaussTable(factory.legendre(size));
    }
  }

  private final double[] nodes;
  private final double[] weights;

  private GaussTable(GaussIntegrator rule) {
    nodes = new double[rule.getNumberOfPoints()];
    weights = new double[nodes.length];
    for (int i = 0; i < nodes.length; i++) {
      nodes[i] = rule.getPoint(i);
      weights[i] = rule.getWeight(i);
    }
  }

  static GaussTable of(int size) {
    return TABLES[size == 0 ? 24 : size];
  }

  int size() {
    return nodes.length;
  }

  double node(int i) {
    return nodes[i];
  }

  double weight(int i) {
    return weights[i];
  }

  /**
   * The fewest nodes whose error is surely allowed, or 0 if no table has enough.
   *
   * @param major the larger half axis of an ellipse with foci at -1 and 1 in which the integrand is
   *     analytic
   * @param most a bound of the integrand there, already scaled to the interval
   * @param allowed the error allowed
   */
  static int nodesFor(double major, double most, double allowed) {
    if (2 * 2 * most <= allowed) {
      return SIZES[0]; // even nothing and twice the truth would do
    }
    double rho = major + Math.sqrt(major * major - 1);
    double shrink = 1 / (rho * rho);
    double bound = 64.0 / 15 * most / (1 - shrink);
    double power2 = shrink * shrink;
    double power3 = power2 * shrink; // n nodes: rho^-(2n - 2)
    double power4 = power2 * power2;
    if (bound * power3 <= allowed) {
      return 4;
    }
    double power7 = power4 * power3;
    if (bound * power7 <= allowed) {
      return 8;
    }
    double power11 = power7 * power4;
    if (bound * power11 <= allowed) {
      return 12;
    }
    double power15 = power11 * power4;
    if (bound * power15 <= allowed) {
      return 16;
    }
    return bound * power15 * power4 * power4 <= allowed ? 24 : 0;
  }
}
