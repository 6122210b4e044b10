package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** An edge that is known by a formula, and what is measured against it. */
final class TrueEdge {
  private static final int STEPS = 4_000;
  private static final GeometryFactory JTS = new GeometryFactory();

  private final String name;
  private final double[] along = new double[STEPS + 1];
  private final Point[] points = new Point[STEPS + 1];
  private final IndexedFacetDistance distance;

  private TrueEdge(String name, DoubleFunction<Point> formula) {
    this.name = name;
    Coordinate[] line = new Coordinate[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      points[i] = formula.apply((double) i / STEPS);
      line[i] = new Coordinate(points[i].x(), points[i].y());
      along[i] = i == 0 ? 0 : along[i - 1] + line[i].distance(line[i - 1]);
    }
    this.distance = new IndexedFacetDistance(JTS.createLineString(line));
  }

  /** An edge whose points a formula gives for 0 to 1, in mm. */
  static TrueEdge of(String name, DoubleFunction<Point> formula) {
    return new TrueEdge(name, formula);
  }

  static TrueEdge line(String name, Point from, Point to) {
    return of(name, t -> from.plus(to.minus(from).times(t)));
  }

  String name() {
    return name;
  }

  Point start() {
    return points[0];
  }

  Point end() {
    return points[STEPS];
  }

  double length() {
    return along[STEPS];
  }

  Point at(double way) {
    int i = (int) Math.min(Math.max(0, way / length() * STEPS), STEPS - 1);
    while (i > 0 && along[i] > way) {
      i--;
    }
    while (i < STEPS - 1 && along[i + 1] < way) {
      i++;
    }
    double share = (way - along[i]) / (along[i + 1] - along[i]);
    return points[i].plus(points[i + 1].minus(points[i]).times(share));
  }

  Vector directionAt(double way) {
    double step = length() / 1000;
    return at(Math.min(way + step, length())).minus(at(Math.max(way - step, 0))).unit();
  }

  /** How far each of these points lies off. */
  List<Double> distances(List<Point> measured) {
    List<Double> off = new ArrayList<>();
    for (Point point : measured) {
      off.add(distance.distance(JTS.createPoint(new Coordinate(point.x(), point.y()))));
    }
    return off;
  }
}
