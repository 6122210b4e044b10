package dev.drafting.knit.garment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.Draft;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.sewing.SewnLine;
import dev.drafting.knit.sewing.Step;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RaglanSweatshirtTest {
  private final Pattern raglan = new RaglanSweatshirt().pattern();
  private final Piece sleeve = raglan.piece("sleeve");

  private double length(String edge) {
    return raglan.edge(EdgeRef.parse(edge)).length().toMm();
  }

  /** The deeper neck of the front cuts its raglan line shorter (common practice, no source). */
  @Test
  void theFrontRaglanLineIsTheShorterOne() {
    assertEquals(length("front raglan"), length("sleeve / front raglan"), 1e-6);
    assertEquals(length("back raglan"), length("sleeve / back raglan"), 1e-6);
    assertTrue(length("front raglan") < length("back raglan") - 5);
  }

  @Test
  void theSleeveIsPartOfTheNeck() {
    Opening neck = Assembly.of(raglan).opening("neck");
    double halves = length("front neck") + length("sleeve neck") + length("back neck");
    assertEquals(2 * halves, neck.length().toMm(), 1e-9);
    assertEquals(
        "neck: 479.8 mm, turning 288.55°, by front raglan, centre front, front raglan, back raglan,"
            + " centre back, back raglan",
        neck.toString());
  }

  /** Sewn together the four corners at the underarm lie flat: four right angles. */
  @Test
  void theUnderarmIsSmooth() {
    for (String body : List.of("front", "back")) {
      double atSide = raglan.piece(body).corner("side", "raglan").interiorAngle().toDegrees();
      assertEquals(90, atSide, 1e-9);
    }
    assertEquals(
        90, sleeve.corner("back underarm", "back raglan").interiorAngle().toDegrees(), 1e-6);
    assertEquals(
        90, sleeve.corner("front raglan", "front underarm").interiorAngle().toDegrees(), 1e-6);
  }

  /** Where a raglan seam crosses the neck, body and sleeve go on in one line. */
  @Test
  void theNeckIsSmoothAtTheRaglanSeams() {
    for (String body : List.of("front", "back")) {
      double ofBody = raglan.piece(body).corner("raglan", "neck").interiorAngle().toDegrees();
      double ofSleeve =
          body.equals("front")
              ? sleeve.corner("neck", "front raglan").interiorAngle().toDegrees()
              : sleeve.corner("back raglan", "neck").interiorAngle().toDegrees();
      assertEquals(180, ofBody + ofSleeve, 1e-6, body);
    }
  }

  @Property(tries = 100)
  void theSleeveIsAsWideAsGiven(@ForAll @IntRange(min = 150, max = 225) int width) {
    Piece drawn =
        new RaglanSweatshirt()
            .pattern(Dimensions.of().with("sleeve width", Length.mm(width)))
            .piece("sleeve");
    Curve back = drawn.edge("back raglan").curve();
    Curve front = drawn.edge("front raglan").curve();
    assertEquals(2 * width, back.start().x() - front.end().x(), 1e-6);
    assertEquals(220, drawn.edge("wrist").length().toMm(), 1e-9);
  }

  /** The notches of a seam meet when it is sewn; the back has two. */
  @Test
  void theNotchesMeet() {
    double onFront = raglan.piece("front").notches().get(0).along().toMm();
    double onSleeve = sleeve.notches().get(0).along().toMm();
    assertEquals(length("front raglan") - onFront, onSleeve, 1e-6);
    for (int i = 0; i < 2; i++) {
      double onBack = raglan.piece("back").notches().get(i).along().toMm();
      assertEquals(onBack, sleeve.notches().get(1 + i).along().toMm(), 1e-6);
    }
  }

  /** One notch a third of the way up tells the front, another a thirtieth further the back. */
  @Test
  void theNotchesAreAThirdOfTheWayUp() {
    List<Double> onBack = shares(raglan.piece("back"));
    assertEquals(1 / 3.0, shares(raglan.piece("front")).get(0), 1e-9);
    assertEquals(1 / 3.0, onBack.get(0), 1e-9);
    assertEquals(1 / 3.0 + 1 / 30.0, onBack.get(1), 1e-9);
  }

  private static List<Double> shares(Piece piece) {
    Length all = piece.edge("raglan").length();
    return piece.notches().stream().map(notch -> notch.along().ratioTo(all)).toList();
  }

  /** Square to the side and hollow at first, it bulges by no more than a few millimetres after. */
  @Test
  void theRaglanLineRunsCloseToItsChord() {
    for (String body : List.of("front", "back")) {
      Curve line = raglan.piece(body).edge("raglan").curve();
      Vector chord = line.end().minus(line.start()).unit();
      double hollow = 0;
      double bulge = 0;
      for (int i = 1; i < 40; i++) {
        Vector at = line.pointAt(line.length().times(i / 40.0)).minus(line.start());
        hollow = Math.max(hollow, chord.cross(at));
        bulge = Math.max(bulge, -chord.cross(at));
      }
      assertTrue(hollow > 5 && hollow < 25, body + " is hollow by " + hollow);
      assertTrue(bulge < 5, body + " bulges by " + bulge);
    }
  }

  @Test
  void itsRibDrawsInAndItsNeckBandLiesFlat() {
    Draft draft =
        Draft.of(raglan)
            .withFabric("body", Fabric.of("sweatshirt knit", Structure.JERSEY, 0.25))
            .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80));
    assertEquals("chest, all round: 112 cm", draft.measures().get(0).toString());
    List<Strip> strips = draft.strips();
    assertEquals(
        List.of("hem waist rib", "neck band", "wrist (right) cuff", "wrist (left) cuff"),
        strips.stream().map(Strip::name).toList());
    assertEquals(
        List.of(Outcome.DRAWS_IN, Outcome.LIES_FLAT, Outcome.DRAWS_IN, Outcome.DRAWS_IN),
        strips.stream().map(strip -> strip.fit().outcome()).toList());
  }

  /** The hood is sewn to front, sleeves and back in one seam; its own halves meet at the centre. */
  @Test
  void aHoodFitsTheWholeNeck() {
    Pattern hooded = new RaglanSweatshirt().pattern(Dimensions.of().withChoice("neck", "hood"));
    double neck = length("front neck") + length("sleeve neck") + length("back neck");
    Piece hood = hooded.piece("hood");
    assertEquals(neck, hood.edge("neck").length().toMm(), 1e-6);
    assertEquals(345, hood.edge("face").length().toMm(), 1e-9);
    assertEquals(250, hood.outline().bounds().width().toMm(), 1e-6);
    Assembly sewn = Assembly.of(hooded);
    assertEquals(2 * 345, sewn.opening("face").length().toMm(), 1e-9);
    assertEquals(4, sewn.openings().size());
    assertEquals(List.of(), sewn.findings());
    List<String> steps =
        Draft.of(hooded)
            .withFabric("body", Fabric.of("sweatshirt knit", Structure.JERSEY, 0.25))
            .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80))
            .orderOfWork()
            .stream()
            .map(Step::title)
            .toList();
    int closed = steps.indexOf("Sew the hood centre seam");
    assertTrue(closed >= 0 && closed < steps.indexOf("Sew the neck seams"), steps.toString());
    assertEquals(90, hood.corner("centre", "face").interiorAngle().toDegrees(), 1e-9);
    assertEquals(90, hood.corner("neck", "centre").interiorAngle().toDegrees(), 1e-6);
  }

  /** The pocket is stitched on first, and neither the openings nor their strips know of it. */
  @Test
  void aPocketForBothHandsLiesOnTheFront() {
    Pattern pocketed =
        new RaglanSweatshirt().pattern(Dimensions.of().withChoice("pocket", "front"));
    assertEquals(Assembly.of(raglan).openings(), Assembly.of(pocketed).openings());
    Draft draft = sweatshirt(pocketed);
    assertEquals(List.of(), draft.findings());
    assertEquals(sweatshirt(raglan).strips(), draft.strips());
    List<String> steps = draft.orderOfWork().stream().map(Step::title).toList();
    int stitched = steps.indexOf("Stitch the pocket on the front");
    assertEquals(steps.indexOf("Sew the front raglan seams") - 1, stitched, steps.toString());
    assertEquals(
        "Finish the mouth first. Turn up 20 mm and press. Stitch from the right side, 18 mm from"
            + " the fold, in zigzag, so that the cut edge is covered. Press the allowances of the"
            + " bottom, side and top to the wrong side. Transfer its place to the right side of the"
            + " front, lay it there right side up, and stitch it down close to the bottom, side and"
            + " top, in zigzag. Leave the mouth open, and sew back and forth where the opening"
            + " ends.",
        draft.orderOfWork().get(stitched).text());
    assertEquals("[pocket]", draft.orderOfWork().get(stitched).makes().toString());
  }

  private static Draft sweatshirt(Pattern pattern) {
    return Draft.of(pattern)
        .withFabric("body", Fabric.of("sweatshirt knit", Structure.JERSEY, 0.25))
        .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80));
  }

  /** Both halves: the mouth, and all that is stitched down. */
  @Test
  void thePocketsLinesAreCountedInThread() {
    Pattern pocketed =
        new RaglanSweatshirt().pattern(Dimensions.of().withChoice("pocket", "front"));
    Piece pocket = pocketed.piece("pocket");
    List<SewnLine> plain = sweatshirt(raglan).sewing().lines();
    List<SewnLine> more = new ArrayList<>(sweatshirt(pocketed).sewing().lines());
    more.removeAll(plain);
    assertEquals(
        List.of("pocket / mouth", "pocket on front"), more.stream().map(SewnLine::name).toList());
    assertEquals(pocket.edge("mouth").length(), more.get(0).length());
    double stitched =
        pocket.edge("bottom").length().toMm()
            + pocket.edge("side").length().toMm()
            + pocket.edge("top").length().toMm();
    assertEquals(stitched, more.get(1).length().toMm(), 1e-9);
    for (SewnLine line : more) {
      assertEquals(2, line.times());
      assertTrue(line.thread().isPositive());
    }
  }

  /**
   * A hand of 10 cm goes in, and the pocket stays on the front, in every size that can be drawn.
   */
  @Property(tries = 60)
  void thePocketHasRoomInEverySize(
      @ForAll @IntRange(min = 920, max = 1600) int chest,
      @ForAll @IntRange(min = 520, max = 900) int length,
      @ForAll @IntRange(min = 240, max = 330) int armhole,
      @ForAll boolean hood) {
    Pattern pocketed =
        new RaglanSweatshirt()
            .pattern(
                Dimensions.of()
                    .with("chest", Length.mm(chest))
                    .with("length", Length.mm(length))
                    .with("armhole depth", Length.mm(armhole))
                    .withChoice("neck", hood ? "hood" : "band")
                    .withChoice("pocket", "front"));
    assertTrue(pocketed.piece("pocket").edge("mouth").length().toMm() >= 120);
    assertTrue(
        CutPlan.of(pocketed).findings().stream()
            .noneMatch(finding -> finding.id().equals("patch.reaches-out")));
  }

  @Test
  void everySizeFitsItsSleeve() {
    for (int chest = 920; chest <= 1600; chest += 40) {
      Pattern size =
          new RaglanSweatshirt().pattern(Dimensions.of().with("chest", Length.mm(chest)));
      assertEquals(List.of(), Assembly.of(size).findings());
      assertEquals(
          size.edge(EdgeRef.parse("front raglan")).length().toMm(),
          size.edge(EdgeRef.parse("sleeve / front raglan")).length().toMm(),
          1e-6);
    }
  }
}
