package dev.drafting.export.drawing;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/** Straight arrows with open heads. */
final class Arrow {
  private static final double HEAD = 5;
  private static final double HALF_WIDTH = 1.4;

  private Arrow() {}

  /** A shaft with a head at its end. */
  static List<Stroke> single(StrokeStyle style, String name, Point from, Point to) {
    return List.of(new Stroke(style, name, Curve.line(from, to)), head(style, name, from, to));
  }

  /** A shaft with heads at both ends. */
  static List<Stroke> twoHeaded(StrokeStyle style, String name, Point from, Point to) {
    List<Stroke> arrow = new ArrayList<>(single(style, name, from, to));
    arrow.add(head(style, name, to, from));
    return List.copyOf(arrow);
  }

  private static Stroke head(StrokeStyle style, String name, Point from, Point tip) {
    Vector back = from.minus(tip).unit().times(HEAD);
    Vector side = back.left().unit().times(HALF_WIDTH);
    Point one = tip.plus(back).plus(side);
    Point other = tip.plus(back).plus(side.negated());
    return new Stroke(style, name, Curve.of(new Line(one, tip), new Line(tip, other)));
  }
}
