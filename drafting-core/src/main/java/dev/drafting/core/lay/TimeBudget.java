package dev.drafting.core.lay;

import java.time.Duration;
import java.util.function.Predicate;

/**
 * A search that may take some time, until it is told to stop or its thread is interrupted. The one
 * place that reads the clock: whoever asks for a time gets a plan that depends on the machine.
 */
final class TimeBudget {
  private final long start = System.nanoTime();
  private final Duration time;
  private volatile boolean stopped;

  TimeBudget(Duration time) {
    this.time = time;
  }

  /** How much of it is spent, from 0 to 1. */
  double spent() {
    if (stopped || Thread.currentThread().isInterrupted()) {
      return 1;
    }
    return Math.min(1, (System.nanoTime() - start) / (double) Math.max(1, time.toNanos()));
  }

  /** Tells the one who waits, and stops if the answer is no. */
  <T> void tell(Predicate<T> goOn, T news) {
    stopped |= !goOn.test(news);
  }
}
