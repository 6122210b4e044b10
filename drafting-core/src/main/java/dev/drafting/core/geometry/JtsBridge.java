package dev.drafting.core.geometry;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.impl.PackedCoordinateSequence;

/**
 * The one door to the JTS Topology Suite: curves made flat become its lines and polygons, and its
 * lines become polylines. Coordinates stay millimetres.
 *
 * <pre>{@code
 * Curve square = Curve.polyline(new Point(0, 0), new Point(10, 0), new Point(10, 10), new Point(0, 10), new Point(0, 0));
 * JtsBridge.toPolygon(square, Length.mm(0.01)).getArea();  // => 100.0
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class JtsBridge {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private JtsBridge() {}

  /**
   * A curve as a line of JTS.
   *
   * @param curve open or closed
   * @param tolerance the greatest distance from the curve, above zero
   * @return a linear ring if the curve is closed, else a line string
   * @throws DraftingException if the tolerance is not above zero or too fine, or a closed curve is
   *     too flat to hold anything
   */
  public static LineString toJts(Curve curve, Length tolerance) {
    return curve.isClosed() ? ring(curve, tolerance) : toJts(curve.flatten(tolerance));
  }

  /**
   * A polyline as a line of JTS.
   *
   * @param polyline the points
   * @return a line string through the same points
   */
  public static LineString toJts(Polyline polyline) {
    return FACTORY.createLineString(sequence(polyline));
  }

  /**
   * A closed curve as a polygon of JTS.
   *
   * @param outline closed
   * @param tolerance the greatest distance from the outline, above zero
   * @return the polygon inside
   * @throws DraftingException if the curve is open or too flat to hold anything, or the tolerance
   *     is not above zero or too fine
   */
  public static Polygon toPolygon(Curve outline, Length tolerance) {
    if (!outline.isClosed()) {
      throw DraftingException.of("an open curve is no polygon")
          .value(outline)
          .accepted("a curve that ends where it starts");
    }
    return FACTORY.createPolygon(ring(outline, tolerance));
  }

  /**
   * A line of JTS as a polyline.
   *
   * @param line two points or more; heights are dropped
   * @return the points
   * @throws DraftingException if it is empty or a coordinate is not finite
   */
  public static Polyline fromJts(LineString line) {
    double[] xy = new double[2 * line.getNumPoints()];
    for (int i = 0; i < line.getNumPoints(); i++) {
      Coordinate at = line.getCoordinateN(i);
      xy[2 * i] = at.x;
      xy[2 * i + 1] = at.y;
    }
    return Polyline.owning(xy);
  }

  private static LinearRing ring(Curve curve, Length tolerance) {
    Polyline flat = curve.flatten(tolerance);
    if (flat.size() < 4) {
      throw DraftingException.of("a closed curve is too flat to hold anything")
          .value(curve)
          .accepted("an outline of three points or more");
    }
    return FACTORY.createLinearRing(sequence(flat));
  }

  private static PackedCoordinateSequence sequence(Polyline polyline) {
    return new PackedCoordinateSequence.Double(polyline.toArray(), 2, 0);
  }
}
