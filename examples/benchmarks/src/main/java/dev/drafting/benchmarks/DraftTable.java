package dev.drafting.benchmarks;

import dev.drafting.core.trace.EdgeReport;
import java.util.List;
import java.util.Map;

/** How long the whole draft of a traced garment takes. */
final class DraftTable implements Table {
  private static final double BUDGET_MS = 2;
  private static final double SIZES_MS = 20;

  @Override
  public String name() {
    return "draft";
  }

  @Override
  public List<Row> rows() throws Exception {
    Map<String, Double> times = Measurement.nanosecondsOfMuch(DraftBenchmark.class);
    int points =
        Vest.read().trued().stream()
            .flatMap(piece -> piece.report().edges().stream())
            .mapToInt(EdgeReport::points)
            .sum();
    String vest = "vest of " + points + " traced points, ";
    return List.of(
        Row.atMost(
            name(),
            vest + "read, trued and drafted",
            milliseconds(times, "whole"),
            "ms",
            BUDGET_MS),
        Row.plain(name(), vest + "drafted", milliseconds(times, "drafted"), "ms"),
        Row.atMost(name(), "vest taken in", milliseconds(times, "altered"), "ms", BUDGET_MS),
        Row.atMost(name(), "vest snipped", milliseconds(times, "snipped"), "ms", BUDGET_MS),
        Row.atMost(name(), "T-shirt in twelve sizes", milliseconds(times, "sizes"), "ms", SIZES_MS),
        Row.atMost(
            name(),
            "raglan sweatshirt in twelve sizes",
            milliseconds(times, "raglanSizes"),
            "ms",
            SIZES_MS));
  }

  private static double milliseconds(Map<String, Double> times, String method) {
    return times.getOrDefault(method, Double.NaN) / 1e6;
  }
}
