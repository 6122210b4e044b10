package dev.drafting.benchmarks;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.offset.sample.OffsetJudge;
import dev.drafting.core.offset.sample.RandomOutline;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Offsets of seeded random outlines, closed and open, judged one by one, and as many damaged files
 * and requests at the doors. {@code -Dinstances=N} says how many, {@code -Dseed=N} where to begin,
 * {@code -Dof=doors} leaves the outlines out, and {@code -Dminutes=N} ends at the doors after so
 * long. What fails is named on stderr by kind and seed.
 */
final class FuzzTable implements Table {
  private static final int USUAL = 16_000;
  private static final long LONGEST_MINUTES = 60L * 24 * 365;
  private static final int REPORT_EVERY = 10_000;
  private static final double TOLERANCE_MM = 0.01;

  /** What became of the outlines of one kind. */
  private static final class Count {
    private int judged;
    private int faulty;
    private int unnamed;
    private int refused;
  }

  @Override
  public String name() {
    return "fuzz";
  }

  @Override
  public List<Row> rows() throws IOException {
    long instances = Long.getLong("instances", USUAL);
    long first = Long.getLong("seed", 0);
    Duration time = Duration.ofMinutes(Long.getLong("minutes", LONGEST_MINUTES));
    List<Row> rows = new ArrayList<>();
    if (!System.getProperty("of", "").equals("doors")) {
      rows.addAll(outlines(instances, first));
    }
    rows.addAll(new DoorFuzz(name()).rows(instances, first, time));
    return rows;
  }

  private List<Row> outlines(long instances, long first) {
    RandomOutline.Kind[] kinds = RandomOutline.Kind.values();
    long each = Math.max(1, instances / kinds.length);
    Count[] counts = new Count[kinds.length];
    for (int k = 0; k < kinds.length; k++) {
      counts[k] = new Count();
    }
    for (long i = 0; i < each; i++) {
      for (int k = 0; k < kinds.length; k++) {
        judge(kinds[k], first + i, counts[k]);
      }
      if ((i + 1) * kinds.length % REPORT_EVERY == 0) {
        System.err.println((i + 1) * kinds.length + " outlines judged");
      }
    }
    List<Row> rows = new ArrayList<>();
    for (int k = 0; k < kinds.length; k++) {
      addRows(kinds[k], counts[k], rows);
    }
    return rows;
  }

  private static void judge(RandomOutline.Kind kind, long seed, Count count) {
    RandomOutline outline = RandomOutline.of(kind, seed);
    boolean open = seed % 4 == 3;
    Offset offset = open ? outline.openOffset() : outline.offset();
    count.judged++;
    try {
      OffsetResult result = offset.result();
      List<String> faults =
          open
              ? OffsetJudge.faultsOfOpen(outline.edges(), result, TOLERANCE_MM)
              : OffsetJudge.faults(outline.edges(), result, TOLERANCE_MM);
      if (!faults.isEmpty()) {
        count.faulty++;
        System.err.println(kind + ", seed " + seed + ": " + faults.get(0));
      }
    } catch (DraftingException refusal) {
      count.refused++;
      if (outline.edges().stream().noneMatch(edge -> edge.name().equals(refusal.where()))) {
        count.unnamed++;
        System.err.println(kind + ", seed " + seed + ": " + refusal.getMessage());
      }
    } catch (RuntimeException failure) {
      count.unnamed++;
      System.err.println(kind + ", seed " + seed + ": " + failure);
    }
  }

  private void addRows(RandomOutline.Kind kind, Count count, List<Row> rows) {
    String subject = kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + " outlines";
    rows.add(Row.plain(name(), subject, count.judged, "judged"));
    rows.add(
        Row.atMost(
            name(), subject + " not simple or off their distance", count.faulty, "outlines", 0));
    rows.add(
        Row.atMost(
            name(), subject + " failed without naming an edge", count.unnamed, "outlines", 0));
    rows.add(Row.plain(name(), subject + " refused", 100.0 * count.refused / count.judged, "%"));
  }
}
