package dev.drafting.export.svg;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Format;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Drawings as SVG files at true size: width and height in mm, one unit of the drawing is 1 mm. The
 * drawing begins 5 mm inside the edges.
 *
 * <pre>{@code
 * SvgFormat.of().fileEnding();  // => .svg
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class SvgFormat implements Format {
  private static final Length MARGIN = Length.mm(5);

  private SvgFormat() {}

  /**
   * The format.
   *
   * @return SVG with the names of pieces and edges
   */
  public static SvgFormat of() {
    return new SvgFormat();
  }

  @Override
  public String fileEnding() {
    return ".svg";
  }

  @Override
  public void write(Drawing drawing, OutputStream out) throws IOException {
    try {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory()
              .createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
      xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
      SvgPicture.of(drawing).withNames().write(xml, MARGIN, true);
      xml.writeEndDocument();
      xml.flush();
    } catch (XMLStreamException e) {
      throw new IOException("the SVG file cannot be written", e);
    }
  }

  @Override
  public String toString() {
    return "SVG";
  }
}
