package dev.drafting.core.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/**
 * Tells a corner from a bend by what each explains of a stretch beyond a smooth cubic whose
 * curvature may jump: a direction that turns at once, or one that turns evenly over some length.
 * What is straight on one side has no curvature to jump, so that it says more about the turn.
 */
final class CornerOrBend {
  /** Half of the shortest bend: what turns on less is a corner to a maker. */
  private static final double SHORTEST_MM = 27;

  private static final double LONGER = 1.3;
  private static final double BEND_ASIDE = 0.1;
  private static final int BENDS_ASIDE = 4;

  /** A corner may lie at this many blocks before and behind, and halfway between them. */
  private static final int BLOCKS_ASIDE = 1;

  /** The same beside a straight stretch, which tells more surely where it ends. */
  private static final int BLOCKS_ASIDE_STRAIGHT = 2;

  private final double[] way;
  private final double at;
  private final double half;
  private final int aside;
  private final List<RealVector> smooth = new ArrayList<>();
  private final RealVector restX;
  private final RealVector restY;

  /** Looks at the blocks from one to another, both counted, with something about halfway. */
  CornerOrBend(
      Walk walk,
      int from,
      int to,
      double at,
      double half,
      boolean straightBefore,
      boolean straightAfter) {
    int count = to - from + 1;
    this.way = new double[count];
    System.arraycopy(walk.way, from, way, 0, count);
    this.at = at;
    this.half = half;
    this.aside = straightBefore || straightAfter ? BLOCKS_ASIDE_STRAIGHT : BLOCKS_ASIDE;
    addSmooth(t -> 1);
    addSmooth(t -> t);
    if (!straightBefore && !straightAfter) {
      addSmooth(t -> t * t);
      addSmooth(t -> t * t * t);
      addSmooth(t -> t * Math.abs(t));
    } else if (!straightBefore || !straightAfter) {
      double side = straightBefore ? 1 : -1;
      addSmooth(t -> Math.pow(Math.max(side * t, 0), 2));
      addSmooth(t -> Math.pow(Math.max(side * t, 0), 3));
    }
    this.restX = rest(offsets(walk.x, from));
    this.restY = rest(offsets(walk.y, from));
  }

  /** Less the first, so that where the stretch lies costs no digits. */
  private RealVector offsets(double[] all, int from) {
    RealVector offsets = new ArrayRealVector(way.length);
    for (int i = 0; i < way.length; i++) {
      offsets.setEntry(i, all[from + i] - all[from]);
    }
    return offsets;
  }

  private void addSmooth(DoubleUnaryOperator shape) {
    RealVector rest = rest(along(shape, at));
    double size = rest.getNorm();
    if (size > 0) {
      smooth.add(rest.mapDivide(size));
    }
  }

  private RealVector along(DoubleUnaryOperator shape, double middle) {
    RealVector values = new ArrayRealVector(way.length);
    for (int i = 0; i < way.length; i++) {
      values.setEntry(i, shape.applyAsDouble(way[i] - middle));
    }
    return values;
  }

  /** What the smooth shapes leave over; taken off twice, as once loses digits. */
  private RealVector rest(RealVector values) {
    RealVector rest = values;
    for (int time = 0; time < 2; time++) {
      for (RealVector shape : smooth) {
        rest = rest.subtract(shape.mapMultiply(shape.dotProduct(rest)));
      }
    }
    return rest;
  }

  /**
   * Whether a corner explains no less than the best of the bends; or none could be seen, as the
   * points lie farther apart than it is long.
   */
  boolean isCorner() {
    int found = Arrays.binarySearch(way, at);
    int after = found < 0 ? -found - 1 : found + 1;
    int before = Math.max(0, after - 1);
    if (way[Math.min(after, way.length - 1)] - way[before] >= SHORTEST_MM) {
      return true;
    }
    int first = Math.max(0, before - aside);
    int last = Math.min(way.length - 1, before + 1 + aside);
    double corner = 0;
    double place = at;
    for (int i = 2 * first; i <= 2 * last; i++) {
      double here = (way[i / 2] + way[(i + 1) / 2]) / 2;
      double explained = explained(Math::abs, here);
      place = explained > corner ? here : place;
      corner = Math.max(corner, explained);
    }
    if (turn(place) < Joint.SHALLOWEST) {
      return false;
    }
    double longest = Math.max(half, SHORTEST_MM);
    for (double reach = SHORTEST_MM; reach <= longest; reach *= LONGER) {
      double round = reach;
      for (int shift = -BENDS_ASIDE; shift <= BENDS_ASIDE; shift++) {
        double middle = at + shift * BEND_ASIDE * reach;
        if (explained(t -> bend(t, round), middle) > corner) {
          return false;
        }
      }
    }
    return true;
  }

  /** Turns evenly over a length to both sides of its middle, and is straight beyond. */
  private static double bend(double t, double reach) {
    return Math.abs(t) >= reach ? Math.abs(t) : (t * t + reach * reach) / (2 * reach);
  }

  /** By how much the line turns if it turns here at once, in radians. */
  private double turn(double corner) {
    RealVector rest = rest(along(Math::abs, corner));
    double size = rest.dotProduct(rest);
    double slope = Math.hypot(rest.dotProduct(restX), rest.dotProduct(restY)) / size;
    return size == 0 ? 0 : 2 * Math.asin(Math.min(1, slope));
  }

  private double explained(DoubleUnaryOperator shape, double middle) {
    RealVector rest = rest(along(shape, middle));
    double size = rest.dotProduct(rest);
    double x = rest.dotProduct(restX);
    double y = rest.dotProduct(restY);
    return size == 0 ? 0 : (x * x + y * y) / size;
  }
}
