package dev.drafting.export.source;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.SizeRun;
import dev.drafting.knit.size.Body;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodySizes;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A maker's own table of sizes: a CSV file whose first line is {@code size} and the names of
 * dimensions of a template, or of measures of the body, with a line for each size. Lengths have
 * their unit, {@code 92 cm}; an empty cell is taken as usual, or as not measured.
 *
 * <pre>{@code
 * Path file = Files.writeString(Path.of("target", "crew-sizes.csv"), "size,chest,length\nS,88 cm,60 cm\nM,92 cm,62 cm\n");
 * SizeRun crew = SizeTable.read(file);
 * crew.names();  // => [S, M]
 * crew.dimensions("M").length("chest");  // => 920 mm
 * Path bodies = Files.writeString(Path.of("target", "crew-bodies.csv"), "size,chest girth,hip girth\nS,88 cm,92 cm\nM,96 cm,100 cm\n");
 * SizeTable.readBodies(bodies).body("M");  // => chest girth 96 cm, hip girth 100 cm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class SizeTable {
  private static final int MOST_SIZES = 200;
  private static final List<String> NAMED = List.of("size");

  private SizeTable() {}

  /**
   * Reads sizes of a template.
   *
   * @param file a CSV file of at most 200 sizes
   * @return the sizes in the order of the file
   * @throws DraftingException if it cannot be read, has no sizes, names a column or a size twice,
   *     or a cell is no length; it says in which line and column
   */
  public static SizeRun read(Path file) {
    LengthTable table = table(file, "size, then dimensions, each once, such as size,chest,length");
    Optional<SizeRun> run = Optional.empty();
    for (LengthTable.Line line : table.lines()) {
      String size = line.names().get(0);
      Dimensions dimensions = dimensions(line.lengths());
      run =
          run.map(sizes -> line.placed(() -> sizes.with(size, dimensions)))
              .or(() -> Optional.of(SizeRun.of(size, dimensions)));
    }
    return run.orElseThrow();
  }

  private static Dimensions dimensions(Map<String, Length> lengths) {
    Dimensions dimensions = Dimensions.of();
    for (Map.Entry<String, Length> length : lengths.entrySet()) {
      dimensions = dimensions.with(length.getKey(), length.getValue());
    }
    return dimensions;
  }

  /**
   * Reads bodies; the sizes go by the measure that is named first.
   *
   * @param file a CSV file of at most 200 sizes, the smallest first
   * @return the table of sizes
   * @throws DraftingException if it cannot be read, has no sizes, names a column or a size twice or
   *     a measure that there is not, or no body measures so; it says in which line
   */
  public static BodySizes readBodies(Path file) {
    LengthTable table =
        table(
            file, "size, then measures of the body, each once, such as size,bust girth,hip girth");
    Map<String, Body> bodies = new LinkedHashMap<>();
    for (LengthTable.Line line : table.lines()) {
      String size = line.names().get(0);
      if (bodies.put(size, line.placed(() -> body(line.lengths()))) != null) {
        throw DraftingException.of("a size has no name of its own")
            .at(line.where())
            .value(size)
            .accepted("a name for each size");
      }
    }
    try {
      return BodySizes.of(BodyMeasure.of(table.lengthColumns().get(0)), bodies);
    } catch (DraftingException e) {
      throw e.at(table.file());
    }
  }

  private static Body body(Map<String, Length> lengths) {
    Body body = Body.of();
    for (Map.Entry<String, Length> length : lengths.entrySet()) {
      body = body.with(BodyMeasure.of(length.getKey()), length.getValue());
    }
    return body;
  }

  private static LengthTable table(Path file, String example) {
    LengthTable table = LengthTable.read(file, NAMED, example, MOST_SIZES);
    if (table.lines().isEmpty()) {
      throw DraftingException.of("the table has no sizes")
          .at(table.file())
          .accepted("a line that names the columns, and a line for each size");
    }
    return table;
  }
}
