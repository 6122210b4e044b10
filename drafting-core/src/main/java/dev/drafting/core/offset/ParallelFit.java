package dev.drafting.core.offset;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;

/**
 * Fits one cubic to the parallel of a stretch of a cubic. End points and end tangents are those of
 * the true parallel; the two handle lengths are found by least squares of the normal deviation at a
 * few stations (Gauss-Newton, with the parameter of every station brought back to the foot of the
 * perpendicular in every round; Hoschek, "Spline approximation of offset curves", 1988).
 */
final class ParallelFit {
  private static final int STATIONS = 7;
  private static final int ROUNDS = 12;

  private final CubicCoefficients source;
  private final double distance;
  private final Point start;
  private final Point end;
  private final Vector startWay;
  private final Vector endWay;
  private double startHandle;
  private double endHandle;

  private ParallelFit(
      CubicCoefficients source,
      double distance,
      Point start,
      Vector startWay,
      Point end,
      Vector endWay) {
    this.source = source;
    this.distance = distance;
    this.start = start;
    this.startWay = startWay;
    this.end = end;
    this.endWay = endWay;
    this.startHandle = handle(0);
    this.endHandle = handle(1);
  }

  static Cubic fit(
      CubicCoefficients source,
      double distance,
      Point start,
      Vector startWay,
      Point end,
      Vector endWay) {
    ParallelFit fit = new ParallelFit(source, distance, start, startWay, end, endWay);
    fit.improve();
    return fit.cubic();
  }

  /** A third of the true parallel's speed, which is right for short stretches. */
  private double handle(double t) {
    double dx = source.dx(t);
    double dy = source.dy(t);
    double square = dx * dx + dy * dy;
    if (square == 0) {
      return Math.hypot(end.x() - start.x(), end.y() - start.y()) / 3;
    }
    double bend = (dx * source.ddy(t) - dy * source.ddx(t)) / square;
    return Math.max(0, Math.sqrt(square) + bend * distance) / 3;
  }

  private Cubic cubic() {
    return new Cubic(
        start, start.plus(startWay.times(startHandle)), end.plus(endWay.times(-endHandle)), end);
  }

  /** Gauss-Newton, damped: a round that makes matters worse is taken back and tried more gently. */
  private void improve() {
    double longest = 3 * (startHandle + endHandle) + end.minus(start).length().toMm();
    double damping = 1e-6;
    Normal best = new Normal();
    for (int round = 0; round < ROUNDS; round++) {
      double keptStart = startHandle;
      double keptEnd = endHandle;
      double aa = best.aa * (1 + damping);
      double bb = best.bb * (1 + damping);
      double det = aa * bb - best.ab * best.ab;
      if (!(det > 0)) {
        return;
      }
      startHandle -= (bb * best.ar - best.ab * best.br) / det;
      endHandle -= (aa * best.br - best.ab * best.ar) / det;
      boolean possible =
          startHandle >= 0 && endHandle >= 0 && startHandle < longest && endHandle < longest;
      Normal next = possible ? new Normal() : best;
      if (next.sum < best.sum) {
        damping /= 10;
        boolean done = next.sum > 0.98 * best.sum;
        best = next;
        if (done) {
          return;
        }
      } else {
        startHandle = keptStart;
        endHandle = keptEnd;
        damping = Math.max(damping * 100, 1e-4);
      }
    }
  }

  /** The normal equations of the deviations at the stations, for the handles as they are. */
  private final class Normal {
    private double aa;
    private double ab;
    private double bb;
    private double ar;
    private double br;
    private double sum;

    Normal() {
      CubicCoefficients now = new CubicCoefficients(cubic());
      for (int k = 1; k <= STATIONS; k++) {
        add(now, (double) k / (STATIONS + 1));
      }
    }

    private void add(CubicCoefficients now, double t) {
      double dx = source.dx(t);
      double dy = source.dy(t);
      double speed = Math.sqrt(dx * dx + dy * dy);
      if (speed == 0) {
        return;
      }
      double wayX = dx / speed;
      double wayY = dy / speed;
      double x = source.x(t) + distance * wayY;
      double y = source.y(t) - distance * wayX;
      double u = beside(now, t, x, y, wayX, wayY);
      double off = (now.x(u) - x) * wayY - (now.y(u) - y) * wayX;
      double a = 3 * (1 - u) * (1 - u) * u * (startWay.dx() * wayY - startWay.dy() * wayX);
      double b = -3 * (1 - u) * u * u * (endWay.dx() * wayY - endWay.dy() * wayX);
      aa += a * a;
      ab += a * b;
      bb += b * b;
      ar += a * off;
      br += b * off;
      sum += off * off;
    }
  }

  /** The parameter at which the fitted cubic crosses the normal of a station. */
  private static double beside(
      CubicCoefficients now, double guess, double x, double y, double wayX, double wayY) {
    double u = guess;
    for (int i = 0; i < 4; i++) {
      double slope = now.dx(u) * wayX + now.dy(u) * wayY;
      if (slope <= 0) {
        break;
      }
      u -= ((now.x(u) - x) * wayX + (now.y(u) - y) * wayY) / slope;
      u = Math.max(0.001, Math.min(0.999, u));
    }
    return u;
  }
}
