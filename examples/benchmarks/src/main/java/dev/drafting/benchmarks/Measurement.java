package dev.drafting.benchmarks;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * What a class of benchmarks takes, warm, each in a JVM of its own; by "method" or, with a
 * parameter, "method parameter".
 *
 * @param nanoseconds mean times
 * @param bytes what one call allocates
 */
record Measurement(Map<String, Double> nanoseconds, Map<String, Double> bytes) {

  private static final int WARM_SECONDS_OF_MUCH = 6;
  private static final String ALLOCATED = "gc.alloc.rate.norm";

  /** Mean times only. */
  static Map<String, Double> nanoseconds(Class<?> benchmarks) throws RunnerException {
    return of(benchmarks).nanoseconds();
  }

  /** Mean times only, of much code that takes longer than others to be compiled. */
  static Map<String, Double> nanosecondsOfMuch(Class<?> benchmarks) throws RunnerException {
    return of(benchmarks, WARM_SECONDS_OF_MUCH).nanoseconds();
  }

  /** Runs the benchmarks. */
  static Measurement of(Class<?> benchmarks) throws RunnerException {
    return of(benchmarks, 1);
  }

  private static Measurement of(Class<?> benchmarks, int warmSeconds) throws RunnerException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include("^" + benchmarks.getName().replace(".", "\\.") + "\\.")
                    .mode(Mode.AverageTime)
                    .timeUnit(TimeUnit.NANOSECONDS)
                    .forks(1)
                    // Whatever the build runs with, measurements run with all compilers.
                    .jvmArgs("-XX:+UseSerialGC")
                    .warmupIterations(3)
                    .warmupTime(TimeValue.seconds(warmSeconds))
                    .measurementIterations(5)
                    .measurementTime(TimeValue.seconds(1))
                    .addProfiler(GCProfiler.class)
                    .verbosity(VerboseMode.SILENT)
                    .build())
            .run();
    Map<String, Double> times = new LinkedHashMap<>();
    Map<String, Double> bytes = new LinkedHashMap<>();
    for (RunResult result : results) {
      times.put(key(result), result.getPrimaryResult().getScore());
      bytes.put(
          key(result),
          Objects.requireNonNull(result.getSecondaryResults().get(ALLOCATED), ALLOCATED)
              .getScore());
    }
    return new Measurement(times, bytes);
  }

  double nanoseconds(String key) {
    return nanoseconds.getOrDefault(key, Double.NaN);
  }

  double bytes(String key) {
    return bytes.getOrDefault(key, Double.NaN);
  }

  private static String key(RunResult result) {
    String method = result.getPrimaryResult().getLabel();
    return result.getParams().getParamsKeys().stream()
        .map(parameter -> " " + result.getParams().getParam(parameter))
        .reduce(method, String::concat);
  }
}
