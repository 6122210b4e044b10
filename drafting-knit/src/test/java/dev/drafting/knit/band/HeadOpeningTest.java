package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.finding.Severity;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeadOpeningTest {
  private static final FoldedBand BAND = FoldedBand.of(Length.mm(13), Length.mm(7));
  private static final Fabric ROOMY = Fabric.of("roomy", Structure.JERSEY, 1.0);

  private static Fabric stretching(double share) {
    return Fabric.of("knit", Structure.OTHER, share);
  }

  private static Strip strip(Vest vest, Fabric fabric, StripRule rule) {
    return Strip.of(Assembly.of(vest.neck(BAND).pattern()).opening("neck"), BAND, fabric, rule);
  }

  /**
   * CV-16: loop 46.75, usable share 0.8 (common practice): stretch .60 gives 69.19 and passes a
   * head of 57.3 (UK 1990 reference, men of 18 years, CV-18); stretch .20 gives 54.23 and fails.
   */
  @Test
  void theLoopStretchesByTheUsableShare() {
    StripRule loop = StripRule.loop(Length.cm(46.75));
    Length head = Length.cm(57.3);
    HeadOpening wide = HeadOpening.of(strip(Vest.plain(), stretching(0.60), loop), ROOMY, head);
    assertEquals(69.19, wide.stretchedOpening().toCm(), 5e-3);
    assertTrue(wide.passes());
    assertEquals(List.of(), wide.findings());
    HeadOpening narrow = HeadOpening.of(strip(Vest.plain(), stretching(0.20), loop), ROOMY, head);
    assertEquals(54.23, narrow.stretchedOpening().toCm(), 5e-3);
    assertFalse(narrow.passes());
    assertEquals(HeadOpening.Limit.STRIP, narrow.limit());
    assertEquals(54.23 - 57.3 - 1, narrow.margin().toCm(), 5e-3);
  }

  @Test
  void theGarmentsOwnEdgeMayBeTheLimit() {
    Strip strip = strip(Vest.plain(), stretching(1.0), StripRule.recommended());
    Fabric stiff = stretching(0.02);
    HeadOpening check = HeadOpening.of(strip, stiff, Length.cm(58));
    assertEquals(HeadOpening.Limit.BODY, check.limit());
    assertEquals(strip.joinLine().toMm() * 1.016, check.stretchedOpening().toMm(), 1e-9);
  }

  /** A stable pique neck band that will not go over a head of 58: the demo's finding in small. */
  @Test
  void remediesComeInOrderAndTheComputedOnesHelp() {
    Fabric pique = Fabric.of("pique", Structure.PIQUE, 0.15);
    Vest vest = Vest.plain().frontDepth(9);
    Strip strip = strip(vest, pique, StripRule.recommended());
    HeadOpening check = HeadOpening.of(strip, ROOMY, Length.cm(58));
    Finding finding = check.findings().get(0);
    assertEquals(Severity.PROBLEM, finding.severity());
    assertEquals("head.too-small", finding.id());
    assertTrue(
        finding.reason().endsWith("it will not go over the head. What holds it is the band."),
        finding.reason());
    List<String> keys =
        finding.remedies().stream().flatMap(r -> r.data().keySet().stream()).toList();
    assertEquals("neck.lower-by", keys.get(0));
    assertEquals("opening.at", keys.get(keys.size() - 1));
    assertTrue(keys.contains("strip.stretch"), keys.toString());

    Length drop = Length.parse(data(finding, "neck.lower-by"));
    Strip lowered = strip(vest.frontDepth(9 + drop.toCm()), pique, StripRule.recommended());
    HeadOpening again = HeadOpening.of(lowered, ROOMY, Length.cm(58));
    assertTrue(again.margin().toMm() > -3, "after lowering " + drop + ": " + again);

    double stretch = Double.parseDouble(data(finding, "strip.stretch"));
    Strip rib = Strip.of(strip.opening(), BAND, stretching(stretch), StripRule.loop(strip.loop()));
    assertTrue(HeadOpening.of(rib, ROOMY, Length.cm(58)).passes());
  }

  @Test
  void whereBandAndGarmentBothHoldBothClothsMustGiveMore() {
    Fabric stiff = stretching(0.05);
    Strip strip = strip(Vest.plain().frontDepth(9), stretching(0.15), StripRule.recommended());
    Finding finding = HeadOpening.of(strip, stiff, Length.cm(58)).findings().get(0);
    double body = Double.parseDouble(data(finding, "body.stretch"));
    double rib = Double.parseDouble(data(finding, "strip.stretch"));
    StripRule same = StripRule.loop(strip.loop());
    Strip better = Strip.of(strip.opening(), BAND, stretching(rib), same);
    assertFalse(HeadOpening.of(better, stiff, Length.cm(58)).passes());
    assertFalse(HeadOpening.of(strip, stretching(body), Length.cm(58)).passes());
    assertTrue(HeadOpening.of(better, stretching(body), Length.cm(58)).passes());
  }

  @Test
  void aLongerLoopIsOfferedWhereItStillLiesFlat() {
    Strip middle = strip(Vest.plain(), stretching(0.3), StripRule.recommended());
    Length reach = middle.window().longest().minus(Length.mm(3)).times(1.24);
    HeadOpening check = HeadOpening.of(middle, ROOMY, reach.minus(Length.cm(1)));
    Finding finding = check.findings().get(0);
    StripRule longer = StripRule.loop(Length.parse(data(finding, "strip.loop")));
    Strip cured = Strip.of(middle.opening(), BAND, middle.fabric(), longer);
    assertEquals(Outcome.LIES_FLAT, cured.outcome());
    assertTrue(HeadOpening.of(cured, ROOMY, reach.minus(Length.cm(1))).passes());
  }

  private static String data(Finding finding, String key) {
    return finding.remedies().stream()
        .map(Remedy::data)
        .filter(data -> data.containsKey(key))
        .map(data -> data.get(key))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no remedy " + key + " in " + finding.remedies()));
  }

  @Test
  void anOpeningWithoutAStripIsHeldByItsOwnEdge() {
    Opening raw = Assembly.of(Vest.plain().neck(RawEdge.of()).pattern()).opening("neck");
    HeadOpening check = HeadOpening.of(raw, stretching(0), Length.cm(58));
    assertEquals(raw.length(), check.stretchedOpening());
    assertEquals(HeadOpening.Limit.BODY, check.limit());
    assertEquals(Length.cm(60), check.withClearance(Length.cm(2)).needed());
    assertThrows(DraftingException.class, () -> HeadOpening.of(raw, ROOMY, Length.ZERO));
  }
}
