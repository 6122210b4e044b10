package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What is refused at the door, and that the message says where. */
class TracingTest {
  private static TracedEdge edge(String name, double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return TracedEdge.of(name, points);
  }

  private static Tracing pocket(Extent extent, TracedEdge... edges) {
    return Tracing.of("pocket", extent, List.of(edges));
  }

  private static void assertRefused(String message, Executable doing) {
    assertEquals(message, assertThrows(DraftingException.class, doing).getMessage());
  }

  @Test
  void edgesOfNoPointsOrOneAreRefusedByName() {
    assertRefused(
        "neck: a traced edge has no points. Found: 0. Accepted: two points or more.",
        () -> edge("neck"));
    assertRefused(
        "neck: a traced edge has one point. Found: 1. Accepted: two points or more.",
        () -> edge("neck", 1, 2));
    assertRefused(
        "neck: the points of a traced edge coincide. Found: 3. Accepted: two points or more.",
        () -> edge("neck", 1, 2, 1, 2, 1, 2));
    assertRefused(
        "a traced edge has no name. Accepted: a name such as neck or side.",
        () -> edge(" ", 1, 2, 3, 4));
  }

  @Test
  void pointsThatAreNoNumbersOrTooFarAreRefused() {
    assertThrows(DraftingException.class, () -> edge("neck", 0, 0, Double.NaN, 1));
    assertThrows(DraftingException.class, () -> edge("neck", 0, 0, Double.POSITIVE_INFINITY, 1));
    assertRefused(
        "neck: a point is over 100 m away. Found: 1.0E300 mm. Accepted: points within 100 m.",
        () -> edge("neck", 0, 0, 1e300, 1));
  }

  @Test
  void aTracingNeedsEdgesEachOfThemOnce() {
    assertRefused(
        "pocket: a tracing has no edges. Accepted: one edge or more.", () -> pocket(Extent.WHOLE));
    TracedEdge side = edge("side", 1, 2, 3, 4);
    assertRefused(
        "pocket: side: an edge is traced too often. Found: 2 times. " + "Accepted: each edge once.",
        () -> pocket(Extent.HALF_ON_FOLD, side, side));
    assertRefused(
        "pocket: side: an edge is traced too often. Found: 3 times. "
            + "Accepted: each edge of a whole piece once or twice.",
        () -> pocket(Extent.WHOLE, side, side, side));
    assertRefused(
        "pocket: the fold is not traced: it is the middle of the piece. Found: fold. "
            + "Accepted: the other edges only.",
        () -> pocket(Extent.HALF_ON_FOLD, edge("fold", 0, 0, 0, 9)));
  }

  @Test
  void moreThanAMillionPointsAreRefused() {
    List<Point> many = new ArrayList<>(Collections.nCopies(600_000, new Point(0, 0)));
    many.add(new Point(1, 1));
    TracedEdge edge = TracedEdge.of("side", many);
    assertRefused(
        "pocket: a tracing has too many points. Found: 1200002. "
            + "Accepted: a million points or fewer.",
        () -> pocket(Extent.WHOLE, edge, edge));
    many.addAll(List.copyOf(many));
    DraftingException refused =
        assertThrows(DraftingException.class, () -> TracedEdge.of("side", many));
    assertEquals("side", refused.where());
    assertEquals("1200002", refused.value());
  }

  @Test
  void strokesThatDoNotMeetAreRefusedWithTheirGap() {
    Tracing open =
        pocket(
            Extent.HALF_ON_FOLD,
            edge("top", 0, 100, 60, 100),
            edge("side", 60, 80, 60, 0),
            edge("bottom", 60, 0, 0, 0));
    assertRefused(
        "pocket: top and side: the outline is open: two edges do not meet. "
            + "Found: a gap of 20 mm. Accepted: ends within 15 mm of each other.",
        () -> Truing.of(open).result());
    Tracing closer =
        pocket(
            Extent.HALF_ON_FOLD,
            edge("top", 0, 100, 60, 100),
            edge("side", 60, 86, 60, 0),
            edge("bottom", 60, 0, 0, 0));
    Point corner = Truing.of(closer).result().piece().edge("side").curve().end();
    assertEquals(0, corner.distanceTo(new Point(60, 100)).toMm(), 1e-6);
  }

  @Test
  void aHalfEndsOnTheFoldAndLiesToItsRight() {
    Tracing away =
        pocket(
            Extent.HALF_ON_FOLD,
            edge("top", 16, 100, 60, 100),
            edge("side", 60, 100, 60, 0),
            edge("bottom", 60, 0, 0, 0));
    assertRefused(
        "pocket: top: an edge of a half piece ends neither on the fold nor at an edge. "
            + "Found: an end 16 mm from the fold. "
            + "Accepted: within 15 mm of x = 0, or of the end of another edge.",
        () -> Truing.of(away).result());
    Tracing left =
        pocket(
            Extent.HALF_ON_FOLD,
            edge("top", 0, 100, -60, 100),
            edge("side", -60, 100, -60, 0),
            edge("bottom", -60, 0, 0, 0));
    assertRefused(
        "pocket: top: a half piece lies on both sides of its fold. Found: x = -60 mm. "
            + "Accepted: x above 0, the fold on x = 0; or trace it as a whole piece.",
        () -> Truing.of(left).result());
  }

  @Test
  void aWholePieceHasSidesThatAnswerToEachOther() {
    Tracing odd =
        pocket(
            Extent.WHOLE,
            edge("top", -60, 100, 60, 100),
            edge("side", 60, 100, 60, 0),
            edge("bottom", 60, 0, -60, 0),
            edge("edge", -60, 0, -60, 100));
    DraftingException refused =
        assertThrows(DraftingException.class, () -> Truing.of(odd).result());
    assertEquals("pocket", refused.where());
    assertEquals("the edges of a whole piece do not answer to each other", refused.what());
    assertTrue(refused.value().contains("edge"));
  }

  @Test
  void settingsAreCheckedAgainstTheTracing() {
    Truing truing = Truing.of(pocket(Extent.WHOLE, edge("side", 0, 0, 1, 1)));
    assertRefused(
        "pocket: no such edge was traced. Found: sleeve. Accepted: side.",
        () -> truing.withStraight("sleeve"));
    assertRefused(
        "pocket: no such edge was traced. Found: sleeve. Accepted: side.",
        () -> truing.withPointedCorner("sleeve"));
    assertRefused(
        "smoothing: smoothing is how far the pencil wandered. Found: -1 mm. "
            + "Accepted: 0.1 to 50 mm.",
        () -> truing.withSmoothing(Length.mm(-1)));
  }

  @Test
  void pointsDrawnTwiceAndUnevenSpacingAreTolerated() {
    Tracing plain =
        pocket(
            Extent.HALF_ON_FOLD,
            edge("top", 0, 100, 60, 100),
            edge("side", 60, 100, 60, 40, 60, 39, 60, 0),
            edge("bottom", 60, 0, 0, 0));
    Tracing twice =
        pocket(
            Extent.HALF_ON_FOLD,
            edge("top", 0, 100, 60, 100, 60, 100),
            edge("side", 60, 100, 60, 40, 60, 40, 60, 40, 60, 39, 60, 0),
            edge("bottom", 60, 0, 60, 0, 0, 0));
    assertEquals(Truing.of(plain).result(), Truing.of(twice).result());
  }
}
