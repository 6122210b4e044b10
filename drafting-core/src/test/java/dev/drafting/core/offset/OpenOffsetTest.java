package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.sample.OffsetJudge;
import dev.drafting.core.offset.sample.RandomOutline;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Lines beside chains of edges that do not close. */
class OpenOffsetTest {
  private static final int EACH = Integer.getInteger("seeds", 200);
  private static final double EXACT = 1e-9;

  /** 100 mm to the right, then 50 mm up. */
  private static Offset corner(double first, double second) {
    return Offset.ofOpen(
        List.of(
            Outlines.line("a", first, 0, 0, 100, 0), Outlines.line("b", second, 100, 0, 100, 50)));
  }

  @Test
  void theEndsAreSquare() {
    OffsetResult result = corner(10, 7).result();
    Curve line = result.outline();
    assertFalse(line.isClosed());
    assertEquals(new Point(0, -10), line.start());
    assertEquals(new Point(107, 50), line.end());
    assertEquals(107 + 60, line.length().toMm(), EXACT);
    assertEquals(List.of("a", "b"), result.parts().stream().map(OffsetPart::sourceName).toList());
    assertEquals(Length.mm(100), result.parts("a").get(0).to());
    assertTrue(result.trimmings().isEmpty());
  }

  @Test
  void theOtherSideIsTrimmedAtTheCorner() {
    OffsetResult result = corner(-10, -7).result();
    assertEquals(new Point(0, 10), result.outline().start());
    assertEquals(new Point(93, 10), result.parts("a").get(0).curve().end());
    assertEquals(Length.mm(93), result.parts("a").get(0).to());
    assertEquals(Length.mm(10), result.parts("b").get(0).from());
  }

  @Test
  void aLineAtZeroIsTheSourceItself() {
    OffsetResult result = corner(0, 0).result();
    assertEquals(150, result.outline().length().toMm(), EXACT);
    assertEquals(new Point(0, 0), result.outline().start());
  }

  @Test
  void aStepLeadsAcrossTheSourceWhereTheSignChanges() {
    OffsetResult result =
        Offset.ofOpen(
                List.of(
                    Outlines.line("a", 10, 0, 0, 100, 0), Outlines.line("b", -5, 100, 0, 200, 0)))
            .result();
    OffsetPart step = result.parts().get(1);
    assertEquals(OffsetTag.STEP, step.tag());
    assertEquals(new Point(100, -10), step.curve().start());
    assertEquals(new Point(100, 5), step.curve().end());
  }

  @Test
  void everyTreatmentClosesTheCornerAsItDoesOnAnOutline() {
    for (CornerTreatment treatment :
        List.of(
            CornerTreatment.mitre(),
            CornerTreatment.mitre(1),
            CornerTreatment.squareTo(CornerSide.BEFORE),
            CornerTreatment.squareTo(CornerSide.AFTER),
            CornerTreatment.bevel(),
            CornerTreatment.round(),
            CornerTreatment.step(),
            CornerTreatment.foldedBack(CornerSide.BEFORE, List.of(Length.ZERO)),
            CornerTreatment.foldedBack(CornerSide.BEFORE, List.of(Length.ZERO, Length.mm(4))))) {
      OffsetResult open = corner(10, 7).withCorner(0, treatment).result();
      OffsetResult closed =
          Offset.of(Outlines.rectangle(100, 50, 10, 7, 0, 0)).withCorner(0, treatment).result();
      assertEquals(
          closed.length("bottom").toMm() + 0, open.length("a").toMm(), EXACT, treatment.toString());
      assertEquals(joins(closed), joins(open), EXACT, treatment.toString());
    }
  }

  private static double joins(OffsetResult result) {
    return result.parts().stream()
        .filter(part -> part.tag() == OffsetTag.JOIN)
        .mapToDouble(part -> part.curve().length().toMm())
        .sum();
  }

  @Test
  void curvesAndArcsKeepTheirEndNormals() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.edge("arc", 10, Outlines.arc(0, 0, 50, 180, 90)),
            Outlines.edge("j", 10, Outlines.cubic(0, -50, 40, -50, 100, -20, 120, 40)));
    OffsetResult result = Offset.ofOpen(edges).result();
    assertEquals(-60, result.outline().start().x(), EXACT);
    assertEquals(0, result.outline().start().y(), EXACT);
    assertEquals(60 * Math.PI / 2, result.length("arc").toMm(), EXACT);
    assertEquals(List.of(), OffsetJudge.faultsOfOpen(edges, result, 0.01));
  }

  /** A curve with a bend of less radius than the distance: the swallowtail goes, and is named. */
  @Test
  void aTightBendIsCutWhereItsParallelMeetsItself() {
    List<OffsetEdge> edges =
        List.of(Outlines.edge("curve", -25, Outlines.cubic(0, 0, 90, 0, 90, 60, 0, 60)));
    OffsetResult result = Offset.ofOpen(edges).result();
    assertEquals(2, result.parts("curve").size());
    assertEquals(Trimming.Cause.TIGHT_CURVE, result.trimmings().get(0).cause());
    assertEquals(30, result.trimmings().get(0).at().y(), 1e-2);
    assertEquals(List.of(), OffsetJudge.faultsOfOpen(edges, result, 0.01));
  }

  /** Both ends of a U come closer than their distances: the way between them is what is left. */
  @Test
  void distantEdgesThatOverlapAreCutAtTheirMeeting() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("down", -12, 0, 100, 5, 0),
            Outlines.line("floor", -12, 5, 0, 45, 0),
            Outlines.line("up", -12, 45, 0, 20, 100));
    OffsetResult result = Offset.ofOpen(edges).result();
    assertEquals(List.of(), OffsetJudge.faultsOfOpen(edges, result, 0.01));
    assertFalse(result.trimmings().isEmpty());
  }

  @ParameterizedTest
  @EnumSource
  void openLinesOfEveryKindComeOutSimple(RandomOutline.Kind kind) {
    int refused = 0;
    for (int seed = 0; seed < EACH; seed++) {
      RandomOutline outline = RandomOutline.of(kind, seed);
      try {
        List<String> faults =
            OffsetJudge.faultsOfOpen(outline.edges(), outline.openOffset().result(), 0.01);
        assertEquals(List.of(), faults, "seed " + seed);
      } catch (DraftingException complaint) {
        assertNotEquals("", complaint.where());
        refused++;
      }
    }
    assertTrue(refused <= 1, refused + " refused");
  }

  @Test
  void whatIsNoChainIsRefused() {
    assertThrows(DraftingException.class, () -> Offset.ofOpen(List.of()));
    List<OffsetEdge> apart =
        List.of(Outlines.line("a", 1, 0, 0, 10, 0), Outlines.line("b", 1, 11, 0, 20, 0));
    assertThrows(DraftingException.class, () -> Offset.ofOpen(apart));
    Offset corner = corner(1, 1);
    assertThrows(DraftingException.class, () -> corner.withCorner(1, CornerTreatment.bevel()));
    Offset single = Offset.ofOpen(apart.subList(0, 1));
    assertThrows(DraftingException.class, () -> single.withCorner(0, CornerTreatment.bevel()));
  }

  @Test
  void openOffsetsAreValuesThatReadWell() {
    assertEquals("Open offset of a at 10 mm, b at 7 mm", corner(10, 7).toString());
    assertEquals(corner(10, 7), corner(10, 7));
    assertNotEquals(corner(10, 7), corner(10, 8));
    assertTrue(corner(10, 7).result().toString().startsWith("Offset line, 167 mm long: EDGE a"));
  }
}
