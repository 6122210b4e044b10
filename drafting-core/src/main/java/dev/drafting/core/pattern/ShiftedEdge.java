package dev.drafting.core.pattern;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The curve of an edge that is moved sideways. The move grows and fades as 3u² - 2u³ of the length;
 * handles follow its slope, so that the edge stays smooth where it was.
 */
final class ShiftedEdge {
  /** What an arc may be off by when it becomes cubics. */
  private static final Length FITTING = Length.mm(0.001);

  private final SideShift shift;
  private final List<Cubic> cubics;

  /** Where the cubics meet, along the edge. */
  private final double[] along;

  private final Vector[] outside;
  private final Vector[] moves;

  private ShiftedEdge(SideShift shift, List<Cubic> cubics, Vector atStart, Vector atEnd) {
    this.shift = shift;
    this.cubics = cubics;
    int n = cubics.size();
    along = new double[n + 1];
    outside = new Vector[n + 1];
    moves = new Vector[n + 1];
    along[0] = shift.from().toMm();
    for (int i = 0; i <= n; i++) {
      if (i > 0) {
        along[i] = along[i - 1] + cubics.get(i - 1).length().toMm();
      }
      outside[i] = outside(direction(i));
      moves[i] = outside[i].times(share(along[i]) * shift.outward().toMm());
    }
    moves[0] = atStart.equals(CornerMoves.NONE) ? moves[0] : atStart;
    moves[n] = atEnd.equals(CornerMoves.NONE) ? moves[n] : atEnd;
  }

  static Vector outside(Vector direction) {
    return direction.left().negated();
  }

  static Curve of(Curve curve, SideShift shift, Vector atStart, Vector atEnd) {
    List<Segment> segments = new ArrayList<>();
    if (shift.from().isPositive()) {
      segments.addAll(curve.between(Length.ZERO, shift.from()).segments());
    }
    segments.addAll(new ShiftedEdge(shift, between(curve, shift), atStart, atEnd).moved());
    if (shift.to().compareTo(curve.length()) < 0) {
      segments.addAll(curve.between(shift.to(), curve.length()).segments());
    }
    return Curve.of(segments);
  }

  private static List<Cubic> between(Curve curve, SideShift shift) {
    List<Cubic> cubics = new ArrayList<>();
    if (shift.from().compareTo(shift.at()) < 0) {
      addCubics(curve.between(shift.from(), shift.at()), cubics);
    }
    if (shift.at().compareTo(shift.to()) < 0) {
      addCubics(curve.between(shift.at(), shift.to()), cubics);
    }
    return cubics;
  }

  private static void addCubics(Curve part, List<Cubic> cubics) {
    for (Segment segment : part.segments()) {
      if (segment instanceof Cubic cubic) {
        cubics.add(cubic);
      } else if (segment instanceof Arc arc) {
        cubics.addAll(arc.toCubics(FITTING));
      } else {
        Point start = segment.start();
        Point end = segment.end();
        cubics.add(new Cubic(start, start.between(end, 1.0 / 3), start.between(end, 2.0 / 3), end));
      }
    }
  }

  /** Halfway between the directions before and after. */
  private Vector direction(int joint) {
    Vector in = cubics.get(Math.max(joint - 1, 0)).directionAt(joint == 0 ? 0 : 1);
    Vector out =
        cubics.get(Math.min(joint, cubics.size() - 1)).directionAt(joint == cubics.size() ? 1 : 0);
    Vector sum = in.plus(out);
    return sum.length().isZero() ? in : sum.unit();
  }

  private List<Segment> moved() {
    List<Segment> moved = new ArrayList<>();
    for (int i = 0; i < cubics.size(); i++) {
      Cubic cubic = cubics.get(i);
      Point start = cubic.start().plus(moves[i]);
      Point end = cubic.end().plus(moves[i + 1]);
      Vector leaving = cubic.control1().minus(cubic.start());
      Vector arriving = cubic.end().minus(cubic.control2());
      Vector turnedOut = leaving.plus(tilt(i, leaving));
      Vector turnedIn = arriving.plus(tilt(i + 1, arriving));
      moved.add(new Cubic(start, start.plus(turnedOut), end.plus(turnedIn.negated()), end));
    }
    return moved;
  }

  private Vector tilt(int joint, Vector handle) {
    return outside[joint].times(
        slope(along[joint]) * shift.outward().toMm() * handle.length().toMm());
  }

  private double share(double place) {
    double u = part(place);
    return u * u * (3 - 2 * u);
  }

  private double slope(double place) {
    double u = part(place);
    double at = shift.at().toMm();
    double way = place <= at ? at - shift.from().toMm() : at - shift.to().toMm();
    return way == 0 ? 0 : 6 * u * (1 - u) / way;
  }

  /** How far from the end of the move towards its largest place, 0 to 1. */
  private double part(double place) {
    double at = shift.at().toMm();
    double end = place <= at ? shift.from().toMm() : shift.to().toMm();
    return at == end ? 1 : Math.max(0, Math.min(1, (place - end) / (at - end)));
  }
}
