package dev.drafting.benchmarks;

import dev.drafting.examples.damage.DamagedDraft;
import dev.drafting.examples.damage.DamagedGarment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Garment folders and stored drafts, damaged, read and drafted one by one: still whole, or refused
 * in words. {@code -Dinstances=N} says how many, {@code -Dseed=N} where to begin. Whatever else
 * comes of one is named on stderr by file and seed.
 */
final class DamageTable implements Table {
  /** Something that is damaged as a seed says. */
  private interface Damaged {
    boolean isDrafted(long seed) throws IOException;
  }

  private static final int USUAL = 1_500;
  private static final int REPORT_EVERY = 10_000;

  @Override
  public String name() {
    return "damage";
  }

  @Override
  public List<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    for (String file : DamagedGarment.FILES) {
      Path folder = Files.createTempDirectory("damaged");
      try {
        rows.addAll(rows(file, DamagedGarment.of(Vest.FOLDER, folder, file)::isDrafted));
      } finally {
        for (String written : DamagedGarment.FILES) {
          Files.deleteIfExists(folder.resolve(written));
        }
        Files.delete(folder);
      }
    }
    DamagedDraft stored = DamagedDraft.of(Vest.FOLDER);
    rows.addAll(rows("stored draft", stored::isDrafted));
    return rows;
  }

  private List<Row> rows(String file, Damaged damaged) throws IOException {
    long each = Math.max(1, Long.getLong("instances", USUAL) / (DamagedGarment.FILES.size() + 1));
    long first = Long.getLong("seed", 0);
    int drafted = 0;
    int failed = 0;
    long slowest = 0;
    for (long i = 0; i < each; i++) {
      long begun = System.nanoTime();
      try {
        drafted += damaged.isDrafted(first + i) ? 1 : 0;
      } catch (RuntimeException | Error e) {
        failed++;
        System.err.println(file + ", seed " + (first + i) + ": " + e);
      }
      slowest = Math.max(slowest, System.nanoTime() - begun);
      if ((i + 1) % REPORT_EVERY == 0) {
        System.err.println(file + ": " + (i + 1) + " read");
      }
    }
    String subject = "damaged " + file;
    return List.of(
        Row.plain(name(), subject, (double) each, "read"),
        Row.plain(name(), subject + " still a garment", 100.0 * drafted / (double) each, "%"),
        Row.atMost(name(), subject + " neither drafted nor refused in words", failed, "files", 0),
        Row.plain(name(), subject + ", the slowest", slowest / 1e6, "ms"));
  }
}
