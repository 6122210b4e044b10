package dev.drafting.examples;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.Templates;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.NestedDrawing;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.source.GradeTable;
import dev.drafting.export.source.SizeTable;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Measure;
import dev.drafting.knit.size.Body;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodySizes;
import dev.drafting.knit.size.FittedTemplate;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Draws a garment in several sizes, in each other, and sets their measures side by side: a built-in
 * garment as usual, or for the bodies of a table of sizes; or a copied garment, by grade rules.
 *
 * @since 0.1
 */
@Command(
    name = "make-sizes",
    description = "Draws a garment in several sizes.",
    sortOptions = false)
public final class SizeRun implements Callable<Integer> {
  private static final Map<String, Double> USUAL_STEPS = Map.of("S", -1.0, "L", 1.0, "XL", 2.0);
  private static final double PER_CENT = 0.01;

  private final PrintStream out;

  @Option(
      names = "--template",
      paramLabel = "ID",
      defaultValue = "sleeveless-top",
      description = "Which built-in garment; sleeveless-top unless given.")
  private String id = "";

  @Option(
      names = "--for",
      paramLabel = "WHOM",
      defaultValue = "",
      description = "Sizes of women, men or children; four sizes 4 cm apart unless given.")
  private String whom = "";

  @Option(
      names = "--bodies",
      paramLabel = "FILE",
      defaultValue = "",
      description = "Your own table of bodies (CSV), in place of --for.")
  private String bodies = "";

  @Option(
      names = "--from",
      paramLabel = "SIZE",
      defaultValue = "",
      description = "The smallest size of the table; all unless given.")
  private String from = "";

  @Option(
      names = "--to",
      paramLabel = "SIZE",
      defaultValue = "",
      description = "The largest size of the table.")
  private String to = "";

  @Option(
      names = "--stretch",
      paramLabel = "PER CENT",
      defaultValue = "50",
      description = "How far the cloth gives, for sizes of bodies; 50 unless given.")
  private double stretch;

  @Option(
      names = "--grades",
      paramLabel = "FILE",
      defaultValue = "",
      description = "Grade rules (CSV) for a copied garment, in place of a built-in one.")
  private String grades = "";

  @Option(
      names = "--garment",
      paramLabel = "FOLDER",
      defaultValue = "",
      description = "The copied garment, which is size M; the demo vest unless given.")
  private String garment = "";

  @Option(
      names = "--steps",
      paramLabel = "SIZE=STEP",
      split = ",",
      description = "Sizes and how many steps from M; S=-1,L=1,XL=2 unless given.")
  private Map<String, Double> steps = new LinkedHashMap<>();

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "sizes",
      description = "The folder for the files; sizes unless given.")
  private String target = "";

  @Option(names = "--help", usageHelp = true, description = "Shows this help.")
  @SuppressWarnings("UnusedVariable") // the library of options reads it
  private boolean help;

  private SizeRun(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program and ends the Java machine with its exit code.
   *
   * @param args the options, see {@code --help}
   */
  public static void main(String[] args) {
    Program.main(args, SizeRun::run);
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
    return Program.run(new SizeRun(out), args, out, err);
  }

  @Override
  public Integer call() throws IOException {
    SizesMade sizes = sizes();
    try (OutputFolder files = OutputFolder.stage(Path.of(target))) {
      Drawing drawing = NestedDrawing.of(sizes.name() + ", sizes", sizes.patterns());
      Path file = files.staging().resolve(sizes.name() + "-sizes.svg");
      try (OutputStream bytes = Files.newOutputStream(file)) {
        SvgFormat.of().write(DraftDrawing.withLegend(drawing), bytes);
      }
      files.publish();
      out.println(Words.capital(sizes.about()));
      bodies(sizes.bodies()).forEach(out::println);
      finished(sizes.patterns()).forEach(out::println);
      sizes.findings().forEach(this::print);
      out.println("Drawn in " + files.target());
    }
    return 0;
  }

  private SizesMade sizes() {
    if (!grades.isEmpty()) {
      return SizesMade.graded(
          GarmentFolder.read(CopyGarment.folder(garment)),
          GradeTable.read(Path.of(grades)),
          steps.isEmpty() ? USUAL_STEPS : steps);
    }
    GarmentTemplate template = Templates.installed().get(id);
    if (whom.isEmpty() && bodies.isEmpty()) {
      return SizesMade.asUsual(template);
    }
    if (template instanceof FittedTemplate fitted) {
      return SizesMade.toMeasure(fitted, range(table()), stretch * PER_CENT);
    }
    throw DraftingException.of("this garment does not follow the measures of a body")
        .at("--template")
        .value(id)
        .accepted("a garment with rules for the body, or no --for and no --bodies");
  }

  private BodySizes table() {
    if (!bodies.isEmpty()) {
      return SizeTable.readBodies(Path.of(bodies));
    }
    return switch (whom) {
      case "women" -> BodySizes.women();
      case "men" -> BodySizes.men();
      case "children" -> BodySizes.children();
      default ->
          throw DraftingException.of("there is no such table of sizes")
              .at("--for")
              .value(whom)
              .accepted("women, men, children");
    };
  }

  private BodySizes range(BodySizes all) {
    List<String> names = all.names();
    return all.between(
        from.isEmpty() ? names.get(0) : from, to.isEmpty() ? names.get(names.size() - 1) : to);
  }

  private static List<String> bodies(Map<String, Body> bodies) {
    Columns columns = new Columns(2);
    if (bodies.isEmpty()) {
      return columns.lines();
    }
    columns.add(row("body, cm", List.copyOf(bodies.keySet())));
    for (BodyMeasure measure : bodies.values().iterator().next().measures().keySet()) {
      columns.add(
          row(
              measure.toString(),
              bodies.values().stream()
                  .map(body -> body.measure(measure).map(SizeRun::centimetres).orElse("-"))
                  .toList()));
    }
    return columns.lines();
  }

  private static List<String> finished(Map<String, Pattern> sizes) {
    Columns columns = new Columns(2);
    columns.add(row("finished, cm", List.copyOf(sizes.keySet())));
    List<List<Measure>> measures =
        sizes.values().stream().map(pattern -> Draft.of(pattern).measures()).toList();
    for (int i = 0; i < measures.get(0).size(); i++) {
      int line = i;
      columns.add(
          row(
              measures.get(0).get(i).name(),
              measures.stream().map(size -> centimetres(size.get(line).length())).toList()));
    }
    return columns.lines();
  }

  private static List<String> row(String name, List<String> cells) {
    List<String> row = new ArrayList<>(List.of(name));
    row.addAll(cells);
    return row;
  }

  private static String centimetres(Length length) {
    return Words.centimetres(length).replace(" cm", "");
  }

  private void print(String size, List<Finding> findings) {
    for (Finding finding : findings) {
      Words.paragraph("  " + size + ": ", finding.toString()).forEach(out::println);
    }
  }
}
