package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What leads from one parallel to the next, worked by hand. Every corner is planned a second time
 * with the outline run through the other way.
 */
class CornerPlannerTest {
  private static final CornerTreatment MITRE = CornerTreatment.mitre();
  private static final CornerTreatment ROUND = CornerTreatment.round();
  private static final CornerTreatment BEVEL = CornerTreatment.bevel();
  private static final CornerTreatment STEP = CornerTreatment.step();

  /** To (100, 0), heading to the right, then round a bend of 5 mm to the left, inside by 10 mm. */
  private static ParallelRun intoBend(double degrees) {
    return Runs.beside(
        -10, new Line(new Point(0, 0), new Point(100, 0)), Outlines.arc(100, 5, 5, -90, degrees));
  }

  /** Ends in (105, 5), heading up. Its parallel comes within 10 mm of that end at x = LAST. */
  private static final ParallelRun TIGHT_END = intoBend(90);

  private static final double LAST = 105 - Math.sqrt(75);

  /** From (105, 5), heading right, round a bend to the left and straight on, inside by 10 mm. */
  private static ParallelRun outOfBend(double radius, double x, double y) {
    double degrees = Math.toDegrees(Math.atan2(y, x));
    Arc bend = Outlines.arc(105, 5 + radius, radius, -90, degrees);
    Point end = bend.end();
    return Runs.beside(-10, bend, new Line(end, new Point(end.x() + 100 * x, end.y() + 100 * y)));
  }

  private static CornerPlan plan(ParallelRun a, ParallelRun b, CornerTreatment treatment) {
    CornerPlan plan = CornerPlanner.plan(a, b, 0, treatment);
    CornerPlan back =
        CornerPlanner.plan(b.reversed(), a.reversed(), 0, treatment.reversed())
            .reversed(b.strands().size(), a.strands().size());
    assertEquals(plan.endA(), back.endA(), 1e-9);
    assertEquals(plan.startB(), back.startB(), 1e-9);
    assertSame(plan.beyondA(), back.beyondA());
    assertSame(plan.across(), back.across());
    assertSame(plan.beforeB(), back.beforeB());
    return plan;
  }

  private static void assertSame(List<Strand> one, List<Strand> other) {
    assertEquals(one.size(), other.size());
    for (int i = 0; i < one.size(); i++) {
      Strand there = other.get(i);
      assertStrand(
          there.tag(),
          there.start().x(),
          there.start().y(),
          there.end().x(),
          there.end().y(),
          one.get(i));
    }
  }

  private static void assertStrand(
      OffsetTag tag, double x0, double y0, double x1, double y1, Strand strand) {
    assertEquals(tag, strand.tag());
    assertEquals(x0, strand.start().x(), 1e-9);
    assertEquals(y0, strand.start().y(), 1e-9);
    assertEquals(x1, strand.end().x(), 1e-9);
    assertEquals(y1, strand.end().y(), 1e-9);
  }

  private static void assertBare(CornerPlan plan, double endA, double startB, int across) {
    assertEquals(endA, plan.endA(), 1e-9);
    assertEquals(startB, plan.startB(), 1e-9);
    assertEquals(across, plan.across().size());
    assertTrue(plan.beyondA().isEmpty() && plan.beforeB().isEmpty());
  }

  /**
   * Beside (0.8, 0.6) the wider one starts in (112, -16), its end meets y = -10 in (107.5, -10).
   */
  @Test
  void aNarrowAllowanceRunsIntoTheSquareEndOfAWiderOne() {
    CornerPlan plan = plan(Runs.line(10, 0, 0, 100, 0), Runs.line(20, 100, 0, 180, 60), STEP);
    assertEquals(1, plan.endA());
    assertEquals(1, plan.beyondA().size());
    assertStrand(OffsetTag.EDGE, 100, -10, 107.5, -10, plan.beyondA().get(0));
    assertEquals(1, plan.across().size());
    assertStrand(OffsetTag.STEP, 107.5, -10, 112, -16, plan.across().get(0));
    assertTrue(plan.beforeB().isEmpty());
    assertEquals(0, plan.startB());
  }

  @Test
  void allowancesOnEitherSideOfTheLineAreJoinedStraightAcross() {
    CornerPlan plan = plan(Runs.line(-5, 0, 0, 100, 0), Runs.line(10, 100, 0, 180, 60), STEP);
    assertBare(plan, 1, 0, 1);
    assertStrand(OffsetTag.STEP, 100, 5, 106, -8, plan.across().get(0));
  }

  /** The square end would lie 9 / 0.8 = 11.25 mm off, past the end of the wider allowance. */
  @Test
  void whereTheSquareEndIsTooShortForAStepTheParallelsRunOnToWhereTheyMeet() {
    CornerPlan plan = plan(Runs.line(-9, 0, 0, 100, 0), Runs.line(10, 100, 0, 180, 60), STEP);
    double x = 100 + (10 + 0.8 * 9) / 0.6;
    assertEquals(1, plan.endA());
    assertStrand(OffsetTag.EDGE, 100, 9, x, 9, plan.beyondA().get(0));
    assertTrue(plan.across().isEmpty());
    assertEquals((9 + 0.8 * 10) / 0.6 / 100, plan.startB(), 1e-9);
  }

  @Test
  void betweenCuspsAStepGoesStraightAcross() {
    CornerPlan plan = plan(TIGHT_END, Runs.line(-20, 105, 5, 105, 105), STEP);
    assertBare(plan, LAST / 100, 0, 1);
    assertStrand(OffsetTag.STEP, LAST, 10, 85, 5, plan.across().get(0));
  }

  /** The mitre would be cut 10 mm along the second parallel, which is 5 mm long. */
  @Test
  void whereTheMeetingIsMissedAStepLeadsAcrossIfItCan() {
    CornerPlan plan = plan(Runs.line(10, 0, 0, 100, 0), Runs.line(20, 100, 0, 104, 3), MITRE);
    assertStrand(OffsetTag.EDGE, 100, -10, 107.5, -10, plan.beyondA().get(0));
    assertStrand(OffsetTag.STEP, 107.5, -10, 112, -16, plan.across().get(0));
  }

  @Test
  void whereTheMeetingIsMissedAtASquareCornerOneGoesThroughTheCorner() {
    CornerPlan plan = plan(Runs.line(-10, 0, 0, 100, 0), Runs.line(20, 100, 0, 100, 5), MITRE);
    assertBare(plan, 1, 0, 2);
    assertStrand(OffsetTag.STEP, 100, 10, 100, 0, plan.across().get(0));
    assertStrand(OffsetTag.STEP, 100, 0, 120, 0, plan.across().get(1));
  }

  @Test
  void whereTheMeetingIsMissedBesideACuspOneGoesThroughTheCorner() {
    CornerPlan plan = plan(TIGHT_END, Runs.line(-20, 105, 5, 96, 17), MITRE);
    assertBare(plan, LAST / 100, 0, 2);
    assertStrand(OffsetTag.STEP, LAST, 10, 105, 5, plan.across().get(0));
    assertStrand(OffsetTag.STEP, 105, 5, 89, -7, plan.across().get(1));
  }

  /** From the tip (95, 15) down to the parallel that comes in at y = 10. */
  @Test
  void aMitreBesideACuspIsLeftWhereThePartThatRunsForwardsCrossesIt() {
    CornerPlan plan = plan(TIGHT_END, Runs.line(-10, 105, 5, 205, 5), MITRE);
    assertEquals(0.95, plan.endA(), 1e-9);
    assertStrand(OffsetTag.EDGE, 95, 10, 95, 15, plan.beyondA().get(0));
    assertTrue(plan.across().isEmpty());
    assertStrand(OffsetTag.EDGE, 95, 15, 105, 15, plan.beforeB().get(0));
    assertEquals(0, plan.startB());
  }

  @Test
  void aBevelBesideACuspStartsFromThePartThatRunsForwards() {
    CornerPlan plan = plan(TIGHT_END, Runs.line(-10, 105, 5, 205, 5), BEVEL);
    assertBare(plan, LAST / 100, 0, 1);
    assertStrand(OffsetTag.JOIN, LAST, 10, 105, 15, plan.across().get(0));
  }

  @Test
  void beyondACurveWithNoRoomAtAllOneGoesThroughTheCorner() {
    ParallelRun bend = Runs.beside(-10, Outlines.arc(100, 5, 5, -90, 90));
    CornerPlan plan = plan(bend, Runs.line(-10, 105, 5, 205, 5), BEVEL);
    assertBare(plan, 1, 0, 2);
    assertStrand(OffsetTag.STEP, 95, 5, 105, 5, plan.across().get(0));
    assertStrand(OffsetTag.STEP, 105, 5, 105, 15, plan.across().get(1));
  }

  /** A bend of 90 degrees in two halves; the parallels of its lines cross in (95, 10). */
  @Test
  void aBendInTwoPartsIsCutWhereTheParallelsOfItsLinesCross() {
    ParallelRun second =
        Runs.beside(
            -10,
            Outlines.arc(100, 5, 5, -45, 45),
            new Line(new Point(105, 5), new Point(105, 105)));
    CornerPlan plan = plan(intoBend(45), second, MITRE);
    assertBare(plan, 0.95, 1.05, 0);
  }

  /** Turned by 180 degrees the parallels pass each other and are joined between their cusps. */
  @Test
  void aHairpinInTwoPartsIsClosedBetweenItsCusps() {
    ParallelRun second =
        Runs.beside(
            -10, Outlines.arc(100, 5, 5, 0, 90), new Line(new Point(100, 10), new Point(0, 10)));
    CornerPlan plan = plan(TIGHT_END, second, ROUND);
    assertBare(plan, LAST / 100, 1 + 1 - LAST / 100, 1);
    assertStrand(OffsetTag.JOIN, LAST, 10, LAST, 0, plan.across().get(0));
  }

  /** To x = 100 and back to (95, 10), a cusp; 10 mm beside (95, 0). */
  private static ParallelRun tailTo(double from) {
    return sourced(Runs.turnedBack(Runs.along(-10, from, 10.02, 100, 10.02, 95, 10), 1), 85, 95);
  }

  private static ParallelRun tailFrom(double to) {
    return sourced(Runs.turnedBack(Runs.along(-10, 95, 10, 90, 9.98, to, 9.98), 0), 95, 105);
  }

  private static ParallelRun sourced(ParallelRun run, double from, double to) {
    Segment source = new Line(new Point(from, 0), new Point(to, 0));
    ParallelRun.Source only = new ParallelRun.Source(source, 0);
    return new ParallelRun(0, only, only, -10, run.strands(), false);
  }

  /** From the cusp (100, 10.02) to the cusp (90, 9.98). */
  @Test
  void aFlatTailWhoseSidesMissEachOtherIsCutSquareHalfWay() {
    CornerPlan plan = plan(tailTo(0), tailFrom(200), MITRE);
    assertEquals(0.95, plan.endA(), 1e-5);
    assertEquals(1 + 5.0 / 110, plan.startB(), 1e-5);
    Strand cut = plan.across().get(0);
    assertEquals(OffsetTag.JOIN, cut.tag());
    Vector across = cut.end().minus(cut.start());
    assertEquals(0, across.dot(new Vector(-10, -0.04)), 1e-9);
    assertEquals(0, new Point(95, 10).minus(cut.start()).cross(across), 1e-9);
    assertEquals(10.02, cut.start().y(), 1e-9);
    assertEquals(9.98, cut.end().y(), 1e-9);
  }

  @Test
  void aFlatTailOfWhichOneSideIsTooShortToBeCutIsJoinedAtItsCusps() {
    CornerPlan plan = plan(tailTo(0), tailFrom(93), MITRE);
    assertBare(plan, 1, 1, 1);
    assertStrand(OffsetTag.JOIN, 100, 10.02, 90, 9.98, plan.across().get(0));
    plan = plan(tailTo(97), tailFrom(200), MITRE);
    assertBare(plan, 1, 1, 1);
    assertStrand(OffsetTag.JOIN, 100, 10.02, 90, 9.98, plan.across().get(0));
  }

  /** The lines y = 10 and back along (-0.6, -0.8) from (102.2, 14.6) meet in (98.75, 10). */
  @Test
  void betweenTwoCuspsBothParallelsRunStraightOnToWhereTheyMeet() {
    ParallelRun b = outOfBend(5, 0.6, 0.8);
    CornerPlan plan = plan(TIGHT_END, b, ROUND);
    assertBare(plan, LAST / 100, 1.02, 2);
    assertStrand(OffsetTag.JOIN, LAST, 10, 98.75, 10, plan.across().get(0));
    assertStrand(OffsetTag.JOIN, 98.75, 10, 102.2, 14.6, plan.across().get(1));
    CornerPlan bevelled = plan(TIGHT_END, b, BEVEL);
    assertBare(bevelled, LAST / 100, 1.02, 1);
    assertStrand(OffsetTag.JOIN, LAST, 10, 102.2, 14.6, bevelled.across().get(0));
  }

  /** The parallel that leaves at a slope of 7 in 24 comes from y = 10 behind the first cusp. */
  @Test
  void cuspsWhoseParallelsMeetBehindThemAreJoinedStraight() {
    CornerPlan plan = plan(TIGHT_END, outOfBend(9, 0.96, 0.28), ROUND);
    double t = (-5.04 + Math.sqrt(5.04 * 5.04 + 4 * 0.72)) / 2;
    assertBare(plan, LAST / 100, 1 + t / 100, 1);
    assertStrand(
        OffsetTag.JOIN, LAST, 10, 104.72 + 0.96 * t, 14.96 + 0.28 * t, plan.across().get(0));
  }

  @Test
  void anArcIsDrawnIfItsEndsCanBeToldApart() {
    CornerPlan plan = plan(Runs.line(100, 0, 0, 100, 0), Runs.line(100, 100, 0, 200, 5e-6), ROUND);
    assertEquals(1, plan.across().size());
    assertTrue(plan.across().get(0).segment() instanceof Arc);
  }

  /** The neighbour has no allowance: its own line ends the square one. */
  @Test
  void anAllowanceIsCutSquareDownToTheCornerBesideAnEdgeWithoutOne() {
    CornerPlan plan =
        plan(
            Runs.line(10, 0, 0, 100, 0),
            Runs.line(0, 100, 0, 100, 50),
            CornerTreatment.squareTo(CornerSide.BEFORE));
    assertBare(plan, 1, 0, 1);
    assertStrand(OffsetTag.JOIN, 100, -10, 100, 0, plan.across().get(0));
  }

  /** The square cut in x = 112.5 would meet the second parallel 7.5 mm along; it is 5 mm long. */
  @Test
  void aSquareCutThatMissesItsNeighbourIsAMitre() {
    ParallelRun a = Runs.line(10, 0, 0, 100, 0);
    CornerTreatment square = CornerTreatment.squareTo(CornerSide.BEFORE);
    CornerPlan plan = plan(a, Runs.line(10, 100, 0, 103, 4), square);
    assertStrand(OffsetTag.EDGE, 100, -10, 105, -10, plan.beyondA().get(0));
    assertStrand(OffsetTag.EDGE, 105, -10, 108, -6, plan.beforeB().get(0));
    CornerPlan met = plan(a, Runs.line(10, 100, 0, 106, 8), square);
    assertStrand(OffsetTag.EDGE, 100, -10, 112.5, -10, met.beyondA().get(0));
    assertStrand(OffsetTag.JOIN, 112.5, -10, 112.5, 0, met.across().get(0));
    assertEquals(0.75, met.startB(), 1e-9);
  }

  /** The parallels meet (6, 8) from the corner, that is 10 mm off, at distances of 6 and 2.8 mm. */
  @Test
  void aMitreThatReachesJustToItsLimitIsNoStep() {
    CornerPlan plan =
        plan(
            Runs.line(-6, 0, 0, 100, 0),
            Runs.line(2.8, 100, 0, 160, 80),
            CornerTreatment.mitre(10.0 / 6));
    assertStrand(OffsetTag.EDGE, 100, 6, 108, 6, plan.beyondA().get(0));
    assertTrue(plan.across().isEmpty());
    assertEquals(0.096, plan.startB(), 1e-9);
  }

  @Test
  void aMitreThatReachesJustToItsLimitIsNotCutOff() {
    CornerPlan plan =
        CornerPlanner.plan(
            Runs.line(6, 0, 0, 100, 0),
            Runs.line(6, 100, 0, 72, 96),
            0,
            CornerTreatment.mitre(10.0 / 6));
    assertStrand(OffsetTag.EDGE, 100, -6, 108, -6, plan.beyondA().get(0));
    assertTrue(plan.across().isEmpty());
  }

  /** The cosine of the turn is a quarter; the parallels meet within the limit. */
  @Test
  void aCornerThatTurnsByMoreThanAStepAllowsIsAMitre() {
    ParallelRun a = Runs.line(2, 0, 0, 100, 0);
    CornerPlan plan =
        CornerPlanner.plan(a, Runs.line(20, 100, 0, 125, 25 * Math.sqrt(15)), 0, STEP);
    assertTrue(plan.across().isEmpty());
    CornerPlan less =
        CornerPlanner.plan(a, Runs.line(20, 100, 0, 126, 25 * Math.sqrt(15)), 0, STEP);
    assertEquals(OffsetTag.STEP, less.across().get(0).tag());
  }
}
