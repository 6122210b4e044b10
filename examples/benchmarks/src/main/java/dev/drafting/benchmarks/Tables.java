package dev.drafting.benchmarks;

import java.util.List;
import java.util.stream.Collectors;

/** Prints one table of measured figures, or all of them. */
public final class Tables {
  private static final List<Table> ALL =
      List.of(
          new OffsetTable(),
          new TruingTable(),
          new LengthTable(),
          new GrowthTable(),
          new BandsTable(),
          new DraftTable(),
          new ExportTable(),
          new LayTable(),
          new FuzzTable(),
          new ChainTable(),
          new StoreTable());

  private Tables() {}

  /**
   * Measures and prints.
   *
   * @param arguments the name of a table, or {@code all}
   * @throws Exception if a measurement fails
   */
  public static void main(String[] arguments) throws Exception {
    String wanted = arguments.length == 1 ? arguments[0] : "";
    List<Table> tables =
        ALL.stream().filter(table -> wanted.equals("all") || wanted.equals(table.name())).toList();
    if (tables.isEmpty()) {
      String names = ALL.stream().map(Table::name).collect(Collectors.joining(", "));
      System.err.println("There is no table \"" + wanted + "\". Accepted: " + names + " or all.");
      System.exit(2);
    }
    System.out.println(Row.heading());
    for (Table table : tables) {
      table.rows().forEach(System.out::println);
    }
  }
}
