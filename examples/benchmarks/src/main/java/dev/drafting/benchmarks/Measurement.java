package dev.drafting.benchmarks;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs a class of benchmarks, warm, each in a JVM of its own. */
final class Measurement {
  private Measurement() {}

  /** Mean times in nanoseconds by "method" or, with a parameter, "method parameter". */
  static Map<String, Double> nanoseconds(Class<?> benchmarks) throws RunnerException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include("^" + benchmarks.getName().replace(".", "\\.") + "\\.")
                    .mode(Mode.AverageTime)
                    .timeUnit(TimeUnit.NANOSECONDS)
                    .forks(1)
                    .warmupIterations(3)
                    .warmupTime(TimeValue.seconds(1))
                    .measurementIterations(5)
                    .measurementTime(TimeValue.seconds(1))
                    .verbosity(VerboseMode.SILENT)
                    .build())
            .run();
    Map<String, Double> times = new LinkedHashMap<>();
    for (RunResult result : results) {
      times.put(key(result), result.getPrimaryResult().getScore());
    }
    return times;
  }

  private static String key(RunResult result) {
    String method = result.getPrimaryResult().getLabel();
    return result.getParams().getParamsKeys().stream()
        .map(parameter -> " " + result.getParams().getParam(parameter))
        .reduce(method, String::concat);
  }
}
