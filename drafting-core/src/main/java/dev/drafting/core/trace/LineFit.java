package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;

/**
 * Lays a straight line through points so that the squares of their distances, measured square to
 * the line, add up to the least. A line that must cross the fold squarely is level.
 */
final class LineFit implements Fitted {
  private final Samples samples;
  private final Track track;
  private final double[] distances;

  LineFit(Samples samples, double[] weights, Ends ends) {
    this.samples = samples;
    double[] centre = centre(weights);
    double[] way = ends.hasLevel() ? level() : direction(weights, centre);
    Point from = endOf(ends.start(), samples.start(0), centre, way);
    Point to = endOf(ends.end(), samples.end(samples.size() - 1), centre, way);
    this.track =
        new Track(
            Knots.straight(), new double[] {from.x(), to.x()}, new double[] {from.y(), to.y()});
    this.distances = new double[samples.size()];
    track.lookSquare(0);
    for (int i = 0; i < distances.length; i++) {
      distances[i] = track.left(samples.x[i], samples.y[i]);
    }
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

  private Point endOf(End end, Point seen, double[] centre, double[] way) {
    if (end.isOnFold() && way[0] != 0) {
      return new Point(0, centre[1] - centre[0] * way[1] / way[0]);
    }
    double along = (seen.x() - centre[0]) * way[0] + (seen.y() - centre[1]) * way[1];
    return new Point(centre[0] + along * way[0], centre[1] + along * way[1]);
  }

  @Override
  public long looks() {
    return samples.size();
  }

  @Override
  public Track track() {
    return track;
  }

  @Override
  public double distance(int point) {
    return distances[point];
  }

  @Override
  public double share(int point) {
    return track.foot(samples.x[point], samples.y[point], 0.5);
  }
}
