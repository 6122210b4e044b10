package dev.drafting.benchmarks;

import dev.drafting.export.store.StoredDraft;
import dev.drafting.export.store.sample.RandomDraft;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;

/**
 * Seeded random drafts, stored and read back on all cores. {@code -Dinstances=N} says how many,
 * {@code -Dseed=N} where to begin. What does not come back to the last bit is named on stderr.
 */
final class StoreTable implements Table {
  private static final int USUAL = 5_000;
  private static final int REPORT_EVERY = 10_000;

  private final AtomicInteger different = new AtomicInteger();
  private final AtomicLong done = new AtomicLong();
  private final AtomicLong storing = new AtomicLong();
  private final AtomicLong reading = new AtomicLong();

  @Override
  public String name() {
    return "store";
  }

  @Override
  public List<Row> rows() {
    long instances = Math.max(1, Long.getLong("instances", USUAL));
    long first = Long.getLong("seed", 0);
    LongStream.range(first, first + instances).parallel().forEach(this::judge);
    String subject = "random drafts";
    double count = (double) instances;
    return List.of(
        Row.plain(name(), subject, count, "stored and read"),
        Row.atMost(name(), subject + " not equal to the last bit", different.get(), "drafts", 0),
        Row.plain(name(), subject + ", storing one", storing.get() / 1e6 / count, "ms"),
        Row.plain(name(), subject + ", reading one", reading.get() / 1e6 / count, "ms"));
  }

  private void judge(long seed) {
    try {
      if (!comesBack(RandomDraft.of(seed))) {
        different.incrementAndGet();
        System.err.println("seed " + seed + " does not come back as it was");
      }
    } catch (RuntimeException failure) {
      different.incrementAndGet();
      System.err.println("seed " + seed + ": " + failure);
    }
    long count = done.incrementAndGet();
    if (count % REPORT_EVERY == 0) {
      System.err.println(count + " drafts stored and read");
    }
  }

  private boolean comesBack(StoredDraft kept) {
    long begun = System.nanoTime();
    String json = kept.toJson();
    long stored = System.nanoTime();
    StoredDraft read = StoredDraft.parse(json);
    reading.addAndGet(System.nanoTime() - stored);
    storing.addAndGet(stored - begun);
    return read.equals(kept) && read.toJson().equals(json) && read.findings().isEmpty();
  }
}
