package dev.drafting.export.svg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.export.TestDrawings;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgFormatTest {
  private static byte[] bytes(Drawing drawing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgFormat.of().write(drawing, out);
    return out.toByteArray();
  }

  private static Document parsed(Drawing drawing) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes(drawing)));
  }

  private static List<Element> all(Document document, String tag) {
    NodeList nodes = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", tag);
    List<Element> list = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      list.add((Element) nodes.item(i));
    }
    return list;
  }

  @Test
  void aRectangleReadsBackAtTrueSize() throws Exception {
    Document svg = parsed(Drawing.of("test", TestDrawings.rectangle("pocket", 123.4567, 50)));
    Element root = svg.getDocumentElement();
    assertEquals("133.4567mm", root.getAttribute("width"));
    assertEquals("60mm", root.getAttribute("height"));
    assertEquals("-5 0 133.4567 60", root.getAttribute("viewBox"));
    assertEquals(
        "M0 55L123.4567 55L123.4567 5L0 5L0 55Z", all(svg, "path").get(0).getAttribute("d"));
  }

  @Test
  void curvesStayCurves() throws Exception {
    Document svg = parsed(TestDrawings.vest());
    List<String> data = all(svg, "path").stream().map(p -> p.getAttribute("d")).toList();
    assertEquals(3, data.get(0).chars().filter(c -> c == 'C').count());
    assertTrue(data.stream().anyMatch(d -> d.contains("A40 40 0 0 0 ")), data.toString());
  }

  @Test
  void piecesLayersAndEdgesAreNamed() throws Exception {
    Document svg = parsed(TestDrawings.vest());
    List<String> ids = all(svg, "path").stream().map(p -> p.getAttribute("id")).toList();
    assertTrue(ids.contains("front.join-line.side"), ids.toString());
    assertTrue(ids.contains("back.fold.hem"), ids.toString());
    Element layer = (Element) all(svg, "path").get(0).getParentNode();
    assertEquals("cut-line", layer.getAttribute("class"));
    assertEquals("0.7", layer.getAttribute("stroke-width"));
    assertEquals("front", ((Element) layer.getParentNode()).getAttribute("data-piece"));
  }

  @Test
  void hostileNamesAreEscapedAndIdsAreUnique() throws Exception {
    String name = "\"><script>x</script>\u0007\ud83d\ude00\ud800&\uffff";
    Stroke stroke = TestDrawings.rectangle("a", 10, 10).strokes().get(0);
    Stroke hostile = new Stroke(StrokeStyle.CUT_LINE, name, stroke.curve());
    Group piece = new Group(name, List.of(hostile, hostile, hostile));
    Document svg = parsed(Drawing.of(name, piece, piece));
    String shown = "\"><script>x</script> \ud83d\ude00\u25a1&\u25a1";
    assertEquals(shown, all(svg, "title").get(0).getTextContent());
    assertEquals(shown, all(svg, "path").get(0).getAttribute("data-edge"));
    Set<String> ids = new HashSet<>();
    for (String tag : List.of("g", "path")) {
      for (Element element : all(svg, tag)) {
        String id = element.getAttribute("id");
        assertTrue(id.matches("[a-z][a-z0-9.-]*"), id);
        assertTrue(ids.add(id), id);
      }
    }
    assertEquals(2 + 2 + 6, ids.size());
  }

  @Test
  void theSameDrawingGivesTheSameBytes() throws IOException {
    assertArrayEquals(bytes(TestDrawings.vest()), bytes(TestDrawings.vest()));
  }

  @Test
  void numbersHaveNoExponentAndNoLocale() {
    assertEquals("0", Decimal.of(-1e-9));
    assertEquals("-0.0001", Decimal.of(-1e-4));
    assertEquals("1234567.5", Decimal.of(1234567.5));
    assertEquals("12.3457", Decimal.of(12.34567));
    assertEquals("-3.05", Decimal.of(-3.05));
  }
}
