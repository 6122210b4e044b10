package dev.drafting.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import dev.drafting.examples.damage.Door;
import dev.drafting.examples.damage.Doors;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Damaged files and requests, sent to every door of the library one by one: taken, or refused in
 * words. Whatever else comes of one is named on stderr by door and seed. The doors take turns, so
 * that a run that ends early has sent as many to each, and says at which seed to go on.
 */
final class DoorFuzz {
  private static final int REPORT_EVERY = 1_000;
  private static final double BYTES_PER_MB = 1 << 20;
  private static final double NANOS_PER_MS = 1e6;
  private static final OperatingSystemMXBean SYSTEM =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

  /** What became of what was sent to one door. */
  private static final class Count {
    private final Door door;
    private long sent;
    private long taken;
    private long failed;
    private final Slowest waited = new Slowest();
    private final Slowest computed = new Slowest();

    Count(Door door) {
      this.door = door;
    }
  }

  private static final class Slowest {
    private long nanos;
    private long seed;

    void look(long ofSeed, long itsNanos) {
      if (itsNanos > nanos) {
        nanos = itsNanos;
        seed = ofSeed;
      }
    }
  }

  private final String table;

  DoorFuzz(String table) {
    this.table = table;
  }

  /** Sends so many in all, from a seed on, or as many as there is time for. */
  List<Row> rows(long inputs, long first, Duration time) throws IOException {
    Path folder = Files.createTempDirectory("doors");
    List<Count> counts = new ArrayList<>();
    long end = System.nanoTime() + time.toNanos();
    long seed = first;
    try (Doors doors = Doors.open(Vest.FOLDER, folder)) {
      doors.all().forEach(door -> counts.add(new Count(door)));
      long last = first + Math.max(1, inputs / counts.size());
      for (; seed < last && System.nanoTime() < end; seed++) {
        for (Count count : counts) {
          send(count, seed);
        }
        if ((seed + 1 - first) * counts.size() % REPORT_EVERY == 0) {
          long failed = counts.stream().mapToLong(count -> count.failed).sum();
          System.err.println("seeds up to " + seed + " sent to every door, " + failed + " failed");
        }
      }
    } finally {
      delete(folder);
    }
    List<Row> rows = new ArrayList<>();
    counts.forEach(count -> rows.addAll(rows(count)));
    double memory = Runtime.getRuntime().maxMemory() / BYTES_PER_MB;
    rows.add(Row.plain(table, "memory that was allowed", memory, "MB"));
    rows.add(Row.plain(table, "go on with the seed " + seed, (double) (seed - first), "seeds"));
    return rows;
  }

  private static void send(Count count, long seed) {
    byte[] damaged = count.door.damaged(seed);
    long begun = System.nanoTime();
    long computing = SYSTEM.getProcessCpuTime();
    try {
      count.taken += count.door.takes(damaged) ? 1 : 0;
    } catch (IOException | RuntimeException | Error e) {
      count.failed++;
      System.err.println(count.door.name() + ", seed " + seed + ": " + e);
    }
    count.sent++;
    count.waited.look(seed, System.nanoTime() - begun);
    count.computed.look(seed, SYSTEM.getProcessCpuTime() - computing);
  }

  private List<Row> rows(Count count) {
    String subject = "damaged " + count.door.name();
    double taken = 100.0 * count.taken / count.sent;
    String neither = subject + " neither taken nor refused in words";
    return List.of(
        Row.plain(table, subject, (double) count.sent, "sent"),
        Row.plain(table, subject + " taken all the same", taken, "%"),
        Row.atMost(table, neither, (double) count.failed, "inputs", 0),
        row(subject + ", the longest by the clock", count.waited),
        row(subject + ", the most computing", count.computed));
  }

  private Row row(String subject, Slowest slowest) {
    return Row.plain(table, subject + ", seed " + slowest.seed, slowest.nanos / NANOS_PER_MS, "ms");
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
