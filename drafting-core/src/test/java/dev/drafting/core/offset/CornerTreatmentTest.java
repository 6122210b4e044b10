package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Corners worked by hand, one treatment after the other. */
class CornerTreatmentTest {
  private static final double EXACT = 1e-9;

  /** A square of 100 mm; only the corner at (100, 0), between bottom and right, is looked at. */
  private static OffsetResult square(double bottom, double right, CornerTreatment treatment) {
    return Offset.of(Outlines.rectangle(100, 100, bottom, right, 0, 0))
        .withCorner(0, treatment)
        .result();
  }

  private static double added(OffsetResult result) {
    return result.outline().areaSquareMm() - 10_000;
  }

  /** A corner that turns by an angle at (100, 0) in an otherwise roomy outline. */
  private static Offset turning(double degrees, double before, double after) {
    double turn = Math.toRadians(degrees);
    double x = 100 + 80 * Math.cos(turn);
    double y = 80 * Math.sin(turn);
    return Offset.of(
        List.of(
            Outlines.line("a", before, -200, 0, 100, 0),
            Outlines.line("b", after, 100, 0, x, y),
            Outlines.line("c", 0, x, y, -200, 300),
            Outlines.line("d", 0, -200, 300, -200, 0)));
  }

  @Test
  void aMitreMeetsAtTheCorner() {
    OffsetResult result = square(10, 7, CornerTreatment.mitre());
    assertEquals(10 * 107 + 7 * 100, added(result), EXACT);
    assertEquals(new Point(107, -10), result.parts("bottom").get(0).curve().end());
  }

  @Test
  void aBevelCutsStraightAcross() {
    OffsetResult result = square(10, 7, CornerTreatment.bevel());
    assertEquals(10 * 100 + 7 * 100 + 35, added(result), EXACT);
    OffsetPart join = result.parts().get(1);
    assertEquals(OffsetTag.JOIN, join.tag());
    assertEquals(Math.hypot(10, 7), join.curve().length().toMm(), EXACT);
  }

  @Test
  void aRoundCornerOfEqualDistancesIsAQuarterCircle() {
    OffsetResult result = square(10, 10, CornerTreatment.round());
    assertEquals(2000 + Math.PI * 100 / 4, added(result), EXACT);
    assertEquals(10 * Math.PI / 2, result.parts().get(1).curve().length().toMm(), EXACT);
  }

  @Test
  void aRoundCornerOfUnequalDistancesRunsIntoTheNarrowerParallel() {
    OffsetResult result = square(10, 6, CornerTreatment.round());
    Curve arc = result.parts().get(1).curve();
    assertEquals(new Point(100, -10), arc.start());
    assertEquals(106, arc.end().x(), EXACT);
    assertEquals(-8, arc.end().y(), EXACT);
  }

  @Test
  void squareToTheEdgeBeforeEndsItsAllowanceWhereTheOtherParallelCrossesIt() {
    // the angle inside the corner is 60 degrees: a mitre would stick out far beyond both edges
    OffsetResult result =
        turning(120, 10, 10).withCorner(0, CornerTreatment.squareTo(CornerSide.BEFORE)).result();
    double x = 100 + 10 / Math.sin(Math.toRadians(120));
    Curve join = result.parts().get(1).curve();
    assertEquals(x, join.start().x(), EXACT);
    assertEquals(-10, join.start().y(), EXACT);
    assertEquals(x, join.end().x(), EXACT);
    assertEquals(0, join.end().y(), EXACT);
  }

  @Test
  void squareToTheEdgeAfterIsItsMirrorImage() {
    OffsetResult result =
        turning(120, 10, 10).withCorner(0, CornerTreatment.squareTo(CornerSide.AFTER)).result();
    Curve join = result.parts().get(1).curve();
    Point corner = new Point(100, 0);
    double reach = 10 / Math.sin(Math.toRadians(120));
    assertEquals(reach, join.start().minus(corner).length().toMm(), EXACT);
    assertEquals(Math.hypot(reach, 10), join.end().minus(corner).length().toMm(), EXACT);
    var way = result.parts("b").get(0).curve().directionAt(Length.ZERO);
    assertEquals(0, join.end().minus(join.start()).dot(way), EXACT);
  }

  @Test
  void squareBesideAnEdgeWithoutAllowanceEndsAtTheCorner() {
    OffsetResult result = square(10, 0, CornerTreatment.squareTo(CornerSide.BEFORE));
    assertEquals(1000, added(result), EXACT);
  }

  @Test
  void collinearEdgesOfUnequalDistanceAreLinkedByAStep() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("hem", 20, 0, 0, 60, 0),
            Outlines.line("vent", 5, 60, 0, 100, 0),
            Outlines.line("side", 0, 100, 0, 100, 100),
            Outlines.line("top", 0, 100, 100, 0, 100),
            Outlines.line("fold", 0, 0, 100, 0, 0));
    OffsetResult result = Offset.of(edges).result();
    OffsetPart step = result.parts().get(1);
    assertEquals(OffsetTag.STEP, step.tag());
    assertEquals(new Point(60, -20), step.curve().start());
    assertEquals(new Point(60, -5), step.curve().end());
    assertEquals(10_000 + 60 * 20 + 40 * 5, result.outline().areaSquareMm(), EXACT);
  }

  @Test
  void almostCollinearEdgesOfUnequalDistanceAreLinkedByAStepNotByASpike() {
    for (double degrees : new double[] {-8, -1, -1e-3, -1e-9, 1e-9, 1e-3, 1, 8}) {
      for (double after : new double[] {0, 4, 19.9, -6}) {
        OffsetResult result = turning(degrees, 20, after).result();
        Point end = result.parts("a").get(0).curve().end();
        assertTrue(end.x() <= 180, () -> degrees + ": " + end);
        assertTrue(result.length("b").toMm() < 200, () -> degrees + ": " + result);
        if (Math.abs(degrees) < 0.1) {
          assertEquals(OffsetTag.STEP, result.parts().get(1).tag());
          double across = result.parts().get(1).curve().length().toMm();
          assertEquals(20 - after, across, 1e-3);
        }
      }
    }
  }

  @Test
  void aMitreIsCutSquareAtItsLimit() {
    // turning by 150 degrees, the tip would lie 3.9 times the distance away
    OffsetResult result = turning(150, 10, 10).withCorner(0, CornerTreatment.mitre(2)).result();
    Curve cut = result.parts().get(1).curve();
    Point middle = cut.start().midpoint(cut.end());
    assertEquals(20, middle.distanceTo(new Point(100, 0)).toMm(), EXACT);
    var toMiddle = middle.minus(new Point(100, 0));
    assertEquals(0, cut.end().minus(cut.start()).dot(toMiddle), 1e-8);
  }

  @Test
  void nothingJumpsWhereAMitrePassesItsLimit() {
    double critical = 2 * Math.toDegrees(Math.acos(1 / 2.0));
    double before = area(critical - 1e-7);
    double after = area(critical + 1e-7);
    assertEquals(before, after, 1e-4);
  }

  private static double area(double degrees) {
    return turning(degrees, 10, 10)
        .withCorner(0, CornerTreatment.mitre(2))
        .result()
        .outline()
        .areaSquareMm();
  }

  @Test
  void aMitreOfOneDoesNotReachBeyondTheDistance() {
    OffsetResult result = square(10, 10, CornerTreatment.mitre(1));
    Curve cut = result.parts().get(1).curve();
    assertEquals(10, cut.start().midpoint(cut.end()).distanceTo(new Point(100, 0)).toMm(), EXACT);
  }

  @Test
  void aConcaveCornerIsTrimmedWhateverTheTreatment() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("a", 10, 0, 0, 100, 0),
            Outlines.line("b", 10, 100, 0, 100, 100),
            Outlines.line("c", 10, 100, 100, 60, 100),
            Outlines.line("d", 10, 60, 100, 60, 40),
            Outlines.line("e", 10, 60, 40, 0, 40),
            Outlines.line("f", 10, 0, 40, 0, 0));
    for (CornerTreatment treatment :
        List.of(CornerTreatment.mitre(), CornerTreatment.round(), CornerTreatment.bevel())) {
      OffsetResult result = Offset.of(edges).withCorner(3, treatment).result();
      Point meeting = result.parts("d").get(0).curve().end();
      assertEquals(50, meeting.x(), EXACT);
      assertEquals(50, meeting.y(), EXACT);
      assertEquals(6, result.parts().size());
      assertTrue(result.trimmings().isEmpty());
    }
  }

  @Test
  void treatmentsAreValuesThatReadWell() {
    assertEquals("mitre up to 4 times the distance", CornerTreatment.mitre().toString());
    assertEquals("mitre up to 2.5 times the distance", CornerTreatment.mitre(2.5).toString());
    assertEquals("round", CornerTreatment.round().toString());
    assertEquals(CornerTreatment.mitre(), CornerTreatment.mitre(4));
    assertEquals(CornerTreatment.mitre().hashCode(), CornerTreatment.mitre(4).hashCode());
    assertNotEquals(
        CornerTreatment.squareTo(CornerSide.AFTER), CornerTreatment.squareTo(CornerSide.BEFORE));
    assertEquals(
        CornerTreatment.squareTo(CornerSide.AFTER),
        CornerTreatment.squareTo(CornerSide.BEFORE).reversed());
    assertEquals(CornerTreatment.bevel(), CornerTreatment.bevel().reversed());
  }

  @Test
  void impossibleTreatmentsAreRefused() {
    assertThrows(DraftingException.class, () -> CornerTreatment.mitre(0.9));
    assertThrows(DraftingException.class, () -> CornerTreatment.mitre(Double.NaN));
    assertThrows(
        DraftingException.class, () -> CornerTreatment.foldedBack(CornerSide.AFTER, List.of()));
    List<Length> falling = List.of(Length.mm(20), Length.ZERO);
    assertThrows(
        DraftingException.class, () -> CornerTreatment.foldedBack(CornerSide.AFTER, falling));
  }
}
