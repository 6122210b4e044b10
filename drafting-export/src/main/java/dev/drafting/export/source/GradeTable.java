package dev.drafting.export.source;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.grade.GradeRule;
import dev.drafting.core.measure.Length;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Grade rules from a CSV file whose first line is {@code piece,edge,next edge,across,along}, with a
 * line for each corner that moves. An empty cell is no move.
 *
 * <pre>{@code
 * Path file = Files.writeString(Path.of("target", "grades.csv"), "piece,edge,next edge,across,along\nfront,side,armhole,10 mm,\n");
 * GradeTable.read(file);  // => [front, side to armhole: 10 mm across, 0 mm along]
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class GradeTable {
  private static final int MOST_RULES = 2_000;
  private static final List<String> NAMED = List.of("piece", "edge", "next edge");
  private static final String ACROSS = "across";
  private static final String ALONG = "along";
  private static final String FIRST_LINE = "piece,edge,next edge,across,along";

  private GradeTable() {}

  /**
   * Reads the rules.
   *
   * @param file a CSV file of at most 2,000 rules
   * @return the rules in the order of the file
   * @throws DraftingException if it cannot be read, has no rules or other columns, or a cell is no
   *     length; it says in which line and column
   */
  public static List<GradeRule> read(Path file) {
    LengthTable table = LengthTable.read(file, NAMED, FIRST_LINE, MOST_RULES);
    if (table.lines().isEmpty() || !table.lengthColumns().equals(List.of(ACROSS, ALONG))) {
      throw DraftingException.of("the table has no grade rules")
          .at(table.file())
          .accepted(FIRST_LINE + ", and a line for each corner that moves");
    }
    List<GradeRule> rules = new ArrayList<>();
    for (LengthTable.Line line : table.lines()) {
      rules.add(
          GradeRule.of(
              line.names().get(0),
              line.names().get(1),
              line.names().get(2),
              line.lengths().getOrDefault(ACROSS, Length.ZERO),
              line.lengths().getOrDefault(ALONG, Length.ZERO)));
    }
    return List.copyOf(rules);
  }
}
