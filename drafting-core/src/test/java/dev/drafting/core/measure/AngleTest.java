package dev.drafting.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AngleTest {
  @Test
  void degreesAndRadians() {
    assertEquals(Math.PI, Angle.degrees(180).toRadians(), 0);
    assertEquals(22, Angle.degrees(22).toDegrees(), 1e-14);
    assertEquals(720, Angle.radians(4 * Math.PI).toDegrees(), 1e-12);
  }

  @Test
  void arithmeticIsNotReducedToOneTurn() {
    Angle turn = Angle.degrees(350).plus(Angle.degrees(20));
    assertEquals("370°", turn.toString());
    assertEquals("-10°", turn.minus(Angle.degrees(380)).toString());
    assertEquals("740°", turn.times(2).toString());
    assertEquals("-370°", turn.negated().toString());
    assertTrue(turn.compareTo(Angle.ZERO) > 0);
  }

  @ParameterizedTest
  @CsvSource({"280, 280°", "22.5, 22.5°", "0.004, 0°", "-0.004, 0°", "86.1858, 86.19°"})
  void printsTwoDecimals(double degrees, String text) {
    assertEquals(text, Angle.degrees(degrees).toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNotFiniteIsRefused(double number) {
    assertThrows(DraftingException.class, () -> Angle.radians(number));
    assertThrows(DraftingException.class, () -> Angle.degrees(number));
    assertThrows(DraftingException.class, () -> Angle.degrees(1).times(number));
  }

  @Test
  void isAValue() {
    assertEquals(Angle.ZERO, Angle.degrees(-0.0));
    assertEquals(Angle.ZERO.hashCode(), Angle.degrees(-0.0).hashCode());
    assertEquals(Angle.degrees(30), SerialCopy.of(Angle.degrees(30)));
    assertNotEquals(Angle.degrees(30), Angle.degrees(30.000001));
    assertNotEquals(Angle.degrees(30).hashCode(), Angle.degrees(31).hashCode());
  }
}
