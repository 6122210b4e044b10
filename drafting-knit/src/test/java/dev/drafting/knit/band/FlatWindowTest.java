package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlatWindowTest {
  private static final double TENSION = Fabric.of("rib", Structure.RIB, 0.8).tension();

  private static FlatWindow cm(double join, double turning, double width, double tension) {
    return FlatWindow.of(Length.cm(join), Angle.degrees(turning), Length.cm(width), tension);
  }

  /**
   * CV-13: a round hole in flat cloth (turning 360 degrees), fold edge L - 2 pi w and middle L - pi
   * w as shares of L; lengths of parallel curves.
   */
  @ParameterizedTest
  @CsvSource({
    "50,2,37.43,.749,.874", "55,2,42.43,.772,.886", "60,1.5,50.58,.843,.921",
    "60,2,47.43,.791,.895", "60,2.5,44.29,.738,.869", "70,2,57.43,.820,.910",
    "44,1,37.72,.857,.929"
  })
  void roundHoleInFlatCloth(double join, double width, double fold, double least, double most) {
    FlatWindow window = cm(join, 360, width, 0);
    assertEquals(fold, window.shortest().toCm(), 5e-3);
    assertEquals(least, window.shortest().toCm() / join, 5e-4);
    assertEquals(most, window.longest().toCm() / join, 5e-4);
  }

  /** CV-13b: stretch at the seam for a loop as long as the fold, L / l - 1. */
  @ParameterizedTest
  @CsvSource({"55,2,0.296", "60,2,0.265", "44,1,0.167"})
  void stretchAtTheSeam(double join, double width, double stretch) {
    assertEquals(stretch, join / cm(join, 360, width, 0).shortest().toCm() - 1, 5e-4);
  }

  /**
   * CV-39: windows by L - wK for 13 mm showing, neck 64 and armhole 42 at the seam, with shoulder
   * slopes of 20 and 25 degrees on front and back: the neck turns by 360 less four slopes, the
   * armhole by 180 and two slopes.
   */
  @ParameterizedTest
  @CsvSource({
    "64,280,57.65,60.82",
    "42,220,37.01,39.50",
    "64,260,58.10,61.05",
    "42,230,36.78,39.39"
  })
  void windowsOfTheRecordedGarment(double join, double turning, double least, double most) {
    FlatWindow window = cm(join, turning, 1.3, 0);
    assertEquals(least, window.shortest().toCm(), 5e-3);
    assertEquals(most, window.longest().toCm(), 5e-3);
  }

  /**
   * CV-39, calibration against one recorded garment, common practice with no source: loops 5 cm
   * shorter than the edge lie flat, 7 cm shorter pucker, at neck and armhole, for slopes of 20 and
   * 25 degrees, with the default tension and with either end of its range.
   */
  @ParameterizedTest
  @CsvSource({"64,280", "42,220", "64,260", "42,230"})
  void fiveShorterLiesFlatAndSevenShorterPuckers(double join, double turning) {
    for (double tension : new double[] {0.005, TENSION, 0.01}) {
      FlatWindow window = cm(join, turning, 1.3, tension);
      assertEquals(Outcome.LIES_FLAT, window.judge(Length.cm(join - 5)));
      assertEquals(Outcome.PUCKERS, window.judge(Length.cm(join - 7)));
    }
  }

  @Test
  void tensionLetsALoopBeAlittleShorter() {
    FlatWindow slack = cm(64, 280, 1.3, 0);
    FlatWindow tense = cm(64, 280, 1.3, 0.01);
    assertEquals(slack.shortest().toMm(), tense.shortest().toMm() * 1.01, 1e-9);
    assertEquals(slack.longest(), tense.longest());
  }

  @Test
  void marginIsPositiveInsideAndNegativeOutside() {
    FlatWindow window = cm(60, 360, 2, 0);
    assertEquals(0, window.margin(window.shortest()).toMm(), 1e-12);
    assertEquals(0, window.margin(window.longest()).toMm(), 1e-12);
    assertTrue(window.margin(window.middle()).isPositive());
    assertEquals(-5, window.margin(window.shortest().minus(Length.mm(5))).toMm(), 1e-9);
    assertEquals(-5, window.margin(window.longest().plus(Length.mm(5))).toMm(), 1e-9);
    assertEquals(Outcome.GAPES, window.judge(window.longest().plus(Length.mm(1))));
    assertEquals(Outcome.LIES_FLAT, window.judge(window.longest()));
    assertEquals(Outcome.LIES_FLAT, window.judge(window.shortest()));
  }

  @Test
  void anEdgeThatTurnsOutwardChangesTheEndsOfTheWindow() {
    FlatWindow window = cm(100, -40, 2, 0);
    assertEquals(100 + 2 * Math.toRadians(40), window.longest().toCm(), 1e-9);
    assertEquals(100 + Math.toRadians(40), window.shortest().toCm(), 1e-9);
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(DraftingException.class, () -> cm(0, 360, 2, 0));
    assertThrows(DraftingException.class, () -> cm(12, 360, 2, 0));
    assertThrows(DraftingException.class, () -> cm(60, 360, 0, 0));
    assertThrows(DraftingException.class, () -> cm(60, 360, 2, Double.NaN));
  }

  @Test
  void printsAsARange() {
    assertEquals("57.7 to 60.8 cm", cm(64, 280, 1.3, 0).toString());
  }
}
