package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hems that meet the garment above them once they are turned up. */
class FoldedBackTest {
  private static final List<Length> ONCE = List.of(Length.ZERO);

  private static CornerTreatment at(CornerSide hem, double... folds) {
    List<Length> all = new ArrayList<>();
    for (double fold : folds) {
      all.add(Length.mm(fold));
    }
    return CornerTreatment.foldedBack(hem, all);
  }

  /** A skirt panel with a hem from (0, 0) to (200, 0) and a side rising at an angle. */
  private static List<OffsetEdge> panel(double degrees, double hem, double side) {
    double x = 200 - 300 / Math.tan(Math.toRadians(degrees));
    return List.of(
        Outlines.line("hem", hem, 0, 0, 200, 0),
        Outlines.line("side", side, 200, 0, x, 300),
        Outlines.line("top", 0, x, 300, 0, 300),
        Outlines.line("fold", 0, 0, 300, 0, 0));
  }

  /**
   * CV-20: a side that meets the fold at 80 degrees, turned up by 2 cm, must come in by h / tan a =
   * 0.353 cm; carried straight on it would go out by as much and be wrong by 0.705 cm (plane
   * geometry; rule of the mirrored corner in university extension leaflets on truing).
   */
  @Test
  void aTaperedSideComesInByDepthOverTheTangent() {
    Offset offset = Offset.of(panel(80, 20, 0));
    Curve mirrored = offset.withCorner(0, at(CornerSide.BEFORE, 0)).result().parts().get(1).curve();
    double shift = 20 / Math.tan(Math.toRadians(80));
    assertEquals(3.53, shift, 0.005);
    // the outline runs along the hem's cut line first, then up to the fold
    assertEquals(200 - shift, mirrored.start().x(), 1e-9);
    assertEquals(-20, mirrored.start().y(), 1e-9);
    assertEquals(200, mirrored.end().x(), 1e-9);
    assertEquals(0, mirrored.end().y(), 1e-9);
    Point straightOn = offset.result().parts("hem").get(0).curve().end();
    assertEquals(7.05, straightOn.x() - mirrored.start().x(), 0.005);
  }

  @Test
  void theSameWithTheHemAfterTheCorner() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("side", 7, 0, 300, -20, 0),
            Outlines.line("hem", 20, -20, 0, 180, 0),
            Outlines.line("fold", 0, 180, 0, 180, 300),
            Outlines.line("top", 0, 180, 300, 0, 300));
    OffsetResult result = Offset.of(edges).withCorner(0, at(CornerSide.AFTER, 0)).result();
    Curve cut = result.parts("side").get(0).curve();
    Curve mirrored = result.parts().get(1).curve();
    assertEquals(0, cut.end().y(), 1e-9);
    assertEquals(cut.end(), mirrored.start());
    assertEquals(-20, mirrored.end().y(), 1e-9);
    // folded up, the mirrored line lies on the side's cut line
    Point up = new Point(mirrored.end().x(), 20);
    assertEquals(0, cut.nearest(up).distance().toMm(), 1e-9);
  }

  @Test
  void turnedTwiceTheClothBeyondTheSecondFoldIsMirroredAgain() {
    OffsetResult result =
        Offset.of(panel(80, 30, 7)).withCorner(0, at(CornerSide.BEFORE, 0, 20)).result();
    Curve mirrored = result.parts().get(1).curve();
    Curve side = result.parts("side").get(0).curve();
    assertEquals(2, mirrored.segments().size());
    Point tuck = mirrored.start();
    Point secondFold = mirrored.segments().get(0).end();
    assertEquals(-30, tuck.y(), 1e-9);
    assertEquals(-20, secondFold.y(), 1e-9);
    // second fold, then first fold
    Point once = new Point(tuck.x(), -10);
    Point lying = new Point(once.x(), 10);
    assertEquals(0, side.nearest(lying).distance().toMm(), 1e-9);
    assertEquals(0, side.nearest(new Point(secondFold.x(), 20)).distance().toMm(), 1e-9);
  }

  @Test
  void aCurvedSideIsMirroredAsACurve() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("hem", 25, 0, 0, 240, 0),
            Outlines.edge("side", 7, Outlines.cubic(240, 0, 225, 40, 235, 150, 220, 300)),
            Outlines.line("top", 0, 220, 300, 0, 300),
            Outlines.line("fold", 0, 0, 300, 0, 0));
    OffsetResult result = Offset.of(edges).withCorner(0, at(CornerSide.BEFORE, 0)).result();
    Curve mirrored = result.parts().get(1).curve();
    Curve side = result.parts("side").get(0).curve();
    Transform up = Transform.mirrorIn(new Point(0, 0), new Point(1, 0));
    for (int i = 0; i <= 20; i++) {
      Point folded = up.apply(mirrored.pointAt(mirrored.length().times(i / 20.0)));
      assertTrue(side.nearest(folded).distance().toMm() < 1e-9, "at " + folded);
    }
    assertEquals(-25, mirrored.start().y(), 1e-9);
  }

  @Test
  void aCurvedHemIsMirroredInTheTangentOfItsFold() {
    List<OffsetEdge> edges = Outlines.vest(20, 7, 0, 7, 0, 0);
    OffsetResult result = Offset.of(edges).withCorner(0, at(CornerSide.BEFORE, 0)).result();
    Curve hem = edges.get(0).curve();
    Transform up = Transform.mirrorIn(hem.end(), hem.end().plus(hem.directionAt(hem.length())));
    Curve mirrored = result.parts().get(1).curve();
    Curve side = result.parts("side").get(0).curve();
    assertEquals(OffsetTag.JOIN, result.parts().get(1).tag());
    for (int i = 0; i <= 10; i++) {
      Point folded = up.apply(mirrored.pointAt(mirrored.length().times(i / 10.0)));
      assertTrue(side.nearest(folded).distance().toMm() < 1e-9, "at " + folded);
    }
  }

  @Test
  void aSquareCornerIsTheSameFoldedBackOrMitred() {
    Offset offset = Offset.of(panel(90, 20, 7));
    double mitred = offset.result().outline().areaSquareMm();
    double folded =
        offset.withCorner(0, at(CornerSide.BEFORE, 0)).result().outline().areaSquareMm();
    assertEquals(mitred, folded, 1e-9);
  }

  @Test
  void nothingTurnedUpMeansAMitre() {
    Offset offset = Offset.of(panel(80, 0, 7));
    assertEquals(
        offset.result().outline(),
        offset
            .withCorner(0, CornerTreatment.foldedBack(CornerSide.BEFORE, ONCE))
            .result()
            .outline());
  }
}
