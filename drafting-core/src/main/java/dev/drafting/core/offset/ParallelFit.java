package dev.drafting.core.offset;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;

/**
 * Fits one cubic to the parallel of a stretch of a cubic. End points and end tangents are those of
 * the true parallel; the two handle lengths are found by least squares of the normal deviation at a
 * few stations (Gauss-Newton, with the parameter of every station brought back to the normal in
 * every round; Hoschek, "Spline approximation of offset curves", 1988).
 */
final class ParallelFit {
  private static final int STATIONS = 5;
  private static final int ROUNDS = 12;

  /** Deviations between stations and what the proof needs are allowed for by this share. */
  private static final double GOOD_ENOUGH = 0.3;

  private static final double PROOF = 0.8;

  private final Point start;
  private final Point end;
  private final Vector startWay;
  private final Vector endWay;
  private final double tolerance;
  private double startHandle;
  private double endHandle;

  // of every station: the point of the parallel, the direction there, and the fit's parameter
  private final double[] x = new double[STATIONS];
  private final double[] y = new double[STATIONS];
  private final double[] wayX = new double[STATIONS];
  private final double[] wayY = new double[STATIONS];
  private final double[] u = new double[STATIONS];

  // the normal equations of the deviations for the handles as they are
  private double aa;
  private double ab;
  private double bb;
  private double ar;
  private double br;
  private double sum;
  private double deviation;

  /**
   * Fits a cubic.
   *
   * @param source the stretch
   * @param distance millimetres, + to the right of the direction of travel
   * @param from where the parallel starts
   * @param to where it ends
   * @param tolerance millimetres; well below it the fit is not improved any more
   */
  ParallelFit(
      CubicCoefficients source,
      double distance,
      CubicParallel.Place from,
      CubicParallel.Place to,
      double tolerance) {
    this.start = from.point();
    this.startWay = from.way();
    this.end = to.point();
    this.endWay = to.way();
    this.tolerance = tolerance;
    startHandle = handle(source, distance, 0);
    endHandle = handle(source, distance, 1);
    lookFromStations(source, distance);
    improve();
  }

  /** A third of the true parallel's speed, which is right for short stretches. */
  private double handle(CubicCoefficients source, double distance, double t) {
    double dx = source.dx(t);
    double dy = source.dy(t);
    double square = dx * dx + dy * dy;
    if (square == 0) {
      return Math.hypot(end.x() - start.x(), end.y() - start.y()) / 3;
    }
    double bend = (dx * source.ddy(t) - dy * source.ddx(t)) / square;
    return Math.max(0, Math.sqrt(square) + bend * distance) / 3;
  }

  private void lookFromStations(CubicCoefficients source, double distance) {
    for (int k = 0; k < STATIONS; k++) {
      double t = (k + 1.0) / (STATIONS + 1);
      double dx = source.dx(t);
      double dy = source.dy(t);
      double speed = Math.sqrt(dx * dx + dy * dy);
      if (speed > 0) {
        wayX[k] = dx / speed;
        wayY[k] = dy / speed;
      }
      x[k] = source.x(t) + distance * wayY[k];
      y[k] = source.y(t) - distance * wayX[k];
      u[k] = t;
    }
  }

  Cubic cubic() {
    return new Cubic(
        start, start.plus(startWay.times(startHandle)), end.plus(endWay.times(-endHandle)), end);
  }

  /** The greatest deviation at a station, in millimetres. */
  double deviation() {
    return deviation;
  }

  /**
   * How many times as long a stretch would be fitted just within the tolerance: the deviation grows
   * with the sixth power of the length. A little is left for what the proof needs.
   */
  double reach() {
    return Math.pow(PROOF * tolerance / deviation, 1.0 / 6);
  }

  /** Gauss-Newton, damped: a round that makes matters worse is taken back and tried more gently. */
  private void improve() {
    double longest =
        3 * (startHandle + endHandle) + Math.hypot(end.x() - start.x(), end.y() - start.y());
    double damping = 1e-6;
    look();
    for (int round = 0; round < ROUNDS && deviation > GOOD_ENOUGH * tolerance; round++) {
      double keptStart = startHandle;
      double keptEnd = endHandle;
      double before = sum;
      double dampedA = aa * (1 + damping);
      double dampedB = bb * (1 + damping);
      double det = dampedA * dampedB - ab * ab;
      if (!(det > 0)) {
        return;
      }
      startHandle -= (dampedB * ar - ab * br) / det;
      endHandle -= (dampedA * br - ab * ar) / det;
      boolean possible =
          startHandle >= 0 && endHandle >= 0 && startHandle < longest && endHandle < longest;
      if (possible) {
        look();
      }
      if (possible && sum < before) {
        damping /= 10;
        if (sum > 0.9 * before) {
          return;
        }
      } else {
        startHandle = keptStart;
        endHandle = keptEnd;
        damping = Math.max(damping * 100, 1e-4);
        look();
      }
    }
  }

  /** Compares the fit, for the handles as they are, with the parallel at every station. */
  private void look() {
    aa = 0;
    ab = 0;
    bb = 0;
    ar = 0;
    br = 0;
    sum = 0;
    deviation = 0;
    double handleX = 3 * startHandle * startWay.dx();
    double handleY = 3 * startHandle * startWay.dy();
    double spanX = end.x() - start.x();
    double spanY = end.y() - start.y();
    double lastX = 3 * (spanX - endHandle * endWay.dx());
    double lastY = 3 * (spanY - endHandle * endWay.dy());
    // start + u (handle + u (second + u third)), in powers of u
    double secondX = lastX - 2 * handleX;
    double secondY = lastY - 2 * handleY;
    double thirdX = spanX - secondX - handleX;
    double thirdY = spanY - secondY - handleY;
    for (int k = 0; k < STATIONS; k++) {
      double alongX = wayX[k];
      double alongY = wayY[k];
      double toX = start.x() - x[k];
      double toY = start.y() - y[k];
      double at = u[k];
      double offX = 0;
      double offY = 0;
      for (int step = 0; step < 3; step++) {
        offX = toX + at * (handleX + at * (secondX + at * thirdX));
        offY = toY + at * (handleY + at * (secondY + at * thirdY));
        double dx = handleX + at * (2 * secondX + at * 3 * thirdX);
        double dy = handleY + at * (2 * secondY + at * 3 * thirdY);
        double slope = dx * alongX + dy * alongY;
        double past = offX * alongX + offY * alongY;
        if (slope <= 0 || Math.abs(past) <= 0.01 * tolerance) {
          break;
        }
        at = Math.max(0.001, Math.min(0.999, at - past / slope));
      }
      u[k] = at;
      add(
          offX * alongY - offY * alongX,
          3 * (1 - at) * (1 - at) * at * (startWay.dx() * alongY - startWay.dy() * alongX),
          -3 * (1 - at) * at * at * (endWay.dx() * alongY - endWay.dy() * alongX));
    }
  }

  private void add(double off, double a, double b) {
    aa += a * a;
    ab += a * b;
    bb += b * b;
    ar += a * off;
    br += b * off;
    sum += off * off;
    deviation = Math.max(deviation, Math.abs(off));
  }
}
