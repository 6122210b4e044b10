package dev.drafting.core.pattern;

import static dev.drafting.core.pattern.Refusals.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.cut.CutItem;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PatchTest {
  private static final Pattern VEST = Vests.seamed();

  /** On the fold, 100 mm wide and 120 mm high as a half, its mouth at the top. */
  private static final Piece POCKET =
      Piece.of(
          "pocket",
          List.of(
              Edge.onFold(Curve.line(new Point(0, 120), new Point(0, 0))),
              Edge.of("bottom", Curve.line(new Point(0, 0), new Point(100, 0))),
              Edge.of("side", Curve.line(new Point(100, 0), new Point(100, 120))),
              Edge.of("mouth", Curve.line(new Point(100, 120), new Point(0, 120)))));

  private static final Piece ELBOW =
      Piece.of(
              "elbow",
              List.of(
                  Edge.of("below", Curve.line(new Point(0, 0), new Point(60, 0))),
                  Edge.of("right", Curve.line(new Point(60, 0), new Point(60, 80))),
                  Edge.of("left", Curve.line(new Point(60, 80), new Point(0, 0)))))
          .withCutting(Cutting.pairs(1));

  private static final Patch LAID = Patch.of("pocket", "front", new Point(0, 70)).openAt("mouth");

  private static Pattern with(Piece piece) {
    List<Piece> pieces = new ArrayList<>(VEST.pieces());
    pieces.add(piece);
    return Pattern.of("vest", pieces, VEST.seams());
  }

  private static Pattern with(Piece piece, Patch patch) {
    return with(piece).withPatch(patch);
  }

  @Test
  void aPatchSaysWhereItLies() {
    assertEquals("pocket on front at x 0 mm, y 70 mm, open at mouth", LAID.toString());
    assertEquals(
        "elbow on back at x 5.5 mm, y -3 mm",
        Patch.of("elbow", "back", new Point(5.5, -3)).toString());
    Pattern pattern = with(POCKET, LAID);
    assertEquals(
        "vest: pieces front, back, pocket; seams shoulder, side; patches pocket",
        pattern.toString());
    assertEquals(List.of(LAID), pattern.patches());
    assertEquals("[pocket / bottom, pocket / side]", LAID.stitchedEdges(pattern).toString());
    assertEquals(new Point(100, 190), LAID.outline(pattern).segments().get(2).end());
  }

  @Test
  void patternsThatDifferInAPatchDiffer() {
    Pattern pattern = with(POCKET, LAID);
    assertEquals(pattern, SerialCopy.of(pattern));
    assertEquals(pattern.hashCode(), SerialCopy.of(pattern).hashCode());
    assertNotEquals(pattern, with(POCKET));
    assertNotEquals(LAID, Patch.of("pocket", "front", new Point(0, 71)).openAt("mouth"));
    assertNotEquals(LAID, Patch.of("pocket", "back", new Point(0, 70)).openAt("mouth"));
    assertNotEquals(LAID, Patch.of("pocket", "front", new Point(0, 70)));
    assertEquals(
        List.of(LAID), pattern.withVersion("2").withFinish("front hem", RawEdge.of()).patches());
  }

  @Test
  void whatCannotBeLaidIsRefused() {
    Point at = new Point(0, 70);
    assertEquals(
        "patch front: a piece cannot lie on itself. Found: front. Accepted: two pieces.",
        refusal(() -> Patch.of("front", "front", at)));
    assertTrue(
        refusal(() -> with(POCKET, Patch.of("pouch", "front", at)))
            .contains("there is no such piece. Found: pouch. Accepted: front, back, pocket."));
    assertTrue(
        refusal(() -> with(POCKET, Patch.of("pocket", "sleeve", at))).contains("no such piece"));
    assertTrue(
        refusal(() -> with(POCKET, LAID.openAt("top")))
            .contains("there is no such edge. Found: top"));
    assertTrue(refusal(() -> LAID.openAt("mouth")).contains("the edge is open already"));
    assertTrue(
        refusal(() -> with(POCKET, LAID.openAt("fold"))).contains("on the fold cannot stay open"));
    assertEquals(
        "vest: patch pocket: no edge holds the patch. Found: open at mouth, side, bottom."
            + " Accepted: one stitched edge or more.",
        refusal(() -> with(POCKET, LAID.openAt("side").openAt("bottom"))));
    assertTrue(
        refusal(() -> with(POCKET, LAID).withPatch(Patch.of("pocket", "back", at)))
            .contains("the piece is laid on twice"));
    assertTrue(
        refusal(() -> with(POCKET, Patch.of("front", "pocket", at)))
            .contains(
                "an edge of the patch is sewn in a seam. Found: front / shoulder in seam shoulder"));
    assertTrue(
        refusal(() -> with(POCKET, LAID).withPatch(Patch.of("back", "pocket", at)))
            .contains("the piece beneath is a patch itself. Found: pocket"));
    assertTrue(
        refusal(() -> with(POCKET, Patch.of("pocket", "front", new Point(1, 70))))
            .contains("the fold of the patch does not lie on a fold"));
  }

  /** Nothing of the garment's openings and seams changes by what is only laid on it. */
  @Property(tries = 50)
  void aPatchIsNoPartOfTheGarment(
      @ForAll @DoubleRange(min = 10, max = 100) double x,
      @ForAll @DoubleRange(min = 30, max = 200) double y) {
    Assembly plain = Assembly.of(VEST);
    Assembly loose = Assembly.of(with(ELBOW));
    assertEquals(plain.openings().size() + 2, loose.openings().size(), "right and left");
    Assembly laid = Assembly.of(with(ELBOW, Patch.of("elbow", "front", new Point(x, y))));
    assertEquals(plain.openings(), laid.openings());
    assertEquals(plain.junctions(), laid.junctions());
    assertEquals(plain.seamChecks(), laid.seamChecks());
    assertEquals(plain.findings(), laid.findings());
    assertEquals(plain.eulerCharacteristic(), laid.eulerCharacteristic());
  }

  /** Every run of stitched edges is one line on the piece beneath, where the patch lies. */
  @Test
  void thePieceBeneathIsMarked() {
    CutPlan plan = CutPlan.of(with(POCKET, LAID));
    CutPiece front = plan.pieces().get(0);
    assertEquals("[marking line pocket: place, 220 mm]", front.markings().toString());
    Curve line = front.markings().get(0).curve();
    assertEquals(new Point(0, 70), line.start());
    assertEquals(new Point(100, 190), line.end());
    assertEquals(List.of(), plan.findings());
    assertEquals(List.of(), plan.pieces().get(1).markings());
    Patch pouch = Patch.of("pocket", "front", new Point(0, 70)).openAt("side");
    assertEquals(
        "[marking line pocket: place, 100 mm, marking line pocket: place, 100 mm]",
        CutPlan.of(with(POCKET, pouch)).pieces().get(0).markings().toString());
    Patch closed = Patch.of("elbow", "front", new Point(20, 70));
    assertEquals(
        "[marking line elbow: place, 240 mm]",
        CutPlan.of(with(ELBOW, closed)).pieces().get(0).markings().toString());
  }

  @Test
  void theCutListStays() {
    List<CutItem> loose = CutPlan.of(with(POCKET)).cutList();
    assertEquals(loose, CutPlan.of(with(POCKET, LAID)).cutList());
  }

  @Test
  void stitchedEdgesGetAnAllowance() {
    Pattern pattern = with(POCKET, LAID).withSeamAllowance(Length.mm(9));
    assertEquals(SeamFinish.of(Length.mm(9)), pattern.edge(EdgeRef.parse("pocket side")).finish());
    assertEquals(RawEdge.of(), pattern.edge(EdgeRef.parse("pocket mouth")).finish());
  }

  /** Below the hem, across the fold, beyond the side. */
  @Test
  void aPatchThatReachesOutIsFound() {
    assertEquals(List.of(), reachingOut(with(POCKET, LAID)));
    assertEquals(
        List.of("patch.reaches-out"),
        reachingOut(with(POCKET, Patch.of("pocket", "front", new Point(0, -200)))));
    assertEquals(
        List.of("patch.reaches-out"),
        reachingOut(with(ELBOW, Patch.of("elbow", "front", new Point(-10, 70)))));
    double side = VEST.piece("front").edge("side").curve().pointAt(Length.mm(70)).x();
    assertEquals(
        List.of("patch.reaches-out"),
        reachingOut(with(ELBOW, Patch.of("elbow", "front", new Point(side - 50, 70)))));
  }

  private static List<String> reachingOut(Pattern pattern) {
    return CutPlan.of(pattern).findings().stream().map(Finding::id).toList();
  }

  /** In cloth that will shrink the pocket and its place are drawn larger alike. */
  @Test
  void thePlaceIsScaledWithThePieceBeneath() {
    Pattern larger =
        Reshaping.of(with(POCKET, LAID))
            .scaled("front", 1.05, 1.1)
            .scaled("pocket", 1.05, 1.1)
            .result();
    assertEquals(0, larger.patches().get(0).at().x(), 0);
    assertEquals(77, larger.patches().get(0).at().y(), 1e-9);
    Curve line = CutPlan.of(larger).pieces().get(0).markings().get(0).curve();
    assertEquals(105, line.end().x(), 1e-9);
    assertEquals(1.1 * 190, line.end().y(), 1e-9);
  }
}
