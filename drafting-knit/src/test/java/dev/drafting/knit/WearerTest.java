package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WearerTest {
  @Test
  void knowsWhatWasSaid() {
    Wearer wearer = Wearer.of().withChest(Length.cm(98)).withHead(Length.cm(58)).withAge(1);
    assertEquals("chest 98 cm, head 58 cm, 1 year", wearer.toString());
    assertEquals(wearer, Wearer.of().withAge(1).withHead(Length.cm(58)).withChest(Length.cm(98)));
    assertEquals("no measures", Wearer.of().toString());
    assertTrue(Wearer.of().chest().isEmpty() && Wearer.of().age().isEmpty());
  }

  /**
   * CV-17 and CV-18: the bounds let through every head of the WHO Child Growth Standards (newborn
   * girls 33.9 cm) and of the UK 1990 reference (men of 18 years 57.3 cm, with margin).
   */
  @ParameterizedTest
  @CsvSource({"33.9", "46.1", "57.3", "64"})
  void realHeadsAreAccepted(double girth) {
    assertEquals(Length.cm(girth), Wearer.of().withHead(Length.cm(girth)).head().orElseThrow());
  }

  @Test
  void girthsAndAgesOutOfRangeAreRefused() {
    assertThrows(DraftingException.class, () -> Wearer.of().withHead(Length.mm(58)));
    assertThrows(DraftingException.class, () -> Wearer.of().withHead(Length.cm(81)));
    assertThrows(DraftingException.class, () -> Wearer.of().withChest(Length.cm(19)));
    assertThrows(DraftingException.class, () -> Wearer.of().withChest(Length.cm(980)));
    assertThrows(DraftingException.class, () -> Wearer.of().withAge(-1));
    assertThrows(DraftingException.class, () -> Wearer.of().withAge(121));
  }
}
