package dev.drafting.examples;

import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Comparison;
import dev.drafting.knit.Draft;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Makes a garment again in each of its fabrics, with all that its first try-on showed, and sets the
 * measures side by side: what stays, what each fabric changes, and what would go wrong in it.
 *
 * @since 0.1
 */
@Command(
    name = "remake-in-three-fabrics",
    description = "Makes an altered garment again in each of its fabrics and compares them.",
    sortOptions = false)
public final class RemakeInThreeFabrics implements Callable<Integer> {
  private final PrintStream out;

  @Option(
      names = "--garment",
      paramLabel = "FOLDER",
      description = "The folder of a sleeveless garment; the demo vest unless given.")
  private String garment = "";

  @Option(names = "--help", usageHelp = true, description = "Shows this help.")
  @SuppressWarnings("UnusedVariable") // the library of options reads it
  private boolean help;

  private RemakeInThreeFabrics(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program and ends the Java machine with its exit code.
   *
   * @param args the options, see {@code --help}
   */
  public static void main(String[] args) {
    Program.main(args, RemakeInThreeFabrics::run);
  }

  /**
   * Runs the program.
   *
   * @param args the options, see {@code --help}
   * @param out where it says what came out
   * @param err where it says what is wrong
   * @return 0, or 2 if there is no such garment
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return Program.run(new RemakeInThreeFabrics(out), args, out, err);
  }

  @Override
  public Integer call() {
    Garment read = GarmentFolder.read(CopyGarment.folder(garment));
    Map<String, Draft> remade = new LinkedHashMap<>();
    for (Map.Entry<String, Draft> make : read.makes().entrySet()) {
      AlterationRecord record = AlterAfterTryOn.tryOn(make.getValue().alterations());
      remade.put(make.getKey(), make.getValue().withAlterations(record));
    }
    out.println(read.name() + ", with what the try-on showed");
    Draft first = remade.values().iterator().next();
    first.alterations().entries().forEach(entry -> out.println("  " + entry));
    out.println();
    table(remade).forEach(out::println);
    for (Map.Entry<String, Draft> make : remade.entrySet()) {
      out.println();
      out.println(make.getKey());
      for (Finding finding : make.getValue().findings()) {
        Words.paragraph("  ", finding.toString()).forEach(out::println);
      }
    }
    return 0;
  }

  /** A row for each measure, a column for each fabric. */
  private static List<String> table(Map<String, Draft> remade) {
    Columns columns = new Columns(0);
    List<String> heading = new ArrayList<>(List.of("mm"));
    heading.addAll(remade.keySet());
    columns.add(heading);
    Draft first = remade.values().iterator().next();
    for (Comparison.Row row : first.compare(first).rows()) {
      List<String> cells = new ArrayList<>(List.of(row.name()));
      for (Draft draft : remade.values()) {
        cells.add(rounded(first.compare(draft), row.name()));
      }
      columns.add(cells);
    }
    return columns.lines();
  }

  private static String rounded(Comparison comparison, String name) {
    return comparison.rows().stream()
        .filter(row -> row.name().equals(name))
        .map(row -> row.there())
        .map(Length::toMm)
        .map(mm -> String.valueOf(Math.round(mm)))
        .findFirst()
        .orElse("-");
  }
}
