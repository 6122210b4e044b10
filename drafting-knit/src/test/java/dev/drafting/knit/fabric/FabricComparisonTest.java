package dev.drafting.knit.fabric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.knit.fabric.FabricComparison.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The limits are the library's choice, in line with common practice; there is no source. */
class FabricComparisonTest {
  private static final Fabric OLD =
      Fabric.of("old", Structure.JERSEY, 0.40).withRecovery(0.96).withMass(160);

  private static FabricComparison with(Fabric candidate) {
    return FabricComparison.of(OLD, candidate);
  }

  @Test
  void alikeWithinBothUncertainties() {
    Fabric near = Fabric.of("near", Structure.JERSEY, 0.47).withRecovery(0.97).withMass(180);
    assertEquals(Verdict.ALIKE, with(near).verdict());
    assertEquals("alike", with(near).toString());
    assertEquals(
        "adapt: gives 48 % across instead of 40 %",
        with(Fabric.of("far", Structure.JERSEY, 0.48)).toString());
    assertEquals(
        Verdict.ALIKE,
        with(Fabric.of("far", Structure.JERSEY, 0.48).withUncertainty(0.07)).verdict());
  }

  @Test
  void everythingThatDiffersIsNamed() {
    Fabric other =
        Fabric.of("other", Structure.JERSEY, 0.25)
            .withStretchAlong(0.05)
            .withRecovery(0.92)
            .withShrinkage(0.03, 0.05)
            .withMass(220);
    Fabric steady = OLD.withStretchAlong(0.20).withCurl(false);
    assertEquals(
        List.of(
            "gives 25 % across instead of 40 %",
            "gives 5 % along instead of 20 %",
            "comes back less well",
            "still shrinks 3 % across and 5 % along",
            "weighs 220 instead of 160 g/m2 and hangs differently",
            "curls at its cut edges"),
        FabricComparison.of(steady, other).reasons());
    assertEquals(Verdict.ADAPT, FabricComparison.of(steady, other).verdict());
  }

  @Test
  void refusedWhereItCannotStandWhatTheOriginalStands() {
    FabricComparison stiff = with(Fabric.of("stiff", Structure.PIQUE, 0.10));
    assertEquals(Verdict.REFUSE, stiff.verdict());
    assertTrue(stiff.toString().startsWith("refuse: gives 10 % across instead of 40 %"));
    FabricComparison tired = with(OLD.withRecovery(0.85));
    assertEquals(Verdict.REFUSE, tired.verdict());
    assertEquals(
        "comes back only 85 %: not for anything that is stretched in wear", tired.reasons().get(0));
    Fabric loose = Fabric.of("sweatshirt", Structure.FLEECE, 0.20);
    assertEquals(
        Verdict.ADAPT,
        FabricComparison.of(loose, Fabric.of("f", Structure.FLEECE, 0.10)).verdict());
  }
}
