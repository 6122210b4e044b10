package dev.drafting.knit;

import static dev.drafting.knit.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.BodyPart;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Original;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.sewing.Construction;
import dev.drafting.knit.sewing.SewingChoices;
import dev.drafting.knit.size.Body;
import dev.drafting.knit.size.BodyMeasure;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The values that a draft is given and gives. */
class DraftValuesTest {
  private static final Fabric JERSEY = Fabric.of("jersey", Structure.JERSEY, 0.50);
  private static final Fabric RIB = Fabric.of("rib", Structure.RIB, 0.80);
  private static final Draft DRAFT = vest(13);
  private static final SewnResult GAPED =
      SewnResult.of("rib", Length.mm(560), Length.mm(500), Outcome.GAPES);
  private static final SewnResult LAY_FLAT =
      SewnResult.of("rib", Length.mm(560), Length.mm(480), Outcome.LIES_FLAT);

  private static Draft vest(double band) {
    return Draft.of(Vest.plain().neck(FoldedBand.of(Length.mm(band), Length.mm(7))).pattern())
        .withFabric("body", JERSEY)
        .withFabric("rib", RIB);
  }

  private static Length cm(double value) {
    return Length.cm(value);
  }

  @Test
  void briefsDifferByAllThatWasGiven() {
    Brief brief = DRAFT.brief();
    differ(
        brief,
        vest(13).brief(),
        vest(14).brief(),
        brief.withName("other"),
        brief.withFabric("rib", JERSEY),
        brief.withWearer(Wearer.of().withChest(cm(92))),
        brief.withOriginal(Original.of(JERSEY)),
        brief.withStripRule("neck", StripRule.ratio(0.9)),
        brief.withSewnResult(GAPED),
        brief.withSewing(SewingChoices.of().withConstruction(Construction.FLAT)));
  }

  @Test
  void aBriefTellsWhatWasGiven() {
    StripRule rule = StripRule.ratio(0.9);
    Brief brief = DRAFT.brief().withStripRule("neck", rule).withSewnResult(GAPED);
    assertEquals(Map.of("neck", rule), brief.stripRules());
    assertEquals(List.of(GAPED), brief.sewnResults());
    assertEquals(
        "test vest: 0 alterations, 2 fabrics, 1 rules for strips, 1 sewn results",
        brief.toString());
  }

  /** What was seen by mistake is taken back, and nothing else. */
  @Test
  void aSewnResultIsTakenBack() {
    Draft taught = DRAFT.withSewnResult(GAPED).withSewnResult(LAY_FLAT);
    assertEquals(List.of(GAPED, LAY_FLAT), taught.sewnResults());
    assertEquals(List.of(LAY_FLAT), taught.withoutSewnResult(GAPED).sewnResults());
    assertEquals(
        DRAFT, taught.withoutSewnResult(GAPED).withoutSewnResult(LAY_FLAT), "as if never sewn");
    assertTrue(DRAFT.fabricChange().isEmpty());
    assertTrue(DRAFT.withOriginal(Original.of(RIB)).fabricChange().isPresent());
  }

  /** A join that the opening does not have is refused at once, and only there. */
  @Test
  void aRuleWithAJoinThatIsNotThereIsRefused() {
    StripRule atSide = StripRule.recommended().withJoinAt("side");
    assertThrows(DraftingException.class, () -> DRAFT.withStripRule("neck", atSide));
    assertEquals(
        "join: side",
        DRAFT.withStripRule("armhole", atSide).strips().get(0).marks().get(0).label());
  }

  @Test
  void wearersDifferByAllThatIsKnown() {
    Wearer wearer = Wearer.of().withChest(cm(98)).withHead(cm(58)).withHeight(cm(170)).withAge(30);
    differ(
        wearer,
        Wearer.of().withAge(30).withHeight(cm(170)).withHead(cm(58)).withChest(cm(98)),
        wearer.withChest(cm(97)),
        wearer.withHead(cm(57)),
        wearer.withGirth(BodyPart.HAND, cm(20)),
        wearer.withHeight(cm(171)),
        wearer.withAge(31),
        Wearer.of());
    assertEquals("chest 98 cm, head 58 cm, height 170 cm, 30 years", wearer.toString());
  }

  /** The bust counts before the chest, and what nobody measured stays unknown. */
  @Test
  void aWearerIsMeasuredLikeTheBody() {
    Body chest = Body.of().with(BodyMeasure.CHEST_GIRTH, cm(100));
    assertEquals(Wearer.of().withChest(cm(100)), Wearer.of(chest));
    assertEquals(
        Wearer.of().withChest(cm(96)), Wearer.of(chest.with(BodyMeasure.BUST_GIRTH, cm(96))));
    Body child =
        Body.of()
            .with(BodyMeasure.HEAD_GIRTH, cm(52))
            .with(BodyMeasure.HIP_GIRTH, cm(62))
            .with(BodyMeasure.HEIGHT, cm(110))
            .withAge(5);
    assertEquals(
        Wearer.of()
            .withHead(cm(52))
            .withGirth(BodyPart.HIPS, cm(62))
            .withHeight(cm(110))
            .withAge(5),
        Wearer.of(child));
    assertEquals(Wearer.of(), Wearer.of(Body.of()));
  }

  /** The bounds belong to what is accepted. */
  @ParameterizedTest
  @CsvSource({"HEAD,25,80", "SHOULDERS,30,300", "HIPS,30,300", "HAND,8,50", "FOOT,10,70"})
  void girthsHaveBounds(BodyPart part, double least, double most) {
    assertEquals(cm(least), Wearer.of().withGirth(part, cm(least)).girth(part).orElseThrow());
    assertEquals(cm(most), Wearer.of().withGirth(part, cm(most)).girth(part).orElseThrow());
    assertThrows(DraftingException.class, () -> Wearer.of().withGirth(part, cm(least - 0.1)));
    assertThrows(DraftingException.class, () -> Wearer.of().withGirth(part, cm(most + 0.1)));
  }

  @Test
  void agesAndHeightsHaveBounds() {
    assertEquals(0, Wearer.of().withAge(0).age().getAsInt());
    assertEquals(120, Wearer.of().withAge(120).age().getAsInt());
    assertEquals(cm(30), Wearer.of().withHeight(cm(30)).height().orElseThrow());
    assertEquals(cm(250), Wearer.of().withHeight(cm(250)).height().orElseThrow());
    assertThrows(DraftingException.class, () -> Wearer.of().withHeight(cm(29.9)));
    assertThrows(DraftingException.class, () -> Wearer.of().withHeight(cm(250.1)));
  }

  @Test
  void comparisonsDifferByWhatIsFoundInThem() {
    Draft wide = vest(20);
    Draft washed = DRAFT.withFabric("body", JERSEY.withShrinkage(0.05, 0.06));
    differ(
        DRAFT.compare(wide),
        vest(13).compare(vest(20)),
        DRAFT.compare(DRAFT),
        wide.compare(DRAFT),
        DRAFT.compare(washed),
        washed.compare(DRAFT));
    assertEquals(List.of(), DRAFT.compare(DRAFT).onlyHere());
    assertEquals(List.of(), washed.compare(washed).onlyHere());
    assertEquals(DRAFT.compare(washed).onlyThere(), washed.compare(DRAFT).onlyHere());
  }

  /** Six differences are told, and that there are more. */
  @Test
  void aComparisonTellsTheFirstDifferences() {
    Comparison same = DRAFT.compare(DRAFT);
    assertEquals("0 of " + same.rows().size() + " lengths differ", same.toString());
    StripRule loop = StripRule.ratio(0.8);
    String two = DRAFT.compare(DRAFT.withStripRule("neck", loop)).toString();
    assertTrue(two.startsWith("2 of " + same.rows().size() + " lengths differ: neck band"), two);
    assertTrue(!two.endsWith("..."), two);
    Draft six = DRAFT.withStripRule("neck", loop).withStripRule("armhole", loop);
    String told = DRAFT.compare(six).toString();
    assertTrue(told.startsWith("6 of "), told);
    assertEquals(6, told.split(" here, ", -1).length - 1);
    assertTrue(!told.endsWith("..."), told);
    Draft more = vest(20).withStripRule("neck", loop).withStripRule("armhole", loop);
    String cut = DRAFT.compare(more).toString();
    assertTrue(cut.startsWith("7 of "), cut);
    assertEquals(6, cut.split(" here, ", -1).length - 1);
    assertTrue(cut.endsWith("; ..."), cut);
  }

  @Test
  void copiesAreCheckedRowByRow() {
    List<Measure> original =
        List.of(new Measure("side seam", cm(40)), new Measure("hem, finished edge", cm(92)));
    List<Measure> longer =
        List.of(new Measure("side seam", cm(40.7)), new Measure("hem, finished edge", cm(91)));
    CopyCheck check = CopyCheck.of(original, longer);
    assertEquals(
        List.of(
            "side seam: original 40 cm, copy 40.7 cm, off by +7 mm, more than 6 mm",
            "hem, finished edge: original 92 cm, copy 91 cm, off by -10 mm, within 13 mm"),
        check.rows().stream().map(CopyCheck.Row::toString).toList());
    assertEquals(check.rows().subList(0, 1), check.off());
    assertEquals("2 measures, 1 off by more than is accepted", check.toString());
    differ(
        check,
        CopyCheck.of(original, longer),
        CopyCheck.of(original, original),
        CopyCheck.of(longer, original));
    assertEquals("side seam: 40 cm", original.get(0).toString());
  }

  @Test
  void goodsDifferByWhatAndHowMuch() {
    differ(
        Goods.of("elastic", "0.7 m"),
        Goods.of("elastic", "0.7 m"),
        Goods.of("elastic", "0.8 m"),
        Goods.of("tape", "0.7 m"));
  }
}
