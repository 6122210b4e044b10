package dev.drafting.examples;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.alter.EdgeChange;
import dev.drafting.core.alter.EdgePlace;
import dev.drafting.core.measure.Length;
import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.drawing.ChangeDrawing;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Comparison;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Puts a try-on back into the pattern: the first copy of the vest was tight under the chin and
 * snipped there, and wide at the hem. It says what each alteration changes, what follows for the
 * strips, and writes a picture of before and after, and the new sheets.
 *
 * @since 0.1
 */
@Command(
    name = "alter-after-try-on",
    description = "Puts what a try-on showed back into the pattern of a garment.",
    sortOptions = false)
public final class AlterAfterTryOn implements Callable<Integer> {
  private final PrintStream out;

  @Option(
      names = "--garment",
      paramLabel = "FOLDER",
      description = "The folder of a sleeveless garment; the demo vest unless given.")
  private String garment = "";

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "altered-garment",
      description = "The folder for the files; altered-garment unless given.")
  private String target = "";

  @Option(names = "--help", usageHelp = true, description = "Shows this help.")
  @SuppressWarnings("UnusedVariable") // the library of options reads it
  private boolean help;

  private AlterAfterTryOn(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program and ends the Java machine with its exit code.
   *
   * @param args the options, see {@code --help}
   */
  public static void main(String[] args) {
    Program.main(args, AlterAfterTryOn::run);
  }

  /**
   * Runs the program.
   *
   * @param args the options, see {@code --help}
   * @param out where it says what it does and what came out
   * @param err where it says what is wrong
   * @return 0, or 2 when nothing was written
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return Program.run(new AlterAfterTryOn(out), args, out, err);
  }

  /** What the try-on showed. */
  static AlterationRecord tryOn(AlterationRecord before) {
    return before
        .with(
            Alteration.snip(
                "front neck",
                Length.mm(8),
                EdgePlace.at("fold"),
                EdgePlace.from("shoulder", Length.cm(6))),
            "tight under the chin")
        .with(Alteration.takeIn("side", Length.mm(6), Length.ZERO), "stands off at the hem")
        .with(Alteration.widenStrap("shoulder", Length.mm(-5)), "rubs at the arm");
  }

  @Override
  public Integer call() throws IOException {
    Garment read = GarmentFolder.read(CopyGarment.folder(garment));
    Draft before = read.makes().values().iterator().next();
    Draft after = before.withAlterations(tryOn(before.alterations()));
    try (OutputFolder files = OutputFolder.stage(Path.of(target))) {
      picture(after, files.staging().resolve("before-and-after.svg"));
      if (Export.of(after)
          .pdf(Paper.A4)
          .svg()
          .sheet()
          .to(files.staging(), Progress.none())
          .isEmpty()) {
        throw new IOException("no file was made");
      }
      files.publish();
      say(before, after);
      out.println();
      out.println("Files in " + files.target());
    }
    return 0;
  }

  private static void picture(Draft after, Path file) throws IOException {
    Drawing changes = ChangeDrawing.of(after.alterations());
    try (OutputStream bytes = Files.newOutputStream(file)) {
      SvgFormat.of().write(DraftDrawing.withLegend(changes), bytes);
    }
  }

  private void say(Draft before, Draft after) {
    AlterationRecord done = before.alterations();
    for (AlterationRecord.Entry entry : after.alterations().entries()) {
      out.println(Words.capital(entry.toString()));
      for (EdgeChange change : entry.alteration().changes(done.result())) {
        out.println("  " + change);
      }
      done = done.with(entry.alteration(), entry.note());
    }
    out.println();
    out.println("What follows, all together");
    Columns columns = new Columns(2);
    for (Comparison.Row row : before.compare(after).differences()) {
      columns.add(row.name(), Words.millimetres(row.here()), Words.millimetres(row.there()));
    }
    columns.lines().forEach(out::println);
    before.compare(after).onlyThere().forEach(finding -> out.println("  new: " + finding));
    before.compare(after).onlyHere().forEach(finding -> out.println("  gone: " + finding));
  }
}
