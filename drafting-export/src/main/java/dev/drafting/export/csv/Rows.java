package dev.drafting.export.csv;

import dev.drafting.core.measure.Length;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/** Rows of a CSV file under their heading: RFC 4180, UTF-8, lengths in mm with a decimal point. */
final class Rows {
  private final List<Object[]> rows = new ArrayList<>();

  Rows(Object... heading) {
    add(heading);
  }

  void add(Object... cells) {
    Object[] row = new Object[cells.length];
    for (int i = 0; i < cells.length; i++) {
      row[i] = cells[i] instanceof Length length ? plain(length.toMm()) : cells[i];
    }
    rows.add(row);
  }

  static String plain(double number) {
    return BigDecimal.valueOf(number).toPlainString();
  }

  /** The stream stays open. */
  void write(OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    for (Object[] row : rows) {
      writer.write(CSVFormat.RFC4180.format(row) + "\r\n");
    }
    writer.flush();
  }
}
