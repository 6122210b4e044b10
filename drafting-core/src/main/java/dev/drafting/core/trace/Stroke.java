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

  /** Whether its points were not in the order along the edge. */
  final boolean reordered;

  private Stroke(String name, Samples samples, boolean reordered) {
    this.name = name;
    this.samples = samples;
    this.reordered = reordered;
  }

  /** One edge, or what was drawn past corners, its points put in order if they are in none. */
  static Stroke of(TracedEdge edge) {
    return of(edge, false);
  }

  /** The same of a line that may be closed, coming back to where it began. */
  static Stroke of(TracedEdge edge, boolean closed) {
    Stroke drawn = asDrawn(edge);
    double[] x = drawn.samples.x;
    double[] y = drawn.samples.y;
    int[] order = StrokeOrder.of(x, y, closed);
    if (order == null) {
      return drawn;
    }
    double[] orderedX = Arrays.stream(order).mapToDouble(i -> x[i]).toArray();
    double[] orderedY = Arrays.stream(order).mapToDouble(i -> y[i]).toArray();
    return new Stroke(edge.name(), Samples.traced(orderedX, orderedY), true);
  }

  private static Stroke asDrawn(TracedEdge edge) {
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
    Samples samples = Samples.traced(Arrays.copyOf(x, count), Arrays.copyOf(y, count));
    return new Stroke(edge.name(), samples, edge.isReordered());
  }

  private Stroke traced(double[] x, double[] y) {
    return new Stroke(name, Samples.traced(x, y), reordered);
  }

  Stroke reversed() {
    int n = samples.size();
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = samples.x[n - 1 - i];
      y[i] = samples.y[n - 1 - i];
    }
    return traced(x, y);
  }

  Stroke map(Transform transform) {
    return new Stroke(name, samples.map(transform), reordered);
  }

  /** The two parts before and from this point, which ends the first part as well. */
  List<Stroke> split(int at) {
    int n = samples.size();
    return List.of(
        traced(Arrays.copyOf(samples.x, at + 1), Arrays.copyOf(samples.y, at + 1)),
        traced(Arrays.copyOfRange(samples.x, at, n), Arrays.copyOfRange(samples.y, at, n)));
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
