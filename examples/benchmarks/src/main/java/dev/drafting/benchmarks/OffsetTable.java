package dev.drafting.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How fast allowances are drawn, against JTS at an equal tolerance of 0.01 mm. */
final class OffsetTable implements Table {
  private static final double TIMES_FASTER = 10;

  @Override
  public String name() {
    return "offset";
  }

  @Override
  public List<Row> rows() throws Exception {
    List<Row> rows = new ArrayList<>();
    Measurement garments = Measurement.of(OffsetBenchmark.class);
    for (GarmentOutline outline : GarmentOutline.values()) {
      String subject = outline.name().toLowerCase(Locale.ROOT).replace('_', ' ');
      String of = " " + outline.name();
      addFigures(rows, subject, garments, of);
      rows.add(
          Row.plain(
              name(),
              subject + ", a distance for each edge",
              garments.nanoseconds("perEdge" + of) / 1000,
              "us"));
      double ours = garments.nanoseconds("drafting" + of);
      rows.add(
          Row.atLeast(
              name(),
              subject + " against JTS buffer",
              garments.nanoseconds("buffer" + of) / ours,
              "times",
              TIMES_FASTER));
      rows.add(
          Row.plain(
              name(),
              subject + " against JTS OffsetCurve",
              garments.nanoseconds("offsetCurve" + of) / ours,
              "times"));
    }
    Measurement tracing = Measurement.of(TracingBenchmark.class);
    String subject = "tracing of 10,000 points";
    addFigures(rows, subject, tracing, "");
    double ours = tracing.nanoseconds("drafting");
    double buffer = tracing.nanoseconds("buffer") / ours;
    double curve = tracing.nanoseconds("offsetCurve") / ours;
    rows.add(Row.plain(name(), subject + " against JTS buffer", buffer, "times"));
    rows.add(Row.plain(name(), subject + " against JTS OffsetCurve", curve, "times"));
    return rows;
  }

  private void addFigures(List<Row> rows, String subject, Measurement measured, String of) {
    double micros = measured.nanoseconds("drafting" + of) / 1000;
    double ours = measured.bytes("drafting" + of) / 1000;
    double theirs = measured.bytes("buffer" + of) / 1000;
    rows.add(Row.plain(name(), subject, micros, "us"));
    rows.add(Row.plain(name(), subject + " allocates", ours, "kB"));
    rows.add(Row.plain(name(), subject + ", JTS buffer allocates", theirs, "kB"));
  }
}
