package dev.drafting.export.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.export.TestGarment;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Measure;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class MakingUpSheetTest {
  private static byte[] bytes(Draft draft) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MakingUpSheet.of(draft).write(out);
    return out.toByteArray();
  }

  /** The page is also well-formed XML, so that the platform's own parser can read it. */
  private static Document parsed(Draft draft) throws Exception {
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(bytes(draft)));
  }

  private static List<Element> all(Document page, String tag) {
    NodeList nodes = page.getElementsByTagName(tag);
    List<Element> list = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      list.add((Element) nodes.item(i));
    }
    return list;
  }

  private static List<String> texts(Document page, String tag) {
    return all(page, tag).stream().map(e -> e.getTextContent().replace('\u00a0', ' ')).toList();
  }

  @Test
  void everySectionIsThereUnderOneTitle() throws Exception {
    Document page = parsed(TestGarment.vest("Boathouse vest"));
    assertEquals(List.of("Boathouse vest"), texts(page, "h1"));
    assertEquals(
        List.of(
            "Look at this first",
            "Finished measures",
            "To buy",
            "To cut",
            "Strips",
            "Seams and stitches",
            "Order of work",
            "Cautions",
            "Without paper"),
        texts(page, "h2"));
    assertEquals("en-GB", page.getDocumentElement().getAttribute("lang"));
  }

  @Test
  void itTellsWhatTheDraftTells() throws Exception {
    Draft draft = TestGarment.vest("Boathouse vest");
    Document page = parsed(draft);
    String text = page.getDocumentElement().getTextContent().replace('\u00a0', ' ');
    for (Measure measure : draft.measures()) {
      assertTrue(text.contains(measure.name()), measure.name());
    }
    for (Strip strip : draft.strips()) {
      assertTrue(texts(page, "h3").contains(strip.name()), strip.name());
      assertTrue(text.contains(strip.finish().describe()), strip.toString());
      strip.marks().forEach(mark -> assertTrue(text.contains(mark.label()), mark.label()));
    }
    draft.findings().forEach(f -> assertTrue(text.contains(f.reason()), f.reason()));
    draft.findings().forEach(f -> f.remedies().forEach(r -> assertTrue(text.contains(r.text()))));
    draft.cutList().forEach(item -> assertTrue(text.contains(item.size()), item.size()));
    draft.goods().forEach(goods -> assertTrue(text.contains(goods.amount()), goods.amount()));
    draft.orderOfWork().forEach(step -> assertTrue(text.contains(step.text()), step.text()));
    draft.cautions().forEach(caution -> assertTrue(text.contains(caution.text())));
    assertEquals(draft.orderOfWork().size(), texts(page, "strong").size());
    assertTrue(text.contains("92 cm"), "the chest of the test garment");
    assertTrue(text.contains("36 1/4 in"), "92 cm are 36.22 in");
  }

  @Test
  void tablesHaveHeadsWithTheirScope() throws Exception {
    Document page = parsed(TestGarment.vest("vest"));
    assertTrue(all(page, "th").size() > 10);
    for (Element head : all(page, "th")) {
      assertTrue(List.of("col", "row").contains(head.getAttribute("scope")));
    }
  }

  @Test
  void thePageNeedsNothingFromOutside() throws Exception {
    String page = new String(bytes(TestGarment.vest("vest")), StandardCharsets.UTF_8);
    assertTrue(page.startsWith("<!DOCTYPE html>"), page.substring(0, 40));
    assertFalse(page.contains("src="), "nothing is fetched");
    assertFalse(page.contains("href="), "nothing is fetched");
    assertFalse(page.contains("url("), "nothing is fetched");
    assertFalse(page.contains("<script"), "nothing runs");
    assertTrue(all(parsed(TestGarment.vest("vest")), "svg").size() >= 2 + 5);
  }

  @Test
  void hostileNamesAreEscaped() throws Exception {
    String name = "</style><script>alert(\"1\")</script> & '\u00fc' \ud83d\ude00";
    Draft draft =
        TestGarment.vest(name)
            .withFabric("body", Fabric.of(name, Structure.JERSEY, 0.3).prewashed());
    assertFalse(new String(bytes(draft), StandardCharsets.UTF_8).contains("<script"));
    Document page = parsed(draft);
    assertEquals(List.of(name), texts(page, "h1"));
    assertTrue(texts(page, "dd").contains(name), "the fabric of the bindings");
  }

  @Test
  void theSameDraftGivesTheSameBytes() throws IOException {
    assertArrayEquals(bytes(TestGarment.vest("vest")), bytes(TestGarment.vest("vest")));
  }
}
