package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import org.junit.jupiter.api.Test;

/** A strip has the shrinkage of its own cloth: cut = wanted / (1 - loss), arithmetic (CV-34). */
class StripShrinkageTest {
  private static final Fabric RIB =
      Fabric.of("rib", Structure.RIB, 0.8).withShrinkage(0.06, 0.04).withWidth(Length.cm(60));

  private static BandFit neck(Fabric rib, StripRule rule) {
    TapedEdge edge =
        TapedEdge.alongSeam("neck", Length.cm(64), TapedEdge.turningOfNeck(Angle.degrees(22)));
    return BandFit.of(edge, FoldedBand.of(Length.mm(13), Length.mm(7)), rib, rule);
  }

  @Test
  void theLoopIsCutLargerAndTheAllowancesAreNot() {
    BandFit washed = neck(RIB.prewashed(), StripRule.loop(Length.cm(60)));
    BandFit unwashed = neck(RIB, StripRule.loop(Length.cm(60)));
    assertEquals(washed.loop(), unwashed.loop());
    assertEquals(62.0, washed.cutLength().toCm(), 1e-9);
    assertEquals(60 / 0.94 + 2, unwashed.cutLength().toCm(), 1e-9);
    assertEquals(40, washed.cutWidth().toMm(), 1e-9);
    assertEquals(26 / 0.96 + 14, unwashed.cutWidth().toMm(), 1e-9);
    assertEquals(washed.outcome(), unwashed.outcome());
  }

  @Test
  void aStripThatIsCutAlreadyWillShrink() {
    BandFit fit = neck(RIB, StripRule.alreadyCut(Length.cm(62)));
    assertEquals(60 * 0.94, fit.loop().toCm(), 1e-9);
    assertEquals(62, fit.cutLength().toCm(), 1e-9);
  }

  @Test
  void marksLieOnTheCutStrip() {
    Strip strip =
        Strip.of(
            Assembly.of(Vest.plain().pattern()).opening("neck"),
            FoldedBand.of(Length.mm(13), Length.mm(7)),
            RIB,
            StripRule.recommended());
    double half =
        strip.marks().stream()
            .filter(mark -> mark.label().startsWith("half"))
            .findFirst()
            .orElseThrow()
            .along()
            .toMm();
    assertEquals(strip.loop().toMm() / 0.94 / 2, half, 1e-9);
  }
}
