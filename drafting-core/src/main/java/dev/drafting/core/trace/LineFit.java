package dev.drafting.core.trace;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.List;

/**
 * Lays a straight line through points so that the squares of their distances, measured square to
 * the line, add up to the least. A line that must cross the fold squarely is level; one whose
 * corners are given joins them.
 */
final class LineFit implements Fitted {
  private final Samples samples;
  private final Point start;
  private final Point end;
  private final double dx;
  private final double dy;
  private final double length;

  LineFit(Samples samples, double[] weights, Ends ends) {
    this.samples = samples;
    Point from = ends.start().corner();
    Point to = ends.end().corner();
    if (from == null || to == null) {
      double[] centre = centre(weights);
      double[] way = ends.hasLevel() ? level() : direction(weights, centre);
      from = endOf(ends.start(), 0, centre, way);
      to = endOf(ends.end(), samples.size() - 1, centre, way);
    }
    this.start = from;
    this.end = to;
    this.length = Math.hypot(to.x() - from.x(), to.y() - from.y());
    this.dx = length == 0 ? 1 : (to.x() - from.x()) / length;
    this.dy = length == 0 ? 0 : (to.y() - from.y()) / length;
  }

  private double[] level() {
    int last = samples.size() - 1;
    return new double[] {samples.x[last] < samples.x[0] ? -1 : 1, 0};
  }

  private double[] centre(double[] weights) {
    double sum = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < samples.size(); i++) {
      sum += weights[i];
      x += weights[i] * (samples.x[i] - samples.x[0]);
      y += weights[i] * (samples.y[i] - samples.y[0]);
    }
    return new double[] {samples.x[0] + x / sum, samples.y[0] + y / sum};
  }

  /** The main axis of the cloud of points, in their order. */
  private double[] direction(double[] weights, double[] centre) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 0; i < samples.size(); i++) {
      double x = samples.x[i] - centre[0];
      double y = samples.y[i] - centre[1];
      xx += weights[i] * x * x;
      xy += weights[i] * x * y;
      yy += weights[i] * y * y;
    }
    double angle = Math.atan2(2 * xy, xx - yy) / 2;
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    int last = samples.size() - 1;
    double onwards =
        cos * (samples.x[last] - samples.x[0]) + sin * (samples.y[last] - samples.y[0]);
    return onwards < 0 ? new double[] {-cos, -sin} : new double[] {cos, sin};
  }

  private Point endOf(End end, int point, double[] centre, double[] way) {
    if (end.isOnFold() && way[0] != 0) {
      return new Point(0, centre[1] - centre[0] * way[1] / way[0]);
    }
    double along =
        (samples.x[point] - centre[0]) * way[0] + (samples.y[point] - centre[1]) * way[1];
    return new Point(centre[0] + along * way[0], centre[1] + along * way[1]);
  }

  @Override
  public double distance(int point) {
    return dx * (samples.y[point] - start.y()) - dy * (samples.x[point] - start.x());
  }

  @Override
  public double share(int point) {
    double along = dx * (samples.x[point] - start.x()) + dy * (samples.y[point] - start.y());
    return length == 0 ? 0 : Math.min(Math.max(along / length, 0), 1);
  }

  @Override
  public List<Segment> segments() {
    return List.of(new Line(start, end));
  }
}
