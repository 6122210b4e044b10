package dev.drafting.examples;

import java.util.ArrayList;
import java.util.List;

/** Lines of words in columns: the first to the left, the others to the right. */
final class Columns {
  private static final String GAP = "   ";

  private final String indent;
  private final List<List<String>> rows = new ArrayList<>();

  Columns(int indent) {
    this.indent = " ".repeat(indent);
  }

  void add(List<String> row) {
    rows.add(List.copyOf(row));
  }

  void add(String... row) {
    add(List.of(row));
  }

  List<String> lines() {
    int count = rows.stream().mapToInt(List::size).max().orElse(0);
    int[] widths = new int[count];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private String line(List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder(indent);
    for (int i = 0; i < row.size(); i++) {
      String pad = " ".repeat(widths[i] - row.get(i).length());
      line.append(i == 0 ? "" : GAP).append(i == 0 ? row.get(i) + pad : pad + row.get(i));
    }
    return line.toString().stripTrailing();
  }
}
