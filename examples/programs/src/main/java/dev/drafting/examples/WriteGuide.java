package dev.drafting.examples;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.svg.SvgFormat;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Writes the user guide: the job step by step, with pictures that are drawn anew, and the overview
 * for the Javadoc.
 *
 * @since 0.1
 */
@Command(
    name = "write-guide",
    description = "Writes the user guide with its pictures.",
    sortOptions = false)
public final class WriteGuide implements Callable<Integer> {
  private static final Length WIDEST = Length.mm(170);
  private static final Length HIGHEST = Length.mm(170);
  private static final String TITLE = "Drafting knit garments";
  private static final String STYLE =
      """
      body { max-width: 46rem; margin: 2rem auto; padding: 0 1rem; font: 1.05rem/1.5 serif; color: #111; }
      h1, h2 { font-family: sans-serif; line-height: 1.2; }
      h2 { margin-top: 2.5rem; }
      img { display: block; max-width: 100%; max-height: 34rem; margin: 1.5rem auto; }
      pre { overflow-x: auto; padding: 0.7rem 1rem; background: #f3f1ec; font-size: 0.85rem; }
      code { overflow-wrap: anywhere; }
      pre code { overflow-wrap: normal; }
      """;

  private final PrintStream out;

  @Option(
      names = "--texts",
      paramLabel = "FOLDER",
      defaultValue = "examples/programs/guide",
      description = "The folder with guide.md and overview.md.")
  private Path texts = Path.of("");

  @Option(names = "--garment", paramLabel = "FOLDER", description = "The folder of the demo vest.")
  private String garment = "";

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "guide",
      description = "The folder for the files; guide unless given.")
  private String target = "";

  @Option(names = "--help", usageHelp = true, description = "Shows this help.")
  @SuppressWarnings("UnusedVariable") // the library of options reads it
  private boolean help;

  private WriteGuide(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program and ends the Java machine with its exit code.
   *
   * @param args the options, see {@code --help}
   */
  public static void main(String[] args) {
    Program.main(args, WriteGuide::run);
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
    return Program.run(new WriteGuide(out), args, out, err);
  }

  @Override
  public Integer call() throws IOException {
    Garment vest = GarmentFolder.read(CopyGarment.folder(garment));
    try (OutputFolder files = OutputFolder.stage(Path.of(target))) {
      for (Map.Entry<String, Drawing> picture : new GuidePictures(vest).drawings().entrySet()) {
        draw(picture.getValue(), files.staging().resolve(picture.getKey() + ".svg"));
      }
      String guide = html(Files.readString(texts.resolve("guide.md")));
      String overview = html(Files.readString(texts.resolve("overview.md")));
      Files.writeString(files.staging().resolve("index.html"), page(guide));
      Files.writeString(files.staging().resolve("overview.html"), page(overview));
      files.publish();
      out.println("The guide is " + files.target().resolve("index.html"));
    }
    return 0;
  }

  private static void draw(Drawing drawing, Path file) throws IOException {
    try (OutputStream bytes = Files.newOutputStream(file)) {
      SvgFormat.of().write(small(drawing), bytes);
    }
  }

  /** Small enough for a page, the lines as heavy as they are on paper. */
  private static Drawing small(Drawing drawing) {
    Box box = drawing.bounds();
    double fits = Math.min(WIDEST.ratioTo(box.width()), HIGHEST.ratioTo(box.height()));
    Transform scaling = Transform.scaling(Math.min(1, fits));
    return Drawing.of(
        drawing.title(),
        drawing.groups().stream().map(group -> group.map(scaling)).toArray(Group[]::new));
  }

  private static String html(String markdown) {
    return HtmlRenderer.builder().build().render(Parser.builder().build().parse(markdown));
  }

  private static String page(String body) {
    return """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>%s</title>
        <style>
        %s</style>
        </head>
        <body>
        %s</body>
        </html>
        """
        .formatted(TITLE, STYLE, body);
  }
}
