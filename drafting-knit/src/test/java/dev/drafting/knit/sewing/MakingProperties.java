package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.FacedEdge;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Garments;
import dev.drafting.knit.Vest;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.hem.TurnedHem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * A thousand drafts of vest, tee, leggings and skirt with all sorts of finishes: everything is sewn
 * exactly once, and nothing before what it needs. The dependencies are common practice, no source,
 * but for the factory flow of a T-shirt in trade articles.
 */
class MakingProperties {
  private static final Fabric KNIT = Fabric.of("knit", Structure.INTERLOCK, 0.8);

  /** A draft, how it is made, and its steps. */
  record Made(Draft draft, Construction construction, List<Step> steps) {
    static Made of(Draft draft, Construction construction) {
      return new Made(draft, construction, order(draft, construction));
    }

    static List<Step> order(Draft draft, Construction construction) {
      return OrderOfWork.of(draft.sewing(), List.of(KNIT), construction);
    }

    /** The first and the last step that does something; sides of one seam are sewn apart. */
    int first(String name) {
      return places(name).get(0);
    }

    int last(String name) {
      List<Integer> places = places(name);
      return places.get(places.size() - 1);
    }

    List<Integer> places(String name) {
      List<Integer> places = new ArrayList<>();
      for (Step step : steps()) {
        if (step.makes().contains(name)) {
          places.add(step.number());
        }
      }
      return places;
    }

    int tryOn() {
      return steps().stream()
          .filter(step -> step.title().equals("Try it on"))
          .findFirst()
          .orElseThrow()
          .number();
    }

    boolean isFlat() {
      return construction == Construction.FLAT;
    }

    boolean finishes(String opening) {
      return draft.openings().stream()
          .anyMatch(o -> o.name().startsWith(opening) && !(o.finish() instanceof RawEdge));
    }
  }

  @Provide
  Arbitrary<Made> made() {
    Arbitrary<Finish> finishes =
        Arbitraries.of(
            FoldedBand.of(Length.mm(13), Length.mm(7)),
            WrappedBinding.of(Length.mm(10)),
            TurnedHem.once(Length.mm(15)),
            TurnedHem.twice(Length.mm(10), Length.mm(15)),
            FacedEdge.of(Length.mm(7)),
            RawEdge.of());
    return Combinators.combine(
            Arbitraries.of("vest", "tee", "tee in one", "leggings", "skirt"),
            finishes,
            finishes,
            finishes,
            Arbitraries.of(Construction.class))
        .as(
            (garment, a, b, c, construction) ->
                Made.of(draft(pattern(garment, a, b, c)), construction));
  }

  private static Pattern pattern(String garment, Finish a, Finish b, Finish c) {
    return switch (garment) {
      case "vest" -> Vest.plain().neck(a).armhole(b).hem(c).pattern();
      case "tee" -> Garments.tee(a, b, c, false);
      case "tee in one" -> Garments.tee(a, b, c, true);
      case "leggings" -> Garments.leggings(a, b);
      default -> Garments.skirt(a, b);
    };
  }

  private static Draft draft(Pattern pattern) {
    return Draft.of(pattern).withFabric("body", KNIT).withFabric("rib", KNIT);
  }

  @Property
  void everythingIsSewnExactlyOnce(@ForAll("made") Made made) {
    List<String> wanted = new ArrayList<>();
    made.draft().pattern().seams().forEach(seam -> wanted.add(seam.name()));
    made.draft().openings().stream()
        .filter(opening -> !(opening.finish() instanceof RawEdge))
        .forEach(opening -> wanted.add(opening.name()));
    made.draft().strips().stream().map(Strip::name).forEach(wanted::add);
    List<String> sewn = new ArrayList<>();
    for (Step step : made.steps()) {
      sewn.addAll(step.makes());
      if (step.title().endsWith(", other side")) {
        sewn.removeAll(step.makes());
        sewn.addAll(step.makes());
      }
    }
    Collections.sort(wanted);
    Collections.sort(sewn);
    assertEquals(wanted, sewn);
  }

  @Property
  void nothingIsSewnBeforeWhatItNeeds(@ForAll("made") Made made) {
    switch (made.draft().pattern().name()) {
      case "test vest" -> vest(made);
      case "tee" -> tee(made);
      case "leggings" -> leggings(made);
      default -> skirt(made);
    }
    for (Step step : made.steps()) {
      boolean finishes =
          made.draft().openings().stream().anyMatch(o -> step.makes().contains(o.name()));
      assertTrue(!finishes || step.number() > made.tryOn(), "tried on before " + step);
    }
  }

  private static void vest(Made made) {
    neck(made);
    if (made.finishes("armhole")) {
      int armholes = made.first("armhole (left)");
      assertTrue(armholes > made.last("shoulder"), "armholes after shoulders");
      boolean banded = made.draft().strips().stream().anyMatch(s -> s.name().startsWith("armhole"));
      boolean beforeSides = armholes < made.first("side");
      assertEquals(made.isFlat() && banded, beforeSides, "flat armhole bands before the sides");
    }
    hemAfter(made, "hem", "side", "shoulder");
  }

  private static void tee(Made made) {
    neck(made);
    assertTrue(made.first("sleeve") > made.last("shoulder"), "the sleeve crosses the shoulder");
    boolean inOne = !made.places("side and sleeve").isEmpty();
    for (String after : inOne ? List.of("side and sleeve") : List.of("side", "underarm")) {
      assertTrue(made.first(after) > made.last("sleeve"), "the sleeve is set in flat");
    }
    hemAfter(made, "hem", inOne ? "side and sleeve" : "side", "sleeve");
    if (made.finishes("sleeve hem")) {
      String closing = inOne ? "side and sleeve" : "underarm";
      boolean before = made.first("sleeve hem (left)") < made.first(closing);
      assertEquals(made.isFlat(), before, "sleeve hems flat before the seam");
    }
  }

  private static void neck(Made made) {
    if (made.finishes("neck")) {
      boolean banded = made.draft().strips().stream().anyMatch(s -> s.name().startsWith("neck"));
      assertTrue(made.first("neck") > made.first("shoulder"), "the neck after a shoulder");
      boolean beforeTheOther = made.first("neck") < made.last("shoulder");
      assertEquals(made.isFlat() && banded, beforeTheOther, "flat neck bands between shoulders");
    }
  }

  private static void leggings(Made made) {
    assertTrue(made.first("front crotch") > made.last("inseam"), "inseams before the crotch");
    assertEquals(made.places("front crotch"), made.places("back crotch"), "in one pass");
    if (made.finishes("waist")) {
      assertTrue(made.first("waist") > made.first("inseam"));
    }
    if (made.finishes("leg hem")) {
      boolean before = made.first("leg hem (left)") < made.first("inseam");
      assertEquals(made.isFlat(), before, "leg hems flat before the inseam");
    }
  }

  private static void skirt(Made made) {
    hemAfter(made, "waist", "side");
    hemAfter(made, "hem", "side");
    if (made.finishes("hem") && made.finishes("waist")) {
      boolean waistBand = made.draft().strips().stream().anyMatch(s -> s.name().contains("waist"));
      boolean hemBand = made.draft().strips().stream().anyMatch(s -> s.name().startsWith("hem"));
      if (waistBand && !hemBand) {
        assertTrue(made.first("hem") > made.first("waist"), "bands before hems");
      }
    }
  }

  private static void hemAfter(Made made, String opening, String... seams) {
    if (made.finishes(opening)) {
      for (String seam : seams) {
        assertTrue(made.first(opening) > made.last(seam), opening + " after " + seam);
      }
    }
  }

  @Property(tries = 20)
  void theSameDraftHasTheSameOrder(@ForAll("made") Made made) {
    assertEquals(made.steps(), Made.order(made.draft(), made.construction()));
  }
}
