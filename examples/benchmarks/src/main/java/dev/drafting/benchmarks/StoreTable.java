package dev.drafting.benchmarks;

import dev.drafting.export.store.StoredDraft;
import dev.drafting.export.store.sample.RandomDraft;
import java.util.List;

/**
 * Seeded random drafts, stored and read back one by one. {@code -Dinstances=N} says how many,
 * {@code -Dseed=N} where to begin. What does not come back to the last bit is named on stderr.
 */
final class StoreTable implements Table {
  private static final int USUAL = 5_000;
  private static final int REPORT_EVERY = 10_000;

  @Override
  public String name() {
    return "store";
  }

  @Override
  public List<Row> rows() {
    long instances = Math.max(1, Long.getLong("instances", USUAL));
    long first = Long.getLong("seed", 0);
    int different = 0;
    long storing = 0;
    long reading = 0;
    for (long i = 0; i < instances; i++) {
      StoredDraft kept = RandomDraft.of(first + i);
      long begun = System.nanoTime();
      String json = kept.toJson();
      long stored = System.nanoTime();
      StoredDraft read = StoredDraft.parse(json);
      reading += System.nanoTime() - stored;
      storing += stored - begun;
      if (!read.equals(kept) || !read.toJson().equals(json)) {
        different++;
        System.err.println("seed " + (first + i) + " does not come back as it was");
      }
      if ((i + 1) % REPORT_EVERY == 0) {
        System.err.println((i + 1) + " drafts stored and read");
      }
    }
    String subject = "random drafts";
    double count = (double) instances;
    return List.of(
        Row.plain(name(), subject, count, "stored and read"),
        Row.atMost(name(), subject + " not equal to the last bit", different, "drafts", 0),
        Row.plain(name(), subject + ", storing one", storing / 1e6 / count, "ms"),
        Row.plain(name(), subject + ", reading one", reading / 1e6 / count, "ms"));
  }
}
