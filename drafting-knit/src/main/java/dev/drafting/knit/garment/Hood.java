package dev.drafting.knit.garment;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Half of a hood, its face on the left: a seam runs down its centre from the brow to the back of
 * the neck, and its lower edge is as long as half of the neck to which it is sewn.
 */
final class Hood {
  private static final double EXACT_MM = 1e-9;
  private static final int MOST_STEPS = 200;

  /** How much higher the neck of the hood is at the back, as a share of its length. */
  private static final double RISE = 0.12;

  private static final double LONG = 0.4;
  private static final double WIDEST = 0.6;
  private static final double TOP = 0.45;
  private static final double ROUND = 0.55;

  private Hood() {}

  static Piece piece(String name, Length halfNeck, Length height, Length depth) {
    Curve neck = neck(halfNeck.toMm());
    Point brow = new Point(0, height.toMm());
    return Piece.of(
            name,
            List.of(
                Edge.of("neck", neck),
                Edge.of("centre", centre(neck.end(), brow, depth.toMm())),
                Edge.of("face", Curve.line(brow, neck.start()))))
        .withPointedCorner("face", "neck")
        .withCutting(Cutting.pairs(1));
  }

  private static Curve neck(double length) {
    UnivariateFunction over = x -> neck(x, RISE * length).length().toMm() - length;
    double across = new BrentSolver(EXACT_MM).solve(MOST_STEPS, over, length / 2, length);
    return neck(across, RISE * length);
  }

  /** Square to the face and to the centre. */
  private static Curve neck(double across, double rise) {
    Vector handle = new Vector(LONG * across, 0);
    Point front = new Point(0, 0);
    Point back = new Point(across, rise);
    return Curve.of(new Cubic(front, front.plus(handle), back.plus(handle.negated()), back));
  }

  /** Up the back of the head to where the hood is deepest, round the crown, level to the brow. */
  private static Curve centre(Point nape, Point brow, double depth) {
    Point widest = new Point(depth, WIDEST * brow.y());
    Point crown = new Point(TOP * depth, brow.y());
    Vector up = new Vector(0, LONG * (widest.y() - nape.y()));
    Vector round = new Vector(0, ROUND * (crown.y() - widest.y()));
    Vector over = new Vector(ROUND * (widest.x() - crown.x()), 0);
    return Curve.of(
            new Cubic(nape, nape.plus(up), widest.plus(up.negated()), widest),
            new Cubic(widest, widest.plus(round), crown.plus(over), crown))
        .then(Curve.line(crown, brow));
  }
}
