package dev.drafting.knit.fabric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeReadingTest {
  private static GaugeReading cm(double rest, double pulled, double relaxed) {
    return GaugeReading.of(Length.cm(rest), Length.cm(pulled), Length.cm(relaxed));
  }

  /** CV-1: arithmetic of stretch = (pulled - rest) / rest. */
  @ParameterizedTest
  @CsvSource({"12.5,0.25", "13.5,0.35", "15,0.50", "18,0.80", "20,1.00"})
  void stretchOnTheTenCentimetreGauge(double pulled, double stretch) {
    assertEquals(stretch, cm(10, pulled, 10).stretch(), 1e-12);
  }

  /** CV-1: "Considerations for Knit Fabrics", Utah State University Extension, 4 in gauge. */
  @ParameterizedTest
  @CsvSource({"5,0.25", "6,0.50", "7,0.75", "8,1.00"})
  void stretchOnTheFourInchGauge(double pulled, double stretch) {
    Length four = Length.inches(4);
    assertEquals(stretch, GaugeReading.of(four, Length.inches(pulled), four).stretch(), 1e-12);
  }

  /** CV-2: arithmetic of growth and recovery; the wording is common practice, no source. */
  @Test
  void growthAndRecovery() {
    GaugeReading reading = cm(10, 15, 10.2);
    assertEquals(0.02, reading.growth(), 1e-12);
    assertEquals(0.96, reading.recovery(), 1e-12);
    assertEquals(
        "10 cm pulled to 15 cm, back to 10.2 cm: stretch 50 %, growth 2 %, recovery 96 %",
        reading.toString());
  }

  @Test
  void readingsOutOfOrderAreRefusedWithWhatWouldBeAccepted() {
    assertTrue(refused(0, 15, 10).contains("at rest over 0"));
    assertTrue(refused(10, 10, 10).contains("Accepted: more than 100 mm"));
    assertTrue(refused(10, 15, 9.9).contains("Accepted: 100 mm to 150 mm"));
    assertTrue(refused(10, 15, 15.1).contains("Found: 151 mm"));
  }

  private static String refused(double rest, double pulled, double relaxed) {
    return String.valueOf(
        assertThrows(DraftingException.class, () -> cm(rest, pulled, relaxed)).getMessage());
  }

  @Test
  void isAValue() {
    assertEquals(cm(10, 15, 10.2), cm(10, 15, 10.2));
    assertEquals(cm(10, 15, 10.2).hashCode(), cm(10, 15, 10.2).hashCode());
    assertTrue(!cm(10, 15, 10.2).equals(cm(10, 15, 10.3)));
  }
}
