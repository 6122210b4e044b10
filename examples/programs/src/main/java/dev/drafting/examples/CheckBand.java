package dev.drafting.examples;

import dev.drafting.knit.band.BandFit;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Judges a band or binding with a tape measure alone: which loops lie flat, what the maker's own
 * strip will do, and what would help. Draws the strip beside its edge.
 *
 * <p>Whatever is wrong is said on the error stream in one message and answered by exit code 2; then
 * no file is written.
 *
 * @since 0.1
 */
@Command(
    name = "check-band",
    description = "Says whether a strip will lie flat on an edge that was measured with a tape.",
    sortOptions = false)
public final class CheckBand implements Callable<Integer> {
  private final PrintStream out;

  @Mixin private final TapeOptions tape = new TapeOptions();

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "${sys:out:-checked-band}",
      description = "The folder for the picture; checked-band unless given.")
  private String target = "";

  @Option(names = "--help", usageHelp = true, description = "Shows this help.")
  @SuppressWarnings("UnusedVariable") // the library of options reads it
  private boolean help;

  private CheckBand(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program and ends the Java machine with its exit code.
   *
   * @param args the options, see {@code --help}
   */
  public static void main(String[] args) {
    Program.main(args, CheckBand::run);
  }

  /**
   * Runs the program.
   *
   * @param args the options, see {@code --help}
   * @param out where it says what came out
   * @param err where it says what is wrong
   * @return 0, or 2 when nothing was written
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return Program.run(new CheckBand(out), args, out, err);
  }

  @Override
  public Integer call() throws IOException {
    BandFit fit = tape.fit();
    BandReport.of(fit).forEach(out::println);
    try (OutputFolder files = OutputFolder.stage(Path.of(target))) {
      BandPicture.of(fit).write(files.staging().resolve("band.svg"));
      files.publish();
      out.println();
      out.println("Picture: " + Path.of(target).resolve("band.svg"));
    }
    return 0;
  }
}
