package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.sample.OffsetJudge;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sources at the edge of what is an outline. */
class OffsetEdgeCasesTest {
  private static OffsetResult judged(List<OffsetEdge> edges) {
    OffsetResult result = Offset.of(edges).result();
    assertEquals(List.of(), OffsetJudge.faults(edges, result, 0.01), edges::toString);
    return result;
  }

  /** A dart's two legs leave their point in almost opposite directions. */
  @Test
  void aTurnOf180DegreesKeepsTheMitreLimit() {
    for (double open : new double[] {1e-6, 1e-3, 1}) {
      List<OffsetEdge> edges =
          List.of(
              Outlines.line("hem", 8, 0, 0, 200, 0),
              Outlines.line("side", 8, 200, 0, 200, 100, 100 + open, 100),
              Outlines.line("up", 8, 100 + open, 100, 100, 180),
              Outlines.line("down", 8, 100, 180, 100 - open, 100),
              Outlines.line("rest", 8, 100 - open, 100, 0, 100, 0, 0));
      OffsetResult result = judged(edges);
      assertEquals(180 + 4 * 8, result.outline().bounds().maxY(), 0.2);
    }
  }

  @Test
  void aSpikeInwardsIsClosedByItsOwnAllowances() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("hem", 8, 0, 0, 200, 0),
            Outlines.line("side", 8, 200, 0, 200, 100, 101, 100),
            Outlines.line("in", 8, 101, 100, 100, 40),
            Outlines.line("out", 8, 100, 40, 99, 100),
            Outlines.line("rest", 8, 99, 100, 0, 100, 0, 0));
    OffsetResult result = judged(edges);
    assertEquals(216 * 116, result.outline().areaSquareMm(), 1e-6);
    assertTrue(
        result.trimmings().stream()
            .anyMatch(t -> t.edge().equals("in") && t.cause() == Trimming.Cause.SWALLOWED));
  }

  @Test
  void cornersNextToTangentHaveNextToNoJoin() {
    for (double bend : new double[] {-1e-4, -1e-8, 0, 1e-8, 1e-4}) {
      List<OffsetEdge> edges =
          List.of(
              Outlines.line("a", 10, 0, 0, 100, 0),
              Outlines.edge("arc", 10, Outlines.arc(100, 50 + bend, 50 + bend, -90, 90)),
              Outlines.line("b", 10, 150 + bend, 50 + bend, 150 + bend, 150, 0, 150, 0, 0));
      OffsetResult result = judged(edges);
      assertEquals(3, result.parts().size(), result::toString);
      assertTrue(result.trimmings().isEmpty());
    }
  }

  @Test
  void edgesShorterThanTheirAllowancesStayConnected() {
    List<OffsetEdge> edges = new ArrayList<>();
    int n = 90;
    for (int i = 0; i < n; i++) {
      Point a = onCircle(i, n);
      Point b = onCircle(i + 1, n);
      edges.add(OffsetEdge.of("e" + i, Curve.line(a, b), Length.mm(i % 2 == 0 ? 15 : -15)));
    }
    OffsetResult result = judged(edges);
    assertTrue(result.outline().areaSquareMm() > Math.PI * 35 * 35);
  }

  private static Point onCircle(int i, int n) {
    double turn = 2 * Math.PI * (i % n) / n;
    return new Point(50 * Math.cos(turn), 50 * Math.sin(turn));
  }

  @Test
  void hairlineKinksDisappearInTheAllowance() {
    List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
    for (int i = 0; i < 60; i++) {
      points.add(new Point(50 + 1e-3 * i, i % 2 == 0 ? 1e-4 : -1e-4));
    }
    points.add(new Point(100, 0));
    for (double d : new double[] {10, -10}) {
      List<OffsetEdge> edges =
          List.of(
              OffsetEdge.of("kinked", Curve.polyline(points.toArray(new Point[0])), Length.mm(d)),
              Outlines.line("rest", 0, 100, 0, 100, 80, 0, 80, 0, 0));
      assertEquals(8000 + 100 * d, judged(edges).outline().areaSquareMm(), 1);
    }
  }

  @Test
  void aScoopOfLessRadiusThanItsAllowanceHasNoParallelOfItsOwn() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("hem", 0, 0, 0, 100, 0, 100, 60),
            Outlines.edge(
                "top",
                7,
                new Line(new Point(100, 60), new Point(55, 60)),
                Outlines.arc(50, 60, 5, 0, -180),
                new Line(new Point(45, 60), new Point(0, 60))),
            Outlines.line("fold", 0, 0, 60, 0, 0));
    OffsetResult result = judged(edges);
    assertEquals(67, result.outline().bounds().maxY(), 1e-9);
    assertEquals(6665, result.outline().areaSquareMm(), 36);
    assertFalse(result.trimmings().isEmpty());
  }

  /** The continued parallel of the narrow edge misses the short wide one: a step leads on. */
  @Test
  void aStepLeadsOnWhereAMitreMissesItsNeighbour() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("narrow", 5, 0, 0, 100, 0),
            Outlines.line("wide", 25, 100, 0, 110, 2),
            Outlines.line("next", 5, 110, 2, 200, 60),
            Outlines.line("rest", 0, 200, 60, 200, 150, 0, 150, 0, 0));
    OffsetResult result = judged(edges);
    assertEquals(1, result.parts("wide").size());
    assertTrue(result.parts().stream().anyMatch(part -> part.tag() == OffsetTag.STEP));
  }

  /** At an end that is tighter than its distance the parallel stops a whole distance from it. */
  @Test
  void besideACuspNothingIsNearerThanItsDistance() {
    for (double distance : new double[] {12, 20, 31}) {
      List<OffsetEdge> edges =
          List.of(
              Outlines.line("hem", 0, 0, 0, 254, 0),
              Outlines.line("side", -5, 254, 0, 254, 262),
              Outlines.edge(
                  "armhole", distance, Outlines.cubic(254, 262, 229, 262, 208, 344, 213, 413)),
              Outlines.line("shoulder", 0, 213, 413, 0, 413),
              Outlines.line("fold", 0, 0, 413, 0, 0));
      assertTrue(judged(edges).length("armhole").toMm() > 100);
    }
  }

  /**
   * Where edges run through, allowances of 14 mm outside and inside meet in a step, however the
   * outline is turned: the rounding of the turn between them must not decide.
   */
  @Test
  void equalAndOppositeAllowancesStepWhereEdgesRunThrough() {
    Curve sleeve =
        Curve.of(
            new Cubic(p(150, 350), p(120, 356), p(70, 446), p(0, 446)),
            new Cubic(p(0, 446), p(-70, 446), p(-99, 352), p(-150, 350)));
    for (int degrees = 0; degrees < 360; degrees += 7) {
      Transform turned = Transform.rotation(p(10, 20), Angle.degrees(degrees));
      Curve cap = sleeve.map(turned);
      List<OffsetEdge> edges =
          List.of(
              OffsetEdge.of("right", Curve.of(cap.segments().get(0)), Length.mm(-14)),
              OffsetEdge.of("left", Curve.of(cap.segments().get(1)), Length.mm(14)),
              OffsetEdge.of("foot", Curve.line(cap.end(), cap.start()), Length.ZERO));
      double step =
          judged(edges).parts().stream()
              .filter(part -> part.tag() == OffsetTag.STEP)
              .mapToDouble(part -> part.curve().length().toMm())
              .max()
              .orElse(0);
      assertEquals(28, step, 1e-6, degrees + " degrees");
    }
  }

  /** A waist that bends by hundredths of a millimetre must not miss the side inside its corner. */
  @Test
  void aSideInsideItsCornerMeetsABentWaist() {
    for (double bend : new double[] {-1, -1e-3, 0, 1e-3, 1}) {
      Cubic waist = new Cubic(p(200, 300), p(140, 300), p(60, 300 + bend), p(0, 300));
      double foot = 300 * bend / 60;
      List<OffsetEdge> edges =
          List.of(
              Outlines.line("hem", 0, foot, 0, 200, 0, 200, 300),
              Outlines.edge("waist", 0, waist),
              Outlines.line("side", -5, 0, 300, foot, 0));
      double cut = Curve.of(waist).length().minus(judged(edges).length("waist")).toMm();
      assertEquals(5, cut, 0.01, "bend " + bend);
    }
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /**
   * The sides of a beanie as a hand copied them: what is folded up ends far along them, where they
   * lie 0.00005 mm off the square end that its parallel would have at the corner.
   */
  @Test
  void aDeepHemBetweenSidesThatWaverEndsOnThem() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("brim", -60, 0, 0, 175, 0),
            OffsetEdge.of("right", wavering(175, 0, 1), Length.ZERO),
            Outlines.line("top", 0, 175, 240, 0, 240),
            OffsetEdge.of("left", wavering(0, 240, -1), Length.ZERO));
    OffsetResult result = judged(edges);
    assertEquals(2 * (175 + 240 - 60), result.outline().length().toMm(), 0.01);
    assertEquals(4, result.parts().size(), result::toString);
    assertTrue(result.trimmings().isEmpty(), result::toString);
  }

  /** Cubics 30 mm long, up or down, the middle of each a little beside the line. */
  private static Curve wavering(double x, double from, int way) {
    List<Segment> cubics = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double y = from + way * 30.0 * i;
      double off = 1e-4 * Math.cos(2.5 * i);
      double on = 1e-4 * Math.cos(2.5 * i + 2.5);
      cubics.add(
          new Cubic(
              new Point(i == 0 ? x : x + off, y),
              new Point(x + off, y + way * 10),
              new Point(x + on, y + way * 20),
              new Point(i == 7 ? x : x + on, y + way * 30)));
    }
    return Curve.of(cubics);
  }
}
