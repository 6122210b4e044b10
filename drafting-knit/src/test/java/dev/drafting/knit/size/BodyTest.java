package dev.drafting.knit.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
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
    assertEquals(body, Body.of().withAge(0).with(BodyMeasure.HEAD_GIRTH, Length.cm(33.9)));
    assertEquals("no measures", Body.of().toString());
    assertThrows(DraftingException.class, () -> body.withAge(121));
  }

  @Test
  void aRuleReadsWell() {
    BodyRule rule = BodyRule.girth("hem", Fit.stretchUsed(0.2), BodyMeasure.ANKLE_GIRTH).times(0.5);
    assertEquals("hem: 50 % of ankle girth, 20 % of the stretch used", rule.toString());
    assertThrows(DraftingException.class, () -> BodyRule.length("hem"));
  }
}
