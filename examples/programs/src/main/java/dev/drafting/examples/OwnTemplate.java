package dev.drafting.examples;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.TemplateContract;
import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.WrittenFile;
import dev.drafting.export.pdf.Paper;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Tries a garment of one's own out against the contract of templates, drafts it in two fabrics and
 * writes its sheets, its drawing and its making-up sheet.
 *
 * @since 0.1
 */
@Command(
    name = "own-template",
    description = "Tries out, drafts and draws a garment that is not built in.",
    sortOptions = false)
public final class OwnTemplate implements Callable<Integer> {
  private static final int TRIES = 200;

  private final PrintStream out;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "own-template",
      description = "The folder for the files; own-template unless given.")
  private String target = "";

  @Option(names = "--help", usageHelp = true, description = "Shows this help.")
  @SuppressWarnings("UnusedVariable") // the library of options reads it
  private boolean help;

  private OwnTemplate(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program and ends the Java machine with its exit code.
   *
   * @param args the options, see {@code --help}
   */
  public static void main(String[] args) {
    Program.main(args, OwnTemplate::run);
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
    return Program.run(new OwnTemplate(out), args, out, err);
  }

  @Override
  public Integer call() throws IOException {
    GarmentTemplate template = new LegWarmer();
    tryOut(template);
    Draft draft =
        Draft.of(template.pattern())
            .withFabric(
                "body", Fabric.of("sweater knit", Structure.OTHER, 0.5).withWidth(Length.cm(140)))
            .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
    try (OutputFolder files = OutputFolder.stage(Path.of(target))) {
      List<WrittenFile> written =
          Export.of(draft)
              .pdf(Paper.A4)
              .svg()
              .sheet()
              .to(files.staging().resolve(template.id()), Progress.none());
      files.publish();
      say(template, draft);
      out.println("Written to " + files.target().resolve(template.id()));
      written.forEach(file -> out.println("  " + file.path().getFileName()));
    }
    return 0;
  }

  /** Draws it from dimensions all over its bounds. */
  private void tryOut(GarmentTemplate template) {
    List<String> violations = TemplateContract.check(template, 1, TRIES);
    if (!violations.isEmpty()) {
      throw DraftingException.of("it does not keep the contract of templates")
          .at(template.id())
          .value(violations.get(0))
          .accepted("a template that keeps it");
    }
    out.println("Drawn from " + TRIES + " sets of dimensions: it keeps the contract");
  }

  private void say(GarmentTemplate template, Draft draft) {
    out.println(Words.capital(template.about()));
    draft.measures().forEach(measure -> out.println("  " + measure));
    draft.strips().forEach(strip -> out.println("  " + strip));
    draft.findings().forEach(finding -> out.println("  " + finding));
  }
}
