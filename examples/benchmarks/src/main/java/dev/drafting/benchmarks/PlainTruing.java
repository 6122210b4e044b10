package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Two plain ways to tidy up a stroke, to be compared with. */
enum PlainTruing {
  /** Fewest corners joined by straight lines, within two deviations of the points. */
  DOUGLAS_PEUCKER("Douglas-Peucker with lines") {
    @Override
    LineString line(List<Point> stroke, double wander) {
      return (LineString)
          DouglasPeuckerSimplifier.simplify(JTS.createLineString(of(stroke)), 2 * wander);
    }
  },

  /** Every point replaced by the mean of its neighbourhood, which is cut short at both ends. */
  MOVING_AVERAGE("moving average of seven points") {
    @Override
    LineString line(List<Point> stroke, double wander) {
      Coordinate[] points = of(stroke);
      Coordinate[] means = new Coordinate[points.length];
      for (int i = 0; i < points.length; i++) {
        int beside = Math.min(BESIDE, Math.min(i, points.length - 1 - i));
        Coordinate sum = new Coordinate();
        for (int j = i - beside; j <= i + beside; j++) {
          sum.x += points[j].x / (2 * beside + 1);
          sum.y += points[j].y / (2 * beside + 1);
        }
        means[i] = sum;
      }
      return JTS.createLineString(means);
    }
  };

  private static final GeometryFactory JTS = new GeometryFactory();
  private static final int BESIDE = 3;
  private static final double STATION_MM = 2;

  final String plainName;

  PlainTruing(String plainName) {
    this.plainName = plainName;
  }

  abstract LineString line(List<Point> stroke, double wander);

  private static Coordinate[] of(List<Point> stroke) {
    return stroke.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
  }

  static List<Point> stations(LineString line) {
    LengthIndexedLine along = new LengthIndexedLine(line);
    int count = (int) Math.ceil(line.getLength() / STATION_MM);
    List<Point> stations = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      Coordinate at = along.extractPoint(line.getLength() * i / count);
      stations.add(new Point(at.x, at.y));
    }
    return stations;
  }
}
