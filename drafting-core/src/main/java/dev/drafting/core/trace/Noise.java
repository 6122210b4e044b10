package dev.drafting.core.trace;

import java.util.ArrayList;
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
        double[] some = stroke.differences(order);
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
   * Estimated from a line drawn round several corners: from the quarter of the differences that is
   * smallest, which the corners leave alone.
   */
  static Noise ofRound(Samples samples) {
    double least = Double.POSITIVE_INFINITY;
    int count = 0;
    for (int order : ORDERS) {
      double[] found = samples.differences(order);
      if (found.length >= ENOUGH) {
        least = Math.min(least, Robust.scaleOfSmallest(found));
        count = Math.max(count, found.length);
      }
    }
    return new Noise(count == 0 ? 0 : least, count / 3.2);
  }

  /**
   * The noise of one edge: its own where it is rougher than the whole and long enough to say so.
   */
  Noise orOwn(List<Samples> strokes) {
    int count = 0;
    for (Samples stroke : strokes) {
      count += stroke.differences(ORDERS[0]).length;
    }
    Noise own = count < 2 * ENOUGH ? this : of(strokes);
    return own.mm > mm ? own : this;
  }

  /** Divided differences square to the edge, scaled so that their deviation is the noise's own. */
  static double[] differences(Samples stroke, int[] stops, int order) {
    int windows = stops.length - order;
    if (windows <= 0) {
      return new double[0];
    }
    double[] found = new double[windows];
    for (int w = 0; w < windows; w++) {
      found[w] = difference(stroke, stops, w, order);
    }
    return found;
  }

  private static double difference(Samples stroke, int[] stops, int from, int order) {
    double originX = stroke.x[stops[from]];
    double originY = stroke.y[stops[from]];
    double chordX = stroke.x[stops[from + order]] - originX;
    double chordY = stroke.y[stops[from + order]] - originY;
    double chord = Math.sqrt(chordX * chordX + chordY * chordY);
    if (chord == 0) {
      return 0;
    }
    double[] along = new double[order + 1];
    for (int i = 1; i <= order; i++) {
      double dx = stroke.x[stops[from + i]] - stroke.x[stops[from + i - 1]];
      double dy = stroke.y[stops[from + i]] - stroke.y[stops[from + i - 1]];
      along[i] = along[i - 1] + Math.sqrt(dx * dx + dy * dy);
    }
    double sum = 0;
    double squares = 0;
    for (int i = 0; i <= order; i++) {
      double product = 1;
      for (int j = 0; j <= order; j++) {
        product *= j == i ? 1 : (along[i] - along[j]) / along[order];
      }
      double weight = 1 / product;
      double off =
          chordX * (stroke.y[stops[from + i]] - originY)
              - chordY * (stroke.x[stops[from + i]] - originX);
      sum += weight * off / chord;
      squares += weight * weight;
    }
    return Double.isFinite(squares) ? sum / Math.sqrt(squares) : 0;
  }
}
