package dev.drafting.knit.sewing;

import static dev.drafting.knit.sewing.FinishStepsTest.assertSaid;
import static dev.drafting.knit.sewing.FinishStepsTest.draft;
import static dev.drafting.knit.sewing.FinishStepsTest.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Garments;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.garment.BabyTop;
import dev.drafting.knit.garment.RaglanSweatshirt;
import dev.drafting.knit.garment.TShirt;
import dev.drafting.knit.hem.TurnedHem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the steps of a whole garment say and show, and what its lines of stitches are. */
class SewingWordsTest {
  private static final Draft VEST = draft(Vest.plain().pattern());
  private static final Stitch STRAIGHT = Stitch.of(StitchType.LOCKSTITCH);
  private static final SewingChoices FLAT = SewingChoices.of().withConstruction(Construction.FLAT);

  private static List<String> shown(Draft draft, String title) {
    return draft.orderOfWork().stream()
        .filter(step -> step.title().startsWith(title))
        .flatMap(step -> step.edges().stream())
        .map(EdgeRef::toString)
        .toList();
  }

  private static List<String> titles(Draft draft) {
    return draft.orderOfWork().stream().map(Step::title).toList();
  }

  /** A drawing beside a step shows the edges that it is about, and no fold is sewn or cut. */
  @Test
  void stepsShowTheirEdges() {
    assertEquals(List.of("front / side", "back / side"), shown(VEST, "Sew the side"));
    assertEquals(
        List.of("back / hem", "front / hem"),
        shown(VEST, "Turn up the hem").stream().distinct().sorted().toList());
    assertEquals(List.of("front / side", "back / side"), shown(VEST, "Try it on"));
    assertSaid(step(VEST, "Try it on"), "Baste the side seams with long stitches. Try the garment");
    List<String> cut = shown(VEST, "Cut");
    assertEquals(10, cut.size());
    assertFalse(cut.contains("front / fold"), cut.toString());
    List<String> marked = shown(VEST, "Mark");
    assertTrue(marked.contains("front / neck") && !marked.contains("front / hem"));
    TurnedHem hem = TurnedHem.once(Length.mm(20));
    assertTrue(shown(draft(Garments.skirt(hem, hem)), "Mark").contains("front / side"));
  }

  @Test
  void seamsSayHowTheyArePressedAndTaped() {
    String shoulders = step(VEST, "Sew the shoulder seams");
    assertSaid(
        shoulders,
        "Right sides together: front / shoulder to back / shoulder. Seam",
        "Sew a tape or clear elastic of 70 mm, the pattern's length, into it",
        " Press the allowances towards the back.");
    String sides = step(VEST, "Sew the side seams");
    assertFalse(sides.contains("tape"), sides);
    assertFalse(sides.contains("Sew both in one pass"), sides);
    TurnedHem hem = TurnedHem.once(Length.mm(20));
    Draft leggings = draft(Garments.leggings(hem, hem));
    String crotch = step(leggings, "Sew the front crotch");
    assertSaid(crotch, "right to left", " Press the allowances to one side.");
  }

  /** The ends of a flat strip lie at the seam that is open. */
  @Test
  void aStripIsSewnOnFlatBeforeTheSeamThatRunsThroughIt() {
    Draft flat = VEST.withSewing(FLAT);
    assertSaid(
        step(flat, "Sew on the armhole"),
        "Do not join its ends: mark it, lay it to the open edge from one side of the side seam to"
            + " the other, and pin mark to mark. The seam will run through it.",
        "armhole (right) binding: loop ");
    assertEquals(
        Map.of("neck", "shoulder", "armhole (left)", "side", "armhole (right)", "side"),
        OrderOfWork.openSeams(flat.sewing().sewn(), "neck", Construction.FLAT));
    assertEquals(
        Map.of(), OrderOfWork.openSeams(flat.sewing().sewn(), "neck", Construction.IN_THE_ROUND));
  }

  /** Each edge by itself, before the shoulders are lapped and caught in the seam of the sleeve. */
  @Test
  void lappedEdgesAreBoundApart() {
    Draft baby = draft(new BabyTop().pattern());
    assertSaid(
        step(baby, "Sew on the neck binding"),
        "It is cut apart (neck binding, front / neck: ",
        "; neck binding, back / neck: ",
        "), with 10 mm at both ends of each. Lay each flat along its edge");
    assertSaid(
        step(baby, "Baste the shoulder lap"),
        "Both right side up, lay front / lap over back / lap",
        "baste them together within the allowance");
  }

  @Test
  void aBandAtAPlacketStaysOpen() {
    Draft placket = draft(new TShirt().pattern(Dimensions.of().withChoice("neck", "placket")));
    assertSaid(
        step(placket, "Sew on the neck band"),
        "Do not join its ends: turn in 10 mm at each, even with the folds of the placket");
    assertSaid(
        step(placket, "Mark"),
        "Of the neck band leave 12.5 mm before the first and after the last mark, which lap");
    assertFalse(step(VEST, "Mark").contains("lap at the placket"), "a vest has none");
    assertEquals(StitchType.LOCKSTITCH, placket.sewing().line("front placket").stitch().type());
    List<String> titles = titles(placket);
    assertEquals(titles.size() - 2, titles.indexOf("Close the placket of the front"));
    assertEquals(titles.size() - 1, titles.indexOf("Press and measure"));
    Pattern tee = new TShirt().pattern();
    Placket slit = Placket.of("front neck", Length.mm(80), Length.mm(25)).withFasteners(0);
    assertFalse(titles(draft(tee.withPlacket(slit))).contains("Close the placket of the front"));
  }

  /** What still shrinks is drawn larger, and must not be washed before. */
  @Test
  void clothIsWashedUnlessItIsDrawnLarger() {
    assertEquals(
        "Wash and dry jersey and rib as the garment will be washed and dried.",
        step(VEST, "Prewash"));
    Fabric shrinking = Fabric.of("jersey", Structure.JERSEY, 0.5).withShrinkage(0.03, 0.05);
    assertEquals(
        "Wash and dry rib as the garment will be washed and dried. Do not wash jersey: what is cut"
            + " from it is drawn larger and washes to size.",
        step(VEST.withFabric("body", shrinking), "Prewash"));
  }

  @Test
  void aPocketIsFinishedPressedAndStitchedOn() {
    Pattern pocketed =
        new RaglanSweatshirt().pattern(Dimensions.of().withChoice("pocket", "front"));
    String title = "Stitch the pocket on the front";
    assertSaid(
        step(draft(pocketed), title),
        "Finish the mouth first. Turn up 20 mm and press.",
        "Press the allowances of the bottom, side and top to the wrong side.",
        "Leave the mouth open, and sew back and forth where the opening ends.");
    Draft raw = draft(pocketed.withFinish("pocket mouth", RawEdge.of()));
    assertFalse(step(raw, title).contains("Finish the mouth"), step(raw, title));
    assertTrue(raw.sewing().lines().stream().noneMatch(l -> l.name().equals("pocket / mouth")));
  }

  /** The stiffest line that goes round an opening holds it: its seam, or the row beside that. */
  @Test
  void anOpeningGivesAsMuchAsItsStiffestLine() {
    SewingPlan usual = VEST.sewing();
    SewingPlan stiff =
        VEST.withSewing(
                SewingChoices.of()
                    .withMachines(Machines.overlocker(4).withStitch("neck", STRAIGHT)))
            .sewing();
    double straight = StitchType.LOCKSTITCH.stretch();
    assertEquals(straight, stiff.stretchAt(stiff.sewn().opening("neck")).orElseThrow());
    assertEquals(
        StitchType.ZIGZAG.stretch(), usual.stretchAt(usual.sewn().opening("hem")).orElseThrow());
    assertTrue(usual.stretchAt(usual.sewn().opening("neck")).orElseThrow() > straight);
    assertTrue(stiff.stretchAt(stiff.sewn().opening("armhole (left)")).orElseThrow() > straight);
    Draft raw = draft(Vest.plain().hem(RawEdge.of()).pattern());
    assertTrue(raw.sewing().stretchAt(raw.sewing().sewn().opening("hem")).isEmpty());
  }

  /** Single jersey and interlock give about half as much along; of others it is not known. */
  @ParameterizedTest
  @CsvSource({"JERSEY,0.3", "INTERLOCK,0.3", "RIB,0.6", "PONTE,0.6"})
  void clothThatNobodyPulledAlongIsTakenByItsKind(Structure structure, double along) {
    Fabric knit = Fabric.of("knit", structure, 0.6);
    assertEquals(along, SeamRun.stretch(knit, false), 1e-9);
    assertEquals(0.6, SeamRun.stretch(knit, true), 1e-9);
    assertEquals(0.2, SeamRun.stretch(knit.withStretchAlong(0.2), false), 1e-9);
  }

  @Test
  void whatTheMakerChoseIsTold() {
    Length wide = Length.mm(15);
    Machines machines = Machines.zigzag().withStitch("side", STRAIGHT).withAllowance("hem", wide);
    assertEquals(Map.of("side", STRAIGHT), machines.stitches());
    assertEquals(Map.of("hem", wide), machines.allowances());
    assertTrue(machines.toString().endsWith(", others at side, hem"), machines.toString());
    SewingChoices choices = SewingChoices.of().withTape("side").withDetail(Detail.HOOD);
    assertEquals(List.of("side"), choices.taped());
    assertEquals(List.of(Detail.HOOD), choices.details());
    SewingPlan.requireSeams(VEST.pattern(), List.of("side", "shoulder"));
    assertThrows(
        DraftingException.class, () -> SewingPlan.requireSeams(VEST.pattern(), List.of("elbow")));
  }

  /** ISO 4916 has eight classes. */
  @Test
  void classesAreNumberedFromOneToEight() {
    for (SeamClass seamClass : SeamClass.values()) {
      assertTrue(seamClass.number() >= 1 && seamClass.number() <= 8);
      assertEquals(
          "class " + seamClass.number() + ", " + seamClass.plainName(), seamClass.toString());
      assertFalse(seamClass.plainName().isBlank());
    }
    assertEquals(3, SeamClass.BOUND.number());
    assertEquals(6, SeamClass.EDGE_FINISHING.number());
  }
}
