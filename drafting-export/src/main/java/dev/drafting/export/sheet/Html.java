package dev.drafting.export.sheet;

import java.util.List;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes elements of a page; every text is escaped by the XML writer underneath. */
final class Html {
  private final XMLStreamWriter xml;

  Html(XMLStreamWriter xml) {
    this.xml = xml;
  }

  /** For pictures, which write themselves. */
  XMLStreamWriter xml() {
    return xml;
  }

  /** Begins an element with attributes: name, value, name, value ... */
  void open(String tag, String... attributes) throws XMLStreamException {
    xml.writeStartElement(tag);
    attributes(attributes);
  }

  void close() throws XMLStreamException {
    xml.writeEndElement();
  }

  /** An element that holds nothing. */
  void empty(String tag, String... attributes) throws XMLStreamException {
    xml.writeEmptyElement(tag);
    attributes(attributes);
  }

  private void attributes(String... attributes) throws XMLStreamException {
    for (int i = 0; i < attributes.length; i += 2) {
      xml.writeAttribute(attributes[i], allowed(attributes[i + 1]));
    }
  }

  void write(String text) throws XMLStreamException {
    xml.writeCharacters(allowed(text));
  }

  /** With blanks in place of characters that XML 1.0 does not allow, section 2.2. */
  private static String allowed(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    text.codePoints().map(c -> isAllowed(c) ? c : ' ').forEach(plain::appendCodePoint);
    return plain.toString();
  }

  private static boolean isAllowed(int c) {
    boolean blank = c == '\t' || c == '\n' || c == '\r';
    return blank
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= Character.MIN_SUPPLEMENTARY_CODE_POINT;
  }

  /** An element that holds a text. */
  void text(String tag, String text, String... attributes) throws XMLStreamException {
    open(tag, attributes);
    write(text);
    close();
  }

  /** Pairs of a term and what it is. */
  void terms(List<String> pairs) throws XMLStreamException {
    open("dl");
    for (int i = 0; i < pairs.size(); i += 2) {
      text("dt", pairs.get(i));
      text("dd", pairs.get(i + 1));
    }
    close();
  }

  /** A table whose first column heads its rows. On a narrow screen every row becomes a list. */
  void table(String caption, List<String> heads, List<List<String>> rows)
      throws XMLStreamException {
    open("table", "class", heads.size() > 3 ? "wide" : "small", "aria-label", caption);
    open("thead");
    open("tr");
    for (String head : heads) {
      text("th", head, "scope", "col");
    }
    close();
    close();
    open("tbody");
    for (List<String> row : rows) {
      open("tr");
      text("th", row.get(0), "scope", "row");
      for (int i = 1; i < row.size(); i++) {
        text("td", row.get(i), "data-label", heads.get(i));
      }
      close();
    }
    close();
    close();
  }
}
