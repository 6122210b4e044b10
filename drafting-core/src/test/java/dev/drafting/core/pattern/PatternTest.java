package dev.drafting.core.pattern;

import static dev.drafting.core.pattern.Refusals.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class PatternTest {
  private static final Piece FRONT = Vests.piece("front", Vests.FRONT);
  private static final Piece BACK = Vests.piece("back", Vests.BACK);
  private static final EdgeRef FRONT_SIDE = EdgeRef.parse("front side");
  private static final EdgeRef BACK_SIDE = EdgeRef.parse("back side");

  private static Pattern with(Seam... seams) {
    return Pattern.of("vest", List.of(FRONT, BACK), List.of(seams));
  }

  @Test
  void aPatternSaysWhatItIs() {
    Pattern pattern = Vests.plain().withVersion("2");
    assertEquals("vest (2): pieces front, back; seams shoulder, side", pattern.toString());
    assertEquals(Length.mm(3), pattern.seamTolerance());
    assertEquals(Angle.degrees(10), pattern.crossingTolerance());
    assertEquals(350, pattern.edge(FRONT_SIDE).length().toMm(), 1e-9);
  }

  @Test
  void aSeamNamesEdgesThatAreThere() {
    assertEquals(
        "vest: seam side: front: there is no such edge. Found: slide. Accepted: fold, hem, side,"
            + " armhole, shoulder, neck.",
        refusal(() -> with(Seam.of("side", EdgeRef.parse("front slide"), BACK_SIDE))));
    assertTrue(
        refusal(() -> with(Seam.of("side", EdgeRef.parse("sleeve side"), BACK_SIDE)))
            .contains("there is no such piece. Found: sleeve. Accepted: front, back"));
    assertTrue(
        refusal(() -> with(Seam.of("side", EdgeRef.parse("front fold"), BACK_SIDE)))
            .contains("an edge on the fold is not sewn"));
  }

  @Test
  void wordsNameEdgesToo() {
    assertEquals(
        Seam.of("side", FRONT_SIDE, BACK_SIDE), Seam.of("side", "front side", "back side"));
    SeamFinish narrow = SeamFinish.of(Length.mm(6));
    assertEquals(with().withFinish(FRONT_SIDE, narrow), with().withFinish("front side", narrow));
  }

  @Test
  void seamsThatAreStillRawGetAnAllowance() {
    SeamFinish narrow = SeamFinish.of(Length.mm(6));
    Pattern pattern =
        with(Seam.of("side", FRONT_SIDE, BACK_SIDE))
            .withFinish("back side", narrow)
            .withSeamAllowance(Length.mm(10));
    assertEquals(SeamFinish.of(Length.mm(10)), pattern.edge(FRONT_SIDE).finish());
    assertEquals(narrow, pattern.edge(BACK_SIDE).finish());
    assertEquals(RawEdge.of(), pattern.edge(EdgeRef.parse("front hem")).finish());
  }

  @Test
  void anEdgeIsSewnOnce() {
    assertTrue(
        refusal(
                () ->
                    with(
                        Seam.of("side", FRONT_SIDE, BACK_SIDE),
                        Seam.of("again", FRONT_SIDE, EdgeRef.parse("back armhole"))))
            .contains("the edge is sewn twice. Found: front / side in seam side"));
    assertTrue(refusal(() -> Seam.of("side", FRONT_SIDE, FRONT_SIDE)).contains("appears twice"));
    assertTrue(
        refusal(() -> Seam.of("side", List.of(), List.of(BACK_SIDE))).contains("no edge on one"));
  }

  @Test
  void aSinglePieceHasNoMirrorImage() {
    Piece whole = FRONT.unfolded();
    Seam seam = Seam.mirrored("centre", EdgeRef.parse("front / side (left)"));
    assertTrue(
        refusal(() -> Pattern.of("vest", List.of(whole), List.of(seam)))
            .contains("no mirror image"));
    assertTrue(refusal(() -> seam.endToStart()).contains("start to start"));
    assertTrue(refusal(() -> seam.withEase(Length.mm(1))).contains("as long as its mirror image"));
  }

  @Test
  void namesDoNotRepeat() {
    assertTrue(
        refusal(() -> Pattern.of("vest", List.of(FRONT, FRONT), List.of()))
            .contains("two pieces have the same name. Found: front"));
    assertTrue(
        refusal(
                () ->
                    with(
                        Seam.of("side", FRONT_SIDE, BACK_SIDE),
                        Seam.of(
                            "side",
                            EdgeRef.parse("front shoulder"),
                            EdgeRef.parse("back shoulder"))))
            .contains("two seams have the same name"));
    assertTrue(refusal(() -> Pattern.of("vest", List.of(), List.of())).contains("no pieces"));
  }

  @Test
  void edgesGoByTwoNames() {
    assertEquals(new EdgeRef("front", "neck"), EdgeRef.parse("front neck"));
    assertEquals(new EdgeRef("front", "lower hem"), EdgeRef.parse("front lower hem"));
    assertEquals(new EdgeRef("front panel", "neck"), EdgeRef.parse("front panel / neck"));
    assertTrue(refusal(() -> EdgeRef.parse("neck")).contains("two names"));
  }

  @Test
  void aPaperIsSharedByTwoPiecesOfOneKind() {
    Pattern shared = Vests.plain().withSharedPaper(SharedPaper.of("body", "back", "front"));
    assertEquals("[body: front marked on back]", shared.sharedPapers().toString());
    assertTrue(
        refusal(() -> shared.withSharedPaper(SharedPaper.of("more", "front", "back")))
            .contains("a piece shares two papers"));
    assertTrue(refusal(() -> SharedPaper.of("body", "back", "back")).contains("with itself"));
    assertTrue(
        refusal(
                () ->
                    Pattern.of("vest", List.of(FRONT.unfolded(), BACK), List.of())
                        .withSharedPaper(SharedPaper.of("body", "back", "front")))
            .contains("only one of the two pieces lies on the fold"));
  }

  @Test
  void tolerancesAreNotNegative() {
    assertTrue(refusal(() -> Vests.plain().withSeamTolerance(Length.mm(-1))).contains("negative"));
    assertTrue(
        refusal(() -> Vests.plain().withCrossingTolerance(Angle.degrees(181)))
            .contains("out of range"));
  }

  @Test
  void patternsAreValues() {
    Pattern one =
        Vests.seamed()
            .withSharedPaper(SharedPaper.of("body", "back", "front"))
            .withSeamTolerance(Length.mm(0.01))
            .withVersion("2");
    assertEquals(one, SerialCopy.of(one));
    assertEquals(one.hashCode(), SerialCopy.of(one).hashCode());
    assertEquals(one.toString(), SerialCopy.of(one).toString());
    assertNotEquals(one, one.withVersion("3"));
    assertNotEquals(one, one.withFinish(FRONT_SIDE, RawEdge.of()));
    assertNotEquals(one, one.withSeamTolerance(Length.mm(1)));
    Seam eased = Seam.of("side", FRONT_SIDE, BACK_SIDE).withEase(Length.mm(5)).endToStart();
    assertEquals("side: front / side to back / side, end to start, ease 5 mm", eased.toString());
    assertEquals(eased, SerialCopy.of(eased));
    assertNotEquals(eased, Seam.of("side", FRONT_SIDE, BACK_SIDE));
  }
}
