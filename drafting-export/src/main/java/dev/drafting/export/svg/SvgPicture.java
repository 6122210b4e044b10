package dev.drafting.export.svg;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.drawing.PlainName;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A drawing as an {@code svg} element, to stand in a page or in a file of its own. Every kind of
 * line is a layer with a class of its name, such as {@code cut-line}; a page may restyle it.
 *
 * <p>With {@link #withNames} pieces, layers and lines carry unique ids made of plain letters
 * ("front", "front.join-line", "front.join-line.neck") and the names as they were given in {@code
 * data-piece} and {@code data-edge}.
 *
 * <pre>{@code
 * Group hem = new Group("hem", List.of(new Stroke(StrokeStyle.CUT_LINE, "hem", Curve.line(new Point(0, 0), new Point(230, 0)))));
 * SvgPicture picture = SvgPicture.of(Drawing.of("hem", hem)).withNames();
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class SvgPicture {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String BLACK = "#111111";
  private static final String ACCENT = "#b5381f";
  private static final String FONTS = "'Liberation Sans', Arial, Helvetica, sans-serif";

  private final Drawing drawing;
  private final boolean names;
  private final boolean texts;

  private SvgPicture(Drawing drawing, boolean names, boolean texts) {
    this.drawing = Objects.requireNonNull(drawing, "drawing");
    this.names = names;
    this.texts = texts;
  }

  /**
   * A picture of a drawing: lines and texts, no ids.
   *
   * @param drawing what to show
   * @return the picture
   */
  public static SvgPicture of(Drawing drawing) {
    return new SvgPicture(drawing, false, true);
  }

  /**
   * The same picture with ids and names of pieces and edges.
   *
   * @return the picture
   */
  public SvgPicture withNames() {
    return new SvgPicture(drawing, true, texts);
  }

  /**
   * The same picture without the texts, for a small print beside words.
   *
   * @return the picture
   */
  public SvgPicture withoutTexts() {
    return new SvgPicture(drawing, names, false);
  }

  /**
   * Writes the element.
   *
   * @param xml where to; the caller has begun the document
   * @param margin white room on all sides, at the drawing's scale
   * @param sized whether the element says its true width and height, or fills the room it is given
   * @throws XMLStreamException if the writer fails
   */
  public void write(XMLStreamWriter xml, Length margin, boolean sized) throws XMLStreamException {
    new Pen(xml, margin.toMm()).picture(sized);
  }

  /** One run of writing. */
  private final class Pen {
    private final XMLStreamWriter xml;
    private final double left;
    private final double top;
    private final double width;
    private final double height;
    private final Set<String> ids = new HashSet<>();

    Pen(XMLStreamWriter xml, double margin) {
      this.xml = xml;
      Box box = drawing.bounds();
      left = box.minX() - margin;
      top = box.maxY() + margin;
      width = box.width().toMm() + 2 * margin;
      height = box.height().toMm() + 2 * margin;
    }

    void picture(boolean sized) throws XMLStreamException {
      xml.writeStartElement("svg");
      xml.writeDefaultNamespace(SVG);
      if (sized) {
        xml.writeAttribute("width", Decimal.of(width) + "mm");
        xml.writeAttribute("height", Decimal.of(height) + "mm");
      }
      String box = Decimal.of(left) + " 0 " + Decimal.of(width) + " " + Decimal.of(height);
      xml.writeAttribute("viewBox", box);
      xml.writeAttribute("role", "img");
      xml.writeAttribute("fill", "none");
      xml.writeAttribute("stroke", BLACK);
      xml.writeAttribute("stroke-linejoin", "round");
      xml.writeAttribute("font-family", FONTS);
      element("title", drawing.title());
      if (sized) {
        element("desc", "True size: 1 unit is 1 mm. Print or cut at 100 %.");
      }
      for (Group group : drawing.groups()) {
        piece(group);
      }
      xml.writeEndElement();
    }

    private void element(String tag, String text) throws XMLStreamException {
      xml.writeStartElement(tag);
      xml.writeCharacters(text);
      xml.writeEndElement();
    }

    private void piece(Group group) throws XMLStreamException {
      String id = unique(PlainName.of(group.name()));
      xml.writeStartElement("g");
      name(id, "data-piece", group.name());
      for (StrokeStyle style : StrokeStyle.values()) {
        layer(id, style, group.strokes(style));
      }
      if (texts) {
        words(id, group.labels());
      }
      xml.writeEndElement();
    }

    private void layer(String piece, StrokeStyle style, List<Stroke> strokes)
        throws XMLStreamException {
      if (strokes.isEmpty()) {
        return;
      }
      String kind = PlainName.of(style.toString());
      String id = unique(piece + "." + kind);
      xml.writeStartElement("g");
      name(id, "", "");
      xml.writeAttribute("class", kind);
      xml.writeAttribute("stroke-width", Decimal.of(style.weight().toMm()));
      if (!style.dashes().isEmpty()) {
        xml.writeAttribute("stroke-dasharray", numbers(style.dashes()));
      }
      if (style == StrokeStyle.FINDING) {
        xml.writeAttribute("stroke", ACCENT);
      }
      for (Stroke stroke : strokes) {
        xml.writeEmptyElement("path");
        String plain = stroke.name().isEmpty() ? "line" : PlainName.of(stroke.name());
        name(unique(id + "." + plain), "data-edge", stroke.name());
        xml.writeAttribute("d", PathData.of(stroke.curve(), top));
      }
      xml.writeEndElement();
    }

    private String numbers(List<Length> lengths) {
      return lengths.stream().map(l -> Decimal.of(l.toMm())).collect(Collectors.joining(" "));
    }

    private void words(String piece, List<Label> labels) throws XMLStreamException {
      if (labels.isEmpty()) {
        return;
      }
      xml.writeStartElement("g");
      name(unique(piece + ".words"), "", "");
      xml.writeAttribute("class", "words");
      xml.writeAttribute("stroke", "none");
      xml.writeAttribute("fill", BLACK);
      for (Label label : labels) {
        words(label);
      }
      xml.writeEndElement();
    }

    private void words(Label label) throws XMLStreamException {
      Point at = label.at();
      xml.writeStartElement("text");
      xml.writeAttribute("x", Decimal.of(at.x()));
      xml.writeAttribute("y", Decimal.of(top - at.y()));
      xml.writeAttribute("font-size", Decimal.of(label.height().toMm() * Lettering.EM));
      switch (label.anchor()) {
        case START -> {}
        case MIDDLE -> xml.writeAttribute("text-anchor", "middle");
        case END -> xml.writeAttribute("text-anchor", "end");
      }
      if (label.isFinding()) {
        xml.writeAttribute("fill", ACCENT);
      }
      xml.writeCharacters(label.text());
      xml.writeEndElement();
    }

    private void name(String id, String attribute, String value) throws XMLStreamException {
      if (!names) {
        return;
      }
      xml.writeAttribute("id", id);
      if (!value.isEmpty()) {
        xml.writeAttribute(attribute, value);
      }
    }

    private String unique(String wanted) {
      String id = wanted;
      for (int n = 2; !ids.add(id); n++) {
        id = wanted + "-" + n;
      }
      return id;
    }
  }
}
