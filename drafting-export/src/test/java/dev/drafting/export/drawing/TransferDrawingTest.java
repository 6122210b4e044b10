package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.SharedPaper;
import dev.drafting.export.TestGarment;
import dev.drafting.knit.Draft;
import java.util.List;
import org.junit.jupiter.api.Test;

class TransferDrawingTest {
  private static Draft shared() {
    Draft vest = TestGarment.vest("vest");
    Pattern pattern =
        TestGarment.pattern().withSharedPaper(SharedPaper.of("front and back", "back", "front"));
    return Draft.of(pattern)
        .withFabric("body", vest.fabric("body"))
        .withFabric("rib", vest.fabric("rib"));
  }

  /** The front alone is the second opinion: its neck is cut where the small paper says. */
  @Test
  void theInnerNecklineIsAPaperOfItsOwn() {
    List<Group> papers = TransferDrawing.of(shared());
    assertEquals(List.of("neck of front"), papers.stream().map(Group::name).toList());
    Group paper = papers.get(0);
    Curve line = paper.strokes(StrokeStyle.CUT_LINE).get(0).curve();
    OffsetResult front = CutPlan.of(TestGarment.pattern()).pieces().get(0).offset();
    assertEquals(front.length("neck").toMm(), line.length().toMm(), 0.01);
    assertTrue(paper.labels().stream().anyMatch(l -> l.text().equals("neck of front")));
  }

  /** Shoulder and outer neckline are there to lay it on by, within 35 mm of the line. */
  @Test
  void theEdgesAroundItAreDashedAndEndNearIt() {
    Group paper = TransferDrawing.of(shared()).get(0);
    Box near = paper.strokes(StrokeStyle.CUT_LINE).get(0).bounds().widened(Length.mm(35.001));
    List<Stroke> edges = paper.strokes(StrokeStyle.OVERLAP);
    assertTrue(edges.stream().mapToDouble(s -> s.curve().length().toMm()).sum() > 100);
    for (Stroke edge : edges) {
      assertEquals(near, near.union(edge.bounds()));
    }
  }

  @Test
  void withoutSharedPaperThereIsNone() {
    assertEquals(List.of(), TransferDrawing.of(TestGarment.vest("vest")));
  }
}
