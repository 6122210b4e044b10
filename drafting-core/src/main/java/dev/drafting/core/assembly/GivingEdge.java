package dev.drafting.core.assembly;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * An edge that gives way: eight numbers in mm say how its start and its end move, and how much it
 * swings out as it leaves the one and arrives at the other. In between the moves fade as Hermite's
 * cubics of the share of the way, so that smooth joints stay smooth.
 */
final class GivingEdge {
  static final int FREEDOMS = 8;

  /** The integrals of the products of Hermite's cubics: start, end, swing at start, at end. */
  private static final double[][] OF_CURVE = {
    {13 / 35.0, 9 / 70.0, 11 / 210.0, -13 / 420.0},
    {9 / 70.0, 13 / 35.0, 13 / 420.0, -11 / 210.0},
    {11 / 210.0, 13 / 420.0, 1 / 105.0, -1 / 140.0},
    {-13 / 420.0, -11 / 210.0, -1 / 140.0, 1 / 105.0}
  };

  private static final double[][] OF_LINE = {
    {1 / 3.0, 1 / 6.0, 0, 0}, {1 / 6.0, 1 / 3.0, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}
  };

  private static final Length FITTING = Length.mm(1e-4);
  private static final double PROBE_MM = 0.01;
  private static final int PLACES = 16;

  private final Curve drawn;
  private final List<Segment> segments;
  private final double length;
  private final boolean straight;

  /** An edge as it is drawn; a straight one stays straight unless it may bend. */
  GivingEdge(Curve drawn, boolean mayBend) {
    this.drawn = drawn;
    this.length = drawn.length().toMm();
    this.straight = isStraight(drawn) && !mayBend;
    this.segments = new ArrayList<>();
    for (Segment segment : drawn.segments()) {
      if (segment instanceof Arc arc) {
        segments.addAll(arc.toCubics(FITTING));
      } else {
        segments.add(straight ? segment : cubic(segment));
      }
    }
  }

  static boolean isStraight(Curve curve) {
    return curve.segments().stream().allMatch(Line.class::isInstance);
  }

  boolean isStraight() {
    return straight;
  }

  /** What a move costs: the square of how far it goes, summed along the edge. */
  double weight(int one, int other) {
    double[][] products = straight ? OF_LINE : OF_CURVE;
    return one % 2 == other % 2 ? length * products[one / 2][other / 2] : 0;
  }

  /** The edge when it gives way by this much; itself, to the last bit, if by nothing. */
  Curve curve(double[] give) {
    boolean still = true;
    for (double one : give) {
      still &= one == 0;
    }
    if (still) {
      return drawn;
    }
    List<Segment> bent = new ArrayList<>();
    double from = 0;
    for (int i = 0; i < segments.size(); i++) {
      double to = i == segments.size() - 1 ? 1 : from + segments.get(i).length().toMm() / length;
      bent.add(bent(segments.get(i), from, to, give));
      from = to;
    }
    return Curve.of(bent);
  }

  private Segment bent(Segment segment, double from, double to, double[] give) {
    Point start = segment.start().plus(move(from, give));
    Point end = segment.end().plus(move(to, give));
    if (!(segment instanceof Cubic cubic)) {
      return new Line(start, end);
    }
    double first = cubic.control1().distanceTo(cubic.start()).toMm() / length;
    double second = cubic.end().distanceTo(cubic.control2()).toMm() / length;
    return new Cubic(
        start,
        cubic.control1().plus(move(from, give).plus(slope(from, give).times(first))),
        cubic.control2().plus(move(to, give).minus(slope(to, give).times(second))),
        end);
  }

  private Vector move(double u, double[] give) {
    double v = 1 - u;
    double[] ofLine = {v, u, 0, 0};
    double[] ofCurve = {v * v * (1 + 2 * u), u * u * (3 - 2 * u), u * v * v, -u * u * v};
    return sum(straight ? ofLine : ofCurve, give);
  }

  private Vector slope(double u, double[] give) {
    double[] shares = {-6 * u * (1 - u), 6 * u * (1 - u), (1 - u) * (1 - 3 * u), u * (3 * u - 2)};
    return sum(shares, give);
  }

  private static Vector sum(double[] shares, double[] give) {
    double x = 0;
    double y = 0;
    for (int i = 0; i < shares.length; i++) {
      x += shares[i] * give[2 * i];
      y += shares[i] * give[2 * i + 1];
    }
    return new Vector(x, y);
  }

  private static Cubic cubic(Segment segment) {
    if (segment instanceof Cubic cubic) {
      return cubic;
    }
    Vector third = segment.end().minus(segment.start()).times(1.0 / 3);
    return new Cubic(
        segment.start(),
        segment.start().plus(third),
        segment.end().plus(third.negated()),
        segment.end());
  }

  /** The farthest that any place of it moves, in mm. */
  double farthest(double[] give) {
    double farthest = 0;
    for (int i = 0; i <= PLACES; i++) {
      Vector move = move((double) i / PLACES, give);
      farthest = Math.max(farthest, Math.hypot(move.dx(), move.dy()));
    }
    return farthest;
  }

  /** What seams and corners see of an edge: its length in mm, its directions in radians. */
  double[] seen(double[] give) {
    Curve curve = curve(give);
    Vector leaving = curve.directionAt(Length.ZERO);
    Vector arriving = curve.directionAt(curve.length());
    return new double[] {
      curve.length().toMm(),
      Math.atan2(leaving.dy(), leaving.dx()),
      Math.atan2(arriving.dy(), arriving.dx())
    };
  }

  /** How fast each of what is seen changes with each of the freedoms. */
  double[][] slopes(double[] give) {
    double[][] slopes = new double[3][FREEDOMS];
    for (int f = 0; f < (straight ? 4 : FREEDOMS); f++) {
      double[] more = give.clone();
      more[f] += PROBE_MM;
      double[] less = give.clone();
      less[f] -= PROBE_MM;
      double[] above = seen(more);
      double[] below = seen(less);
      for (int k = 0; k < slopes.length; k++) {
        double change = above[k] - below[k];
        slopes[k][f] = (k == 0 ? change : Math.IEEEremainder(change, 2 * Math.PI)) / (2 * PROBE_MM);
      }
    }
    return slopes;
  }
}
