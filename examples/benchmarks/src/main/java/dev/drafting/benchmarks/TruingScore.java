package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** How near edges come to their true ones, over many tracings. */
final class TruingScore {
  private static final double STATION_MM = 2;

  private final double[] lengthErrors;
  private int tracings;
  private double squares;
  private long stations;

  TruingScore(TrueGarment garment) {
    this.lengthErrors = new double[garment.edges.size()];
  }

  void tracing() {
    tracings++;
  }

  void add(int edge, TrueEdge truth, Curve found) {
    add(edge, truth, stations(found), found.length().toMm());
  }

  void add(int edge, TrueEdge truth, List<Point> found, double length) {
    lengthErrors[edge] += Math.abs(length / truth.length() - 1);
    for (double off : truth.distances(found)) {
      squares += off * off;
      stations++;
    }
  }

  private static List<Point> stations(Curve curve) {
    int count = (int) Math.ceil(curve.length().toMm() / STATION_MM);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      points.add(curve.pointAt(Length.mm(curve.length().toMm() * i / count)));
    }
    return points;
  }

  /** In mm. */
  double rms() {
    return Math.sqrt(squares / stations);
  }

  /** The mean error of all edges, as a share of their lengths. */
  double lengthError() {
    double sum = 0;
    for (double error : lengthErrors) {
      sum += error / tracings / lengthErrors.length;
    }
    return sum;
  }

  /** The mean error of the edge that fares worst. */
  double worstLengthError() {
    double worst = 0;
    for (double error : lengthErrors) {
      worst = Math.max(worst, error / tracings);
    }
    return worst;
  }
}
