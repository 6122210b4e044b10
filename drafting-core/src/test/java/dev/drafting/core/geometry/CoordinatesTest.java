package dev.drafting.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.finding.DraftingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths of ways whatever their size, and coordinates as they are printed. */
class CoordinatesTest {
  /** 3, 4, 5 and 5, 12, 13, also where the squares are beyond the range of a double. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1e-3, 1e100, 1e-100, 1e145, 1e-145, 1e160, 1e-160, 1e300, 1e-300})
  void theLengthOfAWayNeitherOverflowsNorVanishes(double scale) {
    assertEquals(5 * scale, Coordinates.norm(3 * scale, -4 * scale), 1e-15 * scale);
    assertEquals(13 * scale, Coordinates.norm(-5 * scale, 12 * scale), 1e-14 * scale);
  }

  @Test
  void noWayHasNoLength() {
    assertEquals(0, Coordinates.norm(0, 0), 0);
    assertEquals(Double.MIN_VALUE, Coordinates.norm(0, -Double.MIN_VALUE), 0);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "12.5, 12.5",
    "-300, -300",
    "0.1234567891, 0.123456789",
    "0.0000000004, 0",
    "-0.0000000004, 0",
    "0.0000000005, 0.000000001",
    "999999999999, 999999999999",
    "1e12, 1.0E12",
    "-1e12, -1.0E12",
    "2.5e20, 2.5E20"
  })
  void isPrintedToNineDecimalsUnlessItIsFarOff(double value, String text) {
    assertEquals(text, Coordinates.text(value));
  }

  @Test
  void pairsStandInBrackets() {
    assertEquals("(1.23, -5)", Coordinates.pair(1.2345, -5.001, 2));
    assertEquals("(1.2345, -1.0E13)", Coordinates.pair(1.2345, -1e13));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-300, -1, 1.0000000000000002, Double.NaN, Double.POSITIVE_INFINITY})
  void parametersOffASegmentAreRefused(double t) {
    assertThrows(DraftingException.class, () -> Coordinates.checkParameter(t));
  }
}
