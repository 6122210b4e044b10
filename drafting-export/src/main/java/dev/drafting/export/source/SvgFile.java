package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads lines of a garment from the paths of an SVG drawing; {@link SvgNames} tells which and how
 * they are named. Whatever could reach outside the file or run in it is refused.
 */
final class SvgFile {
  private static final int LONGEST_LINE = 1_000_000;
  private static final int MOST_LINES = 100_000;
  private static final int MOST_POINTS = 100_000;
  private static final int DEEPEST = 50;
  private static final double CM_PER_INCH = 2.54;
  private static final Pattern LENGTH =
      Pattern.compile("\\s*(\\d{1,9}(?:\\.\\d{0,12})?)\\s*(mm|cm|in|pt|pc|px|)\\s*");
  private static final Map<String, Double> CM = centimetres();
  private static final Set<String> SILENT =
      Set.of("title", "desc", "metadata", "defs", "style", "namedview", "text");
  private static final Set<String> GROUPS = Set.of("svg", "g");

  private final String name;
  private final XMLStreamReader xml;
  private final SvgNames names;
  private final List<Stroke> strokes = new ArrayList<>();
  private final Deque<SvgTransform> placed = new ArrayDeque<>();
  private int points;

  private SvgFile(String name, XMLStreamReader xml, SvgNames names) {
    this.name = name;
    this.xml = xml;
    this.names = names;
  }

  private static Map<String, Double> centimetres() {
    Map<String, Double> cm = new LinkedHashMap<>();
    cm.put("mm", 0.1);
    cm.put("cm", 1.0);
    cm.put("in", CM_PER_INCH);
    cm.put("pt", CM_PER_INCH / 72);
    cm.put("pc", CM_PER_INCH / 6);
    cm.put("px", CM_PER_INCH / 96);
    cm.put("", CM_PER_INCH / 96);
    return cm;
  }

  /**
   * Hands lines on to the parser as long as none declares a document type: it would look into that
   * before it says so.
   */
  private static final class Undeclared extends Reader {
    private final String name;
    private final StrictText text;
    private int line;

    Undeclared(String name, StrictText text) {
      this.name = name;
      this.text = text;
    }

    @Override
    public int read(char[] target, int from, int length) throws IOException {
      int count = text.read(target, from, length);
      if (text.line() != line && text.lastLine().contains("<!DOCTYPE")) {
        throw DraftingException.of("the drawing declares a document type")
            .at(name + ", line " + text.line())
            .accepted("a drawing without one");
      }
      line = text.line();
      return count;
    }

    @Override
    public void close() throws IOException {
      text.close();
    }
  }

  /** Reads the paths in the order of the file. */
  static List<Stroke> read(Path file, SvgNames names) {
    String name = StrictText.name(file);
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    try (StrictText text = StrictText.open(file, LONGEST_LINE, MOST_LINES)) {
      SvgFile svg =
          new SvgFile(name, factory.createXMLStreamReader(new Undeclared(name, text)), names);
      return svg.strokes();
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 1 : Math.max(e.getLocation().getLineNumber(), 1);
      throw DraftingException.of("the drawing is not well-formed XML")
          .at(name + ", line " + line)
          .accepted("an SVG drawing")
          .because(e);
    } catch (IOException e) {
      throw StrictText.unreadable(name, e);
    }
  }

  private List<Stroke> strokes() throws XMLStreamException {
    while (xml.hasNext()) {
      switch (xml.next()) {
        case XMLStreamConstants.ENTITY_REFERENCE ->
            throw fault("the drawing refers to an entity").accepted("plain text");
        case XMLStreamConstants.PROCESSING_INSTRUCTION ->
            throw fault("the drawing has a processing instruction")
                .value(xml.getPITarget())
                .accepted("elements only");
        case XMLStreamConstants.START_ELEMENT -> start();
        case XMLStreamConstants.END_ELEMENT -> placed.pop();
        default -> {
          // Text and comments draw nothing.
        }
      }
    }
    if (strokes.isEmpty()) {
      throw DraftingException.of("the drawing has no paths").at(name).accepted(names.wanted());
    }
    strokes.forEach(Stroke::requireLine);
    return List.copyOf(strokes);
  }

  private void start() throws XMLStreamException {
    refuseReaching();
    String element = xml.getLocalName().toLowerCase(Locale.ROOT);
    if (placed.isEmpty() && !element.equals("svg")) {
      throw fault("this is no SVG drawing").value(element).accepted("an svg element");
    }
    refuseDeep(placed.size());
    SvgTransform here = placed.isEmpty() ? unit() : placed.peek().after(own());
    if (SILENT.contains(element)) {
      skip();
      return;
    }
    placed.push(here);
    names.enter(attribute("id"), attribute("data-piece"));
    if (element.equals("path")) {
      path(here);
    } else if (!GROUPS.contains(element) || (placed.size() > 1 && element.equals("svg"))) {
      throw fault("only paths and groups of paths are read")
          .value(element)
          .accepted("a path for each edge");
    }
  }

  /** Leaves out an element and all that is in it, which must not reach outside either. */
  private void skip() throws XMLStreamException {
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        refuseReaching();
        refuseDeep(placed.size() + depth);
        depth++;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (event == XMLStreamConstants.ENTITY_REFERENCE) {
        throw fault("the drawing refers to an entity").accepted("plain text");
      }
    }
  }

  private void refuseDeep(int depth) {
    if (depth >= DEEPEST) {
      throw fault("the groups lie too deep").accepted("at most " + DEEPEST + " in each other");
    }
  }

  private void refuseReaching() {
    if (xml.getLocalName().equalsIgnoreCase("script")) {
      throw fault("the drawing has a script").accepted("a drawing without scripts");
    }
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      String attribute = xml.getAttributeLocalName(i).toLowerCase(Locale.ROOT);
      boolean reaches =
          attribute.startsWith("on")
              || attribute.equals("href")
              || attribute.equals("base")
              || xml.getAttributeValue(i).toLowerCase(Locale.ROOT).contains("url(");
      if (reaches) {
        throw fault("the drawing has a script or a reference")
            .value(attribute)
            .accepted("a drawing that stands alone");
      }
    }
  }

  private SvgTransform own() {
    String transform = xml.getAttributeValue(null, "transform");
    return transform == null ? SvgTransform.NONE : placed(() -> SvgTransform.parse(transform));
  }

  /** Centimetres for each unit of the drawing. */
  private SvgTransform unit() {
    String width = xml.getAttributeValue(null, "width");
    String box = xml.getAttributeValue(null, "viewBox");
    if (box == null) {
      return SvgTransform.scale(CM_PER_INCH / 96);
    }
    String[] parts = box.strip().split("\\s*,\\s*|\\s+", -1);
    double units = parts.length == 4 ? positive(parts[2], "viewBox") : 0;
    if (units == 0) {
      throw fault("the viewBox cannot be read").value(box).accepted("four numbers");
    }
    Matcher length = LENGTH.matcher(width == null ? "" : width);
    if (!length.matches()) {
      throw fault("the drawing does not say how wide it is")
          .value(width == null ? "nothing" : width)
          .accepted("a width in mm, cm, in, pt or px beside the viewBox");
    }
    double cm = positive(length.group(1), "width") * CM.getOrDefault(length.group(2), 1.0);
    return SvgTransform.scale(cm / units);
  }

  private double positive(String text, String what) {
    try {
      double number = Double.parseDouble(text);
      if (number > 0 && number < 1e9) {
        return number;
      }
      throw fault("the " + what + " is out of range").value(text).accepted("more than 0");
    } catch (NumberFormatException e) {
      throw fault("the " + what + " cannot be read").value(text).accepted("a number").because(e);
    }
  }

  private void path(SvgTransform here) {
    int line = xml.getLocation().getLineNumber();
    placed(() -> names.stroke(attribute("id"), name, line))
        .ifPresent(stroke -> strokes.add(placed(() -> walked(stroke, line, here))));
  }

  private Stroke walked(Stroke stroke, int line, SvgTransform here) {
    SvgPath.walk(attribute("d"), (x, y) -> mark(stroke, line, here, x, y));
    return stroke;
  }

  /** An attribute of this element; empty if it is not there. */
  private String attribute(String attribute) {
    String value = xml.getAttributeValue(null, attribute);
    return value == null ? "" : value;
  }

  /** Drawings count y downwards. */
  private void mark(Stroke stroke, int line, SvgTransform here, double x, double y) {
    if (++points > MOST_POINTS) {
      throw fault("the drawing has too many points").accepted("at most " + MOST_POINTS);
    }
    double cmX = here.x(x, y);
    double cmY = -here.y(x, y);
    if (!(Math.abs(cmX) <= TracingFile.FARTHEST_CM && Math.abs(cmY) <= TracingFile.FARTHEST_CM)) {
      throw fault("the point is too far away")
          .value(cmX + ", " + cmY + " cm")
          .accepted("within 500 cm");
    }
    stroke.add(line, cmX, cmY);
  }

  private <T> T placed(Supplier<T> reading) {
    try {
      return reading.get();
    } catch (DraftingException e) {
      throw e.where().isEmpty() ? e.at(name + ", line " + xml.getLocation().getLineNumber()) : e;
    }
  }

  private DraftingException fault(String what) {
    return DraftingException.of(what).at(name + ", line " + xml.getLocation().getLineNumber());
  }
}
