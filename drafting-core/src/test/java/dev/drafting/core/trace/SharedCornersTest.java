package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A pouch 190 mm high whose side bends in its last two centimetres towards a bottom of 12.5 mm. */
class SharedCornersTest {
  private static final double WANDER = 1.1;
  private static final Point LOW = new Point(19.62, 8.047);
  private static final Point TIP = new Point(29.21, 0);
  private static final Point RIGHT = new Point(41.728, 188.421);
  private static final Point LEFT = new Point(0, 188.421);
  private static final Curve SIDE =
      Curve.of(new Cubic(LEFT, new Point(0, 115.26), new Point(33.728, 24.86), LOW));
  private static final Curve BOTTOM = Curve.line(LOW, TIP);

  private static Map<String, List<Point>> strokes(long seed) {
    Vest.Pencil pencil = new Vest.Pencil(seed, WANDER, 6);
    Map<String, List<Point>> strokes = new LinkedHashMap<>();
    strokes.put("side", pencil.trace(SIDE));
    strokes.put("bottom", pencil.trace(BOTTOM));
    strokes.put(
        "centre",
        pencil.trace(
            Curve.of(new Cubic(TIP, new Point(87.795, 69.819), new Point(41.728, 115.26), RIGHT))));
    strokes.put("waist", pencil.trace(Curve.line(RIGHT, LEFT)));
    return strokes;
  }

  private static TruedPiece trued(Map<String, List<Point>> strokes) {
    List<TracedEdge> edges = new ArrayList<>();
    strokes.forEach((name, points) -> edges.add(TracedEdge.of(name, points)));
    return Truing.of(Tracing.of("pouch", Extent.AS_IT_LIES, edges))
        .withSmoothing(Length.mm(WANDER))
        .result();
  }

  private static void assertBottomIsKept(long seed) {
    Length bottom = trued(strokes(seed)).piece().edge("bottom").length();
    assertEquals(BOTTOM.length().toMm(), bottom.toMm(), 6, "seed " + seed);
  }

  /** Of 5,000 pouches those whose bottom lost half its length to a side taken for straight. */
  @ParameterizedTest
  @ValueSource(longs = {604, 834, 1003, 1804, 1876, 1937, 2293, 2431, 2453, 2473, 2522})
  void aBendThatTheNextStrokeConfirmsIsNoSlip(long seed) {
    assertBottomIsKept(seed);
  }

  /** A bottom of three points that wandered far was drawn up to 61 mm long. */
  @ParameterizedTest
  @ValueSource(longs = {11427, 14627})
  void anEdgeOfThreePointsDoesNotRunAway(long seed) {
    assertBottomIsKept(seed);
  }

  /** Such a bottom was refused because its length was unsure by 228 m. */
  @ParameterizedTest
  @ValueSource(longs = {4712, 13917})
  void whatThreePointsDoNotTellIsUnsureByItsLength(long seed) {
    EdgeReport bottom = trued(strokes(seed)).report().edge("bottom");
    assertEquals(bottom.length().toMm(), bottom.lengthUncertainty().toMm(), 1e-3);
    assertBottomIsKept(seed);
  }

  /** What only one of two strokes says is a slip, and so is a point that both of them share. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void whatIsSaidOnceIsASlip(boolean shared) {
    Vest.Pencil pencil = new Vest.Pencil(5, 0.3, 6);
    Point[] square = {new Point(0, 0), new Point(200, 0), new Point(200, 150), new Point(0, 150)};
    Point slip = new Point(192, 0);
    Map<String, List<Point>> strokes = new LinkedHashMap<>();
    for (int i = 0; i < 4; i++) {
      List<Point> points = pencil.trace(Curve.line(square[i], square[(i + 1) % 4]));
      if (i == 0 && shared) {
        points.set(points.size() - 1, slip);
      } else if (i == 1) {
        points.set(0, slip);
      }
      strokes.put("edge " + i, points);
    }
    TruedPiece trued = trued(strokes);
    assertEquals(1, trued.report().findings().size(), trued.report()::toString);
    assertEquals("trace.slip", trued.report().findings().get(0).id());
    for (Edge edge : trued.piece().edges()) {
      assertEquals(1, edge.curve().segments().size(), edge::toString);
      assertTrue(edge.curve().segments().get(0) instanceof Line, edge::toString);
    }
    assertEquals(200, trued.piece().edge("edge 0").length().toMm(), 0.5);
  }
}
