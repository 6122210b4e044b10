package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SewnResultTest {
  private static final Fabric RIB = Fabric.of("rib", Structure.RIB, 0.8);

  /** A result whose loop needed this tension on an edge of 57 cm. */
  private static SewnResult needed(double tension, Outcome seen) {
    return SewnResult.of("rib", Length.cm(57), Length.cm(57).dividedBy(1 + tension), seen);
  }

  private static double tension(SewnResult... results) {
    return SewnResult.applied(RIB, List.of(results)).tension();
  }

  @ParameterizedTest
  @CsvSource({
    "0.009, LIES_FLAT, 0.009",
    "0.020, LIES_FLAT, 0.010",
    "0.005, LIES_FLAT, 0.0075",
    "0.006, PUCKERS, 0.006",
    "0.001, PUCKERS, 0.005",
    "0.020, PUCKERS, 0.0075",
    "-0.05, GAPES, 0.0075"
  })
  void oneResultMovesTheTensionByAQuarterOfAPerCentAtMost(
      double needed, Outcome seen, double expected) {
    assertEquals(expected, tension(needed(needed, seen)), 1e-9);
  }

  @Test
  void allTogetherMoveItByHalfAPerCentAtMost() {
    SewnResult tight = needed(0.04, Outcome.LIES_FLAT);
    SewnResult slack = needed(0, Outcome.PUCKERS);
    assertEquals(0.0125, tension(Collections.nCopies(9, tight).toArray(SewnResult[]::new)), 1e-9);
    assertEquals(0.0025, tension(Collections.nCopies(9, slack).toArray(SewnResult[]::new)), 1e-9);
    Fabric stiff = RIB.withTension(0.001);
    assertEquals(0, SewnResult.applied(stiff, List.of(slack)).tension(), 1e-12);
  }

  @Test
  void otherFabricsLearnNothing() {
    Fabric jersey = Fabric.of("jersey", Structure.JERSEY, 0.3);
    assertSame(jersey, SewnResult.applied(jersey, List.of(needed(0.02, Outcome.LIES_FLAT))));
  }

  @Test
  void aDraftRemembersAndForgets() {
    Draft draft =
        Draft.of(Vest.plain().pattern())
            .withFabric("rib", RIB)
            .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.35));
    Strip neck = neck(draft);
    SewnResult result =
        SewnResult.of(
            Strip.of(
                neck.opening(),
                neck.finish(),
                RIB,
                StripRule.loop(neck.window().shortest().minus(Length.mm(1)))),
            Outcome.LIES_FLAT);
    Draft taught = draft.withSewnResult(result);
    assertEquals(List.of(result), taught.sewnResults());
    assertEquals(result.neededTension(), taught.fabric("rib").tension(), 1e-9);
    assertEquals(
        neck.window().shortest().minus(Length.mm(1)).toMm(),
        neck(taught).window().shortest().toMm(),
        1e-6);
    assertNotEquals(draft, taught);
    assertEquals(RIB, taught.fabrics().get("rib"));
    assertEquals(draft, taught.withoutSewnResult(result));
    assertEquals(draft.goods(), taught.goods());
  }

  private static Strip neck(Draft draft) {
    return draft.strips().stream()
        .filter(strip -> strip.opening().name().equals("neck"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nonsenseIsRefused() {
    Length cm = Length.cm(50);
    assertThrows(DraftingException.class, () -> SewnResult.of(" ", cm, cm, Outcome.GAPES));
    assertThrows(DraftingException.class, () -> SewnResult.of("r", Length.ZERO, cm, Outcome.GAPES));
    assertThrows(DraftingException.class, () -> SewnResult.of("r", cm, cm, Outcome.CANNOT_STRETCH));
    FoldedBand hugging = FoldedBand.of(Length.mm(13), Length.mm(7)).withIntent(Intent.HUGS);
    Strip strip =
        Strip.of(
            Assembly.of(Vest.plain().neck(hugging).pattern()).opening("neck"),
            hugging,
            RIB,
            StripRule.recommended());
    assertThrows(DraftingException.class, () -> SewnResult.of(strip, Outcome.PUCKERS));
  }

  @Test
  void areValues() {
    SewnResult result = needed(0.01, Outcome.PUCKERS);
    assertEquals(needed(0.01, Outcome.PUCKERS), result);
    assertEquals(needed(0.01, Outcome.PUCKERS).hashCode(), result.hashCode());
    assertNotEquals(needed(0.01, Outcome.GAPES), result);
    assertEquals("rib", result.fabric());
    assertEquals(Outcome.PUCKERS, result.seen());
    assertEquals("rib: a loop of 56.4 cm on a finished edge of 57 cm puckers", result.toString());
  }
}
