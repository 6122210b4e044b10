package dev.drafting.knit.size;

import static dev.drafting.knit.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BodyTest {
  @ParameterizedTest
  @EnumSource(BodyMeasure.class)
  void everyMeasureIsFoundByItsNameAndHasBounds(BodyMeasure measure) {
    assertEquals(measure, BodyMeasure.of(measure.toString()));
    assertThrows(DraftingException.class, () -> Body.of().with(measure, Length.cm(1)));
    assertThrows(DraftingException.class, () -> Body.of().with(measure, Length.cm(400)));
  }

  @Test
  void aMeasureThatNobodyTakesIsRefusedWithThoseThatThereAre() {
    DraftingException e =
        assertThrows(DraftingException.class, () -> BodyMeasure.of("hip circumference"));
    assertTrue(e.accepted().contains("waist girth, hip girth"), e.accepted());
  }

  /** CV-17, WHO Child Growth Standards: the head of a newborn girl, 33.9 cm. */
  @Test
  void knowsWhatWasMeasured() {
    Body body = Body.of().with(BodyMeasure.HEAD_GIRTH, Length.cm(33.9)).withAge(0);
    assertEquals("head girth 33.9 cm, 0 years", body.toString());
    differ(
        body,
        Body.of().withAge(0).with(BodyMeasure.HEAD_GIRTH, Length.cm(33.9)),
        body.withAge(1),
        Body.of().with(BodyMeasure.HEAD_GIRTH, Length.cm(33.9)),
        body.with(BodyMeasure.HEAD_GIRTH, Length.cm(34)));
    assertEquals("no measures", Body.of().toString());
    assertThrows(DraftingException.class, () -> body.withAge(121));
  }

  /** The bounds themselves are bodies; what is beyond them is named with what is accepted. */
  @Test
  void theBoundsOfAMeasureAndOfAnAgeBelongToIt() {
    Body least = Body.of().with(BodyMeasure.HEIGHT, Length.cm(30)).withAge(120);
    assertEquals("height 30 cm, 120 years", least.toString());
    Body most = least.with(BodyMeasure.HEIGHT, Length.cm(250)).withAge(1);
    assertEquals("height 250 cm, 1 year", most.toString());
    assertEquals(OptionalInt.of(1), most.age());
    assertEquals(OptionalInt.empty(), Body.of().age());
    assertEquals(Map.of(BodyMeasure.HEIGHT, Length.cm(250)), most.measures());
    DraftingException e =
        assertThrows(
            DraftingException.class, () -> Body.of().with(BodyMeasure.HEIGHT, Length.cm(29.9)));
    assertEquals("height: 30 cm to 250 cm", e.where() + ": " + e.accepted());
    assertThrows(DraftingException.class, () -> Body.of().withAge(-1));
    assertNotEquals(least, most);
    assertNotEquals(least, least.withAge(119));
    assertNotEquals(least.hashCode(), most.hashCode());
    assertNotEquals(least, "height 30 cm, 120 years");
  }

  @Test
  void everyPartOfARuleCounts() {
    BodyRule rule = BodyRule.girth("hem", Fit.ease(0.1), BodyMeasure.ANKLE_GIRTH);
    assertEquals("hem: ankle girth, ease 10 %", rule.toString());
    assertEquals(
        "height: 90 % of inside leg less 20 mm, or as usual",
        BodyRule.length("height", BodyMeasure.INSIDE_LEG)
            .times(0.9)
            .plus(Length.cm(-2))
            .toString());
    assertEquals(
        "height: height or inside leg plus 20 mm, or as usual",
        BodyRule.length("height", BodyMeasure.HEIGHT, BodyMeasure.INSIDE_LEG)
            .plus(Length.cm(2))
            .toString());
    List<BodyRule> others =
        List.of(
            BodyRule.girth("cuff", Fit.ease(0.1), BodyMeasure.ANKLE_GIRTH),
            BodyRule.girth("hem", Fit.ease(0.2), BodyMeasure.ANKLE_GIRTH),
            BodyRule.girth("hem", Fit.ease(0.1), BodyMeasure.CALF_GIRTH),
            BodyRule.length("hem", BodyMeasure.ANKLE_GIRTH),
            rule.times(0.5),
            rule.plus(Length.mm(1)));
    for (BodyRule other : others) {
      assertNotEquals(rule, other);
      assertNotEquals(rule.hashCode(), other.hashCode());
    }
    assertEquals(rule, BodyRule.girth("hem", Fit.ease(0.1), BodyMeasure.ANKLE_GIRTH));
    assertEquals("hem", rule.dimension());
    assertEquals(List.of(BodyMeasure.ANKLE_GIRTH), rule.measures());
    assertEquals(Fit.ease(0.1), rule.fit().orElseThrow());
  }

  @Test
  void aRuleReadsWell() {
    BodyRule rule = BodyRule.girth("hem", Fit.stretchUsed(0.2), BodyMeasure.ANKLE_GIRTH).times(0.5);
    assertEquals("hem: 50 % of ankle girth, 20 % of the stretch used", rule.toString());
    assertThrows(DraftingException.class, () -> BodyRule.length("hem"));
  }
}
