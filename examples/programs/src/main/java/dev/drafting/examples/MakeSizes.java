package dev.drafting.examples;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.SizeRun;
import dev.drafting.core.template.Templates;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.NestedDrawing;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Measure;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Draws a built-in garment in four sizes: the dimensions as usual for the first one, all girths 4
 * cm apart and the rest as it is. It sets the measures side by side and draws the sizes in each
 * other.
 *
 * @since 0.1
 */
@Command(
    name = "make-sizes",
    description = "Draws a built-in garment in four sizes.",
    sortOptions = false)
public final class MakeSizes implements Callable<Integer> {
  private static final Length STEP = Length.cm(4);
  private static final List<String> NAMES = List.of("S", "M", "L", "XL");

  private final PrintStream out;

  @Option(
      names = "--template",
      paramLabel = "ID",
      defaultValue = "sleeveless-top",
      description = "Which garment; sleeveless-top unless given.")
  private String id = "";

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "sizes",
      description = "The folder for the files; sizes unless given.")
  private String target = "";

  @Option(names = "--help", usageHelp = true, description = "Shows this help.")
  @SuppressWarnings("UnusedVariable") // the library of options reads it
  private boolean help;

  private MakeSizes(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program and ends the Java machine with its exit code.
   *
   * @param args the options, see {@code --help}
   */
  public static void main(String[] args) {
    Program.main(args, MakeSizes::run);
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
    return Program.run(new MakeSizes(out), args, out, err);
  }

  @Override
  public Integer call() throws IOException {
    GarmentTemplate template = Templates.installed().get(id);
    Map<String, Pattern> sizes = run(template).patterns(template);
    try (OutputFolder files = OutputFolder.stage(Path.of(target))) {
      Drawing drawing = NestedDrawing.of(id + ", sizes", sizes);
      Path file = files.staging().resolve(id + "-sizes.svg");
      try (OutputStream bytes = Files.newOutputStream(file)) {
        SvgFormat.of().write(DraftDrawing.withLegend(drawing), bytes);
      }
      files.publish();
      out.println(Words.capital(template.about()));
      table(sizes).forEach(out::println);
      out.println("Drawn in " + files.target());
    }
    return 0;
  }

  /** The dimensions as usual, and all girths wider by a step for each size more. */
  static SizeRun run(GarmentTemplate template) {
    Dimensions smallest = Dimensions.of();
    for (Dimension dimension : template.dimensions()) {
      if (dimension.girth()) {
        smallest = smallest.with(dimension.name(), dimension.usual());
      }
    }
    SizeRun run = SizeRun.of(NAMES.get(0), smallest);
    for (String name : NAMES.subList(1, NAMES.size())) {
      Dimensions next = run.dimensions(run.names().get(run.names().size() - 1));
      for (String girth : smallest.lengths().keySet()) {
        next = next.with(girth, next.length(girth).plus(STEP));
      }
      run = run.with(name, next);
    }
    return run;
  }

  private static List<String> table(Map<String, Pattern> sizes) {
    Columns columns = new Columns(2);
    List<String> heading = new ArrayList<>(List.of("finished, cm"));
    heading.addAll(sizes.keySet());
    columns.add(heading);
    List<List<Measure>> measures =
        sizes.values().stream().map(pattern -> Draft.of(pattern).measures()).toList();
    for (int i = 0; i < measures.get(0).size(); i++) {
      List<String> row = new ArrayList<>(List.of(measures.get(0).get(i).name()));
      for (List<Measure> size : measures) {
        row.add(Words.centimetres(size.get(i).length()).replace(" cm", ""));
      }
      columns.add(row);
    }
    return columns.lines();
  }
}
