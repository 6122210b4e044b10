package dev.drafting.benchmarks;

import java.util.List;

/** A table of figures that are measured when it is asked for its rows. */
interface Table {
  /** The name by which it is asked for. */
  String name();

  /** Measures and reports. */
  List<Row> rows() throws Exception;
}
