package dev.drafting.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** How long the files of a garment take, warm and from nothing. */
final class ExportTable implements Table {
  private static final double WARM_MS = 150;
  private static final double FRESH_S = 3;
  private static final int RUNS = 5;

  @Override
  public String name() {
    return "export";
  }

  @Override
  public List<Row> rows() throws Exception {
    double warm =
        Measurement.nanoseconds(ExportBenchmark.class).getOrDefault("all", Double.NaN) / 1e6;
    return List.of(
        Row.atMost(name(), "all files of the vest, warm", warm, "ms", WARM_MS),
        Row.atMost(
            name(), "main job in a fresh JVM with 128 MB, median of 5", fresh(), "s", FRESH_S));
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
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    ProcessBuilder process =
        new ProcessBuilder(
            java.toString(),
            "-Xmx128m",
            "-cp",
            System.getProperty("java.class.path"),
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
