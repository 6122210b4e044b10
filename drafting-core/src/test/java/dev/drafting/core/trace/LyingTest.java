package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A sleeve with a higher back: it has no fold line and must not be made symmetrical. */
class LyingTest {
  private static final Point A = new Point(30, 500);
  private static final Point B = new Point(330, 500);
  private static final Point C = new Point(360, 610);
  private static final Point D = new Point(5, 640);
  private static final Curve CAP =
      Curve.of(new Cubic(C, new Point(260, 640), new Point(150, 790), D));

  private final Random hand = new Random(3);

  private TracedEdge traced(String name, Curve curve, boolean backwards) {
    List<Point> points = new ArrayList<>();
    double length = curve.length().toMm();
    int steps = (int) (length / 8);
    for (int i = 0; i <= steps; i++) {
      Length along = Length.mm(length * i / steps);
      Vector across = curve.directionAt(along).left();
      points.add(curve.pointAt(along).plus(across.times(0.5 * hand.nextGaussian())));
    }
    if (backwards) {
      Collections.reverse(points);
    }
    return TracedEdge.of(name, points);
  }

  private Tracing sleeve() {
    return Tracing.of(
        "sleeve",
        Extent.AS_IT_LIES,
        List.of(
            traced("cap", CAP, true),
            traced("front seam", Curve.line(D, A), false),
            traced("hem", Curve.line(A, B), true),
            traced("back seam", Curve.line(B, C), false)));
  }

  @Test
  void thePieceStaysWhereItLiesAndHasNoFold() {
    Piece piece = Truing.of(sleeve()).result().piece();
    assertFalse(piece.isOnFold());
    assertEquals(Cutting.single(1), piece.cutting());
    assertEquals(
        List.of("back seam", "cap", "front seam", "hem"),
        piece.edges().stream().map(Edge::name).sorted().toList());
    assertNear(A, piece.edge("hem").curve().start());
    assertNear(B, piece.edge("hem").curve().end());
    assertNear(C, piece.edge("back seam").curve().end());
    assertNear(D, piece.edge("cap").curve().end());
    assertTrue(piece.outline().areaSquareMm() > 0);
    assertEquals(CAP.length().toMm(), piece.edge("cap").length().toMm(), 1.5);
    assertEquals(List.of(), Truing.of(sleeve()).result().report().lopsidedness());
  }

  private static void assertNear(Point expected, Point actual) {
    assertTrue(expected.distanceTo(actual).compareTo(Length.mm(1.5)) < 0, actual.toString());
  }

  @Test
  void anEdgeGivenTwiceOrAGapIsRefused() {
    TracedEdge hem = traced("hem", Curve.line(A, B), false);
    assertThrows(
        DraftingException.class, () -> Tracing.of("sleeve", Extent.AS_IT_LIES, List.of(hem, hem)));
    Tracing open =
        Tracing.of(
            "sleeve",
            Extent.AS_IT_LIES,
            List.of(hem, traced("seam", Curve.line(B, C), false), traced("cap", CAP, false)));
    assertThrows(DraftingException.class, () -> Truing.of(open).result());
  }

  @Test
  void oneEdgeAloneIsRefused() {
    Tracing one = Tracing.of("ring", Extent.AS_IT_LIES, List.of(traced("cap", CAP, false)));
    DraftingException refused =
        assertThrows(DraftingException.class, () -> Truing.of(one).result());
    assertEquals("a piece without a fold has one edge only", refused.what());
  }
}
