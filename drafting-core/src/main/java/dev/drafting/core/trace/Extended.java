package dev.drafting.core.trace;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Nearest;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** A fitted edge that runs on straight for a while beyond both of its ends. */
final class Extended {
  private static final double CLEAR_MM = 1e-3;
  private static final double BEYOND_MM = 2 * Joining.FARTHEST_MM;

  final Curve edge;
  final Curve whole;
  final double length;

  Extended(Curve edge) {
    this.edge = edge;
    this.length = edge.length().toMm();
    List<Segment> all = new ArrayList<>();
    Vector in = edge.directionAt(Length.ZERO);
    Vector out = edge.directionAt(edge.length());
    all.add(new Line(edge.start().plus(in.times(-BEYOND_MM)), edge.start()));
    all.addAll(edge.segments());
    all.add(new Line(edge.end(), edge.end().plus(out.times(BEYOND_MM))));
    this.whole = Curve.of(all);
  }

  Nearest nearest(Point point) {
    return whole.nearest(point);
  }

  /** The unit direction from the edge to a point that lies off it, or square to the edge. */
  Vector square(Nearest nearest, Point point) {
    if (nearest.distance().toMm() > CLEAR_MM) {
      return point.minus(nearest.point()).unit();
    }
    return whole.directionAt(nearest.along()).left();
  }

  /** How far along the edge itself this is, from 0 to its length, in mm. */
  double along(Nearest nearest) {
    return Math.min(Math.max(nearest.along().toMm() - BEYOND_MM, 0), length);
  }
}
