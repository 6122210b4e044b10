package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TruingTest {
  private static TruedPiece trued(Tracing tracing) {
    return Truing.of(tracing).result();
  }

  @Test
  void exactLinesAndCubicsComeBackExactly() {
    for (double spacing : new double[] {4, 10, 20}) {
      TruedPiece trued = trued(new Vest.Pencil(1, 0, spacing).half());
      Vest.half()
          .forEach(
              (name, truth) -> {
                Curve found = trued.piece().edge(name).curve();
                assertEquals(1, found.segments().size(), name);
                assertEquals(truth.start().x(), found.start().x(), 1e-6, name);
                assertEquals(truth.start().y(), found.start().y(), 1e-6, name);
                assertTrue(Vest.rms(found, truth) < 1e-6, name + " at " + spacing);
                assertEquals(truth.length().toMm(), found.length().toMm(), 1e-6, name);
              });
      assertTrue(trued.report().findings().isEmpty());
    }
  }

  /** Points copied from a drawing: no cubics of the fit are exactly those of the neck. */
  @Test
  void exactPointsOfACurveInTwoPartsComeBackNearly() {
    Map<String, Curve> drawn = new LinkedHashMap<>();
    drawn.put("hem", Curve.line(new Point(0, 0), new Point(128, 0)));
    drawn.put("side", Curve.line(new Point(128, 0), new Point(128, 110)));
    drawn.put("armhole", cubic(128, 110, 96, 110, 75, 153, 90, 201));
    drawn.put("lap", Curve.line(new Point(90, 201), new Point(107.5, 257)));
    drawn.put(
        "neck",
        cubic(107.5, 257, 91, 262, 76.4, 248, 60.4, 241)
            .then(cubic(60.4, 241, 40.4, 232.25, 20.1, 228, 0, 228)));
    List<TracedEdge> copied = new ArrayList<>();
    Vest.Pencil exact = new Vest.Pencil(1, 0, 6);
    drawn.forEach((name, curve) -> copied.add(TracedEdge.of(name, exact.trace(curve))));
    TruedPiece trued = trued(Tracing.of("back", Extent.HALF_ON_FOLD, copied));
    drawn.forEach(
        (name, curve) -> {
          Curve found = trued.piece().edge(name).curve();
          assertTrue(Vest.rms(found, curve) < 0.05, name);
          assertEquals(curve.length().toMm(), found.length().toMm(), 0.05, name);
        });
  }

  /** The crown of a cap in one stroke, copied exactly: straight, round, straight. */
  @Test
  void exactPointsOfALongArchComeBackNearly() {
    Curve crown =
        Curve.line(new Point(197.425611779, 0), new Point(197.425611779, 173.61700607))
            .then(
                cubic(
                    197.425611779,
                    173.61700607,
                    197.425611779,
                    241.613544927,
                    153.193884152,
                    296.818112866,
                    98.712805889,
                    296.818112866))
            .then(
                cubic(
                    98.712805889,
                    296.818112866,
                    44.231727627,
                    296.818112866,
                    0,
                    241.613544927,
                    0,
                    173.61700607))
            .then(Curve.line(new Point(0, 173.61700607), new Point(0, 0)));
    List<TracedEdge> copied =
        List.of(
            TracedEdge.of("brim", List.of(new Point(0, 0), new Point(197.425611779, 0))),
            TracedEdge.of("crown", new Vest.Pencil(1, 0, 6).trace(crown)));
    TruedPiece trued = trued(Tracing.of("half", Extent.AS_IT_LIES, copied));
    Curve found = trued.piece().edge("crown").curve();
    assertEquals(crown.length().toMm(), found.length().toMm(), 0.2);
    assertTrue(Vest.rms(found, crown) < 0.2);
  }

  private static Curve cubic(double... xy) {
    return Curve.of(
        new Cubic(
            new Point(xy[0], xy[1]),
            new Point(xy[2], xy[3]),
            new Point(xy[4], xy[5]),
            new Point(xy[6], xy[7])));
  }

  @Test
  void straightEdgesBecomeLinesAndCurvedOnesCubics() {
    TruingReport report = trued(new Vest.Pencil(7, 1.2, 10).half()).report();
    assertTrue(report.edge("side").isStraight());
    assertTrue(report.edge("shoulder").isStraight());
    for (String name : List.of("hem", "armhole", "neck")) {
      assertFalse(report.edge(name).isStraight(), name);
      assertEquals(1, report.edge(name).cubics(), name);
    }
  }

  @Test
  void edgesKeepTheirNamesInTheOrderOfTheOutlineWithTheFoldLast() {
    TruedPiece trued = trued(Vest.shuffled(new Vest.Pencil(3, 1, 10).half(), 5));
    assertEquals(
        List.of("hem", "side", "armhole", "shoulder", "neck", "fold"),
        trued.piece().edges().stream().map(Edge::name).toList());
    assertTrue(trued.piece().isOnFold());
    assertEquals(Vest.EDGES, trued.report().edges().stream().map(EdgeReport::edge).toList());
  }

  @Test
  void theOutlineClosesToTheLastBit() {
    for (Tracing tracing : both(11, 1.5)) {
      List<Edge> edges = trued(tracing).piece().edges();
      for (int i = 0; i < edges.size(); i++) {
        Edge next = edges.get((i + 1) % edges.size());
        assertEquals(edges.get(i).curve().end(), next.curve().start());
      }
    }
  }

  @Test
  void neckAndHemAreSquareAtTheFoldToTheLastBit() {
    for (Tracing tracing : both(12, 2)) {
      TruedPiece trued = trued(tracing);
      Cubic hem = (Cubic) trued.piece().edge("hem").curve().segments().get(0);
      assertEquals(0, hem.start().x());
      assertEquals(hem.start().y(), hem.control1().y());
      assertTrue(hem.control1().x() > 0);
      List<?> neck = trued.piece().edge("neck").curve().segments();
      Cubic last = (Cubic) neck.get(neck.size() - 1);
      assertEquals(0, last.end().x());
      assertEquals(last.end().y(), last.control2().y());
      assertTrue(last.control2().x() > 0);
    }
  }

  private static List<Tracing> both(long seed, double wander) {
    Vest.Pencil pencil = new Vest.Pencil(seed, wander, 10);
    Transform lying =
        Transform.rotation(new Point(40, 90), Angle.degrees(17))
            .then(Transform.translation(new Vector(300, 800)));
    return List.of(pencil.half(), pencil.whole(lying));
  }

  @Test
  void aStraightHemIsLevel() {
    List<Point> hem = List.of(new Point(1, 0.5), new Point(60, -0.7), new Point(121, 0.2));
    Tracing tracing =
        Tracing.of(
            "pocket",
            Extent.HALF_ON_FOLD,
            List.of(
                TracedEdge.of("hem", hem),
                TracedEdge.of("side", List.of(new Point(120, 1), new Point(118, 200))),
                TracedEdge.of("top", List.of(new Point(119, 201), new Point(0, 200)))));
    TruedPiece trued = Truing.of(tracing).withStraight("hem").withStraight("top").result();
    Curve level = trued.piece().edge("hem").curve();
    assertEquals(level.start().y(), level.end().y());
    // The mean of its points, but for what the end of the side says of the corner.
    assertEquals(0, level.start().y(), 0.5);
  }

  @Test
  void theMakerMaySayWhatIsStraightAndWhatIsCurved() {
    Tracing tracing = new Vest.Pencil(4, 1, 10).half();
    assertTrue(
        Truing.of(tracing).withStraight("armhole").result().report().edge("armhole").isStraight());
    assertFalse(Truing.of(tracing).withCurved("side").result().report().edge("side").isStraight());
  }

  @Test
  void aSlipOfThePencilIsRefusedAndItsPlaceReported() {
    Vest.Pencil pencil = new Vest.Pencil(21, 1, 8);
    List<TracedEdge> edges = new ArrayList<>();
    List<Point> slipped = new ArrayList<>();
    Vest.half()
        .forEach(
            (name, curve) -> {
              List<Point> points = pencil.trace(curve);
              if (name.equals("armhole")) {
                for (int i = 12; i < 15; i++) {
                  points.set(i, points.get(i).plus(new Vector(12, 0)));
                  slipped.add(points.get(i));
                }
              }
              edges.add(TracedEdge.of(name, points));
            });
    TruedPiece trued = trued(Tracing.of("front", Extent.HALF_ON_FOLD, edges));
    EdgeReport armhole = trued.report().edge("armhole");
    assertEquals(slipped, armhole.refused().stream().map(RefusedPoint::traced).toList());
    armhole.refused().forEach(point -> assertEquals(12, point.distance().toMm(), 3.5));
    assertEquals(1, trued.report().findings().size());
    assertEquals("trace.slip", trued.report().findings().get(0).id());
    assertTrue(Vest.rms(trued.piece().edge("armhole").curve(), Vest.edge("armhole")) < 0.75);
  }

  @Test
  void smoothingAsSaidReplacesTheEstimate() {
    Tracing tracing = new Vest.Pencil(9, 0.5, 8).half();
    TruingReport calm = Truing.of(tracing).withSmoothing(Length.mm(10)).result().report();
    TruingReport close = Truing.of(tracing).withSmoothing(Length.mm(0.1)).result().report();
    assertEquals(Length.mm(10), calm.noise());
    for (String name : Vest.EDGES) {
      assertTrue(calm.edge(name).cubics() <= close.edge(name).cubics(), name);
      assertTrue(calm.edge(name).rms().compareTo(close.edge(name).rms()) >= 0, name);
    }
    assertTrue(close.edge("neck").cubics() > 1);
  }

  @Test
  void aVNeckThatWasNotDeclaredIsDrawnSquareAndPointedOut() {
    Vest.Pencil pencil = new Vest.Pencil(2, 1, 8);
    List<TracedEdge> edges = new ArrayList<>();
    Vest.half()
        .forEach(
            (name, curve) -> {
              boolean neck = name.equals("neck");
              Curve v = Curve.line(new Point(96, 657), new Point(0, 480));
              edges.add(TracedEdge.of(name, pencil.trace(neck ? v : curve)));
            });
    Tracing tracing = Tracing.of("front", Extent.HALF_ON_FOLD, edges);
    TruedPiece silent = trued(tracing);
    List<String> ids = silent.report().findings().stream().map(Finding::id).toList();
    assertTrue(ids.contains("trace.not-square"), ids.toString());
    TruedPiece said = Truing.of(tracing).withPointedCorner("neck").result();
    assertEquals(List.of(), said.report().findings());
    assertTrue(said.report().edge("neck").isStraight());
    assertTrue(said.piece().corner("neck", "fold").isPointed());
  }

  @Test
  void aPointInTheMiddleOfANeckCountsOnce() {
    Tracing whole = new Vest.Pencil(2, 1, 8).whole(Transform.identity());
    TruingReport report = trued(whole).report();
    for (TracedEdge edge : whole.edges()) {
      if (edge.name().equals("neck") || edge.name().equals("hem")) {
        assertEquals(edge.points().size(), report.edge(edge.name()).points());
      }
    }
  }
}
