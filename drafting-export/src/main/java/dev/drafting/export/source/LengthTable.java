package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV file whose first line names its columns: first those with names, then those with lengths. A
 * cell of a length may be empty.
 */
final class LengthTable {
  private static final int LONGEST_LINE = 2_000;

  private final String file;
  private final List<String> named;
  private final String example;
  private final List<Line> lines = new ArrayList<>();
  private List<String> columns = List.of();

  /** A line below the first one: the names in it, its lengths by their columns. */
  record Line(String where, List<String> names, Map<String, Length> lengths) {

    /** What the work gives; a fault in it gets this place. */
    <T> T placed(Supplier<T> work) {
      try {
        return work.get();
      } catch (DraftingException e) {
        throw e.at(where);
      }
    }
  }

  private LengthTable(String file, List<String> named, String example) {
    this.file = file;
    this.named = named;
    this.example = example;
  }

  /**
   * Reads a table.
   *
   * @param file the file
   * @param named the columns with names, which stand first
   * @param example a first line that would be accepted
   * @param mostLines how many lines there may be below the first one
   */
  static LengthTable read(Path file, List<String> named, String example, int mostLines) {
    String name = StrictText.name(file);
    try (StrictText text = StrictText.open(file, LONGEST_LINE, mostLines + 1);
        CSVParser parser = TracingFile.FORMAT.parse(text)) {
      LengthTable table = new LengthTable(name, named, example);
      for (CSVRecord line : parser) {
        table.add(line, name + ", line " + text.line());
      }
      return table;
    } catch (UncheckedIOException | IOException e) {
      throw StrictText.unreadable(name, e);
    }
  }

  /** The file's name, for messages. */
  String file() {
    return file;
  }

  /** The columns with lengths. */
  List<String> lengthColumns() {
    return columns.isEmpty() ? columns : columns.subList(named.size(), columns.size());
  }

  List<Line> lines() {
    return lines;
  }

  private void add(CSVRecord line, String where) {
    if (columns.isEmpty()) {
      columns = columns(line, where);
    } else {
      lines.add(line(line, where));
    }
  }

  private List<String> columns(CSVRecord line, String where) {
    List<String> names = new ArrayList<>(line.toList());
    boolean filled = names.stream().noneMatch(String::isBlank);
    boolean once = new HashSet<>(names).size() == names.size();
    if (names.size() <= named.size() || !beginsAsWanted(names) || !filled || !once) {
      throw DraftingException.of("the first line does not name the columns")
          .at(where)
          .value(String.join(",", names))
          .accepted(example);
    }
    return List.copyOf(names);
  }

  private boolean beginsAsWanted(List<String> names) {
    for (int i = 0; i < named.size(); i++) {
      if (!names.get(i).equalsIgnoreCase(named.get(i))) {
        return false;
      }
    }
    return true;
  }

  private Line line(CSVRecord line, String where) {
    if (line.size() != columns.size()) {
      throw DraftingException.of("the line has another number of cells than the first one")
          .at(where)
          .value(line.size())
          .accepted(String.valueOf(columns.size()));
    }
    List<String> names = new ArrayList<>();
    for (int i = 0; i < named.size(); i++) {
      names.add(name(line.get(i), named.get(i), where));
    }
    Map<String, Length> lengths = new LinkedHashMap<>();
    for (int i = named.size(); i < columns.size(); i++) {
      if (!line.get(i).isEmpty()) {
        lengths.put(columns.get(i), length(line.get(i), where + ", column " + columns.get(i)));
      }
    }
    return new Line(where, List.copyOf(names), lengths);
  }

  private static String name(String cell, String column, String where) {
    if (!Entry.isName(cell)) {
      throw DraftingException.of("a name cannot be used")
          .at(where + ", column " + column)
          .value(cell.isEmpty() ? "nothing" : cell)
          .accepted(Entry.NAME_ACCEPTED);
    }
    return cell;
  }

  private static Length length(String cell, String where) {
    try {
      return Length.parse(cell);
    } catch (DraftingException e) {
      throw e.at(where);
    }
  }
}
