package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Transform;
import java.util.Arrays;
import java.util.List;

/** One traced edge turned the way the outline runs, without repeated points. */
final class Stroke {
  final String name;
  final Samples samples;

  Stroke(String name, Samples samples) {
    this.name = name;
    this.samples = samples;
  }

  static Stroke of(TracedEdge edge) {
    Polyline points = edge.points();
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    int count = 0;
    for (int i = 0; i < points.size(); i++) {
      boolean again = count > 0 && x[count - 1] == points.x(i) && y[count - 1] == points.y(i);
      if (!again) {
        x[count] = points.x(i);
        y[count++] = points.y(i);
      }
    }
    return traced(edge.name(), Arrays.copyOf(x, count), Arrays.copyOf(y, count));
  }

  private static Stroke traced(String name, double[] x, double[] y) {
    return new Stroke(name, Samples.traced(x, y));
  }

  Stroke reversed() {
    int n = samples.size();
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = samples.x[n - 1 - i];
      y[i] = samples.y[n - 1 - i];
    }
    return traced(name, x, y);
  }

  Stroke map(Transform transform) {
    return new Stroke(name, samples.map(transform));
  }

  /** The two parts before and from this point, which ends the first part as well. */
  List<Stroke> split(int at) {
    int n = samples.size();
    return List.of(
        traced(name, Arrays.copyOf(samples.x, at + 1), Arrays.copyOf(samples.y, at + 1)),
        traced(name, Arrays.copyOfRange(samples.x, at, n), Arrays.copyOfRange(samples.y, at, n)));
  }

  /** The point, not the first or the last, nearest to where the stroke passes x = 0. */
  int nearestToFold() {
    int nearest = 1;
    for (int i = 2; i < samples.size() - 1; i++) {
      if (Math.abs(samples.x[i]) < Math.abs(samples.x[nearest])) {
        nearest = i;
      }
    }
    return nearest;
  }

  Point point(int i) {
    return new Point(samples.x[i], samples.y[i]);
  }

  Point first() {
    return point(0);
  }

  Point last() {
    return point(samples.size() - 1);
  }
}
