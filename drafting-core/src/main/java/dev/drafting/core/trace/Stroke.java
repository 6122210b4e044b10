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
    return inOrder(edge.name(), Arrays.copyOf(x, count), Arrays.copyOf(y, count));
  }

  private static Stroke inOrder(String name, double[] x, double[] y) {
    int[] order = StrokeOrder.of(x, y);
    if (order == null) {
      return new Stroke(name, Samples.traced(x, y), false);
    }
    double[] orderedX = Arrays.stream(order).mapToDouble(i -> x[i]).toArray();
    double[] orderedY = Arrays.stream(order).mapToDouble(i -> y[i]).toArray();
    return new Stroke(name, Samples.traced(orderedX, orderedY), true);
  }

  /** A stroke of these points, which runs past corners and is taken as it was drawn. */
  static Stroke asDrawn(String name, Polyline points) {
    double[] xy = points.toArray();
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = xy[2 * i];
      y[i] = xy[2 * i + 1];
    }
    return new Stroke(name, Samples.traced(x, y), false);
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
