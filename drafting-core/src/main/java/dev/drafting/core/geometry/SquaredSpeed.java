package dev.drafting.core.geometry;

import org.jspecify.annotations.Nullable;

/**
 * The square of the speed of a cubic on an interval: a polynomial q of degree 4 in w, which runs
 * from -1 to 1. The length is the integral of its root.
 *
 * <p>How many nodes that takes is read off its Chebyshev coefficients ck, without looking for its
 * roots. Let D be the sum of |ck| (rho^k + rho^-k)/2 over k from 1 to 4, divided by c0. Such
 * weighted sums of coefficients are no greater for a product than the product of the sums, so below
 * D = 1 the binomial series of the root, sqrt(c0) sqrt(1 + x), leaves after each term no more than
 * the series of absolute values at D. Its first terms are polynomials in w that Gauss-Legendre
 * quadrature takes exactly; only the remainder counts in the bound of {@link GaussRule}.
 *
 * <p>On the interval itself q is then above c0 (1 - D), so nothing is lost in summing up the
 * polynomial.
 */
final class SquaredSpeed {
  /** The share of a length that it may be off by; the rest up to 1e-9 is for rounding. */
  private static final double RELATIVE = 8e-10;

  private static final double GREATEST_RHO = 1e6;

  /** Where D is no greater, the series converges fast enough. */
  private static final double CLOSE = 0.95;

  /** For each rule the four weights (rho^k + rho^-k)/2 / CLOSE at the rho that it needs. */
  private static final double[] REACH = reach();

  private final double q0;
  private final double q1;
  private final double q2;
  private final double q3;
  private final double q4;

  /** From the derivative by w, which is a w^2 + b w + c. */
  SquaredSpeed(double ax, double ay, double bx, double by, double cx, double cy) {
    q0 = cx * cx + cy * cy;
    q1 = 2 * (bx * cx + by * cy);
    q2 = bx * bx + by * by + 2 * (ax * cx + ay * cy);
    q3 = 2 * (ax * bx + ay * by);
    q4 = ax * ax + ay * ay;
  }

  /** The fewest nodes that surely integrate the root well enough, or null if no rule has enough. */
  @Nullable GaussRule rule() {
    double one = Math.abs(q1 + 0.75 * q3);
    double two = Math.abs(q2 + q4) * 0.5;
    double three = Math.abs(q3) * 0.25;
    double four = q4 * 0.125;
    double constant = q0 + 0.5 * q2 + 0.375 * q4;
    int last = REACH.length - 4;
    for (int i = 0; i <= last; i += 4) {
      double strays =
          one * REACH[i] + two * REACH[i + 1] + three * REACH[i + 2] + four * REACH[i + 3];
      if (strays < constant) {
        return GaussRule.of(i / 4);
      }
    }
    return null;
  }

  /** The integral of the root. Opposite nodes share the even and the odd part of q. */
  double integralOfRoot(GaussRule rule) {
    double sum = 0;
    for (int i = 0; i < rule.pairs(); i++) {
      double w = rule.node(i);
      double ww = w * w;
      double even = q0 + ww * (q2 + ww * q4);
      double odd = w * (q1 + ww * q3);
      sum += rule.weight(i) * (Math.sqrt(even + odd) + Math.sqrt(even - odd));
    }
    return sum;
  }

  private static double[] reach() {
    double[] reach = new double[4 * GaussRule.count()];
    for (int i = 0; i < GaussRule.count(); i++) {
      double rho = leastRho(GaussRule.of(i));
      for (int k = 1; k <= 4; k++) {
        reach[4 * i + k - 1] = weight(k, rho) / CLOSE;
      }
    }
    return reach;
  }

  /** The least rho that a rule needs, by bisection. */
  private static double leastRho(GaussRule rule) {
    double remainder = remainder((2 * rule.nodes() - 1) / 4);
    double low = 1;
    double high = GREATEST_RHO;
    for (int i = 0; i < 100; i++) {
      double rho = (low + high) / 2;
      // on the interval itself the sum is smaller at least by its first factor
      double least = 2 * Math.sqrt(1 - CLOSE / weight(1, rho));
      if (remainder * rule.bound(rho) <= RELATIVE * least) {
        high = rho;
      } else {
        low = rho;
      }
    }
    return high;
  }

  private static double weight(int k, double rho) {
    return (Math.pow(rho, k) + Math.pow(rho, -k)) / 2;
  }

  /** What the terms of sqrt(1 + x) after a power come to at most, each in absolute value. */
  private static double remainder(int power) {
    double remainder = 1 - Math.sqrt(1 - CLOSE);
    double term = CLOSE / 2;
    for (int k = 1; k <= power; k++) {
      remainder -= term;
      term *= CLOSE * (k - 0.5) / (k + 1);
    }
    return remainder;
  }
}
