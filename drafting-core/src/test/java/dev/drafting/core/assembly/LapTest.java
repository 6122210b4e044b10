package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A top whose front lies over its back along the armholes, in which tubes are sewn as sleeves. */
class LapTest {
  private static final Seam LAP = Seam.lapped("lap", "front lap", "back lap").endToStart();

  private static Piece half(String name, double lap) {
    Point foot = new Point(0, 0);
    Point hem = new Point(100, 0);
    Point underarm = new Point(100, 200);
    Point end = new Point(100, 200 + lap);
    Point top = new Point(0, 200 + lap);
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(foot, hem)),
            Edge.of("side", Curve.line(hem, underarm)),
            Edge.of("lap", Curve.line(underarm, end)),
            Edge.of("neck", Curve.line(end, top)),
            Edge.onFold(Curve.line(top, foot))));
  }

  private static Piece sleeve() {
    Point left = new Point(0, 0);
    Point right = new Point(60, 0);
    Point rightHem = new Point(60, 80);
    Point leftHem = new Point(0, 80);
    return Piece.of(
            "sleeve",
            List.of(
                Edge.of("cap", Curve.line(left, right)),
                Edge.of("one underarm", Curve.line(right, rightHem)),
                Edge.of("wrist", Curve.line(rightHem, leftHem)),
                Edge.of("other underarm", Curve.line(leftHem, left))))
        .withCutting(Cutting.pairs(1));
  }

  private static Pattern top(double backLap, Seam... first) {
    List<Seam> seams = new ArrayList<>(List.of(first));
    seams.add(Seam.of("side", "front side", "back side"));
    seams.add(Seam.of("underarm", "sleeve / one underarm", "sleeve / other underarm").endToStart());
    return Pattern.of("top", List.of(half("front", 60), half("back", backLap), sleeve()), seams);
  }

  private static Seam cap() {
    return Seam.of("cap", "front lap", "sleeve cap").endToStart();
  }

  @Test
  void isOneEdgeOverAnother() {
    assertEquals("lap: front / lap over back / lap, end to start", LAP.toString());
    assertTrue(LAP.isLapped());
    assertNotEquals(LAP, Seam.of("lap", "front lap", "back lap").endToStart());
    assertEquals(LAP, SerialCopy.of(LAP));
  }

  /** What lies beneath is no part of the opening, and the edge makes no corner there. */
  @Test
  void theOpeningRunsFromTheFrontToTheBack() {
    Assembly sewn = Assembly.of(top(60, LAP, cap()));
    Opening neck = sewn.opening("neck");
    assertEquals(400, neck.length().toMm(), 1e-9);
    assertEquals(0, neck.turning().toDegrees(), 1e-9);
    assertEquals(
        List.of(180L, 180L, 180L, 180L),
        neck.stations().stream().map(s -> Math.round(s.angle().toDegrees())).toList());
    assertEquals(
        List.of("hem", "neck", "wrist (right)", "wrist (left)"),
        sewn.openings().stream().map(Opening::name).toList());
    assertEquals(List.of(), sewn.findings());
  }

  /** Both sides of the lap are as long as each other, like those of a seam. */
  @Test
  void anUnevenLapIsFound() {
    Assembly sewn = Assembly.of(top(70, LAP, cap()));
    assertEquals(
        List.of("seam.lengths-differ"), sewn.findings().stream().map(Finding::id).toList());
  }

  @Test
  void aLapThatNoSeamCatchesIsRefused() {
    DraftingException refusal = assertThrows(DraftingException.class, () -> top(60, LAP));
    assertEquals("no seam catches the lap", refusal.what());
    assertTrue(refusal.where().endsWith("seam lap"), refusal.where());
  }

  @Test
  void whatLiesBeneathIsSewnOnce() {
    Seam other = Seam.of("other", "back lap", "sleeve wrist");
    DraftingException refusal =
        assertThrows(DraftingException.class, () -> top(60, LAP, cap(), other));
    assertEquals("the edge is sewn twice", refusal.what());
  }
}
