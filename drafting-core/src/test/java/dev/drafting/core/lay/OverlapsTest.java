package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A square of 16 and one of 4 on a strip 100 wide with a flaw of 10 by 10: how deep they lie in
 * each other and what that weighs, by hand.
 */
class OverlapsTest {
  private static final double ANY = Double.POSITIVE_INFINITY;
  private static final double EXACT = 1e-6;

  /** The fourth root of the product of two areas, as a share of the height. */
  private static final double LARGE_AND_SMALL = 8 / 100.0;

  /** A flaw counts as much as the item itself. */
  private static final double LARGE_AND_FLAW = 16 / 100.0;

  private static final double SMALL_AND_FLAW = 4 / 100.0;

  private final StripProblem problem =
      new StripProblem(
          List.of(new TurnedShape[] {square(16)}, new TurnedShape[] {square(4)}),
          List.of(Room.anywhere(0, 100), Room.anywhere(1, 100)),
          List.of(new StripProblem.Flaw(square(10), 50, 50)),
          100);
  private final Layout layout = new Layout(2);
  private final Overlaps overlaps = new Overlaps(problem, layout);

  private static TurnedShape square(double side) {
    return TurnedShape.of(new double[] {0, 0, side, 0, side, side, 0, side});
  }

  private void lay(double largeX, double largeY, double smallX, double smallY) {
    layout.x[0] = largeX;
    layout.y[0] = largeY;
    layout.x[1] = smallX;
    layout.y[1] = smallY;
    overlaps.reset();
  }

  /** The small square sticks out of the large one by 1, so it is 3 deep in it. */
  @Test
  void whatLiesInEachOtherWeighsAsDeepAsItLies() {
    lay(0, 0, 13, 7);
    assertEquals(3, overlaps.total(), EXACT);
    assertEquals(3 * LARGE_AND_SMALL, overlaps.of(0), EXACT);
    assertEquals(3 * LARGE_AND_SMALL, overlaps.of(1), EXACT);
    assertFalse(overlaps.isFree(0) || overlaps.isFree(1));
    lay(0, 0, 16, 7);
    assertEquals(0, overlaps.total());
    assertTrue(overlaps.isFree(0) && overlaps.isFree(1));
  }

  /** 2 deep in the flaw from below, and 1 deep in the large square. */
  @Test
  void aFlawCountsLikeAnItem() {
    lay(52, 36, 49, 40);
    assertEquals(2 + 1, overlaps.total(), EXACT);
    assertEquals(2 * LARGE_AND_FLAW + LARGE_AND_SMALL, overlaps.of(0), EXACT);
    assertEquals(LARGE_AND_SMALL, overlaps.of(1), EXACT);
  }

  @Test
  void aPlaceIsWeighedWithoutMovingThere() {
    lay(0, 0, 90, 90);
    assertEquals(0, overlaps.at(1, 0, 16, 0, ANY));
    assertEquals(0, overlaps.at(1, 0, 0, 16, ANY));
    assertEquals(2 * LARGE_AND_SMALL, overlaps.at(1, 0, 14, 5, ANY), EXACT);
    assertEquals(2 * LARGE_AND_SMALL, overlaps.at(1, 0, 5, 14, ANY), EXACT);
    assertEquals(2 * LARGE_AND_SMALL, overlaps.at(1, 0, -2, 5, ANY), EXACT);
    assertEquals(2 * LARGE_AND_SMALL, overlaps.at(1, 0, 5, -2, ANY), EXACT);
    assertEquals(4 * SMALL_AND_FLAW, overlaps.at(1, 0, 53, 50, ANY), EXACT);
    assertEquals(90, layout.x[1]);
    assertEquals(0, overlaps.total());
  }

  @Test
  void weighingStopsWhereMoreMakesNoDifference() {
    lay(52, 36, 49, 40);
    double weighs = 2 * LARGE_AND_FLAW + LARGE_AND_SMALL;
    assertEquals(weighs, overlaps.at(0, 0, 52, 36, weighs * 1.01), EXACT);
    for (double bound : new double[] {0.9 * weighs, 0.5 * weighs, 0.1 * weighs}) {
      double stopped = overlaps.at(0, 0, 52, 36, bound);
      assertTrue(stopped >= bound && stopped <= weighs + EXACT, bound + " " + stopped);
    }
  }

  @Test
  void anItemThatIsMovedAwayIsFree() {
    lay(52, 36, 49, 40);
    overlaps.move(1, 0, 10, 10);
    assertEquals(10, layout.x[1]);
    assertEquals(10, layout.y[1]);
    assertTrue(overlaps.isFree(1));
    assertFalse(overlaps.isFree(0));
    assertEquals(2, overlaps.total(), EXACT);
    overlaps.move(0, 0, 13, 13);
    assertEquals(1, overlaps.total(), EXACT);
    assertEquals(LARGE_AND_SMALL, overlaps.of(0), EXACT);
  }

  /** The deepest becomes twice as heavy, what is half as deep 1.6 times; what is free, lighter. */
  @Test
  void whatStaysInEachOtherBecomesHeavier() {
    lay(52, 36, 49, 40);
    overlaps.reweigh();
    double flaw = 2 * LARGE_AND_FLAW;
    double pair = 1.6 * LARGE_AND_SMALL;
    assertEquals(2 * flaw + pair, overlaps.of(0), EXACT);
    assertEquals(pair, overlaps.of(1), EXACT);
    assertEquals(3, overlaps.total(), EXACT);
    overlaps.move(1, 0, 10, 10);
    overlaps.reweigh();
    assertEquals(2 * 2 * flaw, overlaps.of(0), EXACT);
    assertEquals(0.95 * pair, overlaps.at(1, 0, 49, 40, ANY), EXACT);
  }

  @Test
  void weightsKeepWithinTheirLimits() {
    lay(0, 0, 13, 7);
    for (int i = 0; i < 60; i++) {
      overlaps.reweigh();
    }
    assertEquals(3e12, overlaps.of(0), 1e6);
    overlaps.reset();
    overlaps.move(1, 0, 90, 90);
    overlaps.reweigh();
    assertEquals(3 * LARGE_AND_SMALL, overlaps.at(1, 0, 13, 7, ANY), EXACT);
  }
}
