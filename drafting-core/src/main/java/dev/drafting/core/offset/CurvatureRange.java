package dev.drafting.core.offset;

/**
 * Bounds of the speed and curvature of a cubic, from the Bernstein coefficients of |P'|² (degree 4)
 * and P' x P'' (degree 3): a polynomial lies between its least and greatest coefficient (Farouki
 * and Rajan, "On the numerical condition of polynomials in Bernstein form", 1987).
 *
 * @param leastSquareSpeed lower bound of |P'|²
 * @param greatestSquareSpeed upper bound of |P'|²
 * @param least lower bound of the curvature, 1/mm, left turns positive
 * @param greatest upper bound of the curvature
 */
record CurvatureRange(
    double leastSquareSpeed, double greatestSquareSpeed, double least, double greatest) {

  static CurvatureRange of(CubicCoefficients c) {
    double ax = 3 * (c.x1 - c.x0);
    double ay = 3 * (c.y1 - c.y0);
    double bx = 3 * (c.x2 - c.x1);
    double by = 3 * (c.y2 - c.y1);
    double ex = 3 * (c.x3 - c.x2);
    double ey = 3 * (c.y3 - c.y2);
    double h0 = ax * ax + ay * ay;
    double h1 = ax * bx + ay * by;
    double h2 = (ax * ex + ay * ey + 2 * (bx * bx + by * by)) / 3;
    double h3 = bx * ex + by * ey;
    double h4 = ex * ex + ey * ey;
    double low = Math.min(Math.min(Math.min(h0, h1), Math.min(h2, h3)), h4);
    double high = Math.max(Math.max(Math.max(h0, h1), Math.max(h2, h3)), h4);
    // P' has the coefficients a, b, e; P'' has 2(b-a), 2(e-b); the t³ term of the product vanishes
    double w0 = 2 * (ax * by - ay * bx);
    double w1 = ax * ey - ay * ex;
    double w2 = 2 * (bx * ey - by * ex);
    double wLow = Math.min(Math.min(w0, w1), w2);
    double wHigh = Math.max(Math.max(w0, w1), w2);
    return new CurvatureRange(low, high, over(wLow, low, high), -over(-wHigh, low, high));
  }

  /** The least value of w / h^1.5 for h from low to high. */
  private static double over(double w, double low, double high) {
    double square = w < 0 ? low : high;
    if (square <= 0) {
      return w == 0 ? 0 : Double.NEGATIVE_INFINITY;
    }
    return w / (square * Math.sqrt(square));
  }

  /** A lower bound of 1 + curvature times distance: how fast the parallel runs beside the curve. */
  double leastSpeedFactor(double distance) {
    return 1 + Math.min(distance * least, distance * greatest);
  }

  /** An upper bound of 1 + curvature times distance. */
  double greatestSpeedFactor(double distance) {
    return 1 + Math.max(distance * least, distance * greatest);
  }

  /** An upper bound of the length of the parallel. */
  double longestParallel(double distance) {
    double factor =
        Math.max(Math.abs(leastSpeedFactor(distance)), Math.abs(greatestSpeedFactor(distance)));
    return factor * Math.sqrt(greatestSquareSpeed);
  }

  /** An upper bound of how strongly the curve bends either way. */
  double strongest() {
    return Math.max(Math.abs(least), Math.abs(greatest));
  }
}
