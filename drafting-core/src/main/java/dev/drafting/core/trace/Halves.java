package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
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
  private final List<Track> edges;
  private final FoldLine fold;

  /**
   * Takes the strokes as they lie in the fold line's frame.
   *
   * @param names the name of each stroke round the outline
   * @param fits the fit of each stroke
   * @param edges the fitted edges
   */
  Halves(List<String> names, List<EdgeFit> fits, List<Track> edges, FoldLine fold) {
    this.names = names;
    this.fits = fits;
    this.edges = edges;
    this.fold = fold;
  }

  /**
   * The edges of the right half, from the lower end of the fold round to its upper end.
   *
   * @param lower where round the outline the lower end is
   */
  List<Half> averaged(double lower) {
    int n = edges.size();
    List<Half> halves = new ArrayList<>();
    for (int i = (int) Math.ceil(lower); i <= (int) Math.floor(lower + n / 2.0); i++) {
      int right = Math.floorMod(i, n);
      int left = fold.opposite(right, n);
      halves.add(right == left ? crossing(right, i == lower) : pair(right, left));
    }
    return halves;
  }

  private Half pair(int right, int left) {
    Track here = edges.get(right);
    Track there = mirrored(edges.get(left));
    Gathering points = new Gathering();
    points.gather(fits.get(right), here, there, false);
    points.gather(fits.get(left), there, here, true);
    return points.half(names.get(right), List.of(right, left));
  }

  /** A stroke across the fold answers to itself; both its halves are laid on the right. */
  private Half crossing(int stroke, boolean startsOnFold) {
    Track here = edges.get(stroke);
    Gathering points = new Gathering();
    points.gather(fits.get(stroke), here, mirrored(here), false);
    points.fold(startsOnFold);
    return points.half(names.get(stroke), List.of(stroke));
  }

  private static Track mirrored(Track edge) {
    return edge.map(Point::mirrored);
  }

  /** The points of both sides on their way to the average. */
  private static final class Gathering {
    /** By share; of equal shares neither side comes first. */
    private static final Comparator<double[]> ORDER =
        Comparator.<double[]>comparingDouble(row -> row[2])
            .thenComparingDouble(row -> row[1])
            .thenComparingDouble(row -> row[0]);

    private final List<double[]> rows = new ArrayList<>();
    private final Middle start = new Middle();
    private final Middle end = new Middle();
    private double independent;
    private double squares;
    private double largest;
    private Point where = new Point(0, 0);

    /**
     * Moves the points of one side half way to the other. The mirror image of a left edge runs
     * against the right edge, so shares are counted from its end.
     */
    void gather(EdgeFit fit, Track own, Track opposite, boolean mirror) {
      independent += fit.observations();
      for (int i = 0; i < fit.kept.length; i++) {
        if (fit.kept[i]) {
          double x = mirror ? -fit.samples.x[i] : fit.samples.x[i];
          double y = fit.samples.y[i];
          double foot = own.foot(x, y, fit.fitted.share(i));
          double beyond = own.beyond(x, y, foot);
          double atX = own.x + beyond * own.dx;
          double atY = own.y + beyond * own.dy;
          double across = opposite.foot(atX, atY, 1 - foot);
          double beyondAcross = opposite.beyond(atX, atY, across);
          double acrossX = opposite.x + beyondAcross * opposite.dx;
          double acrossY = opposite.y + beyondAcross * opposite.dy;
          double along = (foot + 1 - across) / 2;
          double[] row = {
            Math.abs(x + (acrossX - atX) / 2), y + (acrossY - atY) / 2, mirror ? 1 - along : along
          };
          rows.add(row);
          if (i == fit.firstKept()) {
            (mirror ? end : start).add(row);
          }
          if (i == fit.lastKept()) {
            (mirror ? start : end).add(row);
          }
          note(
              new Point((atX + acrossX) / 2, (atY + acrossY) / 2),
              Math.hypot(acrossX - atX, acrossY - atY));
        }
      }
    }

    /** Counts the way from the fold in the middle, or to it, instead of from end to end. */
    void fold(boolean startsOnFold) {
      Middle outer = startsOnFold ? end : start;
      outer.add(startsOnFold ? start : end);
      for (double[] row : rows) {
        double away = Math.abs(2 * row[2] - 1);
        row[2] = startsOnFold ? away : 1 - away;
      }
    }

    private void note(Point place, double difference) {
      squares += difference * difference;
      if (difference > largest) {
        largest = difference;
        where = place;
      }
    }

    Half half(String name, List<Integer> strokes) {
      rows.sort(ORDER);
      double[][] columns = new double[3][rows.size()];
      for (int i = 0; i < rows.size(); i++) {
        for (int c = 0; c < 3; c++) {
          columns[c][i] = rows.get(i)[c];
        }
      }
      Samples samples =
          Samples.averaged(
              columns[0], columns[1], columns[2], independent, start.point(), end.point());
      double rms = Math.sqrt(squares / rows.size());
      return new Half(
          name, strokes, samples, Lopsidedness.of(name, Length.mm(largest), Length.mm(rms), where));
    }
  }

  /** The middle of the places where the strokes of both sides end. */
  private static final class Middle {
    private double x;
    private double y;
    private int count;

    void add(double[] row) {
      x += row[0];
      y += row[1];
      count++;
    }

    void add(Middle other) {
      x += other.x;
      y += other.y;
      count += other.count;
    }

    Point point() {
      return new Point(x / count, y / count);
    }
  }
}
