package dev.drafting.knit.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class BodySizesTest {
  private static Length cm(BodySizes sizes, String size, BodyMeasure measure) {
    return sizes.body(size).measure(measure).orElseThrow();
  }

  /**
   * CV-29, EN 13402-3 as a published package of size tables gives it: 74, 78 to 102, 107 to 131.
   */
  @Test
  void womensSizesAreTheIntervalsOfTheStandard() {
    BodySizes women = BodySizes.women();
    assertEquals(12, women.names().size());
    assertEquals(
        List.of("74 cm to 78 cm", "98 cm to 102 cm", "102 cm to 107 cm", "125 cm to 131 cm"),
        Stream.of("76", "100", "104", "128").map(women::interval).map(Object::toString).toList());
  }

  @Test
  void aBoundaryBelongsToTheSizeAboveIt() {
    BodySizes women = BodySizes.women();
    Body bust = Body.of().with(BodyMeasure.BUST_GIRTH, Length.cm(94));
    assertEquals(Optional.of("96"), women.sizeOf(bust));
    assertEquals(
        Optional.of("92"), women.sizeOf(bust.with(BodyMeasure.BUST_GIRTH, Length.cm(93.9))));
    assertEquals(Optional.empty(), women.sizeOf(bust.with(BodyMeasure.BUST_GIRTH, Length.cm(131))));
    assertThrows(DraftingException.class, () -> women.sizeOf(Body.of()));
  }

  /** Sizes of 6 cm of height, the named one in their middle: 104 is from 101 to 107 cm. */
  @Test
  void aChildsSizeReachesThreeCentimetresToEitherSide() {
    BodySizes children = BodySizes.children();
    assertEquals("101 cm to 107 cm", children.interval("104").toString());
    assertEquals("53 cm to 59 cm", children.interval("56").toString());
    assertEquals("155 cm to 161 cm", children.interval("158").toString());
    Body tall = Body.of().with(BodyMeasure.HEIGHT, Length.cm(107));
    assertEquals(Optional.of("110"), children.sizeOf(tall));
  }

  static List<BodySizes> tables() {
    return List.of(BodySizes.women(), BodySizes.men(), BodySizes.children());
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyMeasureGrowsOrStaysAndEverySizeIsItsOwn(BodySizes sizes) {
    Body below = sizes.body(sizes.names().get(0));
    for (String name : sizes.names()) {
      Body body = sizes.body(name);
      assertEquals(below.measures().keySet(), body.measures().keySet(), name);
      below
          .measures()
          .forEach(
              (measure, length) ->
                  assertTrue(
                      length.compareTo(body.measure(measure).orElseThrow()) <= 0,
                      () -> measure + " of " + name));
      assertEquals(Optional.of(name), sizes.sizeOf(body));
      below = body;
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void oneIntervalBeginsWhereTheOneBelowEnds(BodySizes sizes) {
    List<String> names = sizes.names();
    for (int i = 1; i < names.size(); i++) {
      assertEquals(sizes.interval(names.get(i - 1)).most(), sizes.interval(names.get(i)).least());
    }
  }

  /**
   * Grading steps between sizes of 4 cm, common practice, no source: girths 4, neck 1, back 0.5.
   */
  @ParameterizedTest
  @CsvSource({
    "waist girth,4",
    "hip girth,4",
    "neck-base girth,1",
    "scye depth,0.5",
    "cervical to waist,0.5"
  })
  void womensStepsAreThoseOfPractice(String measure, double step) {
    BodySizes women = BodySizes.women();
    BodyMeasure of = BodyMeasure.of(measure);
    assertEquals(step, cm(women, "92", of).minus(cm(women, "88", of)).toCm(), 1e-9);
  }

  /**
   * CV-17, CV-18: between the third and 97th hundredth of the WHO Child Growth Standards at 12, 24
   * and 48 months, and near the larger median of the UK 1990 reference from four years on. Heights
   * for the ages from the same standards, from memory: 12 months 76, 24 months 87, 4 years 103, 6
   * years 116, 8 years 128, 10 years 138 cm.
   */
  @ParameterizedTest
  @CsvSource({
    "74,42.3,48.5",
    "86,44.6,50.7",
    "104,51.1,53.5",
    "116,52.2,54.5",
    "128,53,55.5",
    "140,53.7,56"
  })
  void childrensHeadsAreThoseOfGrowthCharts(String size, double least, double most) {
    double head = cm(BodySizes.children(), size, BodyMeasure.HEAD_GIRTH).toCm();
    assertTrue(head >= least && head <= most, () -> size + ": " + head);
  }

  @Test
  void everyChildHasAnAgeUnderFourteen() {
    BodySizes children = BodySizes.children();
    for (String name : children.names()) {
      assertTrue(children.body(name).age().getAsInt() < 14, name);
    }
    assertEquals("56", children.names().get(0));
    assertEquals("158", children.names().get(17));
  }

  @Test
  void aTableOfOnesOwnReachesHalfWay() {
    Map<String, Body> crew = new LinkedHashMap<>();
    crew.put("S", Body.of().with(BodyMeasure.CHEST_GIRTH, Length.cm(90)));
    crew.put("M", Body.of().with(BodyMeasure.CHEST_GIRTH, Length.cm(98)));
    crew.put("L", Body.of().with(BodyMeasure.CHEST_GIRTH, Length.cm(110)));
    BodySizes sizes = BodySizes.of(BodyMeasure.CHEST_GIRTH, crew);
    assertEquals(
        List.of("86 cm to 94 cm", "94 cm to 104 cm", "104 cm to 116 cm"),
        sizes.names().stream().map(sizes::interval).map(Object::toString).toList());
    assertEquals("sizes by chest girth: S, M, L", sizes.toString());
    assertEquals(List.of("M", "L"), sizes.between("M", "L").names());
    assertThrows(DraftingException.class, () -> sizes.between("L", "M"));
    assertThrows(DraftingException.class, () -> sizes.body("XL"));
    crew.put("XL", Body.of().with(BodyMeasure.CHEST_GIRTH, Length.cm(108)));
    DraftingException e =
        assertThrows(DraftingException.class, () -> BodySizes.of(BodyMeasure.CHEST_GIRTH, crew));
    assertEquals("size XL", e.where());
    assertEquals("more than 110 cm", e.accepted());
    assertThrows(DraftingException.class, () -> BodySizes.of(BodyMeasure.HIP_GIRTH, crew));
    assertThrows(DraftingException.class, () -> BodySizes.of(BodyMeasure.HEIGHT, Map.of()));
  }
}
