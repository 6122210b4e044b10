package dev.drafting.knit.sewing;

import static dev.drafting.knit.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SewingValuesTest {
  private static final Length TWO = Length.mm(2);
  private static final Length FOUR = Length.mm(4);
  private static final Stitch ZIGZAG = Stitch.of(StitchType.ZIGZAG);

  @Test
  void stitchesDifferByTypeLengthAndWidth() {
    differ(
        ZIGZAG,
        Stitch.of(StitchType.ZIGZAG),
        Stitch.of(StitchType.LOCKSTITCH),
        ZIGZAG.withLength(Length.mm(3.1)),
        ZIGZAG.withWidth(Length.mm(3.1)));
    String lockstitch = Stitch.of(StitchType.LOCKSTITCH).withLength(TWO).toString();
    assertEquals(StitchType.LOCKSTITCH + ", 2 mm long", lockstitch);
    assertEquals(
        StitchType.ZIGZAG + ", 2 mm long, 4 mm wide",
        ZIGZAG.withLength(TWO).withWidth(FOUR).toString());
    assertEquals(
        StitchType.TWIN_NEEDLE + ", 2 mm long, rows 4 mm apart",
        Stitch.of(StitchType.TWIN_NEEDLE).withLength(TWO).withWidth(FOUR).toString());
  }

  @Test
  void machinesDifferByAllThatTheyDo() {
    Machines zigzag = Machines.zigzag();
    differ(
        zigzag,
        Machines.zigzag(),
        Machines.overlocker(3),
        Machines.overlocker(4),
        zigzag.withTwinNeedle(FOUR),
        zigzag.withStitch("side", Stitch.of(StitchType.LOCKSTITCH)),
        zigzag.withAllowance("side", Length.mm(15)));
    differ(
        Machines.of(ZIGZAG, ZIGZAG, FOUR),
        Machines.of(ZIGZAG, ZIGZAG, FOUR),
        Machines.of(ZIGZAG.withWidth(TWO), ZIGZAG, FOUR),
        Machines.of(ZIGZAG, ZIGZAG.withWidth(TWO), FOUR),
        Machines.of(ZIGZAG, ZIGZAG, Length.mm(7)));
    assertEquals(ZIGZAG, Machines.of(ZIGZAG, Stitch.of(StitchType.TWIN_NEEDLE), FOUR).seams());
  }

  @Test
  void choicesDifferAndReadWell() {
    SewingChoices usual = SewingChoices.of();
    SewingChoices all =
        usual
            .withMachines(Machines.zigzag())
            .withConstruction(Construction.FLAT)
            .withTape("shoulder")
            .withTape("shoulder")
            .withDetail(Detail.HOOD)
            .withDetail(Detail.CORD)
            .withDetail(Detail.HOOD);
    assertEquals(
        Machines.zigzag() + "; bands flat; tape at shoulder; a cord; a hood", all.toString());
    differ(
        usual,
        SewingChoices.of(),
        usual.withMachines(Machines.overlocker(4).withCoverstitch(FOUR)),
        usual.withConstruction(Construction.FLAT),
        usual.withTape("shoulder"),
        usual.withDetail(Detail.HOOD));
    assertEquals(Machines.zigzag(), all.machines());
  }

  @Test
  void needlesDifferByThicknessAndPoint() {
    List<Needle> needles = new ArrayList<>();
    for (double mass : new double[] {120, 200, 350}) {
      needles.add(Needle.of(Fabric.of("knit", Structure.JERSEY, 0.5).withMass(mass)));
    }
    differ(needles.get(0), needles.get(0), needles.get(2));
  }

  private static SewingPlan plan(Machines machines, String... taped) {
    Fabric body = Fabric.of("body", Structure.JERSEY, 0.5);
    return SewingPlan.of(
        Assembly.of(Vest.plain().pattern()),
        List.of(),
        name -> body,
        machines,
        "neck",
        List.of(taped));
  }

  @Test
  void plansAndTheirLinesDiffer() {
    SewingPlan zigzag = plan(Machines.zigzag());
    SewingPlan overlocked = plan(Machines.overlocker(4));
    differ(zigzag, plan(Machines.zigzag()), overlocked, plan(Machines.zigzag(), "side"));
    SewnLine side = zigzag.line("side");
    differ(
        side,
        plan(Machines.zigzag()).line("side"),
        zigzag.line("shoulder"),
        overlocked.line("side"),
        plan(Machines.zigzag(), "side").line("side"));
    assertEquals(zigzag.lines().size() + " lines to sew, " + Machines.zigzag(), zigzag.toString());
    assertEquals(Machines.zigzag(), zigzag.machines());
    assertEquals("side: " + side.stitch() + ", seam " + side.seamClass(), side.toString());
    assertEquals("class 1, one on the other", SeamClass.SUPERIMPOSED.toString());
  }

  @Test
  void stitchesAreUpToEightMillimetresLongAndTwelveWide() {
    assertEquals(Length.mm(8), ZIGZAG.withLength(Length.mm(8)).length());
    assertEquals(Length.mm(12), ZIGZAG.withWidth(Length.mm(12)).width());
    assertEquals(Length.ZERO, ZIGZAG.withWidth(Length.ZERO).width());
    assertThrows(DraftingException.class, () -> ZIGZAG.withLength(Length.mm(8.1)));
    assertThrows(DraftingException.class, () -> ZIGZAG.withLength(Length.ZERO));
    assertThrows(DraftingException.class, () -> ZIGZAG.withWidth(Length.mm(12.1)));
    assertThrows(DraftingException.class, () -> ZIGZAG.withWidth(Length.mm(-0.1)));
  }

  @Test
  void stepsDifferByAllThatTheyTell() {
    Step step = Step.of("Cut", "Cut the front.");
    differ(
        step,
        Step.of("Cut", "Cut the front."),
        Step.of("Mark", "Cut the front."),
        Step.of("Cut", "Cut the back."),
        step.numbered(3),
        step.withCaution(Cautions.BLADES),
        step.making(List.of("front")),
        step.showing(List.of(EdgeRef.parse("front side"))),
        step.showing(Step.Scene.SCRAP));
    assertEquals(Cautions.BLADES.text(), step.withCaution(Cautions.BLADES).caution());
    assertEquals("", step.caution());
  }

  @Test
  void cautionsDifferByTopicAndText() {
    Caution hot = Caution.of("Irons", "They are hot.");
    differ(
        hot,
        Caution.of("Irons", "They are hot."),
        Caution.of("Blades", "They are hot."),
        Caution.of("Irons", "They burn."));
    assertEquals("Irons: They are hot.", hot.toString());
  }

  /** Both shoulders are 7 cm long, both sides 42 cm. */
  @Test
  void tapesDifferBySeam() {
    List<SeamTape> tapes = plan(Machines.zigzag(), "side").tapes();
    assertEquals(
        List.of("2 of 70 mm for the shoulder", "2 of 42 cm for the side"),
        tapes.stream().map(SeamTape::toString).toList());
    differ(tapes.get(0), plan(Machines.overlocker(4)).tapes().get(0), tapes.get(1));
    assertEquals(Length.mm(6), tapes.get(0).width());
  }
}
