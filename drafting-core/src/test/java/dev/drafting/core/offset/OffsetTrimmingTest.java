package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Parallels for which there is no room. */
class OffsetTrimmingTest {
  private static OffsetResult simple(List<OffsetEdge> edges) {
    OffsetResult result = Offset.of(edges).result();
    IsValidOp judge = new IsValidOp(OwnDistance.polygon(result));
    assertTrue(judge.isValid(), () -> edges + ": " + judge.getValidationError());
    return result;
  }

  /** A panel with a narrow U cut into its top: 20 mm wide, 60 mm deep, round at the bottom. */
  private static List<OffsetEdge> withCutout(double around) {
    return List.of(
        Outlines.line("hem", 0, 0, 0, 200, 0),
        Outlines.line("right", 0, 200, 0, 200, 150),
        Outlines.line("top right", 0, 200, 150, 110, 150),
        Outlines.edge(
            "cutout",
            around,
            new Line(new Point(110, 150), new Point(110, 90)),
            Outlines.arc(100, 90, 10, 0, -180),
            new Line(new Point(90, 90), new Point(90, 150))),
        Outlines.line("top left", 0, 90, 150, 0, 150),
        Outlines.line("left", 0, 0, 150, 0, 0));
  }

  @Test
  void anAllowanceNarrowerThanTheCutoutFits() {
    OffsetResult result = simple(withCutout(7));
    assertEquals(2 * 60 + Math.PI * 3, result.length("cutout").toMm(), 1e-9);
    assertTrue(result.trimmings().isEmpty());
  }

  @Test
  void anAllowanceWiderThanTheCutoutClosesItAndSaysSo() {
    List<OffsetEdge> edges = withCutout(12);
    OffsetResult result = simple(edges);
    assertEquals(200 * 150, result.outline().areaSquareMm(), 40);
    assertTrue(
        result.trimmings().stream().anyMatch(trimming -> trimming.edge().equals("cutout")),
        result.trimmings()::toString);
  }

  /** At the underarm the armhole bends more tightly than a wide allowance; the corner stays out. */
  @Test
  void anEndTighterThanItsDistanceKeepsItsAllowanceAtTheCorner() {
    for (double distance : new double[] {9.46, 10.66, 11.59, 20}) {
      List<OffsetEdge> edges =
          List.of(
              Outlines.line("hem", 0, 0, 0, 254, 0),
              Outlines.line("side", distance, 254, 0, 254, 262),
              Outlines.edge(
                  "armhole", distance, Outlines.cubic(254, 262, 229, 262, 208, 344, 213, 413)),
              Outlines.line("shoulder", 0, 213, 413, 0, 413),
              Outlines.line("fold", 0, 0, 413, 0, 0));
      OffsetResult result = simple(edges);
      double nearest =
          OwnDistance.polygon(result)
              .getBoundary()
              .distance(OwnDistance.point(new Point(254, 262)));
      assertEquals(distance, nearest, 0.05 * distance);
      OwnDistance.check(edges, result, 0.01);
    }
  }

  @Test
  void aCurveTighterThanItsDistanceIsCutWhereItsParallelMeetsItself() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.edge("curve", -25, Outlines.cubic(0, 0, 90, 0, 90, 60, 0, 60)),
            Outlines.line("fold", 0, 0, 60, 0, 0));
    OffsetResult result = simple(edges);
    Trimming trimming = result.trimmings().get(0);
    assertEquals("curve", trimming.edge());
    assertEquals(Trimming.Cause.TIGHT_CURVE, trimming.cause());
    assertEquals(30, trimming.at().y(), 1e-2);
    assertTrue(trimming.lost().toMm() > 10, trimming::toString);
    assertEquals(2, result.parts("curve").size());
    OwnDistance.check(edges, result, 0.01);
  }

  @Test
  void anEdgeShorterThanTheAllowancesBesideItIsSwallowed() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("a", -20, 0, 0, 200, 0),
            Outlines.line("chamfer", -20, 200, 0, 205, 5),
            Outlines.line("b", -20, 205, 5, 205, 150),
            Outlines.line("c", -20, 205, 150, 0, 150),
            Outlines.line("d", -20, 0, 150, 0, 0));
    OffsetResult result = simple(edges);
    assertEquals(Trimming.Cause.SWALLOWED, result.trimmings().get(0).cause());
    assertEquals("chamfer", result.trimmings().get(0).edge());
    assertEquals(Math.hypot(5, 5), result.trimmings().get(0).lost().toMm(), 1e-9);
    assertTrue(result.parts("chamfer").isEmpty());
    assertEquals((205 - 40) * (150 - 40), result.outline().areaSquareMm(), 1e-6);
  }

  @Test
  void anOutlineThatFallsApartKeepsItsLargestPart() {
    // two blocks, 100 mm and 60 mm wide, joined by a neck 10 mm wide
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("outside", -8, 0, 0, 100, 0, 100, 45, 140, 45, 140, 0, 200, 0, 200, 100),
            Outlines.line("inside", -8, 200, 100, 140, 100, 140, 55, 100, 55, 100, 100, 0, 100),
            Outlines.line("end", -8, 0, 100, 0, 0));
    OffsetResult result = simple(edges);
    assertEquals(84 * 84, result.outline().areaSquareMm(), 1e-6);
    assertTrue(!result.trimmings().isEmpty());
  }

  @Test
  void whereNothingIsLeftTheEdgeIsNamed() {
    DraftingException complaint =
        assertThrows(
            DraftingException.class,
            () -> Offset.of(Outlines.rectangle(100, 40, -30, -30, -30, -30)).result());
    assertEquals("bottom", complaint.where());
    assertEquals("-30 mm", complaint.value());
    List<OffsetEdge> disc = List.of(Outlines.edge("rim", -11, Outlines.arc(0, 0, 10, 0, 360)));
    assertEquals(
        "rim", assertThrows(DraftingException.class, () -> Offset.of(disc).result()).where());
  }

  @Test
  void outlinesThatAreNoneAreRefusedAtTheDoor() {
    assertThrows(DraftingException.class, () -> Offset.of(List.of()));
    List<OffsetEdge> open = Outlines.rectangle(10, 10, 1, 1, 1, 1).subList(0, 3);
    assertThrows(DraftingException.class, () -> Offset.of(open));
    List<OffsetEdge> clockwise =
        List.of(Outlines.line("round", 1, 0, 0, 0, 10, 10, 10, 10, 0, 0, 0));
    assertThrows(DraftingException.class, () -> Offset.of(clockwise));
    Offset square = Offset.of(Outlines.rectangle(10, 10, 1, 1, 1, 1));
    assertThrows(DraftingException.class, () -> square.withCorner(4, CornerTreatment.bevel()));
    assertThrows(DraftingException.class, () -> square.withTolerance(Length.mm(1e-7)));
    assertThrows(DraftingException.class, () -> square.result().parts("sleeve"));
    assertThrows(
        DraftingException.class,
        () ->
            OffsetEdge.of(
                " ", Outlines.edge("a", 0, Outlines.arc(0, 0, 1, 0, 9)).curve(), Length.ZERO));
  }
}
