package dev.drafting.knit.fabric;

import static dev.drafting.knit.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.Vest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class FabricValuesTest {
  private static final Fabric KNIT = knit(0.6, 0.97);
  private static final Fabric FIRM = knit(0.35, 0.97);

  private static Fabric knit(double stretch, double recovery) {
    return Fabric.of("knit", Structure.OTHER, stretch).withRecovery(recovery);
  }

  private static GaugeReading reading(double pulled) {
    return GaugeReading.of(Length.mm(100), Length.mm(pulled), Length.mm(100));
  }

  @Test
  void whatDiffersIsNotEqual() {
    Length body = Length.cm(92);
    Length garment = Length.cm(84);
    differ(
        Ease.of(body, garment),
        Ease.of(body, garment),
        Ease.of(Length.cm(93), garment),
        Ease.of(body, Length.cm(85)));
    Original original = Original.of(KNIT);
    differ(
        original,
        Original.of(KNIT),
        Original.of(FIRM),
        original.withGirth(body),
        original.withSeams("side"),
        original.withShoulders());
    FabricChange change = FabricChange.of(KNIT, FIRM);
    differ(
        change,
        FabricChange.of(KNIT, FIRM),
        FabricChange.of(FIRM, KNIT),
        FabricChange.of(KNIT, KNIT),
        change.withGarment(garment),
        change.withGirth(body, garment));
    differ(
        FabricComparison.of(KNIT, FIRM),
        FabricComparison.of(KNIT, FIRM),
        FabricComparison.of(FIRM, FIRM),
        FabricComparison.of(KNIT, KNIT));
    differ(reading(140), reading(140), reading(150));
    differ(
        GaugeMean.of(reading(140)),
        GaugeMean.of(reading(140)),
        GaugeMean.of(reading(140), reading(140)));
    differ(KNIT, knit(0.6, 0.97), FIRM, knit(0.6, 0.96));
  }

  @Test
  void readsWell() {
    assertEquals(
        "84 cm on 92 cm: ease -8.7 %, stretched 9.5 %",
        Ease.of(Length.cm(92), Length.cm(84)).toString());
    Original original = Original.of(KNIT);
    assertEquals("of knit, which stretches 60 %", original.toString());
    assertEquals(
        "of knit, which stretches 60 %; 84 cm round", original.withGirth(Length.cm(84)).toString());
    assertTrue(GaugeMean.of(reading(140)).toString().startsWith("1 reading"));
    assertTrue(GaugeMean.of(reading(140), reading(150)).toString().startsWith("2 readings"));
    FabricComparison comparison = FabricComparison.of(KNIT, FIRM);
    assertEquals(KNIT, comparison.original());
    assertEquals(FIRM, comparison.candidate());
  }

  private static String accepted(Executable refused) {
    return assertThrows(DraftingException.class, refused).accepted();
  }

  @Test
  void theBoundsOfTraitsBelongToThem() {
    assertEquals(Length.cm(10), KNIT.withWidth(Length.cm(10)).width().orElseThrow());
    assertEquals(Length.cm(500), KNIT.withWidth(Length.cm(500)).width().orElseThrow());
    assertEquals("10 cm to 500 cm", accepted(() -> KNIT.withWidth(Length.cm(9.9))));
    assertEquals("10 cm to 500 cm", accepted(() -> KNIT.withWidth(Length.cm(500.1))));
    assertEquals(Length.cm(150), KNIT.withWidth(Length.cm(150), Length.ZERO).width().orElseThrow());
    assertEquals(2000, KNIT.withMass(2000).mass().orElseThrow());
    assertThrows(DraftingException.class, () -> KNIT.withMass(0));
    assertThrows(DraftingException.class, () -> KNIT.withMass(2000.1));
  }

  /** 4 % in use are a twentieth more than 80 % of 5 %: rounded up to whole hundredths. */
  @Test
  void theStretchForAUseIsRoundedUp() {
    assertEquals(0.8, KNIT.usableStretch() / KNIT.stretchAcross(), 1e-12);
    assertEquals(0.05, Fabric.stretchForUse(0.04), 1e-12);
    assertEquals(0.06, Fabric.stretchForUse(0.041), 1e-12);
    assertEquals(0, Fabric.stretchForUse(0), 1e-12);
  }

  /** 400 mm of swatch, 380 across and 360 along after the wash; the most is half. */
  @Test
  void shrinkageIsMeasuredOnASwatch() {
    Shrinkage loss = Shrinkage.measured(Length.mm(400), Length.mm(380), Length.mm(360));
    assertEquals(0.05, loss.across(), 1e-12);
    assertEquals(0.1, loss.along(), 1e-12);
    assertEquals(1 / 0.95, loss.factorAcross(), 1e-12);
    assertEquals(1 / 0.9, loss.factorAlong(), 1e-12);
    Length whole = Length.mm(400);
    assertTrue(Shrinkage.measured(whole, whole, whole).isNone());
    assertFalse(new Shrinkage(0, 0.01).isNone());
    assertFalse(new Shrinkage(0.01, 0).isNone());
    assertThrows(
        DraftingException.class, () -> Shrinkage.measured(whole, Length.mm(401), Length.mm(400)));
    assertThrows(
        DraftingException.class, () -> Shrinkage.measured(Length.ZERO, Length.ZERO, Length.ZERO));
    assertThrows(DraftingException.class, () -> new Shrinkage(-0.01, 0));
    assertThrows(DraftingException.class, () -> new Shrinkage(0, Double.NaN));
  }

  @Test
  void theShareOfTheStretchIsFromNothingToAll() {
    assertEquals(Length.cm(92), Ease.girthFor(Length.cm(92), KNIT, 0));
    assertEquals(92 / 1.6, Ease.girthFor(Length.cm(92), KNIT, 1).toCm(), 1e-9);
    assertEquals("0 to 1", accepted(() -> Ease.girthFor(Length.cm(92), KNIT, 1.01)));
    assertEquals("0 to 1", accepted(() -> Ease.girthFor(Length.cm(92), KNIT, -0.01)));
  }

  private static List<String> reasons(Fabric original, Fabric candidate) {
    return FabricComparison.of(original, candidate).reasons();
  }

  /** Poor is what comes back less than the original did; the weight counts from a third on. */
  @Test
  void whatDiffersIsAReasonAndWhatDoesNotIsNone() {
    assertEquals(List.of(), reasons(knit(0.6, 0.8), knit(0.6, 0.8)), "both come back badly");
    assertEquals(1, reasons(knit(0.6, 0.97), knit(0.6, 0.8)).size());
    assertEquals(List.of("comes back less well"), reasons(knit(0.6, 0.97), knit(0.6, 0.93)));
    assertEquals(List.of(), reasons(knit(0.6, 0.93), knit(0.6, 0.93)));
    assertEquals(
        List.of("gives 20 % along instead of 40 %"),
        reasons(KNIT.withStretchAlong(0.4), KNIT.withStretchAlong(0.2)));
    assertEquals(List.of(), reasons(KNIT.withStretchAlong(0.4), KNIT));
    assertEquals(List.of(), reasons(KNIT, KNIT.withStretchAlong(0.4)));
    assertEquals(
        List.of("weighs 300 instead of 150 g/m2 and hangs differently"),
        reasons(KNIT.withMass(150), KNIT.withMass(300)));
    assertEquals(
        List.of("weighs 150 instead of 300 g/m2 and hangs differently"),
        reasons(KNIT.withMass(300), KNIT.withMass(150)));
    assertEquals(List.of(), reasons(KNIT.withMass(200), KNIT.withMass(210)));
    assertEquals(List.of(), reasons(KNIT.withMass(200), KNIT));
    assertEquals(
        List.of("curls at its cut edges"), reasons(KNIT.withCurl(false), KNIT.withCurl(true)));
    assertEquals(List.of(), reasons(KNIT.withCurl(true), KNIT.withCurl(false)));
  }

  /** A pattern without a seam at its side cannot be made wider, and need not be. */
  @Test
  void theSameClothChangesNothing() {
    FabricChange same = FabricChange.of(KNIT, KNIT).withGirth(Length.cm(92), Length.cm(84));
    assertEquals(Length.ZERO, same.difference().orElseThrow());
    Pattern seamless = Pattern.of("tube", Vest.plain().pattern().pieces(), List.of());
    assertSame(seamless, same.applyTo(seamless));
  }

  @Test
  void theSameClothIsExplainedAsTheSame() {
    List<String> said =
        FabricChange.of(KNIT, KNIT).withGirth(Length.cm(92), Length.cm(84)).explanation();
    assertTrue(said.get(0).endsWith("knit behaves like it."), said.get(0));
    assertTrue(said.get(2).endsWith(" Nothing is changed."), said.get(2));
    List<String> unknown = FabricChange.of(KNIT, FIRM).withGarment(Length.cm(84)).explanation();
    assertEquals(
        "The wearer's girth is not known: the pattern stays as wide as it is. To fit alike it would"
            + " be 84 cm to 88.8 cm round.",
        unknown.get(1));
    assertEquals(
        "The wearer's girth is not known: the pattern stays as wide as it is.",
        FabricChange.of(KNIT, FIRM).explanation().get(1));
    assertTrue(FabricChange.of(KNIT, FIRM).shareUsed().isEmpty());
  }

  /** From 60 % to 35 % a close garment grows, the other way it shrinks. */
  @Test
  void whatGoesInAndWhatComesOffIsSaid() {
    List<String> wider =
        FabricChange.of(KNIT, FIRM).withGirth(Length.cm(92), Length.cm(84)).explanation();
    assertTrue(wider.get(2).contains("The 31.6 mm go in at the side"), wider.get(2));
    List<String> closer =
        FabricChange.of(FIRM, KNIT).withGirth(Length.cm(92), Length.cm(84)).explanation();
    assertTrue(closer.get(2).contains(" come off at the side"), closer.get(2));
    Original whole = Original.of(KNIT).withShoulders();
    List<String> all =
        FabricChange.of(whole, FIRM).withGirth(Length.cm(92), Length.cm(84)).explanation();
    assertTrue(all.get(2).endsWith("go in in proportion over the whole width."), all.get(2));
  }
}
