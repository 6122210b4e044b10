package dev.drafting.export.csv;

import dev.drafting.core.Stable;
import dev.drafting.knit.band.Strip;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * The strips of a draft, bindings and bands, as CSV: RFC 4180, UTF-8, one row a strip, lengths in
 * mm with a decimal point. {@code loop_mm} is the strip once it is joined to a round, {@code
 * join_line_mm} the line it is sewn to, {@code stretch_percent} what it is stretched by for that.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * StripsFile.of(top.strips());  // => strips: 3
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class StripsFile {
  /** What is added to the name of the draft. */
  public static final String FILE_ENDING = "-strips.csv";

  private final List<Strip> strips;

  private StripsFile(List<Strip> strips) {
    this.strips = List.copyOf(strips);
  }

  /**
   * A file of strips.
   *
   * @param strips in the order of the rows
   * @return the file
   */
  public static StripsFile of(List<Strip> strips) {
    return new StripsFile(strips);
  }

  /**
   * Writes the rows; the stream stays open.
   *
   * @param out where to
   * @throws IOException if it cannot be written
   */
  public void write(OutputStream out) throws IOException {
    Rows rows =
        new Rows(
            "name",
            "fabric",
            "cut_length_mm",
            "cut_width_mm",
            "loop_mm",
            "join_line_mm",
            "finished_edge_mm",
            "stretch_percent",
            "outcome");
    for (Strip strip : strips) {
      rows.add(
          strip.name(),
          strip.finish().cloth(),
          strip.cutLength(),
          strip.cutWidth(),
          strip.loop(),
          strip.joinLine(),
          strip.finishedEdge(),
          Rows.plain(100 * strip.stretchAsked()),
          strip.outcome().plainName());
    }
    rows.write(out);
  }

  @Override
  public String toString() {
    return "strips: " + strips.size();
  }
}
