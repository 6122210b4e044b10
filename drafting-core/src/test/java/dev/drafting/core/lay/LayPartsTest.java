package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is laid of pieces and strips on cloth that is folded this way and that. */
class LayPartsTest {
  private static final Cloth METRE = Cloth.of(Length.cm(100));
  private static final Length WIDE = Length.mm(40);

  private static Edge straight(String name, double x1, double y1, double x2, double y2) {
    return Edge.of(name, Curve.line(new Point(x1, y1), new Point(x2, y2)));
  }

  private static CutPiece cut(Piece piece) {
    return CutPlan.of(Pattern.of("bag", List.of(piece), List.of())).pieces().get(0);
  }

  /** Half a flap, 200 by 300 mm, with its fold on the left. */
  private static CutPiece flap() {
    return cut(
        Piece.of(
            "flap",
            List.of(
                Edge.onFold(Curve.line(new Point(0, 300), new Point(0, 0))),
                straight("hem", 0, 0, 200, 0),
                straight("side", 200, 0, 200, 300),
                straight("top", 200, 300, 0, 300))));
  }

  private static CutPiece rectangle(Cutting cutting) {
    return cut(Bulging.rectangle("flap", 200, 300).withCutting(cutting));
  }

  private static List<LayPart> parts(Cloth cloth, CutPiece piece) {
    LayParts parts = new LayParts(cloth);
    parts.add(piece, null);
    return parts.parts();
  }

  private static LayParts strips(Cloth cloth, double length, int times) {
    LayParts parts = new LayParts(cloth);
    parts.addStrips("band", Length.mm(length), WIDE, times);
    return parts;
  }

  /** How far each part reaches across the cloth, and through how many layers it is cut. */
  private static List<String> across(LayParts parts) {
    return parts.parts().stream()
        .map(
            part ->
                part.cutLine().bounds().height()
                    + (part.hasFold() ? " on the fold, " : ", ")
                    + part.layers())
        .toList();
  }

  private static void runs(double length, Point from, Point to, Curve curve) {
    assertEquals(length, curve.length().toMm(), 1e-9);
    assertEquals(0, curve.start().distanceTo(from).toMm(), 1e-9, curve.start().toString());
    assertEquals(0, curve.end().distanceTo(to).toMm(), 1e-9, curve.end().toString());
  }

  /** It lies with its top to the cut end; hem, side and top are cut, the fold is not. */
  @Test
  void halfAPieceOnTheFoldIsCutRoundItsFreeEdges() {
    LayPart half = parts(METRE.foldedLengthwise(), flap()).get(0);
    assertTrue(half.hasFold());
    assertEquals(2, half.layers());
    assertEquals(1000, half.cutLine().length().toMm(), 1e-9);
    runs(700, new Point(0, 0), new Point(-300, 0), half.toCut());
  }

  /** Its one free edge leaves the fold and returns to it. */
  @Test
  void anEdgeFromFoldToFoldIsNotTakenForTheFold() {
    Curve round =
        Curve.of(new Cubic(new Point(0, 0), new Point(90, 0), new Point(90, 60), new Point(0, 60)));
    CutPiece patch =
        cut(
            Piece.of(
                "patch",
                List.of(
                    Edge.onFold(Curve.line(new Point(0, 60), new Point(0, 0))),
                    Edge.of("round", round))));
    LayPart half = parts(METRE.foldedLengthwise(), patch).get(0);
    runs(round.length().toMm(), new Point(0, 0), new Point(-60, 0), half.toCut());
  }

  @Test
  void inOneLayerHalfAPieceIsOpenedOut() {
    LayPart whole = parts(METRE, flap()).get(0);
    assertFalse(whole.hasFold());
    assertTrue(whole.cutLine().isClosed());
    assertEquals(1400, whole.cutLine().length().toMm(), 1e-9);
    assertEquals(120_000, Math.abs(whole.cutLine().areaSquareMm()), 1e-6);
  }

  @Test
  void onePieceAloneIsSaidOnceWhereClothLiesDoubleThroughout() {
    for (Cloth cloth : List.of(METRE, METRE.foldedOver(Length.cm(30)))) {
      LayParts parts = new LayParts(cloth);
      parts.add(rectangle(Cutting.single(2)), null);
      assertEquals(List.of(), parts.notes());
      assertEquals(2, parts.parts().size());
    }
    LayParts doubled = new LayParts(METRE.foldedLengthwise());
    doubled.add(rectangle(Cutting.single(1)), null);
    doubled.add(rectangle(Cutting.single(1)), null);
    assertEquals(List.of("flap is cut from one of the layers alone"), doubled.notes());
    assertEquals(
        List.of("300 mm, 1", "300 mm, 1"),
        doubled.parts().stream()
            .map(part -> part.cutLine().bounds().width() + ", " + part.layers())
            .toList());
  }

  /** A notch 90 mm up the right side: of the mirror image it is on the left. */
  @Test
  void aNotchLiesOnTheRepeatOnBothPiecesOfAPair() {
    CutPiece pocket =
        cut(
            Bulging.rectangle("pocket", 200, 300)
                .withCutting(Cutting.pairs(1))
                .withNotch(Notch.of("side", Length.mm(90), "stripe")));
    LayParts parts = new LayParts(METRE);
    parts.add(pocket, "stripe");
    List<Point> notches = parts.parts().stream().map(LayPart::onRepeat).toList();
    assertEquals(-90, notches.get(0).x(), 1e-9);
    assertEquals(200, notches.get(0).y(), 1e-9);
    assertEquals(-90, notches.get(1).x(), 1e-9);
    assertEquals(-200, notches.get(1).y(), 1e-9);
  }

  /** Cut from one layer: as long as the cloth is wide, and not a hair more in one part. */
  @Test
  void stripsThatAreTooLongArePieced() {
    assertEquals(List.of("1000 mm, 1", "1000 mm, 1"), across(strips(METRE, 1000, 2)));
    assertEquals(List.of("507.001 mm, 1", "507.001 mm, 1"), across(strips(METRE, 1000.002, 1)));
    LayParts long3 = strips(METRE, 2000, 1);
    assertEquals(3, long3.parts().size());
    assertEquals(
        List.of("band is pieced from 3 parts of 67.6 cm, 7 mm sewn in at each join"),
        long3.notes());
  }

  /** Beyond what is folded over, the cloth lies in one layer. */
  @Test
  void onPartlyFoldedClothStripsLieInTheOneLayer() {
    Cloth partly = METRE.foldedOver(Length.cm(20));
    assertEquals(Length.cm(80), partly.tableWidth());
    assertEquals(List.of("600 mm, 1"), across(strips(partly, 600, 1)));
    assertEquals(List.of(), strips(partly, 600, 1).notes());
    assertEquals(List.of("307.001 mm, 1", "307.001 mm, 1"), across(strips(partly, 600.002, 1)));
  }

  @Test
  void onDoubledClothTwoThatAreAlikeAreCutAtOnce() {
    Cloth doubled = METRE.foldedLengthwise();
    assertEquals(List.of("500 mm, 2"), across(strips(doubled, 500, 2)));
    assertEquals(List.of(), strips(doubled, 500, 2).notes());
    assertEquals(List.of("500 mm, 2", "500 mm, 1"), across(strips(doubled, 500, 3)));
    assertEquals(
        List.of("band is cut from one of the layers alone"), strips(doubled, 500, 3).notes());
    assertEquals(List.of("300 mm on the fold, 2"), across(strips(doubled, 600, 1)));
    assertEquals(List.of(), strips(doubled, 600, 1).notes());
    LayPart half = strips(doubled, 600, 1).parts().get(0);
    runs(640, new Point(40, 0), new Point(0, 0), half.toCut());
  }

  @Test
  void whereLayersLieEndOnEndStripsAreCutFromOne() {
    Cloth crosswise = METRE.bothWays().foldedCrosswise();
    LayParts twice = new LayParts(crosswise);
    twice.addStrips("band", Length.mm(600), WIDE, 1);
    twice.addStrips("band", Length.mm(600), WIDE, 1);
    assertEquals(List.of("600 mm, 1", "600 mm, 1"), across(twice));
    assertEquals(List.of("band is cut from one of the layers alone"), twice.notes());
  }

  @Test
  void onAScrapStripsCannotBePieced() {
    assertEquals(
        "band: the cloth is too narrow for a strip. Found: 28 mm. Accepted: more than 28 mm.",
        assertThrows(
                DraftingException.class, () -> strips(METRE.foldedOver(Length.mm(486)), 600, 1))
            .getMessage());
  }
}
