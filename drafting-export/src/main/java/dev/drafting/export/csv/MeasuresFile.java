package dev.drafting.export.csv;

import dev.drafting.core.Stable;
import dev.drafting.knit.Measure;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * The finished measures of a draft as CSV: RFC 4180, UTF-8, one row a measure, lengths in mm with a
 * decimal point.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * MeasuresFile.of(top.measures());  // => measures: 10
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class MeasuresFile {
  /** What is added to the name of the draft. */
  public static final String FILE_ENDING = "-measures.csv";

  private final List<Measure> measures;

  private MeasuresFile(List<Measure> measures) {
    this.measures = List.copyOf(measures);
  }

  /**
   * A file of measures.
   *
   * @param measures in the order of the rows
   * @return the file
   */
  public static MeasuresFile of(List<Measure> measures) {
    return new MeasuresFile(measures);
  }

  /**
   * Writes the rows; the stream stays open.
   *
   * @param out where to
   * @throws IOException if it cannot be written
   */
  public void write(OutputStream out) throws IOException {
    Rows rows = new Rows("name", "length_mm");
    measures.forEach(measure -> rows.add(measure.name(), measure.length()));
    rows.write(out);
  }

  @Override
  public String toString() {
    return "measures: " + measures.size();
  }
}
