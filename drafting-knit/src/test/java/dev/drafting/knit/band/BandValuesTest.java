package dev.drafting.knit.band;

import static dev.drafting.knit.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
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
}
