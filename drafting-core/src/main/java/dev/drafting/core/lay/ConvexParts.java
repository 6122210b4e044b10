package dev.drafting.core.lay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * A polygon as convex parts that cover it: its triangles, merged over shared sides for as long as
 * they stay convex (Hertel and Mehlhorn, 1983). Each part is x and y in turn, counter-clockwise.
 */
final class ConvexParts {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double FLAT = 1e-12;

  private ConvexParts() {}

  static List<double[]> of(double[] xy) {
    int n = xy.length / 2;
    Coordinate[] ring = new Coordinate[n + 1];
    for (int i = 0; i < n; i++) {
      ring[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    ring[n] = ring[0].copy();
    Polygon polygon = JTS.createPolygon(ring);
    List<List<Coordinate>> parts = new ArrayList<>();
    if (isConvex(open(ring))) {
      parts.add(open(ring));
    } else {
      Geometry triangles = PolygonTriangulator.triangulate(polygon);
      for (int i = 0; i < triangles.getNumGeometries(); i++) {
        parts.add(counterClockwise(open(triangles.getGeometryN(i).getCoordinates())));
      }
    }
    merge(parts);
    parts.forEach(ConvexParts::dropFlatCorners);
    return parts.stream().map(ConvexParts::flat).toList();
  }

  /**
   * What follows sorts the sides of a part by their direction, which a corner that turns by no more
   * than rounding, to either side, would spoil.
   */
  private static void dropFlatCorners(List<Coordinate> part) {
    for (int i = 0; i < part.size() && part.size() > 3; ) {
      int n = part.size();
      Coordinate a = part.get((i + n - 1) % n);
      Coordinate b = part.get(i);
      Coordinate c = part.get((i + 1) % n);
      if (!(turn(a, b, c) > FLAT)) {
        part.remove(i);
        i = Math.max(0, i - 1);
      } else {
        i++;
      }
    }
  }

  /** The sine of the turn at the second of three points, to the left positive. */
  private static double turn(Coordinate a, Coordinate b, Coordinate c) {
    double cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
    return cross / (Math.hypot(b.x - a.x, b.y - a.y) * Math.hypot(c.x - b.x, c.y - b.y));
  }

  private static List<Coordinate> open(Coordinate[] ring) {
    return new ArrayList<>(List.of(ring).subList(0, ring.length - 1));
  }

  private static List<Coordinate> counterClockwise(List<Coordinate> part) {
    double area = 0;
    for (int i = 0; i < part.size(); i++) {
      Coordinate a = part.get(i);
      Coordinate b = part.get((i + 1) % part.size());
      area += a.x * b.y - b.x * a.y;
    }
    if (area < 0) {
      Collections.reverse(part);
    }
    return part;
  }

  private static boolean isConvex(List<Coordinate> part) {
    int n = part.size();
    for (int i = 0; i < n; i++) {
      Coordinate a = part.get(i);
      Coordinate b = part.get((i + 1) % n);
      Coordinate c = part.get((i + 2) % n);
      if (turn(a, b, c) < -FLAT) {
        return false;
      }
    }
    return true;
  }

  private static void merge(List<List<Coordinate>> parts) {
    boolean merged = true;
    while (merged) {
      merged = false;
      for (int i = 0; i < parts.size() && !merged; i++) {
        for (int j = i + 1; j < parts.size() && !merged; j++) {
          List<Coordinate> both = joined(parts.get(i), parts.get(j));
          if (!both.isEmpty() && isConvex(both)) {
            parts.set(i, both);
            parts.remove(j);
            merged = true;
          }
        }
      }
    }
  }

  /** Two parts with a side in common as one, or nothing. */
  private static List<Coordinate> joined(List<Coordinate> one, List<Coordinate> other) {
    for (int i = 0; i < one.size(); i++) {
      Coordinate from = one.get(i);
      Coordinate to = one.get((i + 1) % one.size());
      for (int j = 0; j < other.size(); j++) {
        if (other.get(j).equals2D(to) && other.get((j + 1) % other.size()).equals2D(from)) {
          List<Coordinate> both = new ArrayList<>();
          for (int k = 1; k <= one.size(); k++) {
            both.add(one.get((i + k) % one.size()));
          }
          for (int k = 2; k < other.size(); k++) {
            both.add(other.get((j + k) % other.size()));
          }
          return both;
        }
      }
    }
    return List.of();
  }

  private static double[] flat(List<Coordinate> part) {
    double[] xy = new double[2 * part.size()];
    for (int i = 0; i < part.size(); i++) {
      xy[2 * i] = part.get(i).x;
      xy[2 * i + 1] = part.get(i).y;
    }
    return xy;
  }
}
