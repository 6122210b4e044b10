package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.EdgePlace;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the try-on changed, and all that follows from it. */
class DraftAlterationTest {
  private final Draft vest =
      Draft.of(Vest.plain().pattern())
          .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.35))
          .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80));
  private final Alteration snip =
      Alteration.snip(
          "front neck",
          Length.mm(8),
          EdgePlace.at("fold"),
          EdgePlace.from("shoulder", Length.cm(6)));

  @Test
  void stripsAndPaperFollow() {
    Draft altered = vest.withAlteration(snip, "tight under the chin");
    assertEquals(1, altered.alterations().entries().size());
    assertEquals(snip.applyTo(vest.pattern()), altered.pattern());
    assertTrue(
        vest.compare(altered).differences().stream()
            .anyMatch(row -> row.name().equals("neck band, cut length")),
        vest.compare(altered).toString());
    assertNotEquals(vest, altered);
    assertEquals(vest, altered.withAlterations(altered.alterations().undone()));
  }

  @Test
  void replaysInAnotherFabric() {
    Draft other = vest.withFabric("body", Fabric.of("interlock", Structure.INTERLOCK, 0.6));
    Draft altered = other.withAlterations(vest.withAlteration(snip, "").alterations());
    assertEquals(snip.applyTo(vest.pattern()), altered.pattern());
    assertEquals("interlock", altered.fabric("body").name());
    for (String seam : List.of("shoulder", "side")) {
      double front = altered.finished().edge(new EdgeRef("front", seam)).length().toMm();
      double back = altered.finished().edge(new EdgeRef("back", seam)).length().toMm();
      assertEquals(front, back, 0.01, seam);
    }
  }

  @Test
  void outlivesAChangeOfMachines() {
    Draft altered = vest.withAlteration(snip, "").withSewing(vest.sewingChoices());
    assertEquals(1, altered.alterations().entries().size());
  }
}
