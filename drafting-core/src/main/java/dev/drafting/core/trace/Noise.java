package dev.drafting.core.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far the pencil wandered, judged from the points alone.
 *
 * <p>A smooth edge is almost a polynomial over a few neighbouring points, so their sixth divided
 * difference shows the hand and not the shape. Those of a slip are left out. Where an edge is
 * shorter, fourth or second differences serve.
 */
final class Noise {
  private static final int[] ORDERS = {6, 4, 2};
  private static final int ENOUGH = 6;

  /** Below this a hand and a computer's rounding cannot be told apart, in mm. */
  static final double LEAST_MM = 2e-7;

  /** The standard deviation square to the edge, in mm. */
  final double mm;

  /** How many independent observations this rests on. */
  final double freedom;

  private Noise(double mm, double freedom) {
    this.mm = Math.max(mm, LEAST_MM);
    this.freedom = Math.max(freedom, 1);
  }

  /** What the maker says; nothing is estimated. */
  static Noise declared(double mm) {
    return new Noise(mm, 1e6);
  }

  /** Estimated from all strokes of one tracing: one hand, one pencil. */
  static Noise of(List<Samples> strokes) {
    List<double[]> found = new ArrayList<>();
    int count = 0;
    for (int order : ORDERS) {
      found.clear();
      count = 0;
      for (Samples stroke : strokes) {
        double[] some = differences(stroke, order);
        found.add(some);
        count += some.length;
      }
      if (count >= ENOUGH) {
        break;
      }
    }
    double[] all = new double[count];
    int at = 0;
    for (double[] some : found) {
      System.arraycopy(some, 0, all, at, some.length);
      at += some.length;
    }
    // Neighbouring differences share points: of three, about one is news.
    return new Noise(Robust.deviation(all), count / 3.2);
  }

  /**
   * The noise of one edge: its own where it is rougher than the whole and long enough to say so.
   */
  Noise orOwn(List<Samples> strokes) {
    int count = 0;
    for (Samples stroke : strokes) {
      count += differences(stroke, ORDERS[0]).length;
    }
    Noise own = count < 2 * ENOUGH ? this : of(strokes);
    return own.mm > mm ? own : this;
  }

  /** Divided differences square to the edge, scaled so that their deviation is the noise's own. */
  private static double[] differences(Samples stroke, int order) {
    int[] stops = Samples.thinned(stroke.x, stroke.y);
    int windows = stops.length - order;
    if (windows <= 0) {
      return new double[0];
    }
    double[] found = new double[windows];
    for (int w = 0; w < windows; w++) {
      found[w] = difference(stroke, Arrays.copyOfRange(stops, w, w + order + 1));
    }
    return found;
  }

  private static double difference(Samples stroke, int[] window) {
    int first = window[0];
    int last = window[window.length - 1];
    double chordX = stroke.x[last] - stroke.x[first];
    double chordY = stroke.y[last] - stroke.y[first];
    double chord = Math.hypot(chordX, chordY);
    if (chord == 0) {
      return 0;
    }
    double[] along = new double[window.length];
    for (int i = 1; i < window.length; i++) {
      along[i] =
          along[i - 1]
              + Math.hypot(
                  stroke.x[window[i]] - stroke.x[window[i - 1]],
                  stroke.y[window[i]] - stroke.y[window[i - 1]]);
    }
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < window.length; i++) {
      double product = 1;
      for (int j = 0; j < window.length; j++) {
        if (j != i) {
          product *= (along[i] - along[j]) / along[along.length - 1];
        }
      }
      double weight = 1 / product;
      double off =
          chordX * (stroke.y[window[i]] - stroke.y[first])
              - chordY * (stroke.x[window[i]] - stroke.x[first]);
      sum += weight * off / chord;
      squares += weight * weight;
    }
    return Double.isFinite(squares) ? sum / Math.sqrt(squares) : 0;
  }
}
