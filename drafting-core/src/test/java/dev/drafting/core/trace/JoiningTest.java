package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Strokes of a patch 60 mm wide and 80 mm high. */
class JoiningTest {
  private static final Stroke BOTTOM = stroke("bottom", 0, 0, 30, 0, 60, 0);
  private static final Stroke SIDE = stroke("side", 60, 0, 60, 40, 60, 80);
  private static final Stroke TOP = stroke("top", 60, 80, 30, 80, 0, 80);
  private static final Stroke FOLD = stroke("fold", 0, 80, 0, 40, 0, 0);

  private static Stroke stroke(String name, double... xy) {
    return Stroke.of(TracedEdge.of(name, Polyline.of(xy)));
  }

  /** A line that comes back to where it began. */
  private static Stroke closed(String name, double... xy) {
    return Stroke.of(TracedEdge.of(name, Polyline.of(xy)), true);
  }

  /** Every stroke by its name and where it begins. */
  private static String order(List<Stroke> strokes) {
    List<String> order = new ArrayList<>();
    strokes.forEach(stroke -> order.add(stroke.name + " from " + stroke.first()));
    return String.join(", ", order);
  }

  private static @Nullable String refusedHalf(Stroke... strokes) {
    return assertThrows(DraftingException.class, () -> Joining.half("pocket", List.of(strokes)))
        .getMessage();
  }

  private static @Nullable String refusedWhole(Stroke... strokes) {
    return assertThrows(DraftingException.class, () -> Joining.whole("patch", List.of(strokes)))
        .getMessage();
  }

  @Test
  void aHalfRunsFromTheLowerEndOfTheFoldToTheUpper() {
    String expected = "bottom from (0, 0), side from (60, 0), top from (60, 80)";
    assertEquals(expected, order(Joining.half("pocket", List.of(BOTTOM, SIDE, TOP))));
    assertEquals(expected, order(Joining.half("pocket", List.of(TOP, BOTTOM, SIDE))));
    assertEquals(
        expected,
        order(Joining.half("pocket", List.of(SIDE.reversed(), TOP.reversed(), BOTTOM.reversed()))));
    assertEquals(expected, order(Joining.half("pocket", List.of(SIDE, TOP.reversed(), BOTTOM))));
  }

  @Test
  void aWholeOutlineRunsRoundCounterClockwise() {
    assertEquals(
        "top from (60, 80), fold from (0, 80), bottom from (0, 0), side from (60, 0)",
        order(Joining.whole("patch", List.of(BOTTOM, TOP.reversed(), FOLD, SIDE.reversed()))));
    Stroke triangle = closed("round", 0, 0, 60, 0, 0, 80, 0, 0);
    assertEquals(List.of(triangle), Joining.whole("patch", List.of(triangle)));
    Stroke turned = Joining.whole("patch", List.of(triangle.reversed())).get(0);
    assertEquals(new Point(60, 0), turned.point(1));
  }

  /** Both ends are 15 mm off the fold, as far as they may be. */
  @Test
  void aHalfMayLieFarUpItsFold() {
    Stroke bottom = stroke("bottom", -15, 1000, 60, 1000);
    Stroke side = stroke("side", 60, 1000, 60, 1080, 15, 1080);
    String expected = "bottom from (-15, 1000), side from (60, 1000)";
    assertEquals(expected, order(Joining.half("pocket", List.of(bottom, side))));
    assertEquals(expected, order(Joining.half("pocket", List.of(side, bottom))));
  }

  @Test
  void aNarrowHalfMayLieBesideItsFold() {
    Stroke bottom = stroke("bottom", -15, 0, -8, 0);
    Stroke side = stroke("side", -8, 0, -8, 80, -15, 80);
    assertEquals(
        "bottom from (-15, 0), side from (-8, 0)",
        order(Joining.half("loop", List.of(side, bottom))));
  }

  /** The first stroke ends 4 mm from one and 1 mm from the other. */
  @Test
  void theNearestEndsAreJoinedFirst() {
    Stroke below = stroke("below", 0, 0, 40, 0);
    Stroke shortBit = stroke("notch", 41, 0, 44, 3);
    Stroke beside = stroke("beside", 44, 4, 44, 60, 0, 60);
    assertEquals(
        "below from (0, 0), notch from (41, 0), beside from (44, 4)",
        order(Joining.half("pocket", List.of(below, beside, shortBit))));
    assertEquals(
        "below from (0, 0), notch from (41, 0), beside from (44, 4)",
        order(Joining.half("pocket", List.of(shortBit.reversed(), beside.reversed(), below))));
  }

  @Test
  void aGapOfFifteenMillimetresIsStillJoined() {
    Stroke side = stroke("side", 75, 0, 75, 80, 0, 80);
    assertEquals(
        "bottom from (0, 0), side from (75, 0)",
        order(Joining.half("pocket", List.of(BOTTOM, side))));
    assertEquals(
        "pocket: bottom and side: the outline is open: two edges do not meet."
            + " Found: a gap of 16 mm. Accepted: ends within 15 mm of each other.",
        refusedHalf(BOTTOM, stroke("side", 76, 0, 76, 80, 0, 80)));
  }

  @Test
  void aWholeOutlineThatDoesNotCloseIsRefused() {
    Stroke open = closed("round", 0, 0, 60, 0, 60, 80, 0, 80, 0, 15);
    assertEquals(List.of(open), Joining.whole("patch", List.of(open)));
    assertEquals(
        "patch: round: the outline is open: two edges do not meet."
            + " Found: a gap of 16 mm. Accepted: ends within 15 mm of each other.",
        refusedWhole(closed("round", 0, 0, 60, 0, 60, 80, 0, 80, 0, 16)));
    assertEquals(
        "patch: top and bottom: the outline is open: two edges do not meet."
            + " Found: a gap of 80 mm. Accepted: ends within 15 mm of each other.",
        refusedWhole(BOTTOM, SIDE, TOP));
  }

  @Test
  void bothEndsOfAHalfLieOnTheFold() {
    assertEquals(
        "bottom from (15, 0), side from (60, 0), top from (60, 80)",
        order(
            Joining.half(
                "pocket",
                List.of(stroke("bottom", 15, 0, 60, 0), SIDE, stroke("top", 60, 80, -15, 80)))));
    assertEquals(
        "pocket: bottom: an edge of a half piece ends neither on the fold nor at an edge."
            + " Found: an end 16 mm from the fold."
            + " Accepted: within 15 mm of x = 0, or of the end of another edge.",
        refusedHalf(stroke("bottom", 16, 0, 60, 0), SIDE, TOP));
    assertEquals(
        "pocket: top: an edge of a half piece ends neither on the fold nor at an edge."
            + " Found: an end -16 mm from the fold."
            + " Accepted: within 15 mm of x = 0, or of the end of another edge.",
        refusedHalf(BOTTOM, SIDE, stroke("top", 60, 80, -16, 80)));
  }

  @Test
  void aHalfLiesBesideItsFold() {
    assertEquals(
        "pocket: top: a half piece lies on both sides of its fold. Found: x = -16 mm."
            + " Accepted: x above 0, the fold on x = 0; or trace it as a whole piece.",
        refusedHalf(BOTTOM, SIDE, stroke("top", 60, 80, -16, 90, 0, 80)));
  }

  @Test
  void edgesThatEncloseNothingAreRefused() {
    assertEquals(
        "pocket: the edges enclose nothing. Accepted: edges round a piece of cloth.",
        refusedHalf(stroke("back", 0, 0, 60, 0, 0, 0)));
  }
}
