package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Half a pocket on the fold, 60 mm wide and 80 mm high, of eleven points and two corners. */
class UnnamedPocketTest {
  private static final Polyline ROUND =
      Polyline.of(0, 0, 20, 0, 40, 0, 60, 0, 60, 20, 60, 40, 60, 60, 60, 80, 40, 80, 20, 80, 0, 80);
  private static final Point LOW = new Point(60, 0);
  private static final Point HIGH = new Point(60, 80);
  private static final UnnamedTracing POCKET =
      UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, ROUND);

  /** The same in two strokes whose ends lie beside the corner. */
  private static final UnnamedTracing OPEN_CORNER =
      UnnamedTracing.of(
          "pocket",
          Extent.HALF_ON_FOLD,
          Polyline.of(
              0, 0, 10, 0, 20, 0, 30, 0, 40, 0, 50, 0, 60, 0, 64, 4, 64, 14, 64, 24, 64, 34, 64, 44,
              64, 54, 64, 64, 64, 74, 64, 84, 54, 84, 44, 84, 34, 84, 24, 84, 14, 84, 0, 84));

  private static @Nullable String refused(Executable what) {
    return assertThrows(DraftingException.class, what).getMessage();
  }

  @Test
  void itKnowsItsPieceAndItsCorners() {
    assertEquals("pocket", POCKET.piece());
    assertEquals(Extent.HALF_ON_FOLD, POCKET.extent());
    assertEquals(List.of(LOW, HIGH), POCKET.corners());
    assertEquals("pocket, 11 points, 2 corners", POCKET.toString());
    assertEquals("pocket, 11 points, 1 corner", POCKET.withoutCorner(LOW).toString());
  }

  @Test
  void aCornerThatWasNotTracedLiesHalfwayBetweenItsPoints() {
    assertEquals(List.of(new Point(62, 2), new Point(64, 84)), OPEN_CORNER.corners());
    assertEquals(new Point(60, 0), OPEN_CORNER.stretches().get(0).to());
    assertEquals(new Point(64, 4), OPEN_CORNER.stretches().get(1).from());
  }

  @Test
  void aCornerIsPutOnTheNearestPoint() {
    UnnamedTracing split = POCKET.withCorner(new Point(55, 31));
    assertEquals(List.of(LOW, new Point(60, 40), HIGH), split.corners());
    assertEquals(
        List.of(new Point(0, 0), LOW, HIGH), POCKET.withCorner(new Point(-9, 5)).corners());
    assertEquals(
        List.of(LOW, HIGH, new Point(20, 80)), POCKET.withCorner(new Point(11, 99)).corners());
  }

  @Test
  void aCornerThatIsThereIsNotPutAgain() {
    assertEquals(POCKET, POCKET.withCorner(new Point(61, 1)));
    assertEquals(OPEN_CORNER, OPEN_CORNER.withCorner(new Point(60, -1)));
    assertEquals(OPEN_CORNER, OPEN_CORNER.withCorner(new Point(65, 5)));
  }

  @Test
  void theCornerNearestToAPlaceIsTakenAway() {
    assertEquals(List.of(HIGH), POCKET.withoutCorner(new Point(0, 30)).corners());
    assertEquals(List.of(LOW), POCKET.withoutCorner(new Point(0, 50)).corners());
    UnnamedTracing one = POCKET.withoutCorner(LOW);
    assertEquals(
        "pocket: a tracing needs corners to have edges. Found: (60, 80)."
            + " Accepted: a tracing with two corners or more.",
        refused(() -> one.withoutCorner(HIGH)));
  }

  @Test
  void cornersThatAreKnownAreAddedToThoseFound() {
    UnnamedTracing known =
        UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, ROUND, List.of(new Point(60, 41), LOW));
    assertEquals(POCKET.withCorner(new Point(60, 40)), known);
    assertEquals(POCKET, UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, ROUND, List.of()));
  }

  @Test
  void whatHasNoCornerIsRefusedUnlessOneIsKnown() {
    Polyline arc = arc();
    assertEquals(
        "tab: no corner stands out of the line. Accepted: a line with corners; "
            + "an edge without corners is traced under its name.",
        refused(() -> UnnamedTracing.of("tab", Extent.HALF_ON_FOLD, arc)));
    assertEquals(
        refused(() -> UnnamedTracing.of("tab", Extent.HALF_ON_FOLD, arc)),
        refused(() -> UnnamedTracing.of("tab", Extent.HALF_ON_FOLD, arc, List.of())));
    assertEquals(
        List.of(arc.point(20)),
        UnnamedTracing.of("tab", Extent.HALF_ON_FOLD, arc, List.of(new Point(60, 0))).corners());
  }

  /** Half a circle of 60 mm round the origin with a point every 4.5 degrees. */
  private static Polyline arc() {
    double[] xy = new double[82];
    for (int i = 0; i <= 40; i++) {
      double turn = Math.PI * (i - 20) / 40;
      xy[2 * i] = 60 * Math.cos(turn);
      xy[2 * i + 1] = 60 * Math.sin(turn);
    }
    return Polyline.of(xy);
  }

  @Test
  void severalStrokesMakeOneLine() {
    Polyline lower = Polyline.of(0, 0, 20, 0, 40, 0, 60, 0, 60, 20, 60, 40);
    Polyline upper = Polyline.of(0, 80, 20, 80, 40, 80, 60, 80, 60, 60, 60, 40);
    assertEquals(POCKET, UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, List.of(upper, lower)));
  }

  @Test
  void aTracingHasAMillionPointsAtMost() {
    String accepted = " Accepted: one stroke or more, a million points or fewer.";
    assertEquals(
        "pocket: a tracing has too few or too many points. Found: 0." + accepted,
        refused(() -> UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, List.of())));
    double[] half = new double[1_000_002];
    for (int i = 0; i < half.length; i += 2) {
      half[i] = i / 1000.0;
    }
    Polyline more = Polyline.of(half);
    Polyline rest = Polyline.of(Arrays.copyOf(half, 1_000_000));
    assertEquals(
        "pocket: a tracing has too few or too many points. Found: 1000001." + accepted,
        refused(() -> UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, List.of(more, rest))));
  }

  @Test
  void strokesAreCountedInTheOrderTheyWereDrawn() {
    assertEquals(
        "pocket: stroke 1 and stroke 2: the outline is open: two edges do not meet."
            + " Found: a gap of 40 mm. Accepted: ends within 15 mm of each other.",
        refused(
            () ->
                UnnamedTracing.of(
                    "pocket",
                    Extent.HALF_ON_FOLD,
                    List.of(Polyline.of(0, 0, 60, 0), Polyline.of(60, 40, 60, 80, 0, 80)))));
    assertEquals(
        "a tracing has no name. Accepted: a name such as front or back.",
        refused(() -> UnnamedTracing.of(" ", Extent.HALF_ON_FOLD, ROUND)));
  }

  @Test
  void aLineThatComesBackToItsBeginningIsInOrder() {
    UnnamedTracing wedge =
        UnnamedTracing.of("wedge", Extent.AS_IT_LIES, Polyline.of(0, 0, 60, 0, 0, 80, 0, 0));
    assertEquals(List.of(new Point(0, 0), LOW, new Point(0, 80)), wedge.corners());
    assertTrue(
        wedge.named("bottom", "slant", "side").edges().stream().noneMatch(TracedEdge::isReordered));
  }

  @Test
  void anEdgeThatSharesItsEndsWithEdgesPutInOrderIsInOrder() {
    Polyline bottom = Polyline.of(0, 0, 40, 0, 20, 0, 50, 0, 10, 0, 30, 0, 60, 0);
    Polyline side = Polyline.of(60, 0, 60, 20, 60, 40, 60, 60, 60, 80);
    Polyline top = Polyline.of(60, 80, 20, 80, 40, 80, 10, 80, 50, 80, 30, 80, 0, 80);
    Tracing named =
        UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, List.of(bottom, side, top))
            .named("bottom", "side", "top");
    assertEquals(
        List.of(true, false, true), named.edges().stream().map(TracedEdge::isReordered).toList());
  }

  @Test
  void everyStretchIsNamedInItsOrder() {
    Tracing named = POCKET.named("bottom", "side", "top");
    assertEquals(
        List.of("bottom", "side", "top"), named.edges().stream().map(TracedEdge::name).toList());
    assertEquals(Polyline.of(60, 0, 60, 20, 60, 40, 60, 60, 60, 80), named.edges().get(1).points());
    assertTrue(named.edges().stream().noneMatch(TracedEdge::isReordered));
    assertEquals(
        "pocket: there are not as many names as stretches between corners. Found: 4 names."
            + " Accepted: 3 names, or other corners (withCorner, withoutCorner).",
        refused(() -> POCKET.named("bottom", "side", "top", "fold")));
  }

  /** The side is drawn out of order, the others as they run: they share no more than an end. */
  @Test
  void onlyEdgesOfAStrokeThatWasPutInOrderSaySo() {
    Polyline bottom = Polyline.of(0, 0, 20, 0, 40, 0, 60, 0);
    Polyline side =
        Polyline.of(60, 0, 60, 40, 60, 20, 60, 60, 60, 50, 60, 30, 60, 10, 60, 70, 60, 80);
    Polyline top = Polyline.of(60, 80, 40, 80, 20, 80, 0, 80);
    Tracing named =
        UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, List.of(bottom, side, top))
            .named("bottom", "side", "top");
    assertEquals(
        List.of(false, true, false), named.edges().stream().map(TracedEdge::isReordered).toList());
    assertEquals(
        Polyline.of(60, 0, 60, 10, 60, 20, 60, 30, 60, 40, 60, 50, 60, 60, 60, 70, 60, 80),
        named.edges().get(1).points());
  }

  @Test
  void tracingsAreEqualIfAllThatWasTracedIs() {
    UnnamedTracing same = UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, ROUND);
    assertEquals(same, POCKET);
    assertEquals(same.hashCode(), POCKET.hashCode());
    assertEquals(POCKET, SerialCopy.of(POCKET));
    UnnamedTracing atTheEnds = POCKET.withCorner(new Point(0, 0)).withCorner(new Point(0, 80));
    assertEquals(atTheEnds, SerialCopy.of(atTheEnds));
    double[] moved = ROUND.toArray();
    moved[2] = 21;
    for (UnnamedTracing other :
        List.of(
            UnnamedTracing.of("patch", Extent.HALF_ON_FOLD, ROUND),
            UnnamedTracing.of("pocket", Extent.HALF_ON_FOLD, Polyline.of(moved)),
            POCKET.withCorner(new Point(60, 40)))) {
      assertNotEquals(POCKET, other);
      assertNotEquals(POCKET.hashCode(), other.hashCode());
    }

    Polyline closed = Polyline.of(0, 0, 60, 0, 60, 60, 0, 60, 0, 0);
    assertNotEquals(
        UnnamedTracing.of("patch", Extent.WHOLE, closed),
        UnnamedTracing.of("patch", Extent.AS_IT_LIES, closed));
    assertFalse(POCKET.equals(new Object()));
  }

  @Test
  void stretchesTellWhatWasTraced() {
    TracedStretch side = POCKET.stretches().get(1);
    assertEquals(2, side.number());
    assertEquals(LOW, side.from());
    assertEquals(HIGH, side.to());
    assertEquals(Polyline.of(60, 0, 60, 20, 60, 40, 60, 60, 60, 80), side.points());
    assertEquals("2: (60, 0) to (60, 80), 80 mm apart", side.toString());
    assertEquals(TracedEdge.of("side", side.points()), side.named("side"));
    TracedStretch reordered = new TracedStretch(2, side.points(), true);
    assertEquals(TracedEdge.of("side", side.points()).reordered(), reordered.named("side"));
  }

  @Test
  void stretchesAreEqualIfNumberAndPointsAre() {
    TracedStretch side = POCKET.stretches().get(1);
    assertEquals(new TracedStretch(2, side.points(), false), side);
    assertEquals(new TracedStretch(2, side.points(), false).hashCode(), side.hashCode());
    assertEquals(side, SerialCopy.of(side));
    for (TracedStretch other :
        Arrays.asList(
            new TracedStretch(3, side.points(), false),
            new TracedStretch(2, side.points(), true),
            new TracedStretch(2, ROUND, false))) {
      assertNotEquals(side, other);
      assertNotEquals(side.hashCode(), other.hashCode());
      assertEquals(other, SerialCopy.of(other));
    }
    assertFalse(side.equals(new Object()));
  }

  @Test
  void stretchesAreCountedFromOne() {
    Polyline points = Polyline.of(0, 0, 60, 0);
    TracedStretch first = new TracedStretch(1, points, false);
    assertEquals(first, SerialCopy.of(first));
    assertEquals(
        "stretches are counted from 1. Found: 0. Accepted: 1 or more.",
        refused(() -> SerialCopy.of(new TracedStretch(0, points, false))));
  }

  /**
   * Counted from the 9th point on, the corner between the last and the first is that of 8 and 9.
   */
  @Test
  void aCornerIsThatOfTheSamePointsCountedFromElsewhere() {
    assertEquals(new Corner(8, 9), new Corner(11, 12).shifted(9, 12));
    assertEquals(new Corner(11, 0), new Corner(2, 3).shifted(9, 12));
    assertEquals(new Corner(5, 5), new Corner(5, 5).shifted(0, 12));
  }
}
