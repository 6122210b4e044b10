package dev.drafting.core.offset;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;

/**
 * The closed form of a corner: two directions, two signed distances, and where the two parallel
 * lines meet. With the turn q from A to B, c = cos q and s = sin q, the line beside A reaches the
 * tip after (dB - c dA) / s beyond its end and the line beside B starts (dA - c dB) / s before its
 * beginning; for equal distances both are d tan(q/2). A negative reach means that the parallel is
 * cut short.
 *
 * @param corner the corner itself
 * @param wayA unit direction of the edge that arrives
 * @param wayB unit direction of the edge that leaves
 * @param distanceA its signed distance
 * @param distanceB its signed distance
 * @param cosine cosine of the turn
 * @param sine sine of the turn, positive to the left
 * @param reachA how far the parallel of A goes on beyond its end
 * @param reachB how far the parallel of B begins before its start
 */
record CornerShape(
    Point corner,
    Vector wayA,
    Vector wayB,
    double distanceA,
    double distanceB,
    double cosine,
    double sine,
    double reachA,
    double reachB) {

  static CornerShape of(
      Point corner, Vector wayA, Vector wayB, double distanceA, double distanceB) {
    double c = wayA.dot(wayB);
    double s = wayA.cross(wayB);
    return new CornerShape(
        corner,
        wayA,
        wayB,
        distanceA,
        distanceB,
        c,
        s,
        reach(distanceA, distanceB, c, s),
        reach(distanceB, distanceA, c, s));
  }

  /** (other - c own) / s without cancellation for small turns. */
  private static double reach(double own, double other, double c, double s) {
    if (c > -0.5) {
      double unequal = own == other ? 0 : (other - own) / s;
      return unequal + own * s / (1 + c);
    }
    return (other - c * own) / (s == 0 ? Double.MIN_NORMAL : s);
  }

  /** Whether the two parallels meet already. */
  boolean touches() {
    return Math.abs(reachA) <= CornerPlanner.TOUCHING && Math.abs(reachB) <= CornerPlanner.TOUCHING;
  }

  Point endA() {
    return corner.plus(outwardA().times(distanceA));
  }

  Point startB() {
    return corner.plus(outwardB().times(distanceB));
  }

  Vector outwardA() {
    return Parallels.outward(wayA);
  }

  Vector outwardB() {
    return Parallels.outward(wayB);
  }

  double wider() {
    return Math.max(Math.abs(distanceA), Math.abs(distanceB));
  }

  /** Where the two parallel lines meet; only where they are not parallel to each other. */
  Point tip() {
    return Math.abs(reachA) <= Math.abs(reachB)
        ? endA().plus(wayA.times(reachA))
        : startB().plus(wayB.times(-reachB));
  }

  /** How far the tip lies from the corner, infinite if there is none. */
  double tipDistance() {
    return Math.hypot(reachA, distanceA);
  }
}
