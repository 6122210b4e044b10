package dev.drafting.core.trace;

import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;

/**
 * Where two neighbouring edges meet: where their fits cross, near the place where the pencil left
 * one and took up the other. Edges that run on into each other cross nowhere in particular: there
 * the corner lies half way between their ends.
 */
final class Corners {
  /** The sine of the least angle, about 11 degrees, at which a crossing says where it is. */
  private static final double CLEAR = 0.2;

  private Corners() {}

  static Point between(FittedEdge before, FittedEdge after) {
    Extended one = new Extended(before.fit().curve());
    Extended other = new Extended(after.fit().curve());
    Point seen = one.edge.end().midpoint(other.edge.start());
    Point best = null;
    for (Crossing crossing : one.whole.intersections(other.whole)) {
      boolean near =
          crossing.point().distanceTo(seen).toMm() <= Joining.FARTHEST_MM
              && (best == null
                  || crossing.point().distanceTo(seen).compareTo(best.distanceTo(seen)) < 0);
      if (near && isClear(one, other, crossing)) {
        best = crossing.point();
      }
    }
    Point corner = best == null ? seen : best;
    if (isLevelLine(before)) {
      return new Point(corner.x(), one.edge.end().y());
    }
    if (isLevelLine(after)) {
      return new Point(corner.x(), other.edge.start().y());
    }
    return corner;
  }

  private static boolean isLevelLine(FittedEdge edge) {
    return edge.fit().form.isStraight() && edge.ends().hasLevel();
  }

  private static boolean isClear(Extended one, Extended other, Crossing crossing) {
    Vector in = one.whole.directionAt(crossing.along());
    Vector out = other.whole.directionAt(crossing.alongOther());
    return Math.abs(in.cross(out)) >= CLEAR;
  }
}
