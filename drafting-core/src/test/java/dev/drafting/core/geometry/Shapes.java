package dev.drafting.core.geometry;

import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Shapes of the size of garments for jqwik: lengths in millimetres, about half a metre across. */
final class Shapes {
  static final Point ORIGIN = new Point(0, 0);

  private Shapes() {}

  static Point p(double x, double y) {
    return new Point(x, y);
  }

  static Curve circle(double radius) {
    return Curve.of(Arc.of(ORIGIN, Length.mm(radius), Angle.degrees(0), Angle.degrees(360)));
  }

  static Arbitrary<Double> coordinates() {
    return Arbitraries.doubles().between(-300, 300).ofScale(3);
  }

  static Arbitrary<Point> points() {
    return Combinators.combine(coordinates(), coordinates()).as(Point::new);
  }

  static Arbitrary<Cubic> cubics() {
    return Combinators.combine(points(), points(), points(), points())
        .as(Cubic::new)
        .filter(cubic -> cubic.start().gap(cubic.end()) > 1)
        .withoutEdgeCases();
  }

  /** Moves, turns and reflections: nothing that changes a length. */
  static Arbitrary<Transform> motions() {
    Arbitrary<Double> degrees = Arbitraries.doubles().between(-360, 360).ofScale(3);
    return Combinators.combine(points(), points(), degrees, Arbitraries.of(true, false))
        .as(
            (about, way, turn, mirrored) ->
                (mirrored ? Transform.mirrorInFold() : Transform.identity())
                    .then(Transform.rotation(about, Angle.degrees(turn)))
                    .then(Transform.translation(way.minus(ORIGIN))))
        .withoutEdgeCases();
  }

  /** Chains of one to five lines, cubics and arcs at random; they may cross themselves. */
  static Arbitrary<Curve> curves() {
    Arbitrary<List<Point>> corners = points().list().ofSize(16);
    Arbitrary<List<Integer>> kinds =
        Arbitraries.integers().between(0, 2).list().ofMinSize(1).ofMaxSize(5);
    return Combinators.combine(corners, kinds)
        .as(Shapes::chain)
        .filter(c -> c.segments().size() > 0);
  }

  private static Curve chain(List<Point> points, List<Integer> kinds) {
    List<Segment> segments = new ArrayList<>();
    Point from = points.get(0);
    int next = 1;
    for (int kind : kinds) {
      Point a = points.get(next++);
      Point b = points.get(next++);
      Point to = away(points.get(next++), from);
      segments.add(segment(kind, from, a, b, to));
      from = to;
    }
    return Curve.of(segments);
  }

  /** The next point, moved off when it happens to be the one before. */
  private static Point away(Point to, Point from) {
    return to.gap(from) > 1 ? to : to.plus(new Vector(50, 20));
  }

  private static Segment segment(int kind, Point from, Point a, Point b, Point to) {
    if (kind == 2) {
      Vector across = to.minus(from).left().times(0.1 + Math.abs(a.x()) / 300);
      return Arc.through(from, from.midpoint(to).plus(a.y() < 0 ? across : across.negated()), to);
    }
    return kind == 1 ? new Cubic(from, handle(a, from), handle(b, to), to) : new Line(from, to);
  }

  /** One handle in ten has no length. */
  private static Point handle(Point wanted, Point end) {
    return Math.abs(wanted.x()) < 30 ? end : wanted;
  }

  /**
   * Closed counter-clockwise outlines of three to nine edges round the origin, lines and gentle
   * cubics in turn. They do not cross themselves: every edge keeps to its own sector.
   */
  static Arbitrary<Curve> outlines() {
    Arbitrary<Double> radius = Arbitraries.doubles().between(150, 250).ofScale(3);
    Arbitrary<Double> bulge = Arbitraries.doubles().between(-0.15, 0.15).ofScale(3);
    return Combinators.combine(
            radius.list().ofMinSize(3).ofMaxSize(9), bulge.list().ofSize(9), points())
        .as(Shapes::outline)
        .withoutEdgeCases();
  }

  private static Curve outline(List<Double> radii, List<Double> bulges, Point centre) {
    int count = radii.size();
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      Vector out = Vector.at(Angle.degrees(360.0 * (i % count) / count));
      corners.add(centre.plus(out.times(radii.get(i % count))));
    }
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point from = corners.get(i);
      Point to = corners.get(i + 1);
      Vector across = to.minus(from).left().times(bulges.get(i) / count);
      edges.add(
          i % 3 == 0
              ? new Line(from, to)
              : new Cubic(
                  from,
                  from.between(to, 0.3).plus(across),
                  from.between(to, 0.8).plus(across.times(0.5)),
                  to));
    }
    return Curve.of(edges);
  }
}
