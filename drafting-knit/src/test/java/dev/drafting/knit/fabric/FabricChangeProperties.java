package dev.drafting.knit.fabric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.Vest;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of changing fabric. */
class FabricChangeProperties {
  private static final Length BODY = Length.cm(98);
  private static final Length GARMENT = Length.cm(92);

  private static FabricChange change(double from, double to) {
    return FabricChange.of(
            Fabric.of("from", Structure.OTHER, from).withRecovery(1),
            Fabric.of("to", Structure.OTHER, to).withRecovery(1))
        .withGirth(BODY, GARMENT);
  }

  @Property(tries = 40)
  void joinedEdgesStayMatched(
      @ForAll @DoubleRange(min = 0.15, max = 1.2) double from,
      @ForAll @DoubleRange(min = 0.05, max = 1.2) double to,
      @ForAll @DoubleRange(min = 10, max = 30) double slope) {
    Pattern vest = Vest.plain().slope(slope).pattern();
    assertMatched(change(from, to).applyTo(vest), Assembly.of(vest));
  }

  private static void assertMatched(Pattern changed, Assembly before) {
    Assembly after = Assembly.of(changed);
    for (int i = 0; i < before.seamChecks().size(); i++) {
      assertEquals(
          before.seamChecks().get(i).difference().toMm(),
          after.seamChecks().get(i).difference().toMm(),
          1e-6);
    }
  }

  @Property(tries = 40)
  void moreStretchIsNeverWider(
      @ForAll @DoubleRange(min = 0.15, max = 1.2) double from,
      @ForAll @DoubleRange(min = 0.05, max = 1.2) double to,
      @ForAll @DoubleRange(min = 0, max = 0.5) double more) {
    assertTrue(
        change(from, to + more)
                .girth()
                .orElseThrow()
                .compareTo(change(from, to).girth().orElseThrow())
            <= 0);
  }

  @Property(tries = 40)
  void thereAndBackIsTheSame(
      @ForAll @DoubleRange(min = 0.15, max = 1.2) double from,
      @ForAll @DoubleRange(min = 0.15, max = 1.2) double to) {
    Length there = change(from, to).girth().orElseThrow();
    Length back = change(to, from).withGirth(BODY, there).girth().orElseThrow();
    assertEquals(GARMENT.toMm(), back.toMm(), 1e-9);
  }
}
