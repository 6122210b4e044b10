package dev.drafting.knit.fabric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Severity;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a close fit and another fabric say in words. */
class EaseTest {
  private static final Fabric JERSEY = Fabric.of("jersey", Structure.JERSEY, 0.30);

  private static String reason(List<Finding> findings, String id) {
    return findings.stream()
        .filter(finding -> finding.id().equals(id))
        .map(Finding::reason)
        .findFirst()
        .orElseThrow();
  }

  /** Worked by hand: 98 / 70 - 1 = 40 %; 80 % of 30 % are 24 %; 1 - 70 / 98 = 28.6 %. */
  @Test
  void whatIsTooTightIsSaidInFigures() {
    List<Finding> findings =
        Ease.of(Length.cm(98), Length.cm(70)).findings(JERSEY.withRecovery(0.8), "chest");
    assertEquals(
        "The garment is 70 cm round the chest and its wearer 98 cm: worn, it is stretched 40 %, and"
            + " this fabric gives 24 % in use.",
        reason(findings, "ease.too-tight"));
    assertTrue(
        reason(findings, "ease.compression")
            .startsWith("The garment is 28.6 % smaller than the body round the chest. From 20 %"));
    assertTrue(
        reason(findings, "ease.recovery-poor")
            .startsWith("The garment is stretched round the chest all the time it is worn"));
  }

  /** A fifth smaller than the body is where medical compression begins (common practice). */
  @Test
  void aFifthSmallerThanTheBodyIsForLicensedPractice() {
    Fabric elastic = Fabric.of("elastic", Structure.ELASTIC, 1.5).withRecovery(0.98);
    Finding at = Ease.of(Length.cm(100), Length.cm(80)).findings(elastic, "hips").get(0);
    assertEquals("ease.compression", at.id());
    assertEquals(Severity.WARNING, at.severity());
    assertTrue(at.remedies().toString().contains("licensed practice"), at.toString());
    assertEquals(List.of(), Ease.of(Length.cm(100), Length.cm(80.1)).findings(elastic, "hips"));
  }

  @Test
  void girthsAreOverNothing() {
    assertThrows(DraftingException.class, () -> Ease.of(Length.cm(1), Length.ZERO));
    assertThrows(DraftingException.class, () -> Ease.of(Length.ZERO, Length.cm(1)));
  }

  /** Single jersey curls at its cut edges; rib, interlock and double knits lie flat (handbooks). */
  @ParameterizedTest
  @EnumSource(Structure.class)
  void singleJerseyCurls(Structure structure) {
    assertEquals(structure == Structure.JERSEY, structure.curls());
    assertEquals(structure.curls(), Fabric.of("knit", structure, 0.5).curls());
  }

  /** A nap, a print or the loops themselves look different upside down, unless it is said. */
  @Test
  void clothLiesOneWayUnlessSaidOtherwise() {
    assertTrue(JERSEY.isOneWay());
    assertTrue(!JERSEY.bothWays().isOneWay());
  }

  /** 98 / 85 - 1 = 15.3 %; in cloth of 100 % instead of 60 % it would be 25.5 %. */
  @ParameterizedTest
  @CsvSource({
    "0.92,as it comes back only fairly, it is drawn for 8.7 %",
    "0.80,as it comes back poorly, it is drawn for 0 %"
  })
  void aFitThatDoesNotComeBackIsCappedAndSaid(double recovery, String first, String second) {
    FabricChange change = change(recovery);
    String said = reason(change.findings(), "change.capped");
    assertTrue(
        said.startsWith("To fit as closely it would be stretched 25.5 % in wear; " + first), said);
    assertTrue(said.contains(second), said);
  }

  private static FabricChange change(double recovery) {
    return FabricChange.of(knit(0.60), knit(1.00).withRecovery(recovery))
        .withGirth(Length.cm(98), Length.cm(85));
  }

  private static Fabric knit(double stretch) {
    return Fabric.of("knit", Structure.OTHER, stretch).withRecovery(0.97);
  }

  @Test
  void whatNobodyHasTriedIsCappedToo() {
    Fabric untried = Fabric.of("knit", Structure.OTHER, 1.00);
    FabricChange change =
        FabricChange.of(knit(0.60), untried).withGirth(Length.cm(98), Length.cm(85));
    String said = reason(change.findings(), "change.capped");
    assertTrue(said.contains("as nobody has tried how it comes back,"), said);
  }

  /**
   * A tenth of stretch in wear in cloth of 50 % is 10.4 % in cloth of 52 %, and 10.6 % in cloth of
   * 53 %: from half a hundredth on it is told.
   */
  @Test
  void halfAHundredthMoreStretchIsNotWorthTelling() {
    FabricChange little =
        FabricChange.of(knit(0.50), knit(0.52)).withGirth(Length.cm(110), Length.cm(100));
    FabricChange more =
        FabricChange.of(knit(0.50), knit(0.53)).withGirth(Length.cm(110), Length.cm(100));
    assertEquals(List.of(), little.findings());
    assertEquals(List.of("change.shortens"), more.findings().stream().map(Finding::id).toList());
  }
}
