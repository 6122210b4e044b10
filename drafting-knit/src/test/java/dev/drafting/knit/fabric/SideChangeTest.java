package dev.drafting.knit.fabric;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.Garments;
import dev.drafting.knit.Vest;
import dev.drafting.knit.hem.TurnedHem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * 84 cm round in cloth of 60 %, on 92 cm, is 87.158 cm round in cloth of 35 % (CV-7): 31.58 mm more
 * at four side edges, 7.895 mm at each.
 */
class SideChangeTest {
  private static final double EACH = 31.5789 / 4;
  private static final TurnedHem HEM = TurnedHem.once(Length.mm(20));

  private static Pattern changed(Pattern pattern) {
    return FabricChange.of(knit(0.60), knit(0.35))
        .withGirth(Length.cm(92), Length.cm(84))
        .applyTo(pattern);
  }

  private static Fabric knit(double stretch) {
    return Fabric.of("knit", Structure.OTHER, stretch).withRecovery(0.97);
  }

  private static double grown(Pattern pattern, String edge) {
    EdgeRef ref = EdgeRef.parse(edge);
    return changed(pattern).edge(ref).length().minus(pattern.edge(ref).length()).toMm();
  }

  /** The sleeve gives at both its underarm edges what each side edge of the body does. */
  private static void assertGrowsWithItsSleeves(Pattern tee) {
    assertEquals(EACH, grown(tee, "front hem"), 1e-3);
    assertEquals(EACH, grown(tee, "back hem"), 1e-3);
    assertEquals(2 * EACH, grown(tee, "sleeve / sleeve hem"), 1e-3);
    assertEquals(0, grown(tee, "front shoulder"), 1e-9);
    assertEquals(ids(tee), ids(changed(tee)), "the caps still fit");
  }

  private static List<String> ids(Pattern pattern) {
    return Assembly.of(pattern).findings().stream().map(Finding::id).toList();
  }

  @Test
  void sleevesGrowWithTheSides() {
    assertGrowsWithItsSleeves(Garments.tee(HEM, HEM, HEM, false));
  }

  /** Side and underarm are one seam where sleeves are set in flat. */
  @Test
  void sidesAndUnderarmsMayBeOneSeam() {
    assertGrowsWithItsSleeves(Garments.tee(HEM, HEM, HEM, true));
  }

  /** Which edges of the seam of the cap are named first makes no difference. */
  @Test
  void theSleeveMayBeNamedFirst() {
    Pattern tee = Garments.tee(HEM, HEM, HEM, false);
    List<Seam> seams = new ArrayList<>(tee.seams());
    Seam cap = seams.remove(seams.size() - 1);
    seams.add(
        Seam.of(cap.name(), cap.second(), cap.first()).endToStart().withEase(cap.ease().negated()));
    assertGrowsWithItsSleeves(Pattern.of("tee", tee.pieces(), seams));
  }

  /** A front in two halves, as for a zip, has as many side edges as one on the fold. */
  @Test
  void aFrontInTwoHalvesGrowsLikeOneOnTheFold() {
    Pattern vest = Vest.plain().pattern();
    List<Edge> edges =
        vest.piece("front").edges().stream()
            .map(edge -> edge.isOnFold() ? Edge.of("centre", edge.curve()) : edge)
            .toList();
    Piece half = Piece.of("front", edges).withCutting(Cutting.pairs(1));
    Pattern open = Pattern.of("open vest", List.of(half, vest.piece("back")), vest.seams());
    assertEquals(EACH, grown(open, "front hem"), 1e-3);
    assertEquals(EACH, grown(open, "back hem"), 1e-3);
  }
}
