package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.Comparator;
import java.util.List;

/** Where a placket lies on its piece, measured from its mouth down the opening and across it. */
final class PlacketPlace {
  /** An edge that turns by less from the opening is taken to run along it. */
  private static final double ALONG = 0.1;

  private final Placket placket;
  private final Edge edge;
  private final boolean onFold;
  private final Length along;
  private final Point mouth;
  private final Vector down;
  private final Vector across;
  private final double half;
  private final double deep;

  private PlacketPlace(
      Placket placket,
      Edge edge,
      boolean onFold,
      Length along,
      Point mouth,
      Vector down,
      Vector across) {
    this.placket = placket;
    this.edge = edge;
    this.onFold = onFold;
    this.along = along;
    this.mouth = mouth;
    this.down = down;
    this.across = across;
    this.half = placket.width().toMm() / 2;
    this.deep = placket.length().toMm();
  }

  static PlacketPlace of(Pattern pattern, Placket placket) {
    Piece piece = pattern.piece(placket.edge().piece());
    Edge edge = piece.edge(placket.edge().edge());
    return piece.isOnFold() ? onFold(piece, edge, placket) : whole(piece, edge, placket);
  }

  private static PlacketPlace onFold(Piece piece, Edge edge, Placket placket) {
    List<Edge> edges = piece.edges();
    int at = edges.indexOf(edge);
    Edge next = edges.get((at + 1) % edges.size());
    Edge previous = edges.get((at + edges.size() - 1) % edges.size());
    if (edge.isOnFold()
        || !(next.isOnFold() || previous.isOnFold())
        || placket.along().isPresent()) {
      throw DraftingException.of("a placket in a piece on the fold lies on the fold")
          .value(placket)
          .accepted("an edge that meets the fold, or the piece unfolded");
    }
    Curve fold = next.isOnFold() ? next.curve() : previous.curve().reversed();
    Vector down = fold.end().minus(fold.start()).unit();
    Length along = next.isOnFold() ? edge.length() : Length.ZERO;
    return new PlacketPlace(placket, edge, true, along, fold.start(), down, new Vector(1, 0));
  }

  private static PlacketPlace whole(Piece piece, Edge edge, Placket placket) {
    Length along =
        placket
            .along()
            .filter(from -> from.compareTo(edge.length()) <= 0)
            .orElseThrow(
                () ->
                    DraftingException.of("the piece has no fold to lay the placket on")
                        .value(placket)
                        .accepted("a place on the edge, 0 to " + Text.mm(edge.length())));
    Vector inwards = edge.curve().directionAt(along).left();
    Vector grain = Vector.at(piece.grain());
    double lean = grain.dot(inwards);
    if (Math.abs(lean) < ALONG) {
      throw DraftingException.of("the edge runs along the grain, as the placket would")
          .value(placket)
          .accepted("an edge across the grain");
    }
    Vector down = lean > 0 ? grain : grain.negated();
    return new PlacketPlace(
        placket, edge, false, along, edge.curve().pointAt(along), down, down.left());
  }

  private Point point(double sideways, double deeper) {
    return mouth.plus(across.times(sideways)).plus(down.times(deeper));
  }

  /** Where the edge is crossed by the opening or a side of the placket. */
  private Crossing onEdge(double sideways) {
    double reach = edge.length().toMm() + deep;
    Curve line = Curve.line(point(sideways, -reach), point(sideways, deep));
    return edge.curve().intersections(line).stream()
        .min(Comparator.comparing(crossing -> crossing.point().distanceTo(mouth)))
        .orElseThrow(
            () ->
                DraftingException.of("the placket is wider than its edge")
                    .value(placket)
                    .accepted("a narrower placket, or a place farther from the corner"));
  }

  private double depth(Crossing crossing) {
    return crossing.point().minus(mouth).dot(down);
  }

  private double begins(double sideways) {
    return Math.max(depth(onEdge(sideways)), top(sideways));
  }

  /** How deep the cloth begins there, above the mouth if negative. */
  private double top(double sideways) {
    Crossing crossing = onEdge(sideways);
    return depth(crossing) - beyond(crossing.along());
  }

  /** How far the cloth goes on beyond the finished edge, measured along the opening. */
  private double beyond(Length onEdge) {
    Length cut = edge.finish().profile().cut().orElse(Length.ZERO);
    double lean = edge.curve().directionAt(onEdge).left().dot(down);
    return cut.toMm() / Math.max(lean, ALONG);
  }

  /** Refuses a placket that is wider than its edge. */
  void check() {
    if (longest().compareTo(placket.length().times(2).plus(edge.length())) > 0) {
      throw DraftingException.of("the edge slopes too much for the placket")
          .value(placket)
          .accepted("an edge across the opening");
    }
  }

  /** From the highest cloth that a strip has to meet down to the end of the opening. */
  Length longest() {
    double left = onFold ? top(half) : top(-half);
    return Length.mm(deep - Math.min(-beyond(along), Math.min(left, top(half))));
  }

  /**
   * The finished placket from where the edge is seen and the cloth begins on both its sides; half
   * of it on the fold. Closed.
   */
  Curve outline() {
    double left = onFold ? 0 : -half;
    double start = Math.max(-beyond(along), Math.max(0, begins(half)));
    if (!onFold) {
      start = Math.max(start, begins(-half));
    }
    return Curve.polyline(
        point(left, start),
        point(left, deep),
        point(half, deep),
        point(half, start),
        point(left, start));
  }

  boolean isAcrossGrain(Piece piece) {
    Vector grain = Vector.at(piece.grain());
    return Math.abs(grain.cross(down)) > Math.abs(grain.dot(down));
  }

  /** By what a scale of the piece makes the opening longer. */
  double deeper(PieceScale scale) {
    return grown(scale, down);
  }

  /** By what a scale of the piece makes the opening wider. */
  double wider(PieceScale scale) {
    return grown(scale, across);
  }

  private static double grown(PieceScale scale, Vector way) {
    Point origin = new Point(0, 0);
    return scale.of(origin.plus(way)).minus(scale.of(origin)).length().toMm();
  }

  List<MarkingLine> lines() {
    Point fork = point(0, deep - half);
    Point right = point(half, deep);
    Point slit = point(0, -beyond(along));
    if (onFold) {
      return List.of(
          stitch(Curve.polyline(point(half, top(half)), right, point(0, deep))),
          cut("fold, then into the corner", Curve.polyline(slit, fork, right)));
    }
    Point left = point(-half, deep);
    return List.of(
        stitch(Curve.polyline(point(-half, top(-half)), left, right, point(half, top(half)))),
        cut("middle", Curve.line(slit, fork)),
        cut("end into both corners", Curve.polyline(left, fork, right)));
  }

  private static MarkingLine stitch(Curve line) {
    return MarkingLine.of("placket: sew the strips here", line);
  }

  private static MarkingLine cut(String where, Curve line) {
    return MarkingLine.of("placket: cut at the " + where, line);
  }
}
