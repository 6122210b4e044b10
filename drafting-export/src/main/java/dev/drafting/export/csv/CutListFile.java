package dev.drafting.export.csv;

import dev.drafting.core.Stable;
import dev.drafting.core.cut.CutItem;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * The cut list, pieces and strips, as CSV: RFC 4180, UTF-8, one row an item, lengths in mm with a
 * decimal point.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * CutListFile.of(top.cutList());  // => cut list of 6 items
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class CutListFile {
  /** What is added to the name of the draft. */
  public static final String FILE_ENDING = "-cut-list.csv";

  private final List<CutItem> items;

  private CutListFile(List<CutItem> items) {
    this.items = List.copyOf(items);
  }

  /**
   * A file of a cut list.
   *
   * @param items in the order of the rows
   * @return the file
   */
  public static CutListFile of(List<CutItem> items) {
    return new CutListFile(items);
  }

  /**
   * Writes the rows; the stream stays open.
   *
   * @param out where to
   * @throws IOException if it cannot be written
   */
  public void write(OutputStream out) throws IOException {
    Rows rows = new Rows("name", "fabric", "count", "length_mm", "width_mm", "how");
    for (CutItem item : items) {
      rows.add(item.name(), item.cloth(), item.count(), item.length(), item.width(), item.how());
    }
    rows.write(out);
  }

  @Override
  public String toString() {
    return "cut list of " + items.size() + " items";
  }
}
