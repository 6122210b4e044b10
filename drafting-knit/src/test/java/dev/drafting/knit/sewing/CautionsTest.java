package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CautionsTest {
  private static List<String> topics(OptionalInt age) {
    return Cautions.of(age).stream().map(Caution::topic).toList();
  }

  private static String text(OptionalInt age) {
    return Cautions.of(age).toString();
  }

  @Test
  void bladesIronsPinsAndPressureAreForEverybody() {
    List<String> always = List.of("Blades", "Pins and needles", "Iron", "Close fit and elastic");
    assertEquals(always, topics(OptionalInt.empty()).subList(0, 4));
    assertEquals(always, topics(OptionalInt.of(2)).subList(0, 4));
  }

  @Test
  void adultsGetOneLineAboutChildren() {
    assertEquals(5, Cautions.of(OptionalInt.empty()).size());
    assertEquals(5, Cautions.of(OptionalInt.of(40)).size());
    assertTrue(text(OptionalInt.of(40)).contains("give the wearer's age"));
  }

  /** Up to the fourteenth birthday: EN 14682 (cords, to 14 years), EN 14878 (birth to 14 years). */
  @ParameterizedTest
  @ValueSource(ints = {0, 2, 6, 13})
  void aChildsGarmentNeverComesWithoutThem(int age) {
    String text = text(OptionalInt.of(age));
    assertTrue(text.contains("This plan gives sizes, not approval."));
    assertTrue(text.contains("Ask your local product-safety authority"));
    assertTrue(text.contains("Not assessed for nightwear"));
    assertTrue(text.contains("16 CFR 1615 and 1616, EN 14878"));
    assertTrue(text.contains("no cord, drawstring or tie at the hood, head or neck"));
    assertTrue(text.contains("Check the rules where it will be worn or sold."));
  }

  /** 16 CFR 1501.4: small parts under three years. */
  @Test
  void smallPartsAreAMatterOfTheVeryYoung() {
    assertTrue(topics(OptionalInt.of(2)).contains("Small parts"));
    assertTrue(!topics(OptionalInt.of(3)).contains("Small parts"));
    assertTrue(!topics(OptionalInt.of(14)).contains("Cords"));
  }
}
