package dev.drafting.core.cut;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Pieces that can be reckoned in the head. */
final class Rectangles {
  private Rectangles() {}

  /** From the origin to the right and up: bottom, right, top, left. */
  static Piece piece(String name, double width, double height) {
    Point b = new Point(width, 0);
    Point c = new Point(width, height);
    Point d = new Point(0, height);
    Point a = new Point(0, 0);
    return Piece.of(
        name,
        List.of(
            Edge.of("bottom", Curve.line(a, b)),
            Edge.of("right", Curve.line(b, c)),
            Edge.of("top", Curve.line(c, d)),
            Edge.of("left", Curve.line(d, a))));
  }

  /** A straight foot of this width, and a rim from its right end to its left one. */
  static Piece foot(String name, double width, Curve rim) {
    Curve foot = Curve.line(new Point(0, 0), new Point(width, 0));
    return Piece.of(name, List.of(Edge.of("foot", foot), Edge.of("rim", rim)));
  }

  /** The same piece, told from another edge on. */
  static Piece toldFrom(Piece piece, int first) {
    List<Edge> edges = new ArrayList<>(piece.edges());
    Collections.rotate(edges, -first);
    Piece told = Piece.of(piece.name(), edges).withGrain(piece.grain());
    return told.withCutting(piece.cutting()).withCloth(piece.cloth());
  }
}
