package dev.drafting.export.source;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.SizeRun;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A maker's own table of sizes: a CSV file whose first line is {@code size} and the names of
 * dimensions of a template, with a line for each size. Lengths have their unit, {@code 92 cm}; an
 * empty cell is taken as usual.
 *
 * <pre>{@code
 * Path file = Files.writeString(Path.of("target", "crew-sizes.csv"), "size,chest,length\nS,88 cm,60 cm\nM,92 cm,62 cm\n");
 * SizeRun crew = SizeTable.read(file);
 * crew.names();  // => [S, M]
 * crew.dimensions("M").length("chest");  // => 920 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class SizeTable {
  private static final int LONGEST_LINE = 2_000;
  private static final int MOST_SIZES = 200;
  private static final String SIZE = "size";

  private final String name;
  private final StrictText text;
  private List<String> columns = List.of();

  private SizeTable(String name, StrictText text) {
    this.name = name;
    this.text = text;
  }

  /**
   * Reads a table.
   *
   * @param file a CSV file of at most 200 sizes
   * @return the sizes in the order of the file
   * @throws DraftingException if it cannot be read, has no sizes, names a column or a size twice,
   *     or a cell is no length; it says in which line and column
   */
  public static SizeRun read(Path file) {
    String name = StrictText.name(file);
    try (StrictText text = StrictText.open(file, LONGEST_LINE, MOST_SIZES + 1);
        CSVParser parser = TracingFile.FORMAT.parse(text)) {
      return new SizeTable(name, text).sizes(parser);
    } catch (UncheckedIOException | IOException e) {
      throw StrictText.unreadable(name, e);
    }
  }

  private SizeRun sizes(CSVParser parser) {
    Optional<SizeRun> run = Optional.empty();
    for (CSVRecord line : parser) {
      if (columns.isEmpty()) {
        columns = columns(line);
      } else {
        String size = size(line);
        Dimensions dimensions = dimensions(line);
        run =
            run.map(sizes -> placed(sizes, size, dimensions))
                .or(() -> Optional.of(SizeRun.of(size, dimensions)));
      }
    }
    return run.orElseThrow(
        () ->
            DraftingException.of("the table has no sizes")
                .at(name)
                .accepted(
                    "a line with size and the names of dimensions, and a line for each size"));
  }

  private List<String> columns(CSVRecord line) {
    List<String> names = new ArrayList<>(line.toList());
    boolean named = names.stream().noneMatch(String::isBlank);
    boolean once = new HashSet<>(names).size() == names.size();
    if (names.size() < 2 || !names.get(0).equalsIgnoreCase(SIZE) || !named || !once) {
      throw fault("the first line does not name the columns")
          .value(String.join(",", names))
          .accepted("size, then dimensions, each once, such as size,chest,length");
    }
    return List.copyOf(names);
  }

  private String size(CSVRecord line) {
    if (line.size() != columns.size()) {
      throw fault("the line has another number of cells than the first one")
          .value(line.size())
          .accepted(String.valueOf(columns.size()));
    }
    if (!Entry.isName(line.get(0))) {
      throw fault("a size has no name that can be used")
          .value(line.get(0).isEmpty() ? "nothing" : line.get(0))
          .accepted(Entry.NAME_ACCEPTED);
    }
    return line.get(0);
  }

  private Dimensions dimensions(CSVRecord line) {
    Dimensions dimensions = Dimensions.of();
    for (int i = 1; i < columns.size(); i++) {
      if (!line.get(i).isEmpty()) {
        dimensions = dimensions.with(columns.get(i), length(line.get(i), columns.get(i)));
      }
    }
    return dimensions;
  }

  private Length length(String cell, String column) {
    try {
      return Length.parse(cell);
    } catch (DraftingException e) {
      throw e.at(where() + ", column " + column);
    }
  }

  private SizeRun placed(SizeRun sizes, String size, Dimensions dimensions) {
    try {
      return sizes.with(size, dimensions);
    } catch (DraftingException e) {
      throw e.at(where());
    }
  }

  private String where() {
    return name + ", line " + text.line();
  }

  private DraftingException fault(String what) {
    return DraftingException.of(what).at(where());
  }
}
