package dev.drafting.examples;

import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.WrittenFile;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.PlainName;
import dev.drafting.export.drawing.TracingDrawing;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.source.Garment;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes the files of all makes of a garment and says what came out. */
final class Copying {
  private final Garment garment;
  private final OutputFolder files;
  private final PrintStream out;

  Copying(Garment garment, OutputFolder files, PrintStream out) {
    this.garment = garment;
    this.files = files;
    this.out = out;
  }

  void run() throws IOException {
    Set<String> folders = new HashSet<>();
    for (Map.Entry<String, Draft> make : garment.makes().entrySet()) {
      out.println("Drafting and drawing " + make.getKey());
      write(make.getValue(), files.staging().resolve(folder(make.getKey(), folders)));
    }
    tracing();
    List<String> report = Report.of(garment);
    List<String> listing = listing();
    files.publish();
    report.forEach(out::println);
    listing.forEach(out::println);
  }

  /** What was traced under what it was trued to, the same for all makes. */
  private void tracing() throws IOException {
    Drawing drawing = TracingDrawing.of(garment.name(), garment.tracings(), garment.trued());
    try (OutputStream file =
        Files.newOutputStream(files.staging().resolve("traced-and-trued.svg"))) {
      SvgFormat.of().write(drawing, file);
    }
  }

  /** A folder's name for a make, different from those that are taken. */
  private static String folder(String make, Set<String> taken) {
    String plain = PlainName.of(make);
    String name = plain;
    for (int i = 2; !taken.add(name); i++) {
      name = plain + "-" + i;
    }
    return name;
  }

  private void write(Draft draft, Path folder) throws IOException {
    List<WrittenFile> written =
        Export.of(draft)
            .pdf(Paper.A4)
            .pdf(Paper.LETTER)
            .svg()
            .sheet()
            .store(StoredDraft.of(draft).withTracings(garment.tracings()))
            .to(folder, Progress.none());
    if (written.isEmpty()) {
      throw new IOException("no file was made for " + draft.name());
    }
  }

  private List<String> listing() throws IOException {
    Columns columns = new Columns(2);
    long sum = 0;
    List<Path> written = files.files();
    for (Path file : written) {
      long size = Files.size(files.staging().resolve(file));
      sum += size;
      columns.add(file.toString().replace('\\', '/'), Words.kilobytes(size));
    }
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add("Files in " + files.target());
    lines.addAll(columns.lines());
    lines.add(
        Words.count(written.size(), "file", "files") + ", " + Words.kilobytes(sum) + " in all");
    return lines;
  }
}
