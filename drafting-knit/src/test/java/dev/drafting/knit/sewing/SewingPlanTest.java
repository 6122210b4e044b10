package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Garments;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.hem.TurnedHem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SewingPlanTest {
  private static final Fabric INTERLOCK =
      Fabric.of("navy interlock", Structure.INTERLOCK, 0.6).withStretchAlong(0.3);

  private static Draft draft(Vest vest) {
    return Draft.of(vest.pattern()).withFabric("body", INTERLOCK).withFabric("rib", INTERLOCK);
  }

  private static SewingPlan plan(Vest vest, Machines machines, String... taped) {
    Draft draft = draft(vest);
    return SewingPlan.of(
        Assembly.of(vest.pattern()),
        draft.strips(),
        draft::fabric,
        machines,
        "neck",
        List.of(taped));
  }

  private static List<String> ids(SewingPlan plan) {
    return plan.findings().stream().map(Finding::id).toList();
  }

  /** ISO 4916: 1 one on the other, 3 bound, 5 rows, 6 an edge turned up. */
  @Test
  void everyLineHasItsStitchAndClass() {
    SewingPlan plan = plan(Vest.plain(), Machines.overlocker(4));
    assertEquals(SeamClass.SUPERIMPOSED, plan.line("side").seamClass());
    assertEquals(SeamClass.SUPERIMPOSED, plan.line("neck band").seamClass());
    assertEquals(SeamClass.BOUND, plan.line("armhole (left) binding").seamClass());
    assertEquals(SeamClass.DECORATIVE, plan.line("neck band, topstitching").seamClass());
    assertEquals(SeamClass.EDGE_FINISHING, plan.line("hem").seamClass());
    assertEquals(StitchType.OVERLOCK_FOUR, plan.line("side").stitch().type());
    assertEquals(StitchType.ZIGZAG, plan.line("hem").stitch().type());
    assertEquals(9, plan.lines().size());
  }

  @Test
  void aSideSeamIsSewnTwiceAndACentreSeamOnce() {
    assertEquals(2, plan(Vest.plain(), Machines.zigzag()).line("side").times());
    Draft leggings =
        Draft.of(Garments.leggings(TurnedHem.once(Length.mm(20)), TurnedHem.once(Length.mm(20))))
            .withFabric("body", INTERLOCK);
    assertEquals(1, leggings.sewing().line("front crotch").times());
    assertEquals(2, leggings.sewing().line("inseam").times());
  }

  @Test
  void shouldersGetATapeAsLongAsTheSeam() {
    SewingPlan plan = plan(Vest.plain(), Machines.overlocker(4));
    assertEquals(1, plan.tapes().size());
    assertEquals("shoulder", plan.tapes().get(0).seam());
    assertEquals(70, plan.tapes().get(0).length().toMm(), 1e-9);
    assertEquals(2, plan.tapes().get(0).times());
    assertEquals("2 of 70 mm for the shoulder", plan.tapes().get(0).toString());
    assertEquals(2, plan(Vest.plain(), Machines.zigzag(), "side").tapes().size());
    assertThrows(
        DraftingException.class, () -> plan(Vest.plain(), Machines.zigzag(), "elbow").tapes());
  }

  /** ASTM D6193, 4.2.2 (CV-25): a seam gives at least as much as the cloth that it joins. */
  @Test
  void aSeamThatGivesLessThanItsClothIsFound() {
    Stitch straight = Stitch.of(StitchType.LOCKSTITCH);
    SewingPlan plan =
        plan(
            Vest.plain(),
            Machines.overlocker(4).withStitch("side", straight).withStitch("shoulder", straight));
    assertEquals(List.of("sewing.seam-gives-less"), ids(plan));
    assertEquals(Place.seam("side"), plan.findings().get(0).place());
    assertTrue(plan.findings().get(0).reason().contains("30 %"), "side seams run along the cloth");
    assertTrue(plan.line("shoulder").givesEnough(), "its tape keeps the shoulder from stretching");
  }

  @Test
  void aTwinNeedleGivesLessThanInterlock() {
    SewingPlan plan = plan(Vest.plain(), Machines.overlocker(4).withTwinNeedle(Length.mm(3)));
    assertFalse(plan.line("hem").givesEnough());
    assertTrue(ids(plan).contains("sewing.seam-gives-less"));
    assertFalse(ids(plan).contains("sewing.rows-miss-the-hem"));
    assertFalse(ids(plan).contains("sewing.tunnelling"));
  }

  /** A hem of 15 mm is stitched 13 mm from the fold; a gap of 11 mm leaves 2 mm to the fold. */
  @Test
  void bothRowsMustLieOnTheHem() {
    Machines wide = Machines.overlocker(4).withCoverstitch(Length.mm(11));
    SewingPlan narrow = plan(Vest.plain().hem(TurnedHem.once(Length.mm(15))), wide);
    assertTrue(ids(narrow).contains("sewing.rows-miss-the-hem"));
    SewingPlan deeper = plan(Vest.plain().hem(TurnedHem.once(Length.mm(16))), wide);
    assertFalse(ids(deeper).contains("sewing.rows-miss-the-hem"));
    Finding finding =
        narrow.findings().stream()
            .filter(f -> f.id().equals("sewing.rows-miss-the-hem"))
            .findFirst()
            .orElseThrow();
    assertEquals("Turn up at least 16 mm.", finding.remedies().get(0).text());
  }

  @Test
  void aHemDrawnWithTwoRowsTakesATwinNeedle() {
    TurnedHem rows = TurnedHem.once(Length.mm(20)).withTwinNeedle(Length.mm(3));
    SewnLine hem = plan(Vest.plain().hem(rows), Machines.zigzag()).line("hem");
    assertEquals(StitchType.TWIN_NEEDLE, hem.stitch().type());
    assertEquals(Length.mm(3), hem.stitch().width());
  }

  @Test
  void wideTwinNeedlesTunnel() {
    SewingPlan plan = plan(Vest.plain(), Machines.zigzag().withTwinNeedle(Length.mm(4)));
    Finding finding =
        plan.findings().stream()
            .filter(f -> f.id().equals("sewing.tunnelling"))
            .findFirst()
            .orElseThrow();
    assertTrue(finding.reason().contains("two top threads and one bobbin"));
  }

  /** CV-27: 100 cm of 401 by the table takes 550 cm; tails of 2.5 cm at both ends; 15 % waste. */
  @Test
  void threadIsTableTailsAndWaste() {
    SewnLine line =
        SewnLine.of(
            "side",
            Place.seam("side"),
            Stitch.of(StitchType.CHAIN),
            SeamClass.SUPERIMPOSED,
            Length.cm(100),
            1,
            "knit",
            0.1);
    assertEquals((550 + 2 * 2 * 2.5) * 1.15, line.thread().toCm(), 1e-9);
  }

  /** CV-28: 220 cm of 301 at 2.5 are 550 cm. */
  @Test
  void straightStitchTakesTwoAndAHalfTimesItsLength() {
    double factor = StitchType.LOCKSTITCH.threadPerMetre().orElseThrow();
    assertEquals(550, 220 * factor, 1e-12);
  }

  @Test
  void threadIsCountedByColour() {
    Draft draft = draft(Vest.plain()).withFabric("rib", Fabric.of("white rib", Structure.RIB, 0.8));
    assertEquals(
        List.of("navy interlock", "white rib"), List.copyOf(draft.sewing().thread().keySet()));
    draft
        .sewing()
        .thread()
        .values()
        .forEach(length -> assertEquals(0, length.toMm() % 10_000, 1e-6));
  }

  /** One seam of 6 m, sewn twice on the overlocker, takes more than 100 m alone. */
  @Test
  void threadOfALongSeamIsCountedInMetres() {
    Piece strip =
        Piece.of(
            "strip",
            List.of(
                Edge.of("below", Curve.line(new Point(0, 0), new Point(6000, 0))),
                Edge.of("right", Curve.line(new Point(6000, 0), new Point(6000, 90))),
                Edge.of("above", Curve.line(new Point(6000, 90), new Point(0, 90))),
                Edge.of("left", Curve.line(new Point(0, 90), new Point(0, 0)))));
    Piece pair = strip.withCutting(Cutting.pairs(1));
    Piece other = Piece.of("other", pair.edges()).withCutting(Cutting.pairs(1));
    Draft draft =
        Draft.of(
                Pattern.of(
                    "long",
                    List.of(pair, other),
                    List.of(Seam.of("long", "strip below", "other below"))))
            .withFabric("body", INTERLOCK);
    int metres = draft.sewing().threadMetres().values().stream().mapToInt(m -> m).sum();
    assertTrue(metres > 200 && metres % 10 == 0, metres + " m");
  }

  /** Thirty vests in one draft take more than the 100 m that a length goes up to. */
  @Test
  void threadOfALargeGarmentIsCountedInMetres() {
    Pattern vest = Vest.plain().pattern();
    List<Piece> many = new ArrayList<>();
    for (int i = 1; i <= 30; i++) {
      for (Piece piece : vest.pieces()) {
        many.add(Piece.of(piece.name() + " " + i, piece.edges()).withCutting(piece.cutting()));
      }
    }
    Draft draft =
        Draft.of(Pattern.of("many", many, List.of()))
            .withFabric("body", INTERLOCK)
            .withFabric("rib", INTERLOCK);
    int metres = draft.sewing().threadMetres().values().stream().mapToInt(m -> m).sum();
    assertTrue(metres > 100, metres + " m");
    assertEquals(0, metres % 10);
    assertTrue(draft.goods().stream().anyMatch(goods -> goods.amount().contains(" m (estimate)")));
  }
}
