package dev.drafting.examples;

import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Copies a garment: reads the points that were traced round it and what is known about it, and
 * writes for each of its fabrics a pattern at true size, drawings and a sheet for making it up.
 *
 * <p>Whatever is wrong is said on the error stream in one message and answered by exit code 2; then
 * no file is written.
 *
 * @since 0.1
 */
@Command(
    name = "copy-garment",
    description = "Copies a garment that was traced into patterns at true size.",
    sortOptions = false)
public final class CopyGarment implements Callable<Integer> {
  private static final List<Path> DEMO =
      List.of(Path.of("examples", "programs", "garments", "vest"), Path.of("garments", "vest"));

  private final PrintStream out;

  @Option(
      names = "--garment",
      paramLabel = "FOLDER",
      defaultValue = "${sys:garment}",
      description = "The folder with tracing.csv and garment.json; the demo vest unless given.")
  private String garment = "";

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "${sys:out:-copied-garment}",
      description = "The folder for the files; copied-garment unless given.")
  private String target = "";

  @Option(names = "--help", usageHelp = true, description = "Shows this help.")
  @SuppressWarnings("UnusedVariable") // the library of options reads it
  private boolean help;

  private CopyGarment(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program and ends the Java machine with its exit code.
   *
   * @param args the options, see {@code --help}
   */
  public static void main(String[] args) {
    Program.main(args, CopyGarment::run);
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
    return Program.run(new CopyGarment(out), args, out, err);
  }

  @Override
  public Integer call() throws IOException {
    Path folder = folder(garment);
    out.println("Reading and truing the tracing in " + folder);
    Garment read = GarmentFolder.read(folder);
    if (!read.about().isEmpty()) {
      Words.paragraph("  ", read.about()).forEach(out::println);
    }
    try (OutputFolder files = OutputFolder.stage(Path.of(target))) {
      new Copying(read, files, out).run();
    }
    return 0;
  }

  /** The folder that was asked for, or that of the demo vest. */
  static Path folder(String garment) {
    return garment.isEmpty() ? demo() : Path.of(garment);
  }

  private static Path demo() {
    return DEMO.stream().filter(Files::isDirectory).findFirst().orElse(DEMO.get(0));
  }
}
