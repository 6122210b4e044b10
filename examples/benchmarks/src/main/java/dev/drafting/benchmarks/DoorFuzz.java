package dev.drafting.benchmarks;

import dev.drafting.examples.damage.Door;
import dev.drafting.examples.damage.Doors;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Damaged files and requests, sent to every door of the library one by one: taken, or refused in
 * words. Whatever else comes of one is named on stderr by door and seed.
 */
final class DoorFuzz {
  private static final int REPORT_EVERY = 10_000;
  private static final double BYTES_PER_MB = 1 << 20;

  private final String table;

  DoorFuzz(String table) {
    this.table = table;
  }

  /** Sends so many in all, from a seed on. */
  List<Row> rows(long inputs, long first) throws IOException {
    Path folder = Files.createTempDirectory("doors");
    List<Row> rows = new ArrayList<>();
    try (Doors doors = Doors.open(Vest.FOLDER, folder)) {
      for (Door door : doors.all()) {
        rows.addAll(rows(door, Math.max(1, inputs / doors.all().size()), first));
      }
    } finally {
      delete(folder);
    }
    double memory = Runtime.getRuntime().maxMemory() / BYTES_PER_MB;
    rows.add(Row.plain(table, "memory that was allowed", memory, "MB"));
    return rows;
  }

  private List<Row> rows(Door door, long each, long first) {
    int taken = 0;
    int failed = 0;
    long slowest = 0;
    for (long i = 0; i < each; i++) {
      byte[] damaged = door.damaged(first + i);
      long begun = System.nanoTime();
      try {
        taken += door.takes(damaged) ? 1 : 0;
      } catch (IOException | RuntimeException | Error e) {
        failed++;
        System.err.println(door.name() + ", seed " + (first + i) + ": " + e);
      }
      slowest = Math.max(slowest, System.nanoTime() - begun);
      if ((i + 1) % REPORT_EVERY == 0) {
        System.err.println(door.name() + ": " + (i + 1) + " sent");
      }
    }
    String subject = "damaged " + door.name();
    return List.of(
        Row.plain(table, subject, (double) each, "sent"),
        Row.plain(table, subject + " taken all the same", 100.0 * taken / (double) each, "%"),
        Row.atMost(table, subject + " neither taken nor refused in words", failed, "inputs", 0),
        Row.plain(table, subject + ", the slowest", slowest / 1e6, "ms"));
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
