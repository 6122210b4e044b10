package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TruingWholeTest {
  private static final Transform LYING =
      Transform.rotation(new Point(40, 90), Angle.degrees(-23))
          .then(Transform.translation(new Vector(900, -300)));

  @Test
  void anExactWholeVestComesBackExactlyInItsOwnFrame() {
    TruedPiece trued = Truing.of(new Vest.Pencil(1, 0, 10).whole(LYING)).result();
    for (String name : Vest.EDGES) {
      assertTrue(Vest.rms(trued.piece().edge(name).curve(), Vest.edge(name)) < 1e-6, name);
    }
    assertEquals(new Point(0, 0), trued.piece().edge("hem").curve().start());
    for (Lopsidedness sides : trued.report().lopsidedness()) {
      assertTrue(sides.largest().toMm() < 1e-6, sides.toString());
    }
    assertTrue(trued.report().findings().isEmpty());
  }

  @Test
  void thePlacementTakesTheTracingToThePiece() {
    Tracing tracing = new Vest.Pencil(5, 1, 10).whole(LYING);
    TruedPiece trued = Truing.of(tracing).result();
    Point shoulder = trued.report().placement().apply(LYING.apply(new Point(168, 628)));
    assertEquals(168, shoulder.x(), 2);
    assertEquals(628, shoulder.y(), 2);
  }

  @Test
  void theUnfoldedPieceIsSymmetricalToTheLastBit() {
    TruedPiece trued = Truing.of(new Vest.Pencil(5, 1.5, 10).whole(LYING)).result();
    Curve whole = trued.piece().unfolded().outline();
    Curve image = whole.mirrored().reversed();
    for (var segment : whole.segments()) {
      assertTrue(image.segments().contains(segment), segment.toString());
    }
  }

  @Test
  void sidesThatDifferAreAveragedAndReported() {
    List<TracedEdge> edges = new ArrayList<>();
    Vest.Pencil pencil = new Vest.Pencil(8, 0.5, 10);
    // The left armhole is hollowed out too far, by three quarters of 12 mm in its middle.
    Curve deeper = Vest.cubic(-168, 628, -148, 520, -153, 420, -226, 405);
    Curve average = Vest.cubic(226, 405, 159, 420, 154, 520, 168, 628);
    int armholes = 0;
    for (Vest.Stroke stroke : Vest.whole()) {
      boolean left = stroke.name().equals("armhole") && ++armholes == 2;
      edges.add(TracedEdge.of(stroke.name(), pencil.trace(left ? deeper : stroke.curve())));
    }
    TruedPiece trued = Truing.of(Tracing.of("front", Extent.WHOLE, edges)).result();
    double lowest = trued.report().placement().apply(new Point(0, 0)).y();
    Curve armhole =
        trued.piece().edge("armhole").curve().map(Transform.translation(new Vector(0, -lowest)));
    assertTrue(Vest.rms(armhole, average) < 0.4, () -> "off by " + Vest.rms(armhole, average));
    Lopsidedness reported = trued.report().lopsidedness().get(2);
    assertEquals("armhole", reported.edge());
    // The best fold line takes up some of the 9 mm by moving aside.
    assertEquals(7.5, reported.largest().toMm(), 1.5);
    assertTrue(reported.rms().compareTo(reported.largest()) < 0);
    List<Finding> findings =
        trued.report().findings().stream()
            .filter(finding -> finding.place().equals(Place.edge("front", "armhole")))
            .toList();
    assertEquals(List.of("trace.lopsided"), findings.stream().map(Finding::id).toList());
    assertTrue(findings.get(0).reason().startsWith("the two sides differ by up to "));
    assertTrue(findings.get(0).reason().endsWith(" mm at the armhole: the average is used"));
  }

  @Test
  void aSlipOnTheLeftIsNamedSo() {
    List<TracedEdge> edges = new ArrayList<>();
    Vest.Pencil pencil = new Vest.Pencil(2, 1, 8);
    int sides = 0;
    Point worst = new Point(0, 0);
    for (Vest.Stroke stroke : Vest.whole()) {
      List<Point> points = pencil.trace(stroke.curve().map(LYING));
      if (stroke.name().equals("side") && ++sides == 2) {
        worst = points.get(20).plus(new Vector(15, 15));
        points.set(20, worst);
      }
      edges.add(TracedEdge.of(stroke.name(), points));
    }
    TruingReport report = Truing.of(Tracing.of("front", Extent.WHOLE, edges)).result().report();
    assertEquals(1, report.findings().size(), report.findings().toString());
    assertTrue(report.findings().get(0).reason().startsWith("1 point of the left side stands"));
    RefusedPoint refused = report.edge("side").refused().get(0);
    assertEquals(worst, refused.traced());
    assertTrue(refused.placed().x() < 0);
    assertEquals(report.placement().apply(worst), refused.placed());
  }

  @Test
  void aVNeckDrawnInOneStrokeComesToItsPoint() {
    Curve right = Curve.line(new Point(96, 657), new Point(0, 480));
    List<TracedEdge> edges = new ArrayList<>();
    Vest.Pencil pencil = new Vest.Pencil(6, 1, 10);
    for (Vest.Stroke stroke : Vest.whole()) {
      boolean neck = stroke.name().equals("neck");
      Curve curve = neck ? right.then(right.mirrored().reversed()) : stroke.curve();
      edges.add(TracedEdge.of(stroke.name(), pencil.trace(curve)));
    }
    Tracing tracing = Tracing.of("front", Extent.WHOLE, edges);
    TruedPiece trued = Truing.of(tracing).withPointedCorner("neck").result();
    assertTrue(trued.report().edge("neck").isStraight());
    assertTrue(trued.piece().corner("neck", "fold").isPointed());
    assertFalse(trued.piece().corner("fold", "hem").isPointed());
    Curve neck = trued.piece().edge("neck").curve();
    assertEquals(0, neck.end().x());
    double lowest = trued.report().placement().apply(new Point(0, 0)).y();
    assertEquals(480, neck.end().y() - lowest, 1.5);
  }
}
