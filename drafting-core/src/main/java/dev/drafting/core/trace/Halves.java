package dev.drafting.core.trace;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Nearest;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays the left half of a whole tracing on its right half. Each point is moved by half of the
 * difference between the two fitted edges, so the points of both sides scatter about the average of
 * the two with no more than the pencil's own noise.
 */
final class Halves {
  /** One edge of the averaged half, in the order of the outline. */
  static final class Half {
    final String name;

    /** The strokes behind it: right and left, or one that crosses the fold. */
    final List<Integer> strokes;

    final Samples samples;
    final Lopsidedness lopsidedness;

    Half(String name, List<Integer> strokes, Samples samples, Lopsidedness lopsidedness) {
      this.name = name;
      this.strokes = strokes;
      this.samples = samples;
      this.lopsidedness = lopsidedness;
    }
  }

  private final List<EdgeFit> fits;
  private final List<String> names;
  private final List<Extended> edges;
  private final FoldLine fold;

  /**
   * Takes the strokes as they lie in the fold line's frame.
   *
   * @param names the name of each stroke round the outline
   * @param fits the fit of each stroke
   * @param edges the fitted edges
   */
  Halves(List<String> names, List<EdgeFit> fits, List<Extended> edges, FoldLine fold) {
    this.names = names;
    this.fits = fits;
    this.edges = edges;
    this.fold = fold;
  }

  /** The edges of the right half, from the lower end of the fold round to its upper end. */
  List<Half> averaged() {
    int n = edges.size();
    // The fold passes through the middle of a stroke, or between two, at sum / 2 and half round.
    double one = fold.sum / 2.0;
    double other = one + n / 2.0;
    double lower = heightAt(one) <= heightAt(other) ? one : other;
    List<Half> halves = new ArrayList<>();
    for (int i = (int) Math.ceil(lower); i <= (int) Math.floor(lower + n / 2.0); i++) {
      int right = Math.floorMod(i, n);
      int left = fold.opposite(right, n);
      halves.add(right == left ? crossing(right, i == lower) : pair(right, left));
    }
    return halves;
  }

  private double heightAt(double place) {
    int n = edges.size();
    Curve before = edges.get(Math.floorMod((int) Math.floor(place), n)).edge;
    if (place != Math.rint(place)) {
      return before.end().y();
    }
    return before.pointAt(before.length().dividedBy(2)).y();
  }

  private Half pair(int right, int left) {
    Extended here = edges.get(right);
    Extended there = mirrored(edges.get(left));
    Gathering points = new Gathering(here, there, fits.get(right), fits.get(left));
    double[] shares = new double[points.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = points.along(i) / here.length;
    }
    return points.half(names.get(right), List.of(right, left), shares);
  }

  /** A stroke across the fold answers to itself; both its halves are laid on the right. */
  private Half crossing(int stroke, boolean startsOnFold) {
    Extended here = edges.get(stroke);
    Extended there = mirrored(here);
    EdgeFit fit = fits.get(stroke);
    Gathering points = new Gathering(here, there, fit, fit);
    double middle = here.length / 2;
    double[] shares = new double[points.size()];
    for (int i = 0; i < shares.length; i++) {
      double away = Math.min(Math.abs(points.along(i) - middle) / middle, 1);
      shares[i] = startsOnFold ? away : 1 - away;
    }
    return points.half(names.get(stroke), List.of(stroke), shares);
  }

  private static Extended mirrored(Extended edge) {
    return new Extended(edge.edge.mirrored().reversed());
  }

  /** The points of both sides on their way to the average. */
  private static final class Gathering {
    private final List<double[]> rows = new ArrayList<>();
    private final double independent;
    private double squares;
    private double largest;
    private Point where = new Point(0, 0);

    Gathering(Extended here, Extended there, EdgeFit right, EdgeFit left) {
      this.independent =
          right == left ? right.observations() : right.observations() + left.observations();
      gather(right, here, there, here, false);
      if (right != left) {
        gather(left, there, here, here, true);
      }
    }

    private void gather(
        EdgeFit fit, Extended own, Extended opposite, Extended measure, boolean mirror) {
      for (int i = 0; i < fit.kept.length; i++) {
        if (fit.kept[i]) {
          double x = mirror ? -fit.samples.x[i] : fit.samples.x[i];
          Point point = new Point(x, fit.samples.y[i]);
          Point foot = own.nearest(point).point();
          Nearest across = opposite.nearest(foot);
          Point average = point.plus(across.point().minus(foot).times(0.5));
          double along = measure.along(measure.nearest(point));
          rows.add(new double[] {Math.abs(average.x()), average.y(), along});
          note(foot.midpoint(across.point()), across.distance().toMm());
        }
      }
    }

    private void note(Point place, double difference) {
      squares += difference * difference;
      if (difference > largest) {
        largest = difference;
        where = place;
      }
    }

    int size() {
      return rows.size();
    }

    double along(int i) {
      return rows.get(i)[2];
    }

    Half half(String name, List<Integer> strokes, double[] shares) {
      for (int i = 0; i < shares.length; i++) {
        rows.get(i)[2] = shares[i];
      }
      rows.sort((a, b) -> Double.compare(a[2], b[2]));
      double[][] columns = new double[3][rows.size()];
      for (int i = 0; i < rows.size(); i++) {
        for (int c = 0; c < 3; c++) {
          columns[c][i] = rows.get(i)[c];
        }
      }
      Samples samples = new Samples(columns[0], columns[1], columns[2], independent);
      double rms = Math.sqrt(squares / rows.size());
      return new Half(
          name, strokes, samples, Lopsidedness.of(name, Length.mm(largest), Length.mm(rms), where));
    }
  }
}
