package dev.drafting.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;

/** How fast and how exactly the length of a cubic is found. */
final class LengthTable implements Table {
  private static final double ACCURACY = 1e-9;
  private static final double TIMES_FASTER = 20;

  @Override
  public String name() {
    return "length";
  }

  @Override
  public List<Row> rows() throws Exception {
    Measurement measured = Measurement.of(LengthBenchmark.class);
    Map<String, Double> times = measured.nanoseconds();
    List<Row> rows = new ArrayList<>();
    for (SampleCubic curve : SampleCubic.values()) {
      String subject = curve.name().toLowerCase(Locale.ROOT);
      Map<String, Double> errors = errors(curve);
      double ours = time(times, "drafting", curve);
      rows.add(Row.plain(name(), subject, ours, "ns"));
      rows.add(
          Row.plain(
              name(), subject + " allocates", measured.bytes("drafting " + curve.name()), "bytes"));
      rows.add(
          Row.atMost(
              name(), subject + " relative error", error(errors, "drafting"), "1", ACCURACY));
      String fastest = fastest(times, errors, curve);
      rows.add(
          Row.atLeast(
              name(),
              subject + " against " + fastest,
              time(times, fastest, curve) / ours,
              "times",
              TIMES_FASTER));
    }
    return rows;
  }

  /** The fastest integrator of the other library that reaches the accuracy. */
  private static String fastest(
      Map<String, Double> times, Map<String, Double> errors, SampleCubic curve) {
    return errors.keySet().stream()
        .filter(method -> !method.equals("drafting"))
        .filter(method -> error(errors, method) <= ACCURACY)
        .min((a, b) -> Double.compare(time(times, a, curve), time(times, b, curve)))
        .orElseThrow();
  }

  private static double time(Map<String, Double> times, String method, SampleCubic curve) {
    return times.getOrDefault(method + " " + curve.name(), Double.NaN);
  }

  private static double error(Map<String, Double> errors, String method) {
    return errors.getOrDefault(method, Double.NaN);
  }

  /** Relative errors against Gauss-Legendre with 60 points on at least 64 intervals. */
  private static Map<String, Double> errors(SampleCubic curve) {
    double exact =
        LengthBenchmark.integrate(
            new IterativeLegendreGaussIntegrator(60, 1e-14, 1e-15, 6, 64), curve.cubic());
    LengthBenchmark benchmark = new LengthBenchmark();
    benchmark.curve = curve;
    benchmark.prepare();
    Map<String, Double> errors = new TreeMap<>();
    errors.put("drafting", Math.abs(benchmark.drafting() / exact - 1));
    errors.put("romberg", Math.abs(benchmark.romberg() / exact - 1));
    errors.put("simpson", Math.abs(benchmark.simpson() / exact - 1));
    errors.put("gauss", Math.abs(benchmark.gauss() / exact - 1));
    return errors;
  }
}
