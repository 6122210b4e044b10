package dev.drafting.core.lay;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** A shape turned by one of the angles that it may have, about its own origin. */
final class TurnedShape {
  final double[] xy;
  final List<double[]> parts;
  final double minX;
  final double minY;
  final double maxX;
  final double maxY;
  final double area;

  private TurnedShape(double[] xy, List<double[]> parts, Envelope reach) {
    this.xy = xy;
    this.parts = parts;
    double lowX = reach.isNull() ? Double.POSITIVE_INFINITY : reach.getMinX();
    double lowY = reach.isNull() ? Double.POSITIVE_INFINITY : reach.getMinY();
    double highX = reach.isNull() ? Double.NEGATIVE_INFINITY : reach.getMaxX();
    double highY = reach.isNull() ? Double.NEGATIVE_INFINITY : reach.getMaxY();
    double twice = 0;
    int n = xy.length / 2;
    for (int i = 0; i < n; i++) {
      double x = xy[2 * i];
      double y = xy[2 * i + 1];
      int j = (i + 1) % n;
      lowX = Math.min(lowX, x);
      lowY = Math.min(lowY, y);
      highX = Math.max(highX, x);
      highY = Math.max(highY, y);
      twice += x * xy[2 * j + 1] - xy[2 * j] * y;
    }
    minX = lowX;
    minY = lowY;
    maxX = highX;
    maxY = highY;
    area = Math.abs(twice) / 2;
  }

  /** The shape itself; counter-clockwise, x and y in turn. */
  static TurnedShape of(double[] xy) {
    return new TurnedShape(xy, ConvexParts.of(xy), new Envelope());
  }

  /**
   * The outer ring of a polygon.
   *
   * @param reach how far the shape reaches at least, where curves stand out between its corners
   */
  static TurnedShape of(Polygon polygon, Envelope reach) {
    Coordinate[] ring = ((Polygon) polygon.norm()).getExteriorRing().getCoordinates();
    int n = ring.length - 1;
    double[] xy = new double[2 * n];
    for (int i = 0; i < n; i++) {
      xy[2 * i] = ring[n - i].x;
      xy[2 * i + 1] = ring[n - i].y;
    }
    return new TurnedShape(xy, ConvexParts.of(xy), reach);
  }

  TurnedShape turned(double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    if (degrees % 90 == 0) {
      cos = Math.rint(cos);
      sin = Math.rint(sin);
    }
    List<double[]> turned = new ArrayList<>();
    for (double[] part : parts) {
      turned.add(turned(part, cos, sin));
    }
    return new TurnedShape(turned(xy, cos, sin), turned, new Envelope());
  }

  private static double[] turned(double[] xy, double cos, double sin) {
    double[] turned = new double[xy.length];
    for (int i = 0; i < xy.length; i += 2) {
      turned[i] = cos * xy[i] - sin * xy[i + 1];
      turned[i + 1] = sin * xy[i] + cos * xy[i + 1];
    }
    return turned;
  }
}
