package dev.drafting.core.pattern;

import static dev.drafting.core.pattern.Refusals.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerSide;
import dev.drafting.core.offset.CornerTreatment;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PieceTest {
  private static final Point A = new Point(0, 0);
  private static final Point B = new Point(200, 0);
  private static final Point C = new Point(200, 300);
  private static final Point D = new Point(0, 300);

  private static Edge edge(String name, Point from, Point to) {
    return Edge.of(name, Curve.line(from, to));
  }

  private static Piece half() {
    return Piece.of(
        "half",
        List.of(
            edge("hem", A, B),
            edge("side", B, C),
            edge("top", C, D),
            Edge.onFold(Curve.line(D, A))));
  }

  @Test
  void aPieceSaysWhatItIs() {
    Piece half = half();
    assertEquals(
        "half: hem 200 mm, side 300 mm, top 200 mm, fold 300 mm; cut 1 on the fold",
        half.toString());
    assertTrue(half.isOnFold());
    assertEquals("body", half.cloth());
    assertEquals(Angle.degrees(90), half.grain());
    assertEquals("hem to side, 90°", half.corner("hem", "side").toString());
    assertEquals(4, half.corners().size());
    assertEquals(60_000, half.outline().areaSquareMm(), 1e-9);
  }

  @Test
  void anOpenOutlineIsRefusedWithItsGapAndItsEdges() {
    Point beside = new Point(200, 1.5);
    assertEquals(
        "half: the outline is open between the end of hem and the start of side. Found: a gap of 1.5"
            + " mm. Accepted: edges in counter-clockwise order, each beginning where the last one"
            + " ends.",
        refusal(
            () ->
                Piece.of(
                    "half",
                    List.of(edge("hem", A, B), edge("side", beside, C), edge("top", C, A)))));
  }

  @Test
  void twoEdgesOfOneNameAreRefused() {
    assertEquals(
        "half: two edges have the same name. Found: side. Accepted: a name of its own for every"
            + " edge.",
        refusal(
            () ->
                Piece.of(
                    "half", List.of(edge("side", A, B), edge("side", B, C), edge("top", C, A)))));
  }

  @Test
  void aClockwiseOutlineIsRefused() {
    assertEquals(
        "half: the outline runs clockwise. Accepted: edges that run counter-clockwise, with the"
            + " piece on their left.",
        refusal(
            () -> Piece.of("half", List.of(edge("a", A, D), edge("b", D, C), edge("c", C, A)))));
  }

  @Test
  void anOutlineWithoutAreaIsRefused() {
    assertTrue(
        refusal(() -> Piece.of("half", List.of(edge("a", A, D), edge("b", D, A))))
            .startsWith("half: the outline encloses nothing."));
    assertTrue(
        refusal(() -> Piece.of("half", List.of())).startsWith("half: the piece has no edges."));
  }

  @Test
  void anEdgeOfOnePointIsRefused() {
    assertEquals(
        "neck: the edge has one point. Found: 1. Accepted: two points or more.",
        refusal(() -> Edge.of("neck", List.of(A, A))));
    assertTrue(
        refusal(() -> Edge.of("neck", List.of())).startsWith("neck: the edge has no points"));
    assertEquals(500, Edge.of("neck", List.of(A, B, C)).length().toMm(), 1e-9);
  }

  @Test
  void anEdgeOver100MetresIsRefusedByName() {
    String message = refusal(() -> edge("hem", A, new Point(100_001, 0)));
    assertTrue(message.startsWith("hem: ") && message.contains("100 m"), message);
    message = refusal(() -> edge("hem", new Point(100_001, 0), new Point(100_002, 0)));
    assertTrue(message.startsWith("hem: the edge is over 100 m away"), message);
  }

  @Test
  void anEdgeThatWindsForOver100MetresIsRefusedByName() {
    List<Point> winding = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      winding.add(new Point(i % 2 * 1000, i));
    }
    String message = refusal(() -> Edge.of("hem", winding));
    assertTrue(message.startsWith("hem: a length is over 100 m"), message);
  }

  @Test
  void moreThanAMillionPointsAreRefused() {
    List<Point> steps = new ArrayList<>();
    List<Point> more = new ArrayList<>();
    for (int i = 0; i <= 500_000; i++) {
      steps.add(new Point(i * 0.01, 0));
      more.add(new Point(5000 + i * 0.01, 0));
    }
    Edge hem = Edge.of("hem", steps);
    Edge tail = Edge.of("tail", more);
    Edge back = edge("back", tail.curve().end(), C);
    String message = refusal(() -> Piece.of("half", List.of(hem, tail, back, edge("top", C, A))));
    assertTrue(message.startsWith("half: the outline has too many points"), message);
  }

  @Test
  void namesThatCannotBePrintedAreRefused() {
    for (String name : List.of("", " neck", "a/b", "tab\tbed", "x".repeat(61))) {
      assertTrue(refusal(() -> edge(name, A, B)).contains("name of an edge"), name);
      assertTrue(refusal(() -> Piece.of(name, half().edges())).contains("name of a piece"), name);
    }
    assertEquals("façade", edge("façade", A, B).name());
  }

  @Test
  void theFoldLiesOnXZeroAndTheHalfToItsRight() {
    assertTrue(
        refusal(() -> Edge.onFold(Curve.line(C, B))).startsWith("fold: the fold leaves the line"));
    Point across = new Point(-1, 0);
    String message =
        refusal(
            () ->
                Piece.of(
                    "half",
                    List.of(
                        edge("a", A, across),
                        edge("b", across, B),
                        edge("c", B, D),
                        Edge.onFold(Curve.line(D, A)))));
    assertTrue(message.startsWith("half: the half piece reaches across its fold"), message);
  }

  @Test
  void anUnknownEdgeIsRefusedWithThoseThereAre() {
    assertEquals(
        "half: there is no such edge. Found: sleeve. Accepted: hem, side, top, fold.",
        refusal(() -> half().edge("sleeve")));
    assertTrue(refusal(() -> half().corner("hem", "top")).contains("hem is followed by side"));
    assertTrue(refusal(() -> half().withFinish("nek", RawEdge.of())).contains("nek"));
  }

  @Test
  void cuttingSuitsTheFold() {
    assertTrue(
        refusal(() -> half().withCutting(Cutting.pairs(1)))
            .contains("a half on the fold is cut on the fold"));
    assertEquals("cut 2 on the fold", half().withCutting(Cutting.onFold(2)).cutting().toString());
    assertTrue(
        refusal(() -> half().unfolded().withCutting(Cutting.onFold(1)))
            .contains("no edge on the fold"));
    assertEquals(4, Cutting.pairs(2).pieces());
    assertEquals("cut 2 pairs", Cutting.pairs(2).describe());
    assertTrue(refusal(() -> Cutting.single(0)).contains("1 to 1000"));
  }

  @Test
  void notchesLieOnTheirEdge() {
    Piece notched = half().withNotch(Notch.of("side", Length.mm(300), "waist"));
    assertEquals("[notch waist on side at 300 mm]", notched.notches().toString());
    assertTrue(
        refusal(() -> half().withNotch(Notch.of("side", Length.mm(300.1), "waist")))
            .contains("beyond the end"));
    assertTrue(
        refusal(() -> Notch.of("side", Length.mm(-1), "waist")).contains("before the start"));
    assertTrue(
        refusal(() -> half().withNotch(Notch.of("sleeve", Length.ZERO, "waist")))
            .contains("no such edge"));
  }

  @Test
  void aShorterEdgeCannotLoseItsNotch() {
    Piece notched = half().withNotch(Notch.of("hem", Length.mm(150), "quarter"));
    Point bend = new Point(100, -20);
    assertTrue(
        refusal(() -> notched.withEdge(edge("hem", A, bend))).contains("the outline is open"));
    Piece longer = half().withEdge(Edge.of("hem", Curve.polyline(A, bend, B)));
    Piece marked = longer.withNotch(Notch.of("hem", Length.mm(203), "end"));
    assertTrue(refusal(() -> marked.withEdge(edge("hem", A, B))).contains("beyond the end"));
  }

  @Test
  void bothHalvesMakeAWholePiece() {
    Piece whole = Vests.piece("front", Vests.FRONT).unfolded();
    Piece half = Vests.piece("front", Vests.FRONT);
    assertFalse(whole.isOnFold());
    assertEquals("cut 1", whole.cutting().toString());
    assertEquals(
        List.of(
            "hem",
            "side (right)",
            "armhole (right)",
            "shoulder (right)",
            "neck",
            "shoulder (left)",
            "armhole (left)",
            "side (left)"),
        whole.edges().stream().map(Edge::name).toList());
    assertEquals(2 * half.outline().areaSquareMm(), whole.outline().areaSquareMm(), 1e-6);
    assertEquals(2 * half.edge("neck").length().toMm(), whole.edge("neck").length().toMm(), 1e-9);
    assertSame(whole, whole.unfolded());
  }

  @Test
  void unfoldingKeepsNotchesFinishesAndPoints() {
    Piece whole =
        half()
            .withFinish("side", SeamFinish.of(Length.mm(7)))
            .withNotch(Notch.of("hem", Length.mm(50), "h"))
            .withNotch(Notch.of("side", Length.mm(100), "s"))
            .withNotch(Notch.of("top", Length.mm(20), "t"))
            .withMarking(MarkingLine.of("pocket", Curve.line(new Point(20, 20), new Point(80, 20))))
            .withPointedCorner("hem", "side")
            .withCorner("hem", "side", CornerTreatment.squareTo(CornerSide.AFTER))
            .unfolded();
    assertEquals(
        "[notch h on hem at 250 mm, notch h on hem at 150 mm, notch s on side (right) at 100 mm,"
            + " notch s on side (left) at 200 mm, notch t on top at 20 mm, notch t on top at 380"
            + " mm]",
        whole.notches().toString());
    assertEquals(SeamFinish.of(Length.mm(7)), whole.edge("side (left)").finish());
    assertTrue(whole.corner("hem", "side (right)").isPointed());
    assertTrue(whole.corner("side (left)", "hem").isPointed());
    assertFalse(whole.corner("side (right)", "top").isPointed());
    assertEquals(
        CornerTreatment.squareTo(CornerSide.AFTER),
        whole.corner("hem", "side (right)").treatment().orElseThrow());
    assertEquals(
        CornerTreatment.squareTo(CornerSide.BEFORE),
        whole.corner("side (left)", "hem").treatment().orElseThrow());
    assertEquals(whole, whole.mirrored().mirrored());
    assertTrue(whole.corner("side (right)", "top").treatment().isEmpty());
    assertEquals(2, whole.markings().size());
    assertEquals(new Point(-20, 20), whole.markings().get(1).curve().start());
  }

  @Test
  void aHalfOfOneEdgeUnfoldsToARoundPiece() {
    Point top = new Point(0, 100);
    Piece disc =
        Piece.of(
            "disc",
            List.of(
                Edge.of("rim", Curve.of(new dev.drafting.core.geometry.Cubic(A, B, C, top))),
                Edge.onFold(Curve.line(top, A))));
    Piece whole = disc.unfolded();
    assertEquals(1, whole.edges().size());
    assertTrue(whole.outline().isClosed());
    assertEquals(1, whole.corners().size());
  }

  @Test
  void piecesAreValues() {
    Piece one =
        half()
            .withNotch(Notch.of("side", Length.mm(100), "s"))
            .withMarking(MarkingLine.of("pocket", Curve.line(A, C)))
            .withPointedCorner("hem", "side")
            .withCorner("side", "top", CornerTreatment.bevel())
            .withCloth("rib")
            .withGrain(Angle.degrees(45));
    assertEquals(one, SerialCopy.of(one));
    assertEquals(one.hashCode(), SerialCopy.of(one).hashCode());
    assertEquals(one.corners(), SerialCopy.of(one).corners());
    assertNotEquals(one, one.withCloth("body"));
    assertEquals("side to top, 90°, bevel", one.corner("side", "top").toString());
    assertNotEquals(one, one.withCorner("side", "top", CornerTreatment.round()));
    assertNotEquals(one, half());
    assertNotEquals(one.corner("hem", "side"), half().corner("hem", "side"));
    assertTrue(one.toString().length() < 1000);
  }
}
