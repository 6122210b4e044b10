package dev.drafting.knit.size;

import static dev.drafting.knit.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitTest {
  private static Fabric fabric(double stretch) {
    return Fabric.of("knit", Structure.OTHER, stretch);
  }

  /** CV-5, exact: B / (1 + u s) for a bust of 92 cm and a fifth of the stretch. */
  @ParameterizedTest
  @CsvSource({"0.50,83.636", "0.30,86.792", "0.25,87.619", "0.75,80.0", "1.00,76.667"})
  void usesAShareOfTheStretch(double stretch, double girth) {
    Length garment = Fit.stretchUsed(0.2).garment(Length.cm(92), fabric(stretch));
    assertEquals(girth, garment.toCm(), 0.0005);
  }

  /** CV-5: the same garment, its ease as a length and as a share. */
  @Test
  void threeWaysToSayTheSame() {
    Fabric fabric = fabric(0.5);
    double used = Fit.stretchUsed(0.2).garment(Length.cm(92), fabric).toCm();
    assertEquals(used, Fit.ease(Length.cm(-8.364)).garment(Length.cm(92), fabric).toCm(), 0.001);
    assertEquals(used, Fit.ease(-0.0909).garment(Length.cm(92), fabric).toCm(), 0.001);
  }

  /**
   * CV-6, exact: hip 96 less 20 % is 76.8 and needs 25 % of a cloth that gives 20 %; the least that
   * such a cloth can be worn at is 80.
   */
  @Test
  void aReductionNeedsMoreStretchThanItsOwnShare() {
    Fabric cloth = fabric(0.20);
    Length garment = Fit.ease(-0.20).garment(Length.cm(96), cloth);
    assertEquals(76.8, garment.toCm(), 1e-9);
    assertEquals(0.25, Ease.of(Length.cm(96), garment).extension(), 1e-12);
    assertEquals(80, Fit.stretchUsed(1).garment(Length.cm(96), cloth).toCm(), 1e-9);
  }

  @Test
  void isAValueThatReadsWell() {
    assertEquals("ease 60 mm", Fit.ease(Length.cm(6)).toString());
    assertEquals("ease -5 %", Fit.ease(-0.05).toString());
    assertEquals("20 % of the stretch used", Fit.stretchUsed(0.2).toString());
    differ(
        Fit.ease(0.2), Fit.ease(0.2), Fit.stretchUsed(0.2), Fit.ease(0.1), Fit.ease(Length.cm(2)));
    differ(Fit.ease(0.0), Fit.ease(-0.0), Fit.stretchUsed(0));
    assertNotEquals(Fit.ease(0.0), Fit.ease(Length.ZERO));
  }

  @Test
  void theBoundsOfAFitBelongToIt() {
    assertEquals(45, Fit.ease(-0.5).garment(Length.cm(90), fabric(0.3)).toCm(), 1e-9);
    assertEquals(270, Fit.ease(2).garment(Length.cm(90), fabric(0.3)).toCm(), 1e-9);
    assertEquals(90, Fit.stretchUsed(0).garment(Length.cm(90), fabric(0.3)).toCm(), 1e-9);
    assertEquals("100 % of the stretch used", Fit.stretchUsed(1).toString());
    assertThrows(DraftingException.class, () -> Fit.ease(2.01));
    assertThrows(DraftingException.class, () -> Fit.stretchUsed(-0.01));
    assertNotEquals(Fit.ease(0.2).hashCode(), Fit.ease(0.3).hashCode());
    assertNotEquals(Fit.ease(Length.cm(2)), Fit.ease(Length.cm(3)));
    assertNotEquals(Fit.ease(0.2), "ease 20 %");
  }

  @Test
  void whatLeavesNothingIsRefused() {
    assertThrows(DraftingException.class, () -> Fit.ease(-0.51));
    assertThrows(DraftingException.class, () -> Fit.ease(Double.NaN));
    assertThrows(DraftingException.class, () -> Fit.stretchUsed(1.01));
    Fit fit = Fit.ease(Length.cm(-90));
    assertThrows(DraftingException.class, () -> fit.garment(Length.cm(90), fabric(0.3)));
  }
}
