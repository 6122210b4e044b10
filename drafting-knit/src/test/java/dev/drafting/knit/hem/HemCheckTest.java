package dev.drafting.knit.hem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.knit.Vest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class HemCheckTest {
  /** A full-circle skirt of two halves on the fold, its hem on this radius. */
  private static Opening skirtHem(double radiusCm) {
    return Assembly.of(
            Pattern.of(
                "skirt",
                List.of(half("front", 10 * radiusCm), half("back", 10 * radiusCm)),
                List.of(
                    Seam.of("side", new EdgeRef("front", "side"), new EdgeRef("back", "side")))))
        .opening("hem");
  }

  private static Piece half(String name, double radius) {
    Point centre = new Point(0, 0);
    Angle quarter = Angle.degrees(90);
    Arc hem = Arc.of(centre, Length.mm(radius), Angle.degrees(-90), quarter);
    Arc waist = Arc.of(centre, Length.mm(120), Angle.degrees(0), quarter.negated());
    return Piece.of(
            name,
            List.of(
                Edge.of("hem", Curve.of(hem)).withFinish(TurnedHem.once(Length.cm(2))),
                Edge.of("side", Curve.line(hem.end(), waist.start()))
                    .withFinish(SeamFinish.of(Length.mm(7))),
                Edge.of("waist", Curve.of(waist)),
                Edge.onFold(Curve.line(waist.end(), hem.start()))))
        .withCutting(Cutting.onFold(1));
  }

  /** CV-21 on a drafted outline: arithmetic of arcs; 5 % is common practice, no source. */
  @Test
  void theRadiusOfACircularHemIsFound() {
    FlareLimit limit = HemCheck.limit(skirtHem(60)).orElseThrow();
    assertEquals(60, limit.radius().toCm(), 1e-3);
    assertEquals(1.46, limit.greatestDepth().toCm(), 5e-3);
  }

  /** CV-21: radius 80 turned up by 2 has 5.13 % too much, radius 82 is just enough. */
  @Test
  void tooDeepAHemIsAFindingWithTheGreatestDepth() {
    TurnedHem hem = TurnedHem.once(Length.cm(2));
    Finding finding = HemCheck.findings(skirtHem(80), hem).get(0);
    assertEquals("hem.flares", finding.id());
    assertTrue(finding.reason().contains("5.1 % more cloth"), finding.reason());
    assertEquals(
        "Turn it up 19 mm at most; 23.9 cm remain to be eased in on the curves.",
        finding.remedies().get(0).text());
    assertTrue(finding.reason().endsWith("All round, 25.1 cm are too much."), finding.reason());
    assertEquals(List.of(), HemCheck.findings(skirtHem(82.01), hem));
  }

  @Test
  void straightHemsTurnUpAsDeepAsOneLikes() {
    Opening hem = Assembly.of(Vest.plain().pattern()).opening("hem");
    assertTrue(HemCheck.limit(hem).isEmpty());
    assertEquals(List.of(), HemCheck.findings(hem, TurnedHem.once(Length.mm(300))));
  }

  @Test
  void aHemTurnedTwiceCountsByItsDepth() {
    TurnedHem deep = TurnedHem.twice(Length.mm(10), Length.mm(20));
    assertEquals(1, HemCheck.findings(skirtHem(80), deep).size());
    TurnedHem shallow = TurnedHem.twice(Length.mm(10), Length.mm(15));
    assertEquals(0, HemCheck.findings(skirtHem(80), shallow).size());
  }

  /** CV-21: 2h phi, 6.28 cm on each quarter circle of a hem turned up by 2; arithmetic. */
  @Test
  void theExcessOfAllBendsIsAddedUp() {
    assertEquals(4 * 6.2832, HemCheck.excess(skirtHem(80), Length.cm(2)).toCm(), 1e-3);
    Opening straight = Assembly.of(Vest.plain().pattern()).opening("hem");
    assertEquals(0, HemCheck.excess(straight, Length.cm(2)).toMm(), 1e-9);
  }

  /** A radius over 100 m is a straight line; half a hand bent with 45 m is one of 90 m. */
  @Test
  void aHemThatHardlyCurvesHasNoLimit() {
    assertEquals(90_000, limit(bent(45_000, 25, 0)), 50);
    assertTrue(HemCheck.limit(bent(55_000, 25, 0)).isEmpty());
  }

  /** The greatest depth is the radius / 41; less than 3 mm cannot be turned up. */
  @Test
  void aHemThatCurvesTooMuchToBeTurnedUpIsFacedOrBound() {
    Finding tight = HemCheck.findings(skirtHem(12.2), TurnedHem.once(Length.mm(20))).get(0);
    assertEquals(
        List.of("Face the edge with a strip cut to its shape, or bind it."), remedies(tight));
    Finding wider = HemCheck.findings(skirtHem(12.4), TurnedHem.once(Length.mm(20))).get(0);
    assertEquals(
        List.of(
            "Turn it up 3 mm at most; 38 mm remain to be eased in on the curves.",
            "Face the edge with a strip cut to its shape, or bind it."),
        remedies(wider));
    assertEquals("3 mm", wider.remedies().get(0).data().get("hem.depth"));
  }

  private static List<String> remedies(Finding finding) {
    return finding.remedies().stream().map(Remedy::text).toList();
  }

  /** 2h / (R - h) is 1 at a depth of a third of the radius, and without bounds at all of it. */
  @Test
  void asMuchClothAgainIsFarTooMuch() {
    Opening hem = skirtHem(30);
    assertTrue(reason(hem, 99).contains(" 99 mm deep has 98.5 % more cloth at "), reason(hem, 99));
    assertTrue(reason(hem, 101).contains("has far more cloth at "), reason(hem, 101));
    assertTrue(reason(hem, 300).contains("has far more cloth at "), reason(hem, 300));
  }

  private static String reason(Opening opening, double depth) {
    return HemCheck.findings(opening, TurnedHem.once(Length.mm(depth))).get(0).reason();
  }

  /**
   * A bend counts over a hand of 100 mm: half of it bent with a radius of 200 is 400 all in all.
   */
  @Test
  void aShortBendCountsOverAHand() {
    assertEquals(400, limit(bent(25, 0)), 0.5);
    assertEquals(400, limit(bent(0, 25)), 0.5);
    assertEquals(200, limit(bent(50, 0)), 0.5);
    assertEquals(200, limit(bent(0, 50)), 0.5);
    assertEquals(200, limit(bent(70, 25)), 0.5);
  }

  private static double limit(Opening opening) {
    return HemCheck.limit(opening).orElseThrow().radius().toMm();
  }

  /** Where a hem bends inwards its cut edge is too short, which is another matter. */
  @Test
  void bendsInwardsAreNotTooMuchCloth() {
    assertTrue(HemCheck.limit(bent(-50, 0)).isEmpty());
    assertEquals(0, HemCheck.excess(bent(-50, 0), Length.cm(2)).toMm(), 1e-9);
    double outward = 2 * 20 * (4 * 50.0 / 200);
    assertEquals(outward, HemCheck.excess(bent(-30, 50), Length.cm(2)).toMm(), 1e-6);
  }

  /** A tube of two halves, its hem bent with a radius of 200 mm at the fold and at the side. */
  private static Opening bent(double atFold, double atSide) {
    return bent(200, atFold, atSide);
  }

  private static Opening bent(double radius, double atFold, double atSide) {
    return Assembly.of(
            Pattern.of(
                "tube",
                List.of(
                    bentHalf("front", radius, atFold, atSide),
                    bentHalf("back", radius, atFold, atSide)),
                List.of(Seam.of("side", "front side", "back side"))))
        .opening("hem");
  }

  private static Piece bentHalf(String name, double radius, double atFold, double atSide) {
    List<Segment> hem = new ArrayList<>();
    Point at = new Point(0, 0);
    double heading = 0;
    for (double bend : new double[] {atFold, 0, atSide}) {
      Vector ahead = new Vector(Math.cos(heading), Math.sin(heading));
      if (bend == 0) {
        hem.add(new Line(at, at.plus(ahead.times(130))));
      } else {
        double side = Math.signum(bend);
        Point centre = at.plus(ahead.left().times(radius * side));
        Angle from = Angle.radians(heading - side * Math.PI / 2);
        hem.add(Arc.of(centre, Length.mm(radius), from, Angle.radians(bend / radius)));
        heading += bend / radius;
      }
      at = hem.get(hem.size() - 1).end();
    }
    Point waist = new Point(at.x(), 400);
    Point centre = new Point(0, 400);
    return Piece.of(
            name,
            List.of(
                Edge.of("hem", Curve.of(hem)),
                Edge.of("side", Curve.line(at, waist)),
                Edge.of("waist", Curve.line(waist, centre)),
                Edge.onFold(Curve.line(centre, new Point(0, 0)))))
        .withCutting(Cutting.onFold(1));
  }
}
