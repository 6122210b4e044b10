package dev.drafting.benchmarks;

import dev.drafting.examples.chain.Chain;
import java.io.IOException;
import java.util.List;

/**
 * Random garments through the whole chain: traced, trued, finished, assembled, strips, laid, drawn.
 * {@code -Dinstances=N} says how many, {@code -Dseed=N} where to begin. What is wrong with one is
 * named on stderr by its seed.
 */
final class ChainTable implements Table {
  private static final int USUAL = 1_000;
  private static final int REPORT_EVERY = 1_000;

  @Override
  public String name() {
    return "chain";
  }

  @Override
  public List<Row> rows() throws IOException {
    long instances = Math.max(1, Long.getLong("instances", USUAL));
    long first = Long.getLong("seed", 0);
    int wrong = 0;
    long begun = System.nanoTime();
    for (long i = 0; i < instances; i++) {
      List<String> faults = faults(first + i);
      if (!faults.isEmpty()) {
        wrong++;
        System.err.println("seed " + (first + i) + ": " + faults);
      }
      if ((i + 1) % REPORT_EVERY == 0) {
        System.err.println((i + 1) + " garments drafted");
      }
    }
    double each = (System.nanoTime() - begun) / 1e6 / (double) instances;
    String subject = "random garments";
    return List.of(
        Row.plain(name(), subject, (double) instances, "drafted"),
        Row.atMost(name(), subject + " with anything wrong", wrong, "garments", 0),
        Row.plain(name(), subject + ", each", each, "ms"));
  }

  private static List<String> faults(long seed) throws IOException {
    try {
      return Chain.faults(seed);
    } catch (RuntimeException failure) {
      return List.of(failure.toString());
    }
  }
}
