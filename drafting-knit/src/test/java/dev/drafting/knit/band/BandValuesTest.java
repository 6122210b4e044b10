package dev.drafting.knit.band;

import static dev.drafting.knit.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.garment.BabyTop;
import java.util.List;
import org.junit.jupiter.api.Test;

class BandValuesTest {
  private static final Fabric RIB = Fabric.of("rib", Structure.RIB, 0.8);
  private static final Fabric JERSEY = Fabric.of("jersey", Structure.JERSEY, 0.5);
  private static final FoldedBand BAND = FoldedBand.of(mm(13), mm(7));

  private static Length mm(double millimetres) {
    return Length.mm(millimetres);
  }

  @Test
  void finishesDifferByTheirSettings() {
    differ(
        BAND,
        FoldedBand.of(mm(13), mm(7)),
        FoldedBand.of(mm(14), mm(7)),
        FoldedBand.of(mm(13), mm(6)),
        FoldedBand.cuff(mm(13), mm(7)),
        BAND.withCloth("body"),
        BAND.withTopstitch(mm(3)),
        BAND.withIntent(Intent.HUGS),
        BAND.readyEdged());
    WrappedBinding binding = WrappedBinding.of(mm(10));
    differ(
        binding,
        WrappedBinding.of(mm(10)),
        WrappedBinding.of(mm(11)),
        binding.withTurnOfCloth(mm(3)),
        binding.withCloth("body"),
        binding.doubled(),
        binding.overlockedInside(),
        binding.withIntent(Intent.HUGS));
    FacedStrip faced = FacedStrip.of(mm(20), mm(6));
    differ(
        faced,
        FacedStrip.of(mm(20), mm(6)),
        FacedStrip.of(mm(21), mm(6)),
        FacedStrip.of(mm(20), mm(5)),
        faced.withTuck(mm(6)),
        faced.withCloth("lining"),
        faced.withIntent(Intent.DRAWS_IN));
    Casing casing = Casing.of(mm(25), mm(10));
    differ(
        casing,
        Casing.of(mm(25), mm(10)),
        Casing.of(mm(26), mm(10)),
        Casing.of(mm(25), mm(9)),
        casing.withElastic(mm(20)),
        casing.withGirth(Length.cm(76)),
        casing.withShortening(0.08),
        casing.withOverlap(mm(15)));
  }

  @Test
  void finishesTellTheirSettings() {
    FacedStrip faced = FacedStrip.of(mm(20), mm(6));
    assertEquals("faced-strip", faced.id());
    assertEquals("strip turned in, 20 mm deep, sewn with 6 mm", faced.toString());
    assertEquals(
        "strip turned in, 20 mm deep, sewn with 6 mm, 5 mm tucked under",
        faced.withTuck(mm(5)).describe());
    assertEquals(mm(6), faced.allowance());
    assertEquals(mm(5), faced.withTuck(mm(5)).tuck());
    assertEquals(
        List.of(mm(-18)), faced.profile().topstitch(), "2 mm from its inner edge, 20 mm in");
    assertEquals(mm(6), faced.profile().cut().orElseThrow());
    Casing casing = Casing.of(mm(25), mm(10));
    assertEquals("casing", casing.id());
    assertEquals(
        "casing 25 mm deep with 10 mm tucked under, for elastic 22 mm wide", casing.toString());
    assertEquals(
        "casing 25 mm deep, for elastic 22 mm wide", Casing.of(mm(25), Length.ZERO).toString());
    assertEquals(List.of(Length.ZERO), Casing.of(mm(25), Length.ZERO).profile().folds());
    assertEquals(List.of(Length.ZERO, mm(25)), casing.profile().folds());
    assertEquals("760 mm", casing.withGirth(Length.cm(76)).settings().get("girth"));
  }

  @Test
  void rulesReadWellAndDiffer() {
    String join = ", 10 mm at each end for the join";
    StripRule ratio = StripRule.ratio(0.85);
    String allowance = ratio.toString().replace("85 % of its edge", "");
    assertEquals("as recommended" + allowance, StripRule.recommended().toString());
    assertEquals("30 mm shorter than its edge" + allowance, StripRule.shorterBy(mm(30)).toString());
    assertEquals("a loop of 50 cm" + allowance, StripRule.loop(Length.cm(50)).toString());
    assertEquals(
        "already cut 52 cm long" + allowance, StripRule.alreadyCut(Length.cm(52)).toString());
    assertEquals(
        "85 % of its edge" + join + " at the centre back",
        ratio.withJoinAllowance(mm(10)).withJoinAt("centre back").toString());
    assertEquals(0.85, ratio.share());
    assertEquals(StripRule.Kind.RATIO, ratio.kind());
    assertEquals(mm(30), StripRule.shorterBy(mm(30)).length());
    differ(
        ratio,
        StripRule.ratio(0.85),
        StripRule.ratio(0.86),
        StripRule.recommended(),
        ratio.withJoinAllowance(mm(11)),
        ratio.withJoinAt("side"),
        ratio.withLap(mm(20)),
        ratio.withMarks(MarkSpacing.MORE_ON_CURVES));
    differ(StripRule.loop(mm(500)), StripRule.loop(mm(500)), StripRule.loop(mm(501)));
    assertEquals(0.3, StripRule.ratio(0.3).share());
    assertEquals(1.5, StripRule.ratio(1.5).share());
    assertThrows(DraftingException.class, () -> StripRule.ratio(0.29));
    assertThrows(DraftingException.class, () -> StripRule.ratio(1.51));
  }

  @Test
  void tapedEdgesReadWellAndDiffer() {
    TapedEdge neck = TapedEdge.alongSeam("neck", mm(560), Angle.degrees(280));
    differ(
        neck,
        TapedEdge.alongSeam("neck", mm(560), Angle.degrees(280)),
        TapedEdge.alongSeam("hem", mm(560), Angle.degrees(280)),
        TapedEdge.alongSeam("neck", mm(561), Angle.degrees(280)),
        TapedEdge.alongFinishedEdge("neck", mm(560), Angle.degrees(280)),
        TapedEdge.alongSeam("neck", mm(560), Angle.degrees(281)),
        neck.withCorners(Angle.degrees(70)));
    String words = neck.toString();
    assertEquals(
        words.replace(" along the seam", " along the finished edge"),
        TapedEdge.alongFinishedEdge("neck", mm(560), Angle.degrees(280)).toString());
    assertEquals(words + ", 1 mitred corner", neck.withCorners(Angle.degrees(70)).toString());
    assertEquals(
        words + ", 2 mitred corners",
        neck.withCorners(Angle.degrees(70), Angle.degrees(20)).toString());
  }

  private static Opening opening(BandFinish finish, String name) {
    return Assembly.of(Vest.plain().neck(finish).pattern()).opening(name);
  }

  @Test
  void stripsDifferByOpeningRuleAndFabric() {
    Opening neck = opening(BAND, "neck");
    Strip strip = Strip.of(neck, BAND, RIB, StripRule.recommended());
    differ(
        strip,
        Strip.of(neck, BAND, RIB, StripRule.recommended()),
        Strip.of(neck, BAND, RIB, StripRule.ratio(0.9)),
        Strip.of(neck, BAND, JERSEY, StripRule.recommended()),
        Strip.of(neck, BAND.withIntent(Intent.HUGS), RIB, StripRule.recommended()));
    differ(
        strip.window(),
        Strip.of(neck, BAND, RIB, StripRule.ratio(0.9)).window(),
        Strip.of(neck, BAND, RIB.withTension(0.045), StripRule.recommended()).window());
    SewnResult seen = SewnResult.of(strip, Outcome.LIES_FLAT);
    assertEquals(strip.loop(), seen.loop());
    assertEquals(strip.finishedEdge(), seen.finishedEdge());
    differ(
        seen,
        SewnResult.of(strip, Outcome.LIES_FLAT),
        SewnResult.of(strip, Outcome.GAPES),
        SewnResult.of("rib", mm(560), mm(500), Outcome.LIES_FLAT));
    assertThrows(
        DraftingException.class,
        () -> SewnResult.of("rib", Length.ZERO, mm(500), Outcome.LIES_FLAT));
    assertThrows(
        DraftingException.class,
        () -> SewnResult.of("rib", mm(560), Length.ZERO, Outcome.LIES_FLAT));
  }

  @Test
  void passagesDifferByAllThatTheyAsk() {
    Opening neck = opening(BAND, "neck");
    Strip strip = Strip.of(neck, BAND, RIB, StripRule.recommended());
    BodyPassage head = BodyPassage.of(strip, JERSEY, BodyPart.HEAD, Length.cm(57));
    differ(
        head,
        BodyPassage.of(strip, JERSEY, BodyPart.HEAD, Length.cm(57)),
        BodyPassage.of(neck, JERSEY, BodyPart.HEAD, Length.cm(57)),
        BodyPassage.of(strip, RIB, BodyPart.HEAD, Length.cm(57)),
        BodyPassage.of(strip, JERSEY, BodyPart.SHOULDERS, Length.cm(57)),
        BodyPassage.of(strip, JERSEY, BodyPart.HEAD, Length.cm(58)),
        head.withClearance(Length.cm(2)),
        head.withStitchesGiving(0.3));
    assertEquals(strip, head.strip().orElseThrow());
    assertThrows(DraftingException.class, () -> head.withStitchesGiving(-0.1));
    assertThrows(DraftingException.class, () -> head.withStitchesGiving(3.1));
    assertEquals(head.withStitchesGiving(3), head.withStitchesGiving(3.0));
  }

  /** Stored garments know finishes by these names. */
  @Test
  void finishesHaveNamesOfTheirOwn() {
    assertEquals("folded-band", BAND.id());
    assertEquals("wrapped-binding", WrappedBinding.of(mm(10)).id());
    assertEquals("faced-strip", FacedStrip.of(mm(20), mm(6)).id());
  }

  @Test
  void aBindingIsSingleDoubledOrOverlocked() {
    WrappedBinding single = WrappedBinding.of(mm(10));
    assertFalse(single.isDoubled() || single.isOverlockedInside());
    assertTrue(single.doubled().isDoubled());
    assertFalse(single.doubled().isOverlockedInside());
    assertTrue(single.overlockedInside().isOverlockedInside());
    assertFalse(single.overlockedInside().isDoubled());
  }

  /** Where edges lap each is bound by itself: shares of the loop, and an allowance at each end. */
  @Test
  void aStripThatIsCutApartHasAPieceForEachEdge() {
    WrappedBinding binding = WrappedBinding.of(mm(10));
    Opening neck = Assembly.of(new BabyTop().pattern()).opening("neck");
    Strip whole = Strip.of(neck, binding, RIB, StripRule.recommended());
    Strip apart = whole.cutApart();
    assertTrue(apart.isCutApart());
    assertFalse(whole.isCutApart());
    differ(apart, whole.cutApart(), whole);
    assertEquals(
        List.of("neck binding, front / neck", "neck binding, back / neck"),
        apart.pieces().stream().map(StripPiece::name).toList());
    assertEquals(whole.cutLength().plus(mm(20)).toMm(), apart.cutLength().toMm(), 1e-9);
    Pattern top = new BabyTop().pattern();
    double front = top.edge(EdgeRef.parse("front neck")).length().toMm();
    double back = top.edge(EdgeRef.parse("back neck")).length().toMm();
    double ofFront = apart.pieces().get(0).length().toMm() - 20;
    double ofBack = apart.pieces().get(1).length().toMm() - 20;
    assertEquals(front / back, ofFront / ofBack, 1e-9);
    assertEquals(1, whole.pieces().size());
    assertEquals(whole.cutLength(), whole.pieces().get(0).length());
  }

  /** At a placket both ends lie over each other: the marks are counted from the middle of it. */
  @Test
  void theMarksOfALapBeginInItsMiddle() {
    Opening neck = opening(BAND, "neck");
    StripRule rule = StripRule.recommended().withJoinAt("centre front");
    Strip closed = Strip.of(neck, BAND, RIB, rule);
    Strip lapped = Strip.of(neck, BAND, RIB, rule.withLap(mm(24)));
    assertEquals("join: centre front", closed.marks().get(0).label());
    assertEquals("middle of the lap: centre front", lapped.marks().get(0).label());
    for (int i = 0; i < closed.marks().size(); i++) {
      assertEquals(
          closed.marks().get(i).along().toMm() + 12, lapped.marks().get(i).along().toMm(), 1e-9);
    }
    Strip elsewhere = Strip.of(neck, BAND, RIB, StripRule.recommended().withLap(mm(24)));
    assertEquals(0, elsewhere.marks().get(0).along().toMm(), 1e-9);
    assertTrue(elsewhere.marks().get(0).label().startsWith("join: "), elsewhere.marks().toString());
  }

  @Test
  void piecesAndMarksReadWell() {
    assertEquals("neck band: 48 cm", new StripPiece("neck band", mm(480), 1).toString());
    assertEquals("hem band: 2 x 52.5 cm", new StripPiece("hem band", mm(525), 2).toString());
    assertEquals("half at 24 cm", new StripMark(mm(240), mm(280), "half").toString());
  }

  /** 500 mm of loop on 30 cm of rib less an allowance at both ends: 500 / 280, so two lengths. */
  @Test
  void whatIsLongerThanItsClothIsWideIsPieced() {
    Opening neck = opening(BAND, "neck");
    StripRule rule = StripRule.loop(mm(500)).withJoinAllowance(mm(10));
    assertEquals(1, Strip.of(neck, BAND, RIB.withWidth(mm(520)), rule).lengths());
    assertEquals(2, Strip.of(neck, BAND, RIB.withWidth(mm(519)), rule).lengths());
    assertEquals(2, Strip.of(neck, BAND, RIB.withWidth(mm(300)), rule).lengths());
    assertEquals(2, Strip.of(neck, BAND, RIB.withWidth(mm(270)), rule).lengths());
    assertEquals(3, Strip.of(neck, BAND, RIB.withWidth(mm(269)), rule).lengths());
  }
}
