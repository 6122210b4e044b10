package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CautionsTest {
  private static final OptionalInt UNKNOWN = OptionalInt.empty();

  private static List<Caution> cautions(OptionalInt age, Detail... details) {
    return Cautions.of(age, Optional.empty(), Arrays.asList(details));
  }

  private static List<String> topics(OptionalInt age, Detail... details) {
    return cautions(age, details).stream().map(Caution::topic).toList();
  }

  @Test
  void bladesIronsPinsAndPressureAreForEverybody() {
    List<String> always = List.of("Blades", "Pins and needles", "Iron", "Close fit and elastic");
    assertEquals(always, topics(UNKNOWN).subList(0, 4));
    assertEquals(always, topics(OptionalInt.of(2)).subList(0, 4));
  }

  @Test
  void adultsGetOneLineAboutChildren() {
    assertEquals(5, cautions(UNKNOWN).size());
    assertEquals(5, cautions(OptionalInt.of(40)).size());
    assertTrue(cautions(OptionalInt.of(40)).toString().contains("give the wearer's age"));
  }

  /** Up to the fourteenth birthday: EN 14682 (cords, to 14 years), EN 14878 (birth to 14 years). */
  @ParameterizedTest
  @ValueSource(ints = {0, 2, 6, 13})
  void aChildsGarmentNeverComesWithoutThem(int age) {
    String text = cautions(OptionalInt.of(age)).toString();
    assertTrue(text.contains("This plan gives sizes, not approval."));
    assertTrue(text.contains("Ask your local product-safety authority"));
    assertTrue(text.contains("Not assessed for nightwear"));
    assertTrue(text.contains("16 CFR 1615 and 1616, EN 14878"));
    assertTrue(text.contains("no cord, drawstring or tie at the hood, head or neck"));
    assertTrue(text.contains("Check the rules where it will be worn or sold."));
  }

  /** EN 14682 counts a child by age or by a height of 134 cm; the height serves without an age. */
  @Test
  void aSmallWearerOfUnknownAgeIsTakenForAChild() {
    assertTrue(byHeight(UNKNOWN, 134).contains("Cords"));
    assertFalse(byHeight(UNKNOWN, 135).contains("Cords"));
    assertFalse(byHeight(OptionalInt.of(30), 130).contains("Cords"));
  }

  private static List<String> byHeight(OptionalInt age, int cm) {
    return Cautions.of(age, Optional.of(Length.cm(cm)), List.of()).stream()
        .map(Caution::topic)
        .toList();
  }

  /** 16 CFR 1501.4: small parts under three years. */
  @Test
  void smallPartsAreAMatterOfTheVeryYoung() {
    assertTrue(cautions(OptionalInt.of(2)).toString().contains("no buttons, snaps or beads"));
    assertFalse(topics(OptionalInt.of(3)).contains("Small parts"));
    assertTrue(topics(OptionalInt.of(3), Detail.SMALL_PARTS).contains("Small parts"));
    assertFalse(topics(OptionalInt.of(40), Detail.SMALL_PARTS).contains("Small parts"));
  }

  /** CV-38: ASTM F1816, 3 in (75 mm); EN 14682 as a product-safety authority's page gives it. */
  @Test
  void cordsOfAChildHaveTheirLengths() {
    String text = cautions(OptionalInt.of(6), Detail.CORD).toString();
    assertTrue(text.contains("75 mm (3 in)") && text.contains("at most 14 cm"), text);
    assertFalse(topics(OptionalInt.of(6)).contains("Length of cords"));
    assertFalse(topics(OptionalInt.of(40), Detail.CORD).contains("Length of cords"));
  }

  /** CV-37: 16 CFR 1615.1(c), 64.8 cm (25.75 in) and 40 cm (15.75 in), up to 9 months. */
  @Test
  void infantsNightwearHasItsLengths() {
    String text = cautions(OptionalInt.of(0), Detail.NIGHTWEAR).toString();
    assertTrue(text.contains("64.8 cm (25.75 in)") && text.contains("(15.75 in)"), text);
    assertFalse(topics(OptionalInt.of(1), Detail.NIGHTWEAR).contains("Nightwear of infants"));
    assertFalse(topics(OptionalInt.of(0)).contains("Nightwear of infants"));
  }

  @Test
  void nightwearAndElasticAreNamedWhereTheyAre() {
    assertFalse(topics(UNKNOWN).contains("Nightwear"));
    assertTrue(cautions(UNKNOWN, Detail.NIGHTWEAR).toString().contains("catches fire"));
    assertFalse(topics(UNKNOWN).contains("Elastic"));
    assertTrue(cautions(UNKNOWN, Detail.ELASTIC).toString().contains("never put elastic"));
  }

  @Test
  void aCordAtAChildsHoodAndSmallPartsForATwoYearOldAreProblems() {
    assertEquals(List.of("child.cord-at-hood"), ids(OptionalInt.of(6), Detail.HOOD, Detail.CORD));
    assertEquals(List.of("child.small-parts"), ids(OptionalInt.of(2), Detail.SMALL_PARTS));
    assertEquals(List.of(), ids(OptionalInt.of(6), Detail.SMALL_PARTS, Detail.HOOD));
    assertEquals(List.of(), ids(UNKNOWN, Detail.values()));
  }

  private static List<String> ids(OptionalInt age, Detail... details) {
    return Cautions.findings(age, Optional.empty(), Arrays.asList(details)).stream()
        .map(Finding::id)
        .toList();
  }
}
