package dev.drafting.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Slanting boxes of cubics against polygons of the JTS library. */
class SpanProperties {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  @Provide
  Arbitrary<Cubic> cubics() {
    return Shapes.cubics();
  }

  /** The rectangle along the chord that just holds the control points. */
  private static Polygon rectangle(Cubic cubic) {
    Vector way = cubic.end().minus(cubic.start()).unit();
    double low = 0;
    double high = 0;
    double right = 0;
    double left = 0;
    for (Point point : new Point[] {cubic.control1(), cubic.control2(), cubic.end()}) {
      Vector off = point.minus(cubic.start());
      low = Math.min(low, off.dot(way));
      high = Math.max(high, off.dot(way));
      right = Math.min(right, way.cross(off));
      left = Math.max(left, way.cross(off));
    }
    Point start = cubic.start();
    Coordinate[] corners = {
      corner(start, way, low, right),
      corner(start, way, high, right),
      corner(start, way, high, left),
      corner(start, way, low, left),
      corner(start, way, low, right)
    };
    return FACTORY.createPolygon(corners);
  }

  private static Coordinate corner(Point start, Vector way, double along, double across) {
    Point at = start.plus(way.times(along)).plus(way.left().times(across));
    return new Coordinate(at.x(), at.y());
  }

  /** Smaller about its start, so that some meet and some do not. */
  private static Cubic shrunk(Cubic cubic) {
    Vector back = cubic.start().minus(Shapes.ORIGIN).times(0.7);
    return cubic.map(Transform.scaling(0.3).then(Transform.translation(back)));
  }

  /** Two rectangles are apart only if a side of one of them parts them. */
  @Property(tries = 2000)
  void boxesComeTogetherWhereTheRectanglesMeet(
      @ForAll("cubics") Cubic one, @ForAll("cubics") Cubic other) {
    Cubic first = shrunk(one);
    Cubic second = shrunk(other);
    Polygon here = rectangle(first);
    Polygon there = rectangle(second);
    Span span = new Span(first, 0, 1);
    Span next = new Span(second, 0, 1);
    boolean meet = here.intersects(there);
    Assume.that(meet ? here.buffer(-1e-6).intersects(there) : here.distance(there) > 1e-6);
    assertEquals(meet, span.comesWithin(0, next));
    assertEquals(meet, next.comesWithin(0, span));
  }
}
