package dev.drafting.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** How long the files of a garment take, warm and from nothing, and how that grows. */
final class ExportTable implements Table {
  private static final double WARM_MS = 150;
  private static final double FRESH_S = 3;
  private static final int RUNS = 5;
  private static final int MANY_PIECES = 200;
  private static final int MANY_SIZES = 12;
  private static final double MANY_MB = 256;
  private static final int[] GROWING = {25, 50, 100, 200};
  private static final int WARM_UP = 8;
  private static final double STEEPEST = 1.1;

  @Override
  public String name() {
    return "export";
  }

  @Override
  public List<Row> rows() throws Exception {
    double warm =
        Measurement.nanoseconds(ExportBenchmark.class).getOrDefault("all", Double.NaN) / 1e6;
    List<Row> rows = new ArrayList<>();
    rows.add(Row.atMost(name(), "all files of the vest, warm", warm, "ms", WARM_MS));
    rows.add(
        Row.atMost(
            name(), "main job in a fresh JVM with 128 MB, median of 5", fresh(), "s", FRESH_S));
    rows.add(
        Row.atMost(
            name(),
            "all files of 200 pieces in 12 sizes, least heap of 64, 128, 256 ...",
            leastHeap(),
            "MB",
            MANY_MB));
    rows.add(Row.atMost(name(), "time from 25 to 200 pieces, exponent", exponent(), "1", STEEPEST));
    return rows;
  }

  /** The smallest heap with which all files are written in a JVM of their own. */
  private static double leastHeap() throws IOException, InterruptedException {
    for (int megabytes = 64; megabytes <= 1024; megabytes *= 2) {
      ProcessBuilder process =
          java(
              megabytes,
              ManyPieces.class.getName(),
              Integer.toString(MANY_PIECES),
              Integer.toString(MANY_SIZES));
      process.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
      if (process.start().waitFor() == 0) {
        return megabytes;
      }
    }
    return Double.NaN;
  }

  /** The power of the number of pieces with which the time of one size grows, warm. */
  private static double exponent() throws IOException {
    new ManyPieces(GROWING[0]).write(WARM_UP);
    SimpleRegression fit = new SimpleRegression();
    for (int pieces : GROWING) {
      double best = Double.POSITIVE_INFINITY;
      for (int run = 0; run < RUNS; run++) {
        long start = System.nanoTime();
        new ManyPieces(pieces).write(1);
        best = Math.min(best, (double) (System.nanoTime() - start));
      }
      fit.addData(Math.log(pieces), Math.log(best));
    }
    return fit.getSlope();
  }

  private static ProcessBuilder java(int megabytes, String type, String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Xmx" + megabytes + "m");
    command.add("-cp");
    command.add(System.getProperty("java.class.path"));
    command.add(type);
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command);
  }

  private static double fresh() throws IOException, InterruptedException {
    List<Double> seconds = new ArrayList<>();
    for (int i = 0; i < RUNS; i++) {
      seconds.add(mainJob(Files.createTempDirectory("main-job")));
    }
    Collections.sort(seconds);
    return seconds.get(RUNS / 2);
  }

  private static double mainJob(Path folder) throws IOException, InterruptedException {
    ProcessBuilder process =
        java(
            128,
            "dev.drafting.examples.CopyGarment",
            "--garment",
            Vest.FOLDER.toString(),
            "--out",
            folder.resolve("files").toString());
    process.redirectErrorStream(true).redirectOutput(folder.resolve("said.txt").toFile());
    long start = System.nanoTime();
    int code = process.start().waitFor();
    double seconds = (System.nanoTime() - start) / 1e9;
    if (code != 0) {
      throw new IllegalStateException(Files.readString(folder.resolve("said.txt")));
    }
    return seconds;
  }
}
