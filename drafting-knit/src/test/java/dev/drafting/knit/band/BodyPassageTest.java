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

class BodyPassageTest {
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
    BodyPassage wide =
        BodyPassage.of(strip(Vest.plain(), stretching(0.60), loop), ROOMY, BodyPart.HEAD, head);
    assertEquals(69.19, wide.stretchedOpening().toCm(), 5e-3);
    assertTrue(wide.passes());
    assertEquals(List.of(), wide.findings());
    BodyPassage narrow =
        BodyPassage.of(strip(Vest.plain(), stretching(0.20), loop), ROOMY, BodyPart.HEAD, head);
    assertEquals(54.23, narrow.stretchedOpening().toCm(), 5e-3);
    assertFalse(narrow.passes());
    assertEquals(BodyPassage.Limit.STRIP, narrow.limit());
    assertEquals(54.23 - 57.3 - 1, narrow.margin().toCm(), 5e-3);
  }

  @Test
  void theGarmentsOwnEdgeMayBeTheLimit() {
    Strip strip = strip(Vest.plain(), stretching(1.0), StripRule.recommended());
    Fabric stiff = stretching(0.02);
    BodyPassage check = BodyPassage.of(strip, stiff, BodyPart.HEAD, Length.cm(58));
    assertEquals(BodyPassage.Limit.BODY, check.limit());
    assertEquals(strip.joinLine().toMm() * 1.016, check.stretchedOpening().toMm(), 1e-9);
  }

  /** A stable pique neck band that will not go over a head of 58: the demo's finding in small. */
  @Test
  void remediesComeInOrderAndTheComputedOnesHelp() {
    Fabric pique = Fabric.of("pique", Structure.PIQUE, 0.15);
    Vest vest = Vest.plain().frontDepth(9);
    Strip strip = strip(vest, pique, StripRule.recommended());
    BodyPassage check = BodyPassage.of(strip, ROOMY, BodyPart.HEAD, Length.cm(58));
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
    BodyPassage again = BodyPassage.of(lowered, ROOMY, BodyPart.HEAD, Length.cm(58));
    assertTrue(again.margin().toMm() > -3, "after lowering " + drop + ": " + again);

    double stretch = Double.parseDouble(data(finding, "strip.stretch"));
    Strip rib = Strip.of(strip.opening(), BAND, stretching(stretch), StripRule.loop(strip.loop()));
    assertTrue(BodyPassage.of(rib, ROOMY, BodyPart.HEAD, Length.cm(58)).passes());
  }

  @Test
  void whereBandAndGarmentBothHoldBothClothsMustGiveMore() {
    Fabric stiff = stretching(0.05);
    Strip strip = strip(Vest.plain().frontDepth(9), stretching(0.15), StripRule.recommended());
    Finding finding = BodyPassage.of(strip, stiff, BodyPart.HEAD, Length.cm(58)).findings().get(0);
    double body = Double.parseDouble(data(finding, "body.stretch"));
    double rib = Double.parseDouble(data(finding, "strip.stretch"));
    StripRule same = StripRule.loop(strip.loop());
    Strip better = Strip.of(strip.opening(), BAND, stretching(rib), same);
    assertFalse(BodyPassage.of(better, stiff, BodyPart.HEAD, Length.cm(58)).passes());
    assertFalse(BodyPassage.of(strip, stretching(body), BodyPart.HEAD, Length.cm(58)).passes());
    assertTrue(BodyPassage.of(better, stretching(body), BodyPart.HEAD, Length.cm(58)).passes());
  }

  @Test
  void aLongerLoopIsOfferedWhereItStillLiesFlat() {
    Strip middle = strip(Vest.plain(), stretching(0.3), StripRule.recommended());
    Length reach = middle.window().longest().minus(Length.mm(3)).times(1.24);
    BodyPassage check = BodyPassage.of(middle, ROOMY, BodyPart.HEAD, reach.minus(Length.cm(1)));
    Finding finding = check.findings().get(0);
    StripRule longer = StripRule.loop(Length.parse(data(finding, "strip.loop")));
    Strip cured = Strip.of(middle.opening(), BAND, middle.fabric(), longer);
    assertEquals(Outcome.LIES_FLAT, cured.outcome());
    assertTrue(BodyPassage.of(cured, ROOMY, BodyPart.HEAD, reach.minus(Length.cm(1))).passes());
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
    BodyPassage check = BodyPassage.of(raw, stretching(0), BodyPart.HEAD, Length.cm(58));
    assertEquals(raw.length(), check.stretchedOpening());
    assertEquals(BodyPassage.Limit.BODY, check.limit());
    assertEquals(Length.cm(60), check.withClearance(Length.cm(2)).needed());
    assertThrows(
        DraftingException.class, () -> BodyPassage.of(raw, ROOMY, BodyPart.HEAD, Length.ZERO));
  }

  @Test
  void theStitchesOfTheSeamMayBeTheLimit() {
    Strip strip = strip(Vest.plain(), stretching(1.0), StripRule.recommended());
    BodyPassage overlocked = BodyPassage.of(strip, ROOMY, BodyPart.HEAD, Length.cm(62));
    assertTrue(overlocked.passes());
    BodyPassage straight = overlocked.withStitchesGiving(0.01);
    assertEquals(BodyPassage.Limit.SEAM, straight.limit());
    assertEquals(strip.joinLine().toMm() * 1.01, straight.stretchedOpening().toMm(), 1e-9);
    Finding finding = straight.findings().get(0);
    assertTrue(finding.reason().endsWith("What holds it is the stitches of its seam."));
    assertEquals("overlock", data(finding, "seam.stitch"));
    assertThrows(DraftingException.class, () -> overlocked.withStitchesGiving(-0.1));
  }

  @Test
  void otherPartsOfTheBodyAreNamedAndHaveRemediesOfTheirOwn() {
    Opening hem = Assembly.of(Vest.plain().hem(RawEdge.of()).pattern()).opening("hem");
    BodyPassage shoulders =
        BodyPassage.of(hem, stretching(0.1), BodyPart.SHOULDERS, Length.cm(115));
    Finding finding = shoulders.findings().get(0);
    assertEquals("shoulders.too-small", finding.id());
    assertTrue(
        finding.reason().contains("the shoulders need 116 cm (115 cm and 10 mm to spare): it will"),
        finding.reason());
    assertEquals("side", data(finding, "opening.at"));
    assertEquals(
        List.of("body.stretch", "opening.at"),
        finding.remedies().stream().flatMap(r -> r.data().keySet().stream()).toList());
    assertTrue(shoulders.toString().endsWith("does not go over the shoulders"));
    assertTrue(BodyPassage.of(hem, ROOMY, BodyPart.HIPS, Length.cm(115)).passes());
  }
}
