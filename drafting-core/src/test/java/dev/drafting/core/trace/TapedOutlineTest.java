package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A half with round numbers: 640 mm long, its straight side 230 mm from the fold, its shoulder 50
 * mm long and 30 mm sloping, so 40 mm level.
 */
class TapedOutlineTest {
  private static TapedHalf half() {
    return TapedHalf.of("front", Length.mm(640))
        .withHem(Length.mm(460), Length.ZERO)
        .withUnderarm(Length.mm(460), Length.mm(220))
        .withShoulder(Length.mm(50), Length.mm(30))
        .withNeck(Length.mm(200), Length.mm(100));
  }

  private static void runs(Segment segment, double... xy) {
    Cubic cubic = (Cubic) segment;
    List<Point> points = List.of(cubic.start(), cubic.control1(), cubic.control2(), cubic.end());
    for (int i = 0; i < 4; i++) {
      assertEquals(xy[2 * i], points.get(i).x(), 1e-9, i + " of " + cubic);
      assertEquals(xy[2 * i + 1], points.get(i).y(), 1e-9, i + " of " + cubic);
    }
  }

  private static List<Segment> segments(TapedHalf half, String edge) {
    return half.piece().edge(edge).curve().segments();
  }

  /**
   * Common practice, no source: 40 % of the hem go on level, 60 % of the neck, 55 % of its depth.
   */
  @Test
  void hemAndNeckGoOnSquarelyForAShareOfTheirExtent() {
    runs(segments(half(), "hem").get(0), 0, 0, 92, 0, 138, 0, 230, 0);
    runs(segments(half(), "neck").get(0), 100, 640, 67, 596, 60, 540, 0, 540);
  }

  /** Common practice, no source: 55 % inwards, and an eighth of the height; 55 % upwards. */
  @Test
  void theArmholeLeavesSideAndShoulderSquarely() {
    runs(segments(half(), "armhole").get(0), 230, 420, 156.75, 420, 77.3, 526.4, 140, 610);
  }

  /** 260 mm across at half of it; above, it comes no nearer to the fold. */
  @Test
  void anArmholePassesTheWidthAcross() {
    TapedHalf across = half().withAcross(Length.mm(260), Length.mm(140));
    List<Segment> armhole = segments(across, "armhole");
    runs(armhole.get(0), 230, 420, 175, 420, 130, 456, 130, 500);
    double last = 50 / 3.0;
    runs(armhole.get(1), 130, 500, 130, 500 + 110 / 3.0, 130, 610 - 0.8 * last, 140, 610);
  }

  /**
   * A natural spline of three knots at equal distances (any text on numerical analysis): midway to
   * the middle one it is off the chord by 3/32 of the second difference, 3/32 of 60 mm.
   */
  @Test
  void aSideWithOneWidthIsANaturalSpline() {
    Curve side = half().withWidth(Length.mm(210), Length.mm(400)).piece().edge("side").curve();
    assertEquals(200, TapedHalfTest.halfWidthAt(side, 210), 1e-9);
    assertEquals(215 - 60 * 3 / 32.0, TapedHalfTest.halfWidthAt(side, 105), 1e-9);
    assertEquals(215 - 60 * 3 / 32.0, TapedHalfTest.halfWidthAt(side, 315), 1e-9);
  }

  private static String refused(TapedHalf half) {
    String message =
        String.valueOf(assertThrows(DraftingException.class, half::piece).getMessage());
    assertTrue(message.startsWith("front: the measures do not fit each other. "), message);
    return message.substring(message.indexOf("Found"));
  }

  @Test
  void whatOnlyTouchesDoesNotFit() {
    assertEquals(
        "Found: hem. Accepted: a hem below the underarms.",
        refused(half().withHem(Length.mm(460), Length.mm(420))));
    assertEquals(
        "Found: underarm. Accepted: an underarm below the end of the shoulder.",
        refused(half().withUnderarm(Length.mm(460), Length.mm(30))));
    assertEquals(
        "Found: shoulder. Accepted: a shoulder that ends inside the underarms.",
        refused(half().withUnderarm(Length.mm(280), Length.mm(220))));
    for (double depth : new double[] {30, 220}) {
      assertEquals(
          "Found: across. Accepted: a place between underarm and shoulder.",
          refused(half().withAcross(Length.mm(260), Length.mm(depth))));
    }
    assertEquals(
        "Found: across. Accepted: no more than from shoulder end to shoulder end.",
        refused(half().withAcross(Length.mm(280.01), Length.mm(140))));
    assertEquals(
        140,
        half()
            .withAcross(Length.mm(280), Length.mm(140))
            .piece()
            .edge("armhole")
            .curve()
            .bounds()
            .minX(),
        1e-9);
    for (double height : new double[] {0.0, 420}) {
      TapedHalf raised = half().withWidth(Length.mm(height), Length.mm(400));
      assertTrue(refused(raised).endsWith("Accepted: widths between hem and underarm."));
    }
  }
}
