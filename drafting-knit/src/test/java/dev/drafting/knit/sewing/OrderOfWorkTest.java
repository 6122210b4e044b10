package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Vest;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.hem.TurnedHem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Orders of work follow common practice, no source, but for the factory flow of trade articles. */
class OrderOfWorkTest {
  private static final Fabric JERSEY = Fabric.of("white jersey", Structure.JERSEY, 0.30);
  private static final Fabric RIB = Fabric.of("white rib", Structure.RIB, 0.80);

  private static List<Step> steps(Vest vest) {
    return draft(vest).orderOfWork();
  }

  private static Draft draft(Vest vest) {
    return Draft.of(vest.pattern()).withFabric("body", JERSEY).withFabric("rib", RIB);
  }

  private static List<String> titles(Vest vest) {
    return steps(vest).stream().map(Step::title).toList();
  }

  @Test
  void aVestIsSewnFromTheShouldersToTheHem() {
    assertEquals(
        List.of(
            "Prewash",
            "Let the cloth rest",
            "Test the stretch",
            "Print and check the square",
            "Cut",
            "Mark",
            "Sew a scrap",
            "Sew the shoulder seams",
            "Try it on",
            "Sew on the neck band",
            "Sew the side seams",
            "Sew on the armhole bindings",
            "Turn up the hem",
            "Press and measure"),
        titles(Vest.plain()));
  }

  @Test
  void stepsAreNumberedFromOne() {
    List<Step> steps = steps(Vest.plain());
    for (int i = 0; i < steps.size(); i++) {
      assertEquals(i + 1, steps.get(i).number());
    }
    assertEquals("1. Prewash", steps.get(0).toString());
  }

  @Test
  void whatTheDraftDoesNotHaveIsNotSewn() {
    List<String> titles = titles(Vest.plain().hem(RawEdge.of()).armhole(RawEdge.of()));
    assertTrue(titles.stream().noneMatch(title -> title.contains("hem")), titles.toString());
    assertTrue(titles.stream().noneMatch(title -> title.contains("armhole")), titles.toString());
  }

  @Test
  void armholesThatAreHemmedAreTurnedUpAfterTheSideSeams() {
    List<String> titles = titles(Vest.plain().armhole(TurnedHem.once(Length.mm(10))));
    assertTrue(titles.indexOf("Turn up the armhole") > titles.indexOf("Sew the side seams"));
  }

  @Test
  void dangerousStepsCarryTheirCaution() {
    for (Step step : steps(Vest.plain())) {
      if (step.title().equals("Cut")) {
        assertTrue(step.caution().contains("cutter"), step.caution());
      }
      if (step.title().equals("Press and measure") || step.title().equals("Sew a scrap")) {
        assertTrue(step.caution().contains("iron"), step.caution());
      }
    }
  }

  @Test
  void aBandIsTopstitchedOnlyIfItHasARow() {
    FoldedBand band = FoldedBand.of(Length.mm(13), Length.mm(7));
    assertTrue(neckStep(Vest.plain().neck(band)).contains("topstitch"));
    assertTrue(!neckStep(Vest.plain().neck(band.withTopstitch())).contains("topstitch"));
  }

  private static String neckStep(Vest vest) {
    return steps(vest).stream()
        .filter(step -> step.title().equals("Sew on the neck band"))
        .map(Step::text)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void stepsNameThePiecesAndTheAmounts() {
    String all = steps(Vest.plain()).stream().map(Step::text).toList().toString();
    assertTrue(all.contains("white jersey and white rib"), all);
    assertTrue(all.contains("white jersey 30 %, white rib 80 % across"), all);
    assertTrue(all.contains("front (1 on the fold), back (1 on the fold)"), all);
    assertTrue(all.contains("front / shoulder to back / shoulder"), all);
    assertTrue(all.contains("Turn up 15 mm and press."), all);
    assertTrue(all.contains("13 mm from the fold"), all);
    assertTrue(all.contains("the join at centre back"), all);
    assertTrue(all.contains("the join at side"), all);
    assertTrue(all.contains("7 mm from the cut edge"), all);
    assertTrue(all.contains("stand 2.5 mm beyond the cut edge of the garment"), all);
    assertTrue(all.contains("10 mm from the strip's edge"), all);
  }
}
