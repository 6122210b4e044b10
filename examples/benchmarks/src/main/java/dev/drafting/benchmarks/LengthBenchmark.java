package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Cubic;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.analysis.integration.UnivariateIntegrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The length of a cubic: the library's own against integrators for any function, with the accuracy
 * alone set and as few or many iterations as that library usually takes.
 */
@State(Scope.Benchmark)
public class LengthBenchmark {
  private static final double ACCURACY = 1e-9;
  private static final int CALLS = 1_000_000;

  /** The curve to measure. */
  @Param public SampleCubic curve = SampleCubic.NECK;

  private Cubic cubic = curve.cubic();

  /** Takes the curve out of the measurement. */
  @Setup
  public void prepare() {
    cubic = curve.cubic();
  }

  /** The length as the library measures it. */
  @Benchmark
  public double drafting() {
    return cubic.length().toMm();
  }

  /** Romberg's method. */
  @Benchmark
  public double romberg() {
    return integrate(new RombergIntegrator(ACCURACY, 1e-15, 3, 32), cubic);
  }

  /** Simpson's rule. */
  @Benchmark
  public double simpson() {
    return integrate(new SimpsonIntegrator(ACCURACY, 1e-15, 3, 64), cubic);
  }

  /** Gauss-Legendre with five points on more and more intervals. */
  @Benchmark
  public double gauss() {
    return integrate(new IterativeLegendreGaussIntegrator(5, ACCURACY, 1e-15), cubic);
  }

  static double integrate(UnivariateIntegrator integrator, Cubic cubic) {
    return integrator.integrate(CALLS, t -> speed(cubic, t), 0, 1);
  }

  /** The speed |B'(t)| in plain arithmetic, so that no integrator pays for objects of ours. */
  private static double speed(Cubic c, double t) {
    double u = 1 - t;
    double a = 3 * u * u;
    double b = 6 * u * t;
    double d = 3 * t * t;
    double dx =
        a * (c.control1().x() - c.start().x())
            + b * (c.control2().x() - c.control1().x())
            + d * (c.end().x() - c.control2().x());
    double dy =
        a * (c.control1().y() - c.start().y())
            + b * (c.control2().y() - c.control1().y())
            + d * (c.end().y() - c.control2().y());
    return Math.sqrt(dx * dx + dy * dy);
  }
}
