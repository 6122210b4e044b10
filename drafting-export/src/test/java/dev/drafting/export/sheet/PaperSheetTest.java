package dev.drafting.export.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.measure.Length;
import dev.drafting.export.TestGarment;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.StrokeStyle;
import dev.drafting.export.pdf.Paper;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.sewing.Caution;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

class PaperSheetTest {
  private static final List<Paper> PAPERS = List.of(Paper.A4, Paper.LETTER);

  private static String words(Drawing pages) {
    return pages.groups().stream()
        .flatMap(page -> page.labels().stream())
        .map(Label::text)
        .collect(Collectors.joining(" "))
        .replaceAll("[\\s\u00a0]+", " ");
  }

  @Test
  void itTellsWhatTheDraftTells() {
    Draft draft = TestGarment.vest("Boathouse vest");
    String words = words(MakingUpSheet.of(draft).pages(Paper.A4));
    for (String heading :
        List.of("Look at this first", "Finished measures", "To buy", "To cut", "Strips")) {
      assertTrue(words.contains(heading), heading);
    }
    draft.orderOfWork().forEach(step -> assertTrue(words.contains(step.title()), step.title()));
    draft.orderOfWork().forEach(step -> assertTrue(words.contains(step.text()), step.text()));
    for (Caution caution : draft.cautions()) {
      for (String word : List.of(caution.text().split(" ", -1))) {
        assertTrue(words.contains(word), word);
      }
    }
    draft.measures().forEach(measure -> assertTrue(words.contains(measure.name())));
    draft.strips().forEach(strip -> assertTrue(words.contains(strip.name()), strip.name()));
    assertTrue(words.contains("page 1 of "), "pages are numbered");
  }

  @Test
  void everyStepHasItsPicture() {
    Drawing pages = MakingUpSheet.of(TestGarment.vest("vest")).pages(Paper.A4);
    long worked =
        pages.groups().stream().mapToLong(p -> p.strokes(StrokeStyle.WORKED).size()).sum();
    assertTrue(worked > 14, "edges worked on: " + worked);
  }

  @Test
  void nothingLeavesItsPageAndNoTextsOverlap() {
    for (Paper paper : PAPERS) {
      Box page = new Box(0, 0, paper.width().toMm(), paper.height().toMm());
      Box inner = page.widened(Length.mm(-10));
      for (Group group : MakingUpSheet.of(TestGarment.vest("vest")).pages(paper).groups()) {
        List<Label> labels = group.labels();
        for (Element element : group.elements()) {
          assertEquals(inner, inner.union(element.bounds()), element + " on " + group.name());
        }
        for (int i = 0; i < labels.size(); i++) {
          for (int j = 0; j < i; j++) {
            assertFalse(
                overlap(labels.get(i).bounds(), labels.get(j).bounds()),
                labels.get(i) + " on " + labels.get(j));
          }
        }
      }
    }
  }

  private static boolean overlap(Box a, Box b) {
    return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
  }

  /** Ten thousand letters without a blank, scripts that the font lacks, angle brackets. */
  @Test
  void hostileNamesStayOnThePage() throws IOException {
    String name =
        "</style> \ud83d\ude00 \u05e9\u05dc\u05d5\u05dd \u5927 \"'& " + "x".repeat(10_000);
    Draft draft =
        TestGarment.vest(name)
            .withFabric("body", Fabric.of(name, Structure.JERSEY, 0.3).prewashed());
    Box page = new Box(0, 0, 210, 297);
    for (Group group : MakingUpSheet.of(draft).pages(Paper.A4).groups()) {
      assertEquals(page, page.union(group.bounds()), group.name());
    }
  }

  @Test
  void theSameDraftGivesTheSameBytesOnEveryPaper() throws IOException {
    for (Paper paper : PAPERS) {
      byte[] once = bytes(TestGarment.vest("vest"), paper);
      assertArrayEquals(once, bytes(TestGarment.vest("vest"), paper));
      try (PDDocument document = Loader.loadPDF(once)) {
        assertTrue(document.getNumberOfPages() >= 4);
        assertEquals("vest: making-up sheet", document.getDocumentInformation().getTitle());
      }
    }
  }

  private static byte[] bytes(Draft draft, Paper paper) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MakingUpSheet.of(draft).writePdf(paper, out);
    return out.toByteArray();
  }
}
