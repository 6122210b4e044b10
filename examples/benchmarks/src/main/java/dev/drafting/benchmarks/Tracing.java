package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;

/** A closed outline of many points as a digitiser gives it: a gently waved oval with noise. */
final class Tracing {
  private static final double NOISE = 0.04;
  private static final int WAVES = 9;

  private final double[] xy;

  private Tracing(double[] xy) {
    this.xy = xy;
  }

  /**
   * Points at even steps round the outline with a noise of a twenty-fifth of a step, so that more
   * points mean a longer outline, not a finer one; the last point closes it. Always the same.
   */
  static Tracing of(int points, Length step) {
    Random random = new Random(points);
    int steps = points - 1;
    double radius = steps * step.toMm() / (2 * Math.PI);
    double noise = NOISE * step.toMm();
    double[] xy = new double[2 * points];
    for (int i = 0; i < steps; i++) {
      double angle = 2 * Math.PI * i / steps;
      double r = radius * (1 + 0.05 * Math.sin(WAVES * angle)) + noise * random.nextGaussian();
      xy[2 * i] = r * Math.cos(angle);
      xy[2 * i + 1] = 0.7 * r * Math.sin(angle);
    }
    xy[2 * steps] = xy[0];
    xy[2 * steps + 1] = xy[1];
    return new Tracing(xy);
  }

  Curve curve() {
    return Curve.from(Polyline.of(xy));
  }

  Offset offset(Length allowance) {
    return Offset.of(List.of(OffsetEdge.of("outline", curve(), allowance)));
  }

  Coordinate[] coordinates() {
    Coordinate[] points = new Coordinate[xy.length / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    return points;
  }
}
