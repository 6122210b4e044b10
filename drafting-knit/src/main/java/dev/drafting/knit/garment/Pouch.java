package dev.drafting.knit.garment;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Half of the pouch at the front of briefs, its centre on the right: hollow at the side, full at
 * the centre, and turned under at the bottom. Its side is as long as the edge of the leg to which
 * it is sewn, whatever its fullness.
 */
final class Pouch {
  private static final double EXACT_MM = 1e-9;
  private static final int MOST_STEPS = 200;
  private static final double BOTTOM = 0.3;
  private static final double BOTTOM_IN = 0.7;
  private static final double LONG = 0.4;
  private static final double INTO_SIDE = 0.12;
  private static final Vector UNDER = Vector.at(Angle.degrees(50));

  private final double width;
  private final double seam;
  private final double fullness;

  /**
   * Half as wide at the top; as long at the side; halfway down the centre so far off a straight
   * line.
   */
  Pouch(Length halfWidth, Length side, Length fullness) {
    this.width = halfWidth.toMm();
    this.seam = side.toMm();
    this.fullness = fullness.toMm();
  }

  /** How long half of the bottom is, of a pouch so wide. */
  static Length bottom(Length halfWidth) {
    return halfWidth.times(BOTTOM);
  }

  Piece piece(String name) {
    Point bottom = new Point(BOTTOM_IN * width, 0);
    Point inner = bottom.plus(UNDER.left().times(BOTTOM * width));
    double top = top(inner);
    Point centre = new Point(width, top);
    return Piece.of(
            name,
            List.of(
                Edge.of("bottom", Curve.line(inner, bottom)),
                Edge.of("centre", centre(bottom, centre)),
                Edge.of("waist", Curve.line(centre, new Point(0, top))),
                Edge.of("side", side(inner, top).reversed())))
        .withCutting(Cutting.pairs(1));
  }

  /** How high the upper edge is, so that the side has its length. */
  private double top(Point inner) {
    UnivariateFunction over = y -> side(inner, y).length().toMm() - seam;
    return new BrentSolver(EXACT_MM).solve(MOST_STEPS, over, inner.y(), inner.y() + seam);
  }

  /** Square to the bottom and to the upper edge. */
  private Curve side(Point inner, double top) {
    return Curve.of(
        new Cubic(
            inner,
            inner.plus(UNDER.times(INTO_SIDE * seam)),
            new Point(0, top - LONG * seam),
            new Point(0, top)));
  }

  /** Square to the bottom and to the upper edge; its first handle makes it as full as wanted. */
  private Curve centre(Point bottom, Point top) {
    Vector outwards = top.minus(bottom).unit().left().negated();
    Vector down = new Vector(0, -LONG * seam);
    double handle = (8 * fullness / 3 - outwards.dot(down)) / outwards.dot(UNDER);
    return Curve.of(new Cubic(bottom, bottom.plus(UNDER.times(handle)), top.plus(down), top));
  }
}
