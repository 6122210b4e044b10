package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Tees;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the seams of a tee end: four at its openings, and all but the shoulder at the underarm. */
class JunctionTest {
  private static final Assembly TEE = Assembly.of(Tees.of(Vests.FRONT, Vests.BACK));

  private static Junction junction(String... ending) {
    return TEE.junctions().stream()
        .filter(junction -> junction.ending().equals(List.of(ending)))
        .findFirst()
        .orElseThrow(() -> new AssertionError(TEE.junctions().toString()));
  }

  @Test
  void theCapIsSewnAcrossTheEndOfTheShoulder() {
    List<Junction> shoulder =
        TEE.junctions().stream().filter(j -> j.ending().equals(List.of("shoulder"))).toList();
    assertEquals(2, shoulder.size());
    assertTrue(shoulder.stream().anyMatch(j -> j.crossing().equals(List.of("cap"))));
    assertTrue(
        shoulder.stream()
            .anyMatch(
                j ->
                    j.openEdges()
                        .equals(List.of(EdgeRef.parse("front neck"), EdgeRef.parse("back neck")))));
  }

  @Test
  void sideCapAndUnderarmMeet() {
    Junction underarm = junction("side", "cap", "underarm");
    assertEquals(List.of(), underarm.openEdges());
    assertEquals(List.of(), underarm.crossing());
    assertEquals("end of side and cap and underarm", underarm.toString());
  }

  @Test
  void seamsEndAtHems() {
    assertEquals(List.of(EdgeRef.parse("sleeve hem")), junction("underarm").openEdges());
    assertEquals(
        List.of(EdgeRef.parse("front hem"), EdgeRef.parse("back hem")),
        junction("side").openEdges());
    assertEquals("end of underarm, at [sleeve / hem]", junction("underarm").toString());
  }

  @Test
  void theyAreValues() {
    List<Junction> again = Assembly.of(Tees.of(Vests.FRONT, Vests.BACK)).junctions();
    assertEquals(TEE.junctions(), again);
    assertEquals(TEE.junctions().hashCode(), again.hashCode());
    assertEquals(again.get(0), SerialCopy.of(again.get(0)));
  }
}
