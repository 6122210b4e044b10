package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Piece;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class TapedHalfTest {
  private static Length cm(double cm) {
    return Length.cm(cm);
  }

  private static TapedHalf vest() {
    return TapedHalf.of("front", cm(64))
        .withHem(cm(48), Length.mm(12))
        .withWidth(cm(14), cm(45))
        .withWidth(cm(26), cm(43))
        .withUnderarm(cm(46), cm(22))
        .withShoulder(cm(7), cm(2))
        .withNeck(cm(20), cm(10));
  }

  /** How far a curve is from the fold at a height that it passes once. */
  static double halfWidthAt(Curve curve, double height) {
    List<Crossing> met =
        curve.intersections(Curve.line(new Point(-1, height), new Point(2_000, height)));
    assertEquals(1, met.size());
    return met.get(0).point().x();
  }

  @Test
  void everyMeasureIsThereInThePiece() {
    Piece front = vest().withAcross(cm(33), cm(14)).piece();
    assertEquals(
        List.of("fold", "hem", "side", "armhole", "shoulder", "neck"),
        front.edges().stream().map(edge -> edge.name()).toList());
    assertEquals(540, front.edge("fold").length().toMm(), 1e-9);
    assertEquals(70, front.edge("shoulder").length().toMm(), 1e-9);
    assertEquals(new Point(240, 12), front.edge("side").curve().start());
    assertEquals(new Point(230, 420), front.edge("side").curve().end());
    assertEquals(225, halfWidthAt(front.edge("side").curve(), 140), 1e-6);
    assertEquals(215, halfWidthAt(front.edge("side").curve(), 260), 1e-6);
    Curve armhole = front.edge("armhole").curve();
    assertEquals(165, armhole.bounds().minX(), 1e-6);
    assertEquals(165, halfWidthAt(armhole, 500), 1e-6);
    Point neckPoint = front.edge("neck").curve().start();
    assertEquals(new Point(100, 640), neckPoint);
    assertEquals(20, neckPoint.y() - front.edge("shoulder").curve().start().y(), 1e-9);
  }

  /** Common practice, no source: what crosses a seam or the fold squarely runs on smoothly. */
  @Test
  void edgesMeetSeamsAndFoldSquarely() {
    Piece front = vest().piece();
    square(front, "hem", 0, new Vector(0, 1));
    square(front, "neck", 1, new Vector(0, 1));
    square(front, "hem", 1, front.edge("side").curve().directionAt(Length.ZERO));
    Curve side = front.edge("side").curve();
    square(front, "armhole", 0, side.directionAt(side.length()));
    Vector shoulder = front.edge("shoulder").curve().directionAt(Length.ZERO);
    square(front, "armhole", 1, shoulder);
    square(front, "neck", 0, shoulder);
  }

  private static void square(Piece piece, String edge, double share, Vector across) {
    Curve curve = piece.edge(edge).curve();
    double cosine = curve.directionAt(curve.length().times(share)).dot(across);
    assertEquals(0, cosine, 1e-9, edge + " at " + share);
  }

  @Property(tries = 200)
  void measuresThatFitGiveAPieceThatCrossesItselfNowhere(
      @ForAll @DoubleRange(min = 30, max = 70) double hem,
      @ForAll @DoubleRange(min = 38, max = 70) double underarm,
      @ForAll @DoubleRange(min = 32, max = 65) double waist,
      @ForAll @DoubleRange(min = 16, max = 28) double depth,
      @ForAll @DoubleRange(min = 3, max = 8) double strap,
      @ForAll @DoubleRange(min = 2, max = 14) double neck) {
    Piece piece =
        TapedHalf.of("front", cm(64))
            .withHem(cm(hem))
            .withWidth(cm(18), cm(waist))
            .withUnderarm(cm(underarm), cm(depth))
            .withShoulder(cm(strap), cm(1))
            .withNeck(cm(18), cm(neck))
            .piece();
    assertTrue(piece.outline().selfCrossings().isEmpty());
    assertEquals(waist * 5, halfWidthAt(piece.edge("side").curve(), 180), 1e-6);
  }

  @Test
  void aBackTakesTheFrontsMeasuresWithItsOwnNeck() {
    Piece back = vest().withNeck(cm(20), cm(3)).piece("back");
    assertEquals("back", back.name());
    Piece front = vest().piece();
    assertEquals(front.edge("armhole").curve(), back.edge("armhole").curve());
    assertEquals(610, back.edge("fold").length().toMm(), 1e-9);
  }

  private static String where(Executable measure) {
    return String.valueOf(assertThrows(DraftingException.class, measure).where());
  }

  @Test
  void measuresAreWithinBounds() {
    TapedHalf half = vest();
    for (Length wrong : List.of(Length.mm(49.9), Length.mm(2000.1))) {
      assertEquals("length", where(() -> TapedHalf.of("front", wrong)));
      assertEquals("hem", where(() -> half.withHem(wrong)));
      assertEquals("width", where(() -> half.withWidth(cm(20), wrong)));
      assertEquals("underarm", where(() -> half.withUnderarm(wrong, cm(22))));
      assertEquals("width of the neck", where(() -> half.withNeck(wrong, cm(10))));
      assertEquals("across", where(() -> half.withAcross(wrong, cm(14))));
    }
    for (Length wrong : List.of(Length.mm(-0.1), cm(64))) {
      assertEquals("rise of the hem", where(() -> half.withHem(cm(48), wrong)));
      assertEquals("above the hem", where(() -> half.withWidth(wrong, cm(45))));
      assertEquals("underarm below the neck points", where(() -> half.withUnderarm(cm(46), wrong)));
      assertEquals("depth of the neck", where(() -> half.withNeck(cm(20), wrong)));
      assertEquals("across below the neck points", where(() -> half.withAcross(cm(33), wrong)));
    }
    assertEquals("drop of the shoulder", where(() -> half.withShoulder(cm(8), cm(6))));
    assertEquals(vest(), half.withHem(cm(48), Length.mm(12)));
    assertEquals(vest().hashCode(), half.hashCode());
    assertNotEquals(vest().withHem(cm(47)).hashCode(), half.hashCode());
  }

  private static String refused(TapedHalf measures) {
    return String.valueOf(assertThrows(DraftingException.class, measures::piece).getMessage());
  }

  @Test
  void measuresThatAreMissingOrDoNotFitAreSaid() {
    assertEquals(
        "front: a measure is missing. Found: hem. Accepted: hem, underarm, shoulder and neck.",
        refused(TapedHalf.of("front", cm(64)).withNeck(cm(20), cm(10))));
    assertEquals(
        "front: the measures do not fit each other. Found: shoulder. "
            + "Accepted: a shoulder that ends inside the underarms.",
        refused(vest().withShoulder(cm(16), cm(2))));
    assertEquals(
        "front: the measures do not fit each other. Found: underarm. "
            + "Accepted: an underarm below the end of the shoulder.",
        refused(vest().withUnderarm(cm(46), cm(1))));
    assertTrue(refused(vest().withAcross(cm(33), cm(30))).contains("Found: across."));
    assertTrue(refused(vest().withAcross(cm(60), cm(14))).contains("Found: across."));
    assertTrue(refused(vest().withWidth(cm(50), cm(44))).contains("width 500 mm above the hem"));
    assertTrue(refused(vest().withHem(cm(48), cm(20))).contains("width 140 mm above the hem"));
    assertThrows(DraftingException.class, () -> TapedHalf.of(" ", cm(64)));
    assertThrows(DraftingException.class, () -> TapedHalf.of("front", cm(1)));
    assertThrows(DraftingException.class, () -> vest().withNeck(cm(20), cm(-1)));
    assertThrows(DraftingException.class, () -> vest().withShoulder(cm(6), cm(5)));
  }

  @Test
  void valuesAreReadBackAndReadWell() {
    TapedHalf measures = vest().withAcross(cm(33), cm(14));
    Object read = SerialCopy.of(measures);
    assertEquals(measures, read);
    assertEquals(measures.hashCode(), read.hashCode());
    assertNotEquals(measures, vest());
    assertEquals(
        "front, 640 mm long, hem 480 mm and 12 mm higher at the sides, underarm 460 mm and 220 mm"
            + " below the neck points, shoulder 70 mm and 20 mm lower at its end, neck 200 mm and"
            + " 100 mm deep, across 330 mm and 140 mm below the neck points, 450 mm at 140 mm,"
            + " 430 mm at 260 mm",
        measures.toString());
  }
}
