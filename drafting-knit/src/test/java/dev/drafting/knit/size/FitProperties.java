package dev.drafting.knit.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class FitProperties {
  private static Fabric fabric(double stretch) {
    return Fabric.of("knit", Structure.OTHER, stretch);
  }

  @Property
  void whatIsUsedIsWhatWasAskedFor(
      @ForAll @DoubleRange(min = 0.01, max = 1) double share,
      @ForAll @DoubleRange(min = 0.05, max = 2) double stretch,
      @ForAll @DoubleRange(min = 20, max = 200) double body) {
    Length garment = Fit.stretchUsed(share).garment(Length.cm(body), fabric(stretch));
    assertTrue(garment.compareTo(Length.cm(body)) < 0);
    assertEquals(share, Ease.of(Length.cm(body), garment).shareOfStretch(fabric(stretch)), 1e-9);
  }

  @Property
  void aLooserFitIsWider(
      @ForAll @DoubleRange(min = -0.5, max = 2) double one,
      @ForAll @DoubleRange(min = -0.5, max = 2) double other) {
    Length first = Fit.ease(one).garment(Length.cm(90), fabric(0.3));
    Length second = Fit.ease(other).garment(Length.cm(90), fabric(0.3));
    assertTrue(one <= other ? first.compareTo(second) <= 0 : first.compareTo(second) >= 0);
  }
}
