package dev.drafting.knit.hem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
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
}
