package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Tolerances: a quarter to half an inch where the fit depends on a measure, never half the step
 * between two sizes (secondary literature on garment quality, CV-24 of the project's list).
 */
class CopyCheckTest {
  private static final List<Measure> COPY =
      List.of(
          new Measure("chest, all round", Length.cm(92)),
          new Measure("side seam", Length.cm(35)),
          new Measure("neck, finished edge", Length.cm(60)));

  private static CopyCheck against(String name, double cm) {
    return CopyCheck.of(List.of(new Measure(name, Length.cm(cm))), COPY);
  }

  @Test
  void acceptsAQuarterOfAnInchFlatAndHalfAnInchAllRound() {
    assertTrue(against("side seam", 35.6).off().isEmpty());
    assertEquals(1, against("side seam", 35.61).off().size());
    assertTrue(against("chest, all round", 90.7).off().isEmpty());
    assertEquals(1, against("chest, all round", 90.69).off().size());
    assertTrue(against("neck, finished edge", 61.3).off().isEmpty());
    assertTrue(Length.mm(6).compareTo(Length.inches(0.25)) <= 0);
    assertTrue(Length.mm(13).minus(Length.inches(0.5)).toMm() < 0.5);
  }

  @Test
  void namesTheMeasuresThatThereAre() {
    DraftingException refusal = assertThrows(DraftingException.class, () -> against("sleeve", 20));
    assertEquals("chest, all round, side seam, neck, finished edge", refusal.accepted());
  }

  @Test
  void readsWell() {
    CopyCheck check = against("side seam", 36);
    assertEquals("1 measure, 1 off by more than is accepted", check.toString());
    assertEquals(check, against("side seam", 36));
    assertEquals(check.hashCode(), against("side seam", 36).hashCode());
  }
}
