package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.Draft;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.garment.RaglanSweatshirt;
import dev.drafting.knit.hem.TurnedHem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sweatshirt with something laid on it. */
class PatchStepsTest {
  private static final Point CORNER = new Point(0, 0);

  private static Draft draft(Pattern pattern) {
    return Draft.of(pattern)
        .withFabric("body", Fabric.of("sweatshirt knit", Structure.JERSEY, 0.25))
        .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80));
  }

  private static Pattern pocketed(Finish mouth) {
    return new RaglanSweatshirt()
        .pattern(Dimensions.of().withChoice("pocket", "front"))
        .withFinish("pocket mouth", mouth);
  }

  private static List<String> ids(List<Finding> findings) {
    return findings.stream().map(Finding::id).toList();
  }

  /** Elbow patches with raw edges: nothing to turn, nothing to leave open, one for each sleeve. */
  @Test
  void aPatchIsStitchedDownAllRound() {
    Point b = new Point(80, 0);
    Point c = new Point(80, 100);
    Piece elbow =
        Piece.of(
                "elbow patch",
                List.of(
                    Edge.of("below", Curve.line(CORNER, b)),
                    Edge.of("right", Curve.line(b, c)),
                    Edge.of("left", Curve.line(c, CORNER))))
            .withCutting(Cutting.pairs(1));
    Pattern plain = new RaglanSweatshirt().pattern();
    List<Piece> pieces = new ArrayList<>(plain.pieces());
    pieces.add(elbow);
    Pattern patched =
        Pattern.of(plain.name(), pieces, plain.seams())
            .withPatch(Patch.of("elbow patch", "sleeve", new Point(20, -300)));
    Draft draft = draft(patched);
    Step step =
        draft.orderOfWork().stream()
            .filter(made -> made.makes().contains("elbow patch"))
            .findFirst()
            .orElseThrow();
    assertEquals("Stitch the elbow patch on the sleeve", step.title());
    assertEquals(
        "Transfer its place to the right side of the sleeve, lay it there right side up, and stitch"
            + " it down close to the below, right and left, in zigzag. All 2 are stitched on"
            + " alike.",
        step.text());
    SewnLine line = draft.sewing().line("elbow patch on sleeve");
    assertEquals(elbow.outline().length().toMm(), line.length().toMm(), 1e-9);
    assertEquals(2, line.times());
  }

  /** What a pocket's mouth is bound with is cut by no one: it is said. */
  @Test
  void aBandAtAMouthIsFound() {
    Draft turned = draft(pocketed(TurnedHem.once(Length.mm(20))));
    assertEquals(List.of(), turned.findings());
    Draft banded = draft(pocketed(FoldedBand.of(Length.mm(20), Length.mm(7))));
    assertEquals(List.of("patch.no-strip"), ids(banded.findings()));
    assertEquals(Place.edge("pocket", "mouth"), banded.findings().get(0).place());
  }

  /** The rib takes 60 mm of the front's length: no cloth lies there, and its seam is in the way. */
  @Test
  void aPocketAcrossTheSeamOfARibIsFound() {
    assertEquals(List.of("patch.reaches-out"), ids(CutPlan.of(pocketAt(10)).findings()));
    assertEquals(List.of("patch.reaches-out"), ids(CutPlan.of(pocketAt(55)).findings()));
    assertEquals(List.of(), ids(CutPlan.of(pocketAt(60)).findings()));
  }

  private static Pattern pocketAt(double height) {
    Pattern usual = pocketed(TurnedHem.once(Length.mm(20)));
    return Pattern.of(usual.name(), usual.pieces(), usual.seams())
        .withPatch(Patch.of("pocket", "front", new Point(0, height)).openAt("mouth"));
  }

  /** A hem of 15 mm is stitched 13 mm from the fold; a gap of 11 mm leaves 2 mm to the fold. */
  @Test
  void bothRowsMustLieOnTheHemOfAMouth() {
    Machines wide = Machines.overlocker(4).withCoverstitch(Length.mm(11));
    Draft narrow = draft(pocketed(TurnedHem.once(Length.mm(15))));
    Draft deeper = draft(pocketed(TurnedHem.once(Length.mm(16))));
    assertTrue(rowsMiss(narrow, wide));
    assertTrue(!rowsMiss(deeper, wide));
  }

  private static boolean rowsMiss(Draft draft, Machines machines) {
    SewingPlan plan =
        SewingPlan.of(
            draft.sewing().sewn(),
            draft.strips(),
            cloth -> draft.fabrics().getOrDefault(cloth, Fabric.of("rib", Structure.RIB, 0.8)),
            machines,
            "neck",
            List.of());
    return ids(plan.findings()).contains("sewing.rows-miss-the-hem");
  }
}
