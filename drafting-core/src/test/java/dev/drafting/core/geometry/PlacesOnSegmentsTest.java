package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.ORIGIN;
import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths, places and bends along lines, arcs and curves of them; how near is near enough. */
class PlacesOnSegmentsTest {
  private static final Line LINE = new Line(p(10, 10), p(130, 170));
  private static final Arc ARC =
      Arc.of(p(5, 5), Length.mm(100), Angle.degrees(30), Angle.degrees(-200));

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.25, 0.6, 1})
  void linesAndArcsAreRunThroughEvenly(double t) {
    assertEquals(t, LINE.parameterAt(Length.mm(200 * t)), 1e-15);
    assertEquals(200 * t, LINE.lengthTo(t).toMm(), 1e-12);
    double round = 100 * Math.toRadians(200);
    assertEquals(t, ARC.parameterAt(Length.mm(round * t)), 1e-14);
    assertEquals(round * t, ARC.lengthTo(t).toMm(), 1e-11);
  }

  @Test
  void anArcGrowsWithItsRadius() {
    Arc larger = ARC.map(Transform.scaling(2.5));
    assertEquals(250, larger.radius().toMm(), 1e-12);
    assertEquals(2.5 * ARC.length().toMm(), larger.length().toMm(), 1e-11);
    assertEquals(-1 / 250.0, larger.curvatureAt(0.5), 1e-15);
    assertThrows(DraftingException.class, () -> ARC.directionAt(1.1));
    assertThrows(DraftingException.class, () -> ARC.directionAt(-0.1));
  }

  /** Start, end and sweep fit within 1e-6 of the radius. */
  @Test
  void theNumbersOfAnArcMayBeAMillionthOff() {
    double[] numbers = ARC.toArray();
    numbers[6] += 0.9e-4;
    assertEquals(100.00009, Arc.of(numbers).radius().toMm(), 1e-9);
    numbers[6] += 0.2e-4;
    assertThrows(DraftingException.class, () -> Arc.of(numbers));
    double[] turned = ARC.toArray();
    turned[7] += 0.9e-6;
    assertEquals(turned[7], Arc.of(turned).sweep().toRadians(), 1e-15);
    turned[7] += 0.2e-6;
    assertThrows(DraftingException.class, () -> Arc.of(turned));
  }

  /** Whatever the size: three points bend when one is off the line by 1e-12 of their span. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1, 1e3})
  void threePointsBendOrLieOnALineWhateverTheirSize(double size) {
    Point start = ORIGIN;
    Point end = p(2 * size, 0);
    Arc arc = Arc.through(start, p(size, 2e-11 * size), end);
    assertEquals(2 * size, arc.length().toMm(), 1e-9 * size);
    assertThrows(DraftingException.class, () -> Arc.through(start, p(size, 1e-13 * size), end));
  }

  @Test
  void bendsAlongACurve() {
    Curve curve =
        Curve.of(
            new Line(p(0, 0), p(50, 0)),
            Arc.of(p(50, 20), Length.mm(20), Angle.degrees(-90), Angle.degrees(90)));
    assertEquals(0, curve.curvatureAt(Length.mm(20)), 0);
    assertEquals(1 / 20.0, curve.curvatureAt(Length.mm(60)), 0);
    assertEquals(-1 / 20.0, curve.reversed().curvatureAt(Length.mm(10)), 0);
  }

  /** A tenth has no exact double: added up one by one, 100 000 of them are 1.9e-8 off. */
  @Test
  void longSumsKeepTheirDigits() {
    List<Segment> thereAndBack = new ArrayList<>();
    for (int i = 0; i < 50_000; i++) {
      thereAndBack.add(new Line(p(0, 0), p(0.1, 0)));
      thereAndBack.add(new Line(p(0.1, 0), p(0, 0)));
    }
    assertEquals(10_000, Curve.of(thereAndBack).length().toMm(), 2e-12);
  }

  /** A length is on a curve of 50 m up to 0.05 µm off its ends, on a short one up to 1e-6 mm. */
  @Test
  void aBillionthOfTheLengthOffTheEndIsTheEnd() {
    Line roll = new Line(p(0, 0), p(50_000, 0));
    assertEquals(1, roll.parameterAt(Length.mm(50_000 + 4e-5)), 0);
    assertEquals(0, roll.parameterAt(Length.mm(-4e-5)), 0);
    assertThrows(DraftingException.class, () -> roll.parameterAt(Length.mm(50_000 + 6e-5)));
    assertThrows(DraftingException.class, () -> roll.parameterAt(Length.mm(-6e-5)));
    Line scrap = new Line(p(0, 0), p(2, 0));
    assertEquals(1, scrap.parameterAt(Length.mm(2 + 9e-7)), 0);
    assertThrows(DraftingException.class, () -> scrap.parameterAt(Length.mm(2 + 2e-6)));
  }

  /** Different values are told apart by their hash codes, else sets of them would be slow. */
  @Test
  void hashCodesDiffer() {
    assertNotEquals(ARC.hashCode(), ARC.reversed().hashCode());
    assertNotEquals(Curve.of(ARC).hashCode(), Curve.of(LINE).hashCode());
    assertNotEquals(
        Transform.scaling(2).hashCode(), Transform.rotation(ORIGIN, Angle.degrees(3)).hashCode());
  }
}
