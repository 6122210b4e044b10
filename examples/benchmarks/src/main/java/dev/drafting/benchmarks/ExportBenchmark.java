package dev.drafting.benchmarks;

import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.WrittenFile;
import dev.drafting.export.pdf.Paper;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** All files of one garment in one fabric. */
@State(Scope.Benchmark)
public class ExportBenchmark {
  private final Draft draft = Vest.draft();
  private Path folder = Path.of("");

  /** Makes a folder to write to; the same files are written again and again. */
  @Setup
  public void prepare() throws IOException {
    folder = Files.createTempDirectory("exports");
  }

  /** Writes both PDFs, the drawing and the making-up sheet. */
  @Benchmark
  public List<WrittenFile> all() throws IOException {
    return Export.of(draft)
        .pdf(Paper.A4)
        .pdf(Paper.LETTER)
        .svg()
        .sheet()
        .to(folder, Progress.none());
  }
}
