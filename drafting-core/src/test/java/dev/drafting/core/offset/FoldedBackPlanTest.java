package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import dev.drafting.core.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Sides that do not run straight on where their hem is turned up, along y = 0 from (0, 0). */
class FoldedBackPlanTest {
  private static @Nullable CornerPlan plan(double hem, List<ParallelRun> side, double... folds) {
    CornerTreatment treatment =
        CornerTreatment.foldedBack(
            CornerSide.AFTER, Arrays.stream(folds).mapToObj(Length::mm).toList());
    return FoldedBack.plan(side, List.of(Runs.line(hem, 0, 0, 200, 0)), 0, treatment);
  }

  private static void assertAcross(@Nullable CornerPlan found, double... xy) {
    CornerPlan plan = Objects.requireNonNull(found);
    assertEquals(xy.length / 2 - 1, plan.across().size());
    for (int i = 0; i < plan.across().size(); i++) {
      Strand strand = plan.across().get(i);
      assertEquals(OffsetTag.JOIN, strand.tag());
      assertEquals(xy[2 * i], strand.start().x(), 1e-9);
      assertEquals(xy[2 * i + 1], strand.start().y(), 1e-9);
      assertEquals(xy[2 * i + 2], strand.end().x(), 1e-9);
      assertEquals(xy[2 * i + 3], strand.end().y(), 1e-9);
    }
  }

  /** The side rises by 2 in 1 for 10 mm only. */
  @Test
  void aSideShorterThanTheHemIsMirroredAsIfItRanOn() {
    assertAcross(plan(20, List.of(Runs.line(0, 5, 10, 0, 0)), 0), 0, 0, 10, -20);
  }

  /** Down x = 0 and from (0, 10) on to the corner by 3 in 4; 5 mm off. */
  @Test
  void betweenTwoPartsOfASideTheMirroredLineGoesStraightAcross() {
    List<ParallelRun> side =
        List.of(Runs.line(5, -7.5, 60, -7.5, 10), Runs.line(5, -7.5, 10, 0, 0));
    CornerPlan plan = Objects.requireNonNull(plan(20, side, 0));
    // the lower part ends in (-4, -3), 3 mm below the fold, and starts in (-11.5, 7)
    assertAcross(plan, -6.25, 0, -11.5, -7, -12.5, -10, -12.5, -20);
    assertEquals((12.5 - 3.75) / 12.5, plan.endA(), 1e-9);
  }

  /** Five millimetres of the side are less than what is cut off below the fold. */
  @Test
  void aSideThatMeetsTheFoldBeforeItsLastPartIsNotFoldedBack() {
    List<ParallelRun> side = List.of(Runs.line(7, -4, 60, -4, 4), Runs.line(7, -4, 4, 0, 0));
    assertNull(plan(20, side, 0));
    assertNotNull(plan(20, List.of(Runs.line(7, -60, 60, 0, 0)), 0));
  }

  /** Folded at 0 and 20 mm; the side bends 15 mm up, on both layers. */
  @Test
  void aBendIsMirroredOnBothLayersOfAHemTurnedTwice() {
    List<ParallelRun> side = List.of(Runs.line(0, 15, 60, 15, 15), Runs.line(0, 15, 15, 0, 0));
    assertAcross(plan(30, side, 0, 20), 0, 0, 15, -15, 15, -20, 15, -25, 10, -30);
  }
}
