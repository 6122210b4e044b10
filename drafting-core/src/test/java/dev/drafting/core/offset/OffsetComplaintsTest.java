package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.sample.OffsetJudge;
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
    assertThrows(DraftingException.class, offset::result);
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

  /** locationtech/jts 178: a one-sided parallel of a line has triangular spurs where it ends. */
  @Test
  void anOpenLineHasNoSpursAtItsEnds() {
    List<OffsetEdge> zigzag =
        List.of(Outlines.line("line", 12, 0, 0, 40, 3, 80, -2, 120, 25, 160, 20, 200, 24));
    Curve line = Offset.ofOpen(zigzag).result().outline();
    assertEquals(12, zigzag.get(0).curve().nearest(line.start()).distance().toMm(), 1e-9);
    assertEquals(12, line.start().distanceTo(new Point(0, 0)).toMm(), 1e-9);
    assertEquals(12, line.end().distanceTo(new Point(200, 24)).toMm(), 1e-9);
    assertTrue(OffsetJudge.isSimple(line));
    assertTrue(line.length().toMm() < zigzag.get(0).curve().length().toMm() + 24);
  }

  /**
   * locationtech/jts 980: few segments for a quarter circle leave artefacts; arcs are arcs here.
   */
  @Test
  void roundCornersAreArcsWhateverTheDistance() {
    for (double d : new double[] {0.01, 1, 30}) {
      Offset offset = Offset.of(Outlines.rectangle(100, 50, d, d, d, d));
      for (int i = 0; i < 4; i++) {
        offset = offset.withCorner(i, CornerTreatment.round());
      }
      double expected = 5000 + 300 * d + Math.PI * d * d;
      assertEquals(expected, offset.result().outline().areaSquareMm(), 1e-9 * expected);
    }
  }

  /** libgeos/geos 1037: a closed ring with mitres loses parts. */
  @Test
  void aClosedRingWithMitresLosesNothing() {
    List<OffsetEdge> ring =
        List.of(
            Outlines.line("u", 4, 0, 0, 90, 0, 90, 80, 60, 80, 60, 30, 30, 30, 30, 80),
            Outlines.line("back", 4, 30, 80, 0, 80, 0, 0));
    OffsetResult result = simple(Offset.of(ring));
    assertEquals(98 * 88 - 22 * 50, result.outline().areaSquareMm(), 1e-9);
    assertTrue(result.trimmings().isEmpty());
  }

  /** locationtech/jts 998: distances that vary along a line give spikes. */
  @Test
  void distancesThatVaryFromEdgeToEdgeGrowNoSpikes() {
    List<OffsetEdge> edges = new ArrayList<>();
    double[] distances = {3, 25, 1, 18, 0, 9, 30, 2};
    for (int i = 0; i < distances.length; i++) {
      double x = 40 * i;
      double bend = i % 2 == 0 ? 0 : 2;
      edges.add(Outlines.line("e" + i, distances[i], x, bend, x + 40, 2 - bend));
    }
    OffsetResult result = Offset.ofOpen(edges).result();
    assertEquals(List.of(), OffsetJudge.faultsOfOpen(edges, result, 0.01));
    assertTrue(result.outline().bounds().minY() >= -30.1, result::toString);
  }

  /** Clipper2 511, junmer/clipper-lib 11, arendvw/clipper 6: one distance for each side. */
  @Test
  void everySideHasADistanceOfItsOwn() {
    OffsetResult result = simple(Offset.of(Outlines.rectangle(100, 50, 1, 2, 3, 4)));
    assertEquals(106 * 54, result.outline().areaSquareMm(), 1e-9);
  }

  /** Clipper2 323, 331, 411, 932, 1087: which source a part came from is lost. */
  @Test
  void everyPartNamesItsSourceAfterTrimming() {
    OffsetResult result = simple(Offset.of(Outlines.vest(20, 12, 15, -5, 14, 0)));
    for (OffsetPart part : result.parts()) {
      assertTrue(part.source() >= 0 && part.source() < 6);
      assertTrue(part.tag() != OffsetTag.EDGE || part.to().compareTo(part.from()) >= 0);
    }
    assertEquals(List.of(), OffsetJudge.faults(Outlines.vest(20, 12, 15, -5, 14, 0), result, 0.01));
  }

  /** Clipper2 932: parallels of sections of a closed path. */
  @Test
  void aSectionOfAnOutlineHasTheParallelThatItHasInTheWhole() {
    List<OffsetEdge> vest = Outlines.vest(20, 10, 7, 7, 7, 0);
    OffsetResult whole = simple(Offset.of(vest));
    OffsetResult section = Offset.ofOpen(vest.subList(1, 4)).result();
    assertEquals(
        whole.parts("armhole"),
        section.parts("armhole").stream()
            .map(
                part ->
                    new OffsetPart(
                        part.tag(),
                        part.source() + 1,
                        part.sourceName(),
                        part.curve(),
                        part.from(),
                        part.to()))
            .toList());
  }

  /** Clipper2 933, 951: edges in line with each other are merged, and cannot be told apart. */
  @Test
  void edgesInLineStayApart() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("a", 5, 0, 0, 30, 0),
            Outlines.line("b", 5, 30, 0, 100, 0),
            Outlines.line("c", 5, 100, 0, 100, 100, 0, 100, 0, 0));
    OffsetResult result = simple(Offset.of(edges));
    assertEquals(new Point(30, -5), result.parts("a").get(0).curve().end());
    assertEquals(75, result.length("b").toMm(), 1e-9);
  }

  /** cavalier_contours 12, 40: other corners than round ones; 19: distances that vary. */
  @Test
  void cornersAndDistancesAreChosenOneByOne() {
    OffsetResult result =
        simple(
            Offset.of(Outlines.rectangle(100, 50, 10, 8, 6, 4))
                .withCorner(0, CornerTreatment.round())
                .withCorner(1, CornerTreatment.bevel())
                .withCorner(2, CornerTreatment.mitre(1)));
    assertEquals(3, result.parts().stream().filter(p -> p.tag() == OffsetTag.JOIN).count());
  }

  /** cavalier_contours 66: islands that the parallel cuts off stay in the result. */
  @Test
  void islandsThatAreCutOffAreReportedNotKept() {
    List<OffsetEdge> dumbbell =
        List.of(
            Outlines.line("below", -6, 0, 0, 60, 0, 60, 25, 100, 25, 100, 0, 150, 0),
            Outlines.line("right", -6, 150, 0, 150, 60),
            Outlines.line("above", -6, 150, 60, 100, 60, 100, 35, 60, 35, 60, 60, 0, 60),
            Outlines.line("left", -6, 0, 60, 0, 0));
    OffsetResult result = simple(Offset.of(dumbbell));
    assertEquals(48 * 48, result.outline().areaSquareMm(), 1e-9);
    assertTrue(result.trimmings().stream().anyMatch(t -> t.edge().equals("right")));
  }

  /** CavalierContours 59: an open polyline fails. */
  @Test
  void anOpenPolylineWithArcsWorksOnBothSides() {
    for (double d : new double[] {8, -8}) {
      List<OffsetEdge> edges =
          List.of(
              Outlines.edge("in", d, new Line(new Point(-80, -20), new Point(0, -20))),
              Outlines.edge("bend", d, Outlines.arc(0, 0, 20, -90, 180)),
              Outlines.edge("out", d, new Line(new Point(0, 20), new Point(-80, 20))));
      OffsetResult result = Offset.ofOpen(edges).result();
      assertEquals(160 + Math.PI * (20 + d), result.outline().length().toMm(), 1e-9);
      assertEquals(3, result.outline().segments().size());
    }
  }

  /** kurbo 300, 344: endless recursion, loops and NaN at cusps and handles of no length. */
  @Test
  void cuspsAndHandlesOfNoLengthComeToAnEnd() {
    for (double d : new double[] {-12, -1e-3, 1e-3, 12, 30}) {
      for (var cubic :
          List.of(
              Outlines.cubic(100, 0, 100, 0, 0, 0, 0, 0),
              Outlines.cubic(100, 0, 100, 0, 50, 80, 0, 0),
              Outlines.cubic(100, 0, 0, 100, 100, 100, 0, 0),
              Outlines.cubic(100, 0, 5, 100, 95, 100, 0, 0))) {
        List<OffsetEdge> edges =
            List.of(
                Outlines.line("box", 0, 0, 0, 0, -100, 100, -100, 100, 0),
                Outlines.edge("curve", d, cubic));
        OffsetResult result = simple(Offset.of(edges));
        assertEquals(List.of(), OffsetJudge.faults(edges, result, 0.01), cubic + " at " + d);
      }
    }
  }

  /** kurbo: loops stay where the distance is more than the radius; CGAL 7149: not simple. */
  @Test
  void beyondTheRadiusNoLoopIsLeft() {
    for (double d = 2; d <= 40; d += 2) {
      List<OffsetEdge> edges =
          List.of(
              Outlines.edge("neck", d, Outlines.cubic(0, 0, 10, -90, 50, -90, 60, 0)),
              Outlines.line("rest", 0, 60, 0, 150, 0, 150, 100, -90, 100, -90, 0, 0, 0));
      OffsetResult result = simple(Offset.of(edges));
      assertEquals(List.of(), OffsetJudge.faults(edges, result, 0.01), "at " + d);
    }
  }

  /** libgeos 816: what comes of a line that crosses itself changed from release to release. */
  @Test
  void aLineThatCrossesItselfIsRefusedByName() {
    OffsetEdge loop = Outlines.line("loop", 5, 0, 0, 100, 0, 100, 60, 50, 60, 50, -40);
    OffsetEdge on = Outlines.line("on", 5, 50, -40, 0, -40);
    DraftingException open =
        assertThrows(DraftingException.class, () -> Offset.ofOpen(List.of(loop, on)));
    assertEquals("loop: the edge crosses itself", open.where() + ": " + open.what());
    OffsetEdge over = Outlines.line("over", 5, 0, 0, 100, 0, 100, 60, 50, 60);
    OffsetEdge down = Outlines.line("down", 5, 50, 60, 50, -40, 0, -40, 0, 0);
    DraftingException closed =
        assertThrows(DraftingException.class, () -> Offset.of(List.of(over, down)));
    assertEquals("over: the edge crosses down", closed.where() + ": " + closed.what());
  }

  /** The same: to touch is not to cross, as at a slit that is cut into a piece. */
  @Test
  void aSlitThatTouchesItselfIsNoCrossing() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("hem", 0, 0, 0, 50, 0),
            Outlines.line("slit", 0, 50, 0, 50, 40, 50, 0),
            Outlines.line("rest", 10, 50, 0, 100, 0, 100, 100, 0, 100, 0, 0));
    assertEquals(120 * 110 + 60 * 10, Offset.of(edges).result().outline().areaSquareMm(), 1e-6);
  }

  /** kurbo 132: distances that grow along a path, here as sections with a distance each. */
  @Test
  void aDistanceThatGrowsIsSaidInSections() {
    List<OffsetEdge> sections = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      sections.add(Outlines.line("section " + i, 5 + i, 20 * i, 0, 20 * (i + 1), 0));
    }
    OffsetResult result = Offset.ofOpen(sections).result();
    assertEquals(List.of(), OffsetJudge.faultsOfOpen(sections, result, 0.01));
    assertEquals(200 + 9, result.outline().length().toMm(), 1e-9);
    assertEquals(20, result.length("section 9").toMm(), 1e-9);
  }

  /** CavalierContours 33: what was clipped should be known, not only what is left. */
  @Test
  void whatWasClippedIsSaidEdgeByEdge() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("hem", -10, 0, 0, 90, 0),
            Outlines.line("side", -10, 90, 0, 90, 30, 60, 30),
            Outlines.line("notch", -10, 60, 30, 60, 15, 50, 15, 50, 30),
            Outlines.line("top", -10, 50, 30, 0, 30),
            Outlines.line("back", -10, 0, 30, 0, 0));
    OffsetResult result = simple(Offset.of(edges));
    assertEquals(30 * 10, result.outline().areaSquareMm(), 1e-9);
    double meetings = 10 + 10;
    double left = result.parts("hem").stream().mapToDouble(part -> ranged(part).toMm()).sum();
    assertEquals(90, left + lost(result, "hem", Trimming.Cause.OVERLAP) + meetings, 1e-9);
    assertEquals(20, lost(result, "side", Trimming.Cause.SWALLOWED), 1e-9);
    assertEquals(15, lost(result, "notch", Trimming.Cause.OVERLAP), 1e-9);
  }

  private static Length ranged(OffsetPart part) {
    return part.to().minus(part.from());
  }

  private static double lost(OffsetResult result, String edge, Trimming.Cause cause) {
    return result.trimmings().stream()
        .filter(trimming -> trimming.edge().equals(edge) && trimming.cause() == cause)
        .mapToDouble(trimming -> trimming.lost().toMm())
        .sum();
  }

  /** CGAL 6221: distances of one's own; a mitre lies at both distances of its corner. */
  @Test
  void aMitreLiesAtTheDistancesOfBothItsEdges() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("hem", 12, 0, 0, 100, 0),
            Outlines.line("side", 7, 100, 0, 130, 90),
            Outlines.line("top", -4, 130, 90, -20, 70),
            Outlines.line("back", 9, -20, 70, 0, 0));
    OffsetResult result = simple(Offset.of(edges));
    for (int i = 0; i < 4; i++) {
      Point tip = result.parts(edges.get(i).name()).get(0).curve().end();
      assertEquals(edges.get(i).distance().toMm(), beside(edges.get(i), tip), 1e-9);
      assertEquals(
          edges.get((i + 1) % 4).distance().toMm(), beside(edges.get((i + 1) % 4), tip), 1e-9);
    }
  }

  private static double beside(OffsetEdge edge, Point point) {
    return edge.curve().directionAt(Length.ZERO).cross(point.minus(edge.curve().start())) * -1;
  }

  /** CGAL 7399: weighted distances of both signs come out wrong, or not simple. */
  @Test
  void distancesOfBothSignsAndZeroComeOutSimple() {
    double[] distances = {-14, 0, 21, -3, 40, -30};
    for (int turn = 0; turn < 6; turn++) {
      double[] d = new double[6];
      for (int i = 0; i < 6; i++) {
        d[i] = distances[(i + turn) % 6];
      }
      List<OffsetEdge> edges = Outlines.vest(d[0], d[1], d[2], d[3], d[4], d[5]);
      OffsetResult result = simple(Offset.of(edges));
      assertEquals(List.of(), OffsetJudge.faults(edges, result, 0.01), "turned by " + turn);
    }
  }
}
