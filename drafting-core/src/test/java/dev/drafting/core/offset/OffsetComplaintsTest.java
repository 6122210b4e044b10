package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * What users of general geometry libraries complain of when they offset outlines, each as a test of
 * this one. The numbers are those of the public reports.
 */
class OffsetComplaintsTest {
  private static OffsetResult simple(Offset offset) {
    OffsetResult result = offset.result();
    IsValidOp judge = new IsValidOp(OwnDistance.polygon(result));
    assertTrue(judge.isValid(), () -> result + ": " + judge.getValidationError());
    return result;
  }

  /** locationtech/jts 180: a mitred buffer round closely spaced vertices is invalid. */
  @Test
  void closelySpacedVerticesStayValidWhenMitred() {
    List<Point> points = new ArrayList<>();
    points.add(new Point(0, 0));
    points.add(new Point(100, 0));
    for (int i = 0; i < 50; i++) {
      points.add(new Point(100 + 0.005 * Math.sin(i), 0.05 * (i + 1)));
    }
    points.add(new Point(100, 100));
    points.add(new Point(0, 100));
    points.add(new Point(0, 0));
    Curve outline = Curve.polyline(points.toArray(new Point[0]));
    for (double d : new double[] {10, -10}) {
      OffsetResult result =
          simple(Offset.of(List.of(OffsetEdge.of("edge", outline, Length.mm(d)))));
      double expected = (100 + 2 * d) * (100 + 2 * d);
      assertEquals(expected, result.outline().areaSquareMm(), 1.5);
    }
  }

  /** locationtech/jts 957: a repeated point breaks the parallel. */
  @Test
  void aRepeatedPointChangesNothing() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("a", 10, 0, 0, 50, 0, 50, 0, 100, 0),
            Outlines.line("b", 10, 100, 0, 100, 100, 0, 100, 0, 0));
    assertEquals(120 * 120, simple(Offset.of(edges)).outline().areaSquareMm(), 1e-9);
  }

  /** CGAL/cgal 7612: an edge of weight zero is refused. */
  @Test
  void anEdgeAtZeroStaysWhereItIs() {
    OffsetResult result = simple(Offset.of(Outlines.rectangle(100, 50, 0, 10, 0, 10)));
    assertEquals(120 * 50, result.outline().areaSquareMm(), 1e-9);
  }

  /** CGAL/cgal 7658: collinear neighbours must have equal weights. */
  @Test
  void collinearNeighboursMayDiffer() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("a", 3, 0, 0, 50, 0),
            Outlines.line("b", 12, 50, 0, 100, 0),
            Outlines.line("c", -4, 100, 0, 100, 100, 0, 100, 0, 0));
    OffsetResult result = simple(Offset.of(edges));
    assertEquals(OffsetTag.STEP, result.parts().get(1).tag());
  }

  /** graphics32 278: over the limit a mitre jumps back to the plain distance. */
  @Test
  void overTheLimitAMitreKeepsTheLimit() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("a", 10, 0, 0, 300, 0),
            Outlines.line("b", 10, 300, 0, 0, 60),
            Outlines.line("c", 10, 0, 60, 0, 0));
    OffsetResult result = simple(Offset.of(edges).withCorner(0, CornerTreatment.mitre(3)));
    Curve cut = result.parts().get(1).curve();
    assertEquals(30, cut.start().midpoint(cut.end()).distanceTo(new Point(300, 0)).toMm(), 1e-9);
  }

  /** Clipper2: a distance under half a unit leaves the input as it was. */
  @Test
  void aSmallDistanceIsHonoured() {
    OffsetResult result = simple(Offset.of(Outlines.rectangle(100, 50, 1e-3, 0, 0, 0)));
    assertEquals(5000.1, result.outline().areaSquareMm(), 1e-9);
  }

  /** Clipper2 418, 456, 526: spikes and slivers where edges are almost in line. */
  @Test
  void almostStraightCornersGrowNoSpikes() {
    for (double bend : new double[] {-1e-3, -1e-6, -1e-9, 1e-9, 1e-6, 1e-3}) {
      List<OffsetEdge> edges =
          List.of(
              Outlines.line("a", 10, 0, 0, 50, bend, 100, 0),
              Outlines.line("b", 10, 100, 0, 100, 100, 0, 100, 0, 0));
      OffsetResult result = simple(Offset.of(edges));
      assertEquals(14_400 - 48 * bend, result.outline().areaSquareMm(), 1e-5);
      assertTrue(result.outline().length().toMm() < 480.1);
    }
  }

  /** Clipper2-java 16: thousands of vertices for one arc. */
  @Test
  void anArcStaysOneArc() {
    List<OffsetEdge> edges = List.of(Outlines.edge("rim", 10, Outlines.arc(0, 0, 50, 0, 360)));
    OffsetResult result = Offset.of(edges).result();
    assertEquals(1, result.outline().segments().size());
    assertEquals(2 * Math.PI * 60, result.outline().length().toMm(), 1e-9);
  }

  /** CavalierContours 7: a rectangle 40 mm wide, inset by 30 mm, gave a curve: it is refused. */
  @Test
  void aRectangleHasNoInsetBeyondHalfItsWidth() {
    Offset offset = Offset.of(Outlines.rectangle(100, 40, -30, -30, -30, -30));
    org.junit.jupiter.api.Assertions.assertThrows(
        dev.drafting.core.finding.DraftingException.class, offset::result);
  }

  /** CavalierContours 77, 79: the second and further offsets of a result are invalid. */
  @Test
  void offsetsOfOffsetsStayValid() {
    List<OffsetEdge> edges = Outlines.vest(3, 3, 3, 3, 3, 3);
    for (int round = 0; round < 6; round++) {
      OffsetResult result = simple(Offset.of(edges));
      edges =
          result.parts().stream()
              .map(part -> OffsetEdge.of(part.sourceName(), part.curve(), Length.mm(3)))
              .toList();
    }
    assertEquals(6, edges.size());
  }

  /** CGAL: sharp corners have spikes without a limit. */
  @Test
  void aSharpPointIsLimitedByDefault() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("a", 10, 0, 0, 400, 0),
            Outlines.line("b", 10, 400, 0, 0, 20),
            Outlines.line("c", 10, 0, 20, 0, 0));
    OffsetResult result = simple(Offset.of(edges));
    assertTrue(result.outline().bounds().maxX() < 441);
  }

  /**
   * locationtech/jts: the error of the parallel is worst at the ends, by the first chord's normal.
   */
  @Test
  void theEndsOfAParallelAreExact() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.edge("j", 10, Outlines.cubic(140, 180, 60, 140, 0, 80, 0, 0).reversed()),
            Outlines.line("back", 0, 140, 180, -100, 180, -100, 0, 0, 0));
    Curve parallel = simple(Offset.of(edges)).parts("j").get(0).curve();
    assertEquals(new Point(10, 0), parallel.start());
  }
}
