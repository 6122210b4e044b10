package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.List;
import org.junit.jupiter.api.Test;

class CasingTest {
  private static final Casing CASING = Casing.of(Length.mm(25), Length.mm(10));

  private static Draft draft(Finish hem) {
    return Draft.of(Vest.plain().hem(hem).pattern())
        .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8))
        .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.35));
  }

  private static List<String> ids(Draft draft) {
    return draft.findings().stream()
        .map(Finding::id)
        .filter(id -> id.startsWith("casing"))
        .toList();
  }

  /** CV-15: waist 76, shorter by a tenth, overlap 2: cut 70.4 (trade pages). */
  @Test
  void elasticIsShorterThanTheBody() {
    Casing waist = CASING.withGirth(Length.cm(76));
    assertEquals(68.4, waist.elasticLoop().orElseThrow().toCm(), 1e-9);
    assertEquals(70.4, waist.elasticCutLength().orElseThrow().toCm(), 1e-9);
    assertEquals(
        72.2,
        waist.withShortening(0.05).withOverlap(Length.ZERO).elasticCutLength().orElseThrow().toCm(),
        1e-9);
    assertTrue(CASING.elasticCutLength().isEmpty());
  }

  @Test
  void theProfileIsThatOfATurnedHemStitchedAtItsDepth() {
    assertEquals(
        "CUT +35 mm, FOLD 0 mm, FOLD +25 mm, TOPSTITCH -25 mm", CASING.profile().toString());
    assertEquals(
        "CUT +25 mm, FOLD 0 mm, TOPSTITCH -25 mm",
        Casing.of(Length.mm(25), Length.ZERO).profile().toString());
    assertEquals(
        "casing 25 mm deep with 10 mm tucked under, for elastic 20 mm wide",
        CASING.withElastic(Length.mm(20)).toString());
  }

  @Test
  void aDraftCutsAndBuysElastic() {
    Draft draft = draft(CASING.withGirth(Length.cm(80)));
    assertTrue(
        draft.cutList().stream()
            .anyMatch(
                item ->
                    item.toString()
                        .equals(
                            "hem elastic: 1 from elastic cloth, 740 x 22 mm, its ends lapped by 20"
                                + " mm")),
        draft.cutList().toString());
    assertTrue(draft.goods().toString().contains("elastic, 22 mm wide: 0.8 m"));
    assertEquals(List.of(), ids(draft));
    assertTrue(
        draft.cautions().stream()
            .anyMatch(caution -> caution.text().contains("For infants never")));
    assertTrue(
        draft.orderOfWork().stream()
            .anyMatch(
                step ->
                    step.title().equals("Make the casing of the hem")
                        && step.text().contains("Cut the elastic 74 cm long")));
  }

  @Test
  void whatWillGoWrongIsSaid() {
    assertEquals(List.of("casing.no-girth"), ids(draft(CASING)));
    assertEquals(List.of("casing.loose"), ids(draft(CASING.withGirth(Length.cm(120)))));
    assertEquals(List.of("casing.wide"), ids(draft(CASING.withGirth(Length.cm(45)))));
    assertEquals(
        List.of("casing.compression"),
        ids(draft(CASING.withGirth(Length.cm(80)).withShortening(0.2))));
    Draft neck =
        Draft.of(Vest.plain().neck(CASING.withGirth(Length.cm(40))).pattern())
            .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.35));
    assertEquals(List.of("casing.neck"), ids(neck));
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(DraftingException.class, () -> Casing.of(Length.mm(5), Length.mm(3)));
    assertThrows(DraftingException.class, () -> Casing.of(Length.mm(25), Length.mm(2)));
    assertThrows(DraftingException.class, () -> Casing.of(Length.mm(25), Length.mm(26)));
    assertThrows(DraftingException.class, () -> CASING.withElastic(Length.mm(26)));
    assertThrows(DraftingException.class, () -> CASING.withGirth(Length.cm(4)));
    assertThrows(DraftingException.class, () -> CASING.withShortening(0.31));
    assertThrows(DraftingException.class, () -> CASING.withShortening(Double.NaN));
    assertThrows(DraftingException.class, () -> CASING.withOverlap(Length.mm(51)));
  }

  @Test
  void areValues() {
    assertEquals(CASING, Casing.of(Length.mm(25), Length.mm(10)));
    assertEquals(CASING.hashCode(), Casing.of(Length.mm(25), Length.mm(10)).hashCode());
    assertNotEquals(CASING, CASING.withShortening(0.08));
    assertNotEquals(CASING, CASING.withGirth(Length.cm(76)));
    assertEquals(
        "{depth=25 mm, turn-in=10 mm, elastic=22 mm, girth=unknown, shortening=0.1, overlap=20 mm}",
        CASING.settings().toString());
    assertEquals(Length.mm(25), CASING.depth());
  }
}
