package dev.drafting.core.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SeamFinish;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChalkTableTest {
  private static CutPiece front() {
    return CutPlan.of(Finishes.vest()).pieces().get(0);
  }

  /**
   * The oracle is the cut line itself: walked in half millimetres, it is never 1 mm off a stroke.
   */
  @Test
  void strokesFromPointToPointStayWithinAMillimetreOfTheCutLine() {
    for (CutPiece piece : CutPlan.of(Finishes.vest()).pieces()) {
      ChalkTable table = ChalkTable.of(piece);
      double foot = piece.cutLine().bounds().minY();
      List<Point> points = new ArrayList<>();
      for (ChalkPoint point : table.points()) {
        points.add(new Point(point.across().toMm(), point.up().toMm() + foot));
      }
      Curve strokes = Curve.polyline(points.toArray(new Point[0]));
      double length = piece.cutLine().length().toMm();
      for (double at = 0; at < length; at += 0.5) {
        Point point = piece.cutLine().pointAt(Length.mm(at));
        if (point.x() > 0.6) {
          double off = strokes.nearest(point).distance().toMm();
          assertTrue(off <= 1, piece.name() + " at " + point + " is off by " + off);
        }
      }
      assertTrue(points.size() < 60, piece.name() + ": " + points.size());
    }
  }

  @Test
  void onTheFoldItBeginsAndEndsAtTheFold() {
    ChalkTable table = ChalkTable.of(front());
    assertTrue(table.alongFold());
    List<ChalkPoint> points = table.points();
    assertEquals(0, points.get(0).across().toMm(), 1e-9);
    assertEquals(0, points.get(points.size() - 1).across().toMm(), 1e-9);
    assertEquals("the fold", points.get(points.size() - 1).line());
    assertTrue(points.stream().allMatch(p -> p.up().toMm() >= 0 && p.across().toMm() >= -1e-9));
    assertTrue(points.get(0).up().toMm() < points.get(points.size() - 1).up().toMm());
    assertTrue(table.how().contains("from the fold"));
  }

  /** 200 x 80 mm and 10 mm all round, its grain lying along the longer side: 220 mm up. */
  @Test
  void withoutAFoldItGoesAlongTheGrain() {
    Point a = new Point(0, 0);
    Point b = new Point(200, 0);
    Point c = new Point(200, 80);
    Point d = new Point(0, 80);
    SeamFinish seam = SeamFinish.of(Length.mm(10));
    Piece pocket =
        Piece.of(
                "pocket",
                List.of(
                    Edge.of("bottom", Curve.line(a, b)).withFinish(seam),
                    Edge.of("right", Curve.line(b, c)).withFinish(seam),
                    Edge.of("top", Curve.line(c, d)).withFinish(seam),
                    Edge.of("left", Curve.line(d, a)).withFinish(seam)))
            .withGrain(Angle.degrees(0));
    ChalkTable table =
        ChalkTable.of(
            CutPlan.of(Pattern.of("mending", List.of(pocket), List.of())).pieces().get(0));
    assertFalse(table.alongFold());
    assertEquals(4, table.points().size());
    assertEquals(
        220, table.points().stream().mapToDouble(p -> p.up().toMm()).max().orElse(0), 1e-9);
    assertEquals(
        100, table.points().stream().mapToDouble(p -> p.across().toMm()).max().orElse(0), 1e-9);
    assertEquals(
        0, table.points().stream().mapToDouble(p -> p.across().toMm()).min().orElse(9), 1e-9);
  }

  /** The fold may be told first, last or between, and the grain of a half may lie otherwise. */
  @Test
  void aHalfIsChalkedAlongItsFoldHoweverItIsTold() {
    Piece half = front().piece();
    List<String> expected = chalked(half);
    for (int first = 1; first < half.edges().size(); first++) {
      assertEquals(expected, chalked(Rectangles.toldFrom(half, first)), "from edge " + first);
    }
    assertEquals(expected, chalked(half.withGrain(Angle.degrees(0))), "grain across");
  }

  private static List<String> chalked(Piece piece) {
    CutPlan plan = CutPlan.of(Pattern.of("vest", List.of(piece), List.of()));
    return ChalkTable.of(plan.pieces().get(0)).points().stream()
        .map(point -> point.toString().replace("-0 mm", "0 mm"))
        .toList();
  }

  /** Lying on its side with 10 mm all round, a notch 40 mm along the right edge. */
  @Test
  void notchesAreChalkedAsThePieceLies() {
    SeamFinish seam = SeamFinish.of(Length.mm(10));
    Piece pocket =
        Rectangles.piece("pocket", 200, 80)
            .withFinish("bottom", seam)
            .withFinish("right", seam)
            .withFinish("top", seam)
            .withFinish("left", seam)
            .withGrain(Angle.degrees(0))
            .withNotch(Notch.of("right", Length.mm(40), "middle"));
    ChalkTable table =
        ChalkTable.of(
            CutPlan.of(Pattern.of("mending", List.of(pocket), List.of())).pieces().get(0));
    assertEquals("[notch middle: 220 mm up, 50 mm across]", table.notches().toString());
  }
}
