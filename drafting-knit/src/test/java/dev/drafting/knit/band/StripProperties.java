package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Laws of strips on drafted outlines; offsets are good to 0.01 mm. */
class StripProperties {
  private static final double OFFSET = 0.05;
  private static final Fabric RIB = Fabric.of("rib", Structure.RIB, 1.0);

  private static Strip neck(Vest vest, double showing) {
    FoldedBand band = FoldedBand.of(Length.mm(showing), Length.mm(7));
    Opening neck = Assembly.of(vest.neck(band).pattern()).opening("neck");
    return Strip.of(neck, band, RIB, StripRule.recommended());
  }

  @Property(tries = 30)
  void withTheFinishedEdgeHeldAWiderBandIsNeverShorter(
      @ForAll @DoubleRange(min = 0, max = 30) double slope,
      @ForAll @DoubleRange(min = 8, max = 20) double depth,
      @ForAll @DoubleRange(min = 3, max = 20) double showing,
      @ForAll @DoubleRange(min = 0, max = 15) double wider) {
    Vest vest = Vest.plain().slope(slope).frontDepth(depth);
    Strip narrow = neck(vest, showing);
    Strip wide = neck(vest, showing + wider);
    assertTrue(wide.loop().toMm() >= narrow.loop().toMm() - OFFSET);
    assertEquals(narrow.finishedEdge(), wide.finishedEdge());
  }

  @Property(tries = 30)
  void theOutlineAgreesWithTheTapeMeasure(
      @ForAll @DoubleRange(min = 0, max = 30) double slope,
      @ForAll @DoubleRange(min = 8, max = 20) double depth,
      @ForAll @DoubleRange(min = 3, max = 20) double showing) {
    Strip strip = neck(Vest.plain().slope(slope).frontDepth(depth), showing);
    FlatWindow byTape =
        FlatWindow.of(
            strip.joinLine(), strip.opening().turning(), Length.mm(showing), RIB.tension());
    assertEquals(byTape.shortest().toMm(), strip.window().shortest().toMm(), OFFSET);
    assertEquals(byTape.longest().toMm(), strip.window().longest().toMm(), OFFSET);
  }

  @Property(tries = 20)
  void aVestTwiceTheSizeTakesAStripTwiceTheSize(
      @ForAll @DoubleRange(min = 8, max = 20) double depth,
      @ForAll @DoubleRange(min = 0.5, max = 2) double scale) {
    Vest vest = Vest.plain().frontDepth(depth);
    Strip once = neck(vest, 13);
    Strip scaled = neck(vest.scale(scale), 13 * scale);
    assertEquals(once.loop().toMm() * scale, scaled.loop().toMm(), OFFSET * (1 + scale));
    assertEquals(once.outcome(), scaled.outcome());
  }

  @Property(tries = 20)
  void whereTheOutlineStartsDoesNotMatter(
      @ForAll @DoubleRange(min = 8, max = 20) double depth,
      @ForAll @IntRange(min = 1, max = 5) int rotation) {
    Vest vest = Vest.plain().frontDepth(depth);
    Strip strip = neck(vest, 13);
    Strip turned = neck(vest.rotation(rotation), 13);
    assertEquals(strip.loop().toMm(), turned.loop().toMm(), 1e-6);
    assertEquals(
        strip.marks().stream().map(StripMark::label).toList(),
        turned.marks().stream().map(StripMark::label).toList());
    for (int i = 0; i < strip.marks().size(); i++) {
      assertEquals(strip.marks().get(i).along().toMm(), turned.marks().get(i).along().toMm(), 1e-6);
    }
  }

  @Property(tries = 20)
  void ratioAndShorteningAgree(
      @ForAll @DoubleRange(min = 0.5, max = 1.2) double ratio,
      @ForAll @DoubleRange(min = 8, max = 20) double depth) {
    Strip any = neck(Vest.plain().frontDepth(depth), 13);
    Strip byRatio = Strip.of(any.opening(), any.finish(), RIB, StripRule.ratio(ratio));
    Length shortening = any.joinLine().minus(byRatio.loop());
    Strip byLength = Strip.of(any.opening(), any.finish(), RIB, StripRule.shorterBy(shortening));
    assertEquals(byRatio.loop().toMm(), byLength.loop().toMm(), 1e-9);
    assertEquals(byRatio.outcome(), byLength.outcome());
  }

  /** The neck whose seam is as long as asked, with a band of some width: found by halving. */
  private static Strip withSeam(double seam, double slope, double showing) {
    double shallow = 4;
    double deep = 40;
    for (int i = 0; i < 30; i++) {
      double middle = (shallow + deep) / 2;
      Vest vest = Vest.plain().slope(slope).frontDepth(middle);
      if (neck(vest, showing).joinLine().toMm() < seam) {
        shallow = middle;
      } else {
        deep = middle;
      }
    }
    return neck(Vest.plain().slope(slope).frontDepth(shallow), showing);
  }

  @Property(tries = 10)
  void withTheSeamHeldAWiderBandIsNeverLonger(
      @ForAll @DoubleRange(min = 0, max = 30) double slope,
      @ForAll @DoubleRange(min = 3, max = 15) double showing,
      @ForAll @DoubleRange(min = 0, max = 10) double wider) {
    Strip narrow = withSeam(640, slope, showing);
    Strip wide = withSeam(640, slope, showing + wider);
    assertEquals(narrow.joinLine().toMm(), wide.joinLine().toMm(), OFFSET);
    assertTrue(wide.loop().toMm() <= narrow.loop().toMm() + OFFSET);
  }

  /** The two armholes of a vest are one seam line and its image: their strips are the same. */
  @Property(tries = 20)
  void leftAndRightAreTheSame(
      @ForAll @DoubleRange(min = 0, max = 30) double slope, @ForAll MarkSpacing spacing) {
    Assembly vest = Assembly.of(Vest.plain().slope(slope).pattern());
    StripRule rule = StripRule.recommended().withMarks(spacing);
    Opening rightEdge = vest.opening("armhole (right)");
    Strip right = Strip.of(rightEdge, (BandFinish) rightEdge.finish(), RIB, rule);
    Opening leftEdge = vest.opening("armhole (left)");
    Strip left = Strip.of(leftEdge, (BandFinish) leftEdge.finish(), RIB, rule);
    assertEquals(right.loop().toMm(), left.loop().toMm(), 1e-6);
    assertEquals(right.sections().size(), left.sections().size());
  }

  /** Every part of the strip meets its part of the seam, and no part is lost, however marked. */
  @Property(tries = 30)
  void thePartsOfAStripAddUpToItAndToItsSeam(
      @ForAll @DoubleRange(min = 0, max = 30) double slope,
      @ForAll @DoubleRange(min = 8, max = 20) double depth,
      @ForAll @DoubleRange(min = 0.7, max = 1.1) double ratio,
      @ForAll MarkSpacing spacing) {
    Strip any = neck(Vest.plain().slope(slope).frontDepth(depth), 13);
    Strip strip =
        Strip.of(any.opening(), any.finish(), RIB, StripRule.ratio(ratio).withMarks(spacing));
    double onEdge = 0;
    double onStrip = 0;
    for (StripSection section : strip.sections()) {
      assertTrue(section.onStrip().isPositive());
      onEdge += section.onEdge().toMm();
      onStrip += section.onStrip().toMm();
    }
    assertEquals(strip.joinLine().toMm(), onEdge, 1e-6);
    assertEquals(strip.loop().toMm(), onStrip, 1e-6);
  }
}
