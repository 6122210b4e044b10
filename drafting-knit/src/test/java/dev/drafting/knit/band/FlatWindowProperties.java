package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class FlatWindowProperties {
  private static final double ROUNDING = 1e-9;

  private static FlatWindow window(double join, double turning, double width, double tension) {
    return FlatWindow.of(Length.mm(join), Angle.degrees(turning), Length.mm(width), tension);
  }

  @Property
  void withTheSeamHeldAWiderBandIsNeverLonger(
      @ForAll @DoubleRange(min = 400, max = 900) double join,
      @ForAll @DoubleRange(min = 0, max = 360) double turning,
      @ForAll @DoubleRange(min = 3, max = 25) double width,
      @ForAll @DoubleRange(min = 0, max = 25) double wider,
      @ForAll @DoubleRange(min = 0, max = 0.05) double tension) {
    FlatWindow narrow = window(join, turning, width, tension);
    FlatWindow wide = window(join, turning, width + wider, tension);
    assertTrue(wide.shortest().toMm() <= narrow.shortest().toMm() + ROUNDING);
    assertTrue(wide.longest().toMm() <= narrow.longest().toMm() + ROUNDING);
  }

  @Property
  void withTheFinishedEdgeHeldAWiderBandIsNeverShorter(
      @ForAll @DoubleRange(min = 300, max = 900) double finished,
      @ForAll @DoubleRange(min = 0, max = 360) double turning,
      @ForAll @DoubleRange(min = 3, max = 25) double width,
      @ForAll @DoubleRange(min = 0, max = 25) double wider) {
    double radians = Math.toRadians(turning);
    FlatWindow narrow = window(finished + width * radians, turning, width, 0.0075);
    FlatWindow wide = window(finished + (width + wider) * radians, turning, width + wider, 0.0075);
    assertTrue(wide.shortest().toMm() >= narrow.shortest().toMm() - ROUNDING);
    assertTrue(wide.longest().toMm() >= narrow.longest().toMm() - ROUNDING);
  }

  @Property
  void aGarmentTwiceTheSizeHasAWindowTwiceTheSize(
      @ForAll @DoubleRange(min = 300, max = 900) double join,
      @ForAll @DoubleRange(min = -90, max = 360) double turning,
      @ForAll @DoubleRange(min = 3, max = 40) double width,
      @ForAll @DoubleRange(min = 1, max = 5) double scale) {
    FlatWindow once = window(join, turning, width, 0.0075);
    FlatWindow scaled = window(join * scale, turning, width * scale, 0.0075);
    assertEquals(once.shortest().toMm() * scale, scaled.shortest().toMm(), 1e-8);
    assertEquals(once.longest().toMm() * scale, scaled.longest().toMm(), 1e-8);
  }

  @Property
  void theRecommendedLoopLiesFlat(
      @ForAll @DoubleRange(min = 300, max = 900) double join,
      @ForAll @DoubleRange(min = -90, max = 360) double turning,
      @ForAll @DoubleRange(min = 3, max = 40) double width,
      @ForAll @DoubleRange(min = 0, max = 2) double usable) {
    FlatWindow window = window(join, turning, width, 0.0075);
    Length recommended =
        StripRule.recommended()
            .loop(Length.mm(join), window.loops(), Length.mm(join / (1 + usable)));
    assertEquals(Outcome.LIES_FLAT, window.judge(recommended));
  }

  @Property
  void ratioAndShorteningAgree(
      @ForAll @DoubleRange(min = 300, max = 900) double join,
      @ForAll @DoubleRange(min = 0.3, max = 1.5) double ratio) {
    FlatWindow window = window(join, 300, 13, 0.0075);
    Length edge = Length.mm(join);
    Length byRatio = StripRule.ratio(ratio).loop(edge, window.loops(), edge.dividedBy(1.5));
    Length byLength =
        StripRule.shorterBy(edge.minus(byRatio)).loop(edge, window.loops(), edge.dividedBy(1.5));
    assertEquals(byRatio.toMm(), byLength.toMm(), ROUNDING);
    assertEquals(byRatio, StripRule.loop(byRatio).loop(edge, window.loops(), edge.dividedBy(1.5)));
  }

  @Property
  void anAlreadyCutStripLosesItsTwoAllowances(
      @ForAll @DoubleRange(min = 300, max = 900) double cut,
      @ForAll @DoubleRange(min = 0, max = 50) double allowance) {
    FlatWindow window = window(640, 280, 13, 0.0075);
    StripRule rule = StripRule.alreadyCut(Length.mm(cut)).withJoinAllowance(Length.mm(allowance));
    assertEquals(
        cut - 2 * allowance,
        rule.loop(Length.mm(640), window.loops(), Length.mm(427)).toMm(),
        ROUNDING);
  }
}
