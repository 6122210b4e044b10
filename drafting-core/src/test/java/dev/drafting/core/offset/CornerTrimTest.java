package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Where two parallels that overrun each other are cut. */
class CornerTrimTest {
  private static final double TOUCHING = CornerPlanner.TOUCHING;

  /** y = 120 u (1 - u): rises to 30 at (20, 30) and comes down again. */
  private static final Segment HUMP = Outlines.cubic(0, 0, 10, 40, 30, 40, 40, 0);

  private static final Line ACROSS_THE_HUMP = new Line(new Point(0, 15), new Point(40, 15));

  private static final double EARLY = (1 - Math.sqrt(0.5)) / 2;

  /** A bend of 20 mm with a line down from its end; beside them 10 mm and 25 mm. */
  private static final ParallelRun BEND = Runs.beside(10, Outlines.arc(100, 20, 20, 180, 90));

  private static final ParallelRun DOWN = Runs.line(25, 100, 0, 100, -50);

  /**
   * Ends heading up in (105, 5) after a bend of 5 mm, whose parallel at 10 mm inside turns back.
   */
  private static final ParallelRun TIGHT_END =
      Runs.beside(
          -10, new Line(new Point(0, 0), new Point(100, 0)), Outlines.arc(100, 5, 5, -90, 90));

  /** Leaves (105, 5) down to the right. */
  private static final ParallelRun AFTER_TIGHT_END = Runs.line(2, 105, 5, 135, -35);

  private static @Nullable CornerPlan trim(ParallelRun a, ParallelRun b) {
    return CornerTrim.trim(a, b, Runs.shape(a, b));
  }

  private static CornerShape reaching(CornerShape shape, double reachA, double reachB) {
    return new CornerShape(
        shape.corner(),
        shape.wayA(),
        shape.wayB(),
        shape.distanceA(),
        shape.distanceB(),
        shape.cosine(),
        shape.sine(),
        reachA,
        reachB);
  }

  private static void assertLine(double x0, double y0, double x1, double y1, List<Strand> strands) {
    assertEquals(1, strands.size());
    assertTrue(strands.get(0).segment() instanceof Line);
    assertPoint(x0, y0, strands.get(0).start());
    assertPoint(x1, y1, strands.get(0).end());
  }

  private static void assertPoint(double x, double y, Point point) {
    assertEquals(x, point.x(), 1e-9);
    assertEquals(y, point.y(), 1e-9);
  }

  @Test
  void theFirstRunIsContinuedToTheSecondWhichIsCutThere() {
    CornerPlan plan =
        Objects.requireNonNull(trim(Runs.line(-10, 0, 0, 100, 0), Runs.line(20, 100, 0, 100, 50)));
    assertEquals(1, plan.endA());
    assertLine(100, 10, 120, 10, plan.beyondA());
    assertEquals(0.2, plan.startB(), 1e-12);
    assertTrue(plan.across().isEmpty() && plan.beforeB().isEmpty());
  }

  @Test
  void theSecondRunIsContinuedBackToTheFirstWhichIsCutThere() {
    CornerPlan plan =
        Objects.requireNonNull(trim(Runs.line(20, 0, 0, 100, 0), Runs.line(-10, 100, 0, 100, 50)));
    assertEquals(0.9, plan.endA(), 1e-12);
    assertLine(90, -20, 90, 0, plan.beforeB());
    assertEquals(0, plan.startB());
    assertTrue(plan.across().isEmpty() && plan.beyondA().isEmpty());
  }

  @Test
  void aRunThatEndsTurnedBackIsNotContinued() {
    ParallelRun a = Runs.turnedBack(Runs.line(-10, 0, 0, 100, 0), 0);
    assertNull(trim(a, Runs.line(20, 100, 0, 100, 50)));
    ParallelRun b = Runs.turnedBack(Runs.line(-10, 100, 0, 100, 50), 0);
    assertNull(trim(Runs.line(20, 0, 0, 100, 0), b));
  }

  /** Ends in (100, 10) on the run that leaves. */
  @Test
  void whatLacksNoMoreThanPointsCanBeToldApartIsNotContinued() {
    ParallelRun a = Runs.along(10, 0, 10, 100, 10);
    ParallelRun b = Runs.along(10, 100, 0, 100, 50);
    CornerShape shape = reaching(Runs.shape(a, b), TOUCHING, 0);
    CornerPlan plan = Objects.requireNonNull(CornerTrim.trim(a, b, shape));
    assertEquals(1, plan.endA(), 1e-12);
    assertEquals(0.2, plan.startB(), 1e-12);
    assertTrue(plan.beyondA().isEmpty());
    CornerShape back = reaching(Runs.shape(b.reversed(), a.reversed()), 0, TOUCHING);
    plan = Objects.requireNonNull(CornerTrim.trim(b.reversed(), a.reversed(), back));
    assertEquals(0.8, plan.endA(), 1e-12);
    assertEquals(0, plan.startB(), 1e-12);
    assertTrue(plan.beforeB().isEmpty());
  }

  /** The circle of 30 mm about (100, 20) is at x = 75 where y = 20 - sqrt(30² - 25²). */
  @Test
  void aLineIsContinuedToACurveThatBendsAwayFromIt() {
    double y = 20 - Math.sqrt(900 - 625);
    double u = Math.atan2(20 - y, 25) / (Math.PI / 2);
    CornerPlan plan = Objects.requireNonNull(trim(BEND, DOWN));
    assertEquals(u, plan.endA(), 1e-9);
    assertLine(75, y, 75, 0, plan.beforeB());
    assertEquals(0, plan.startB());
    CornerPlan back = Objects.requireNonNull(trim(DOWN.reversed(), BEND.reversed()));
    assertEquals(1, back.endA());
    assertLine(75, 0, 75, y, back.beyondA());
    assertEquals(1 - u, back.startB(), 1e-9);
  }

  @Test
  void aTurnedBackLineIsNotContinuedToACurveThatBendsAway() {
    ParallelRun turned = Runs.turnedBack(DOWN, 0);
    assertNull(trim(BEND, turned));
    assertNull(trim(turned.reversed(), BEND.reversed()));
  }

  @Test
  void aCurveThatIsOverrunByNextToNothingIsNotLookedFor() {
    CornerShape shape = Runs.shape(BEND, DOWN);
    assertNull(CornerTrim.trim(BEND, DOWN, reaching(shape, -TOUCHING, 0)));
    CornerShape back = Runs.shape(DOWN.reversed(), BEND.reversed());
    assertNull(CornerTrim.trim(DOWN.reversed(), BEND.reversed(), reaching(back, 0, -TOUCHING)));
  }

  /** Back from (103.4, 3.8) along (-0.6, 0.8) to y = 10, where the first run goes forwards. */
  @Test
  void pastACuspTheOtherRunIsContinuedToThePartThatRunsForwards() {
    CornerShape shape = Runs.shape(TIGHT_END, AFTER_TIGHT_END);
    CornerPlan plan =
        Objects.requireNonNull(CornerTrim.pastCusp(TIGHT_END, AFTER_TIGHT_END, shape));
    assertEquals(0.9875, plan.endA(), 1e-9);
    assertLine(98.75, 10, 103.4, 3.8, plan.beforeB());
    assertEquals(0, plan.startB());
    ParallelRun a = AFTER_TIGHT_END.reversed();
    ParallelRun b = TIGHT_END.reversed();
    CornerPlan back = Objects.requireNonNull(CornerTrim.pastCusp(a, b, Runs.shape(a, b)));
    assertEquals(1, back.endA());
    assertLine(103.4, 3.8, 98.75, 10, back.beyondA());
    assertEquals(2 - 0.9875, back.startB(), 1e-9);
  }

  @Test
  void thereIsNothingPastACuspWhereBothRunsOrNoneTurnBack() {
    CornerShape shape = Runs.shape(TIGHT_END, AFTER_TIGHT_END);
    ParallelRun turned = Runs.turnedBack(AFTER_TIGHT_END, 0);
    assertNull(CornerTrim.pastCusp(TIGHT_END, turned, shape));
    assertNull(CornerTrim.pastCusp(Runs.turnedBack(TIGHT_END), AFTER_TIGHT_END, shape));
    ParallelRun a = AFTER_TIGHT_END.reversed();
    CornerShape back = Runs.shape(a, TIGHT_END.reversed());
    assertNull(CornerTrim.pastCusp(turned.reversed(), TIGHT_END.reversed(), back));
    assertNull(CornerTrim.pastCusp(a, Runs.turnedBack(TIGHT_END).reversed(), back));
  }

  @Test
  void thereIsNothingPastACuspForARunThatReachesNoFarther() {
    ParallelRun b = Runs.along(2, 90, 10, 135, -35);
    for (double reach : new double[] {TOUCHING, -5}) {
      assertNull(
          CornerTrim.pastCusp(TIGHT_END, b, reaching(Runs.shape(TIGHT_END, b), reach, reach)));
      ParallelRun a = b.reversed();
      ParallelRun turned = TIGHT_END.reversed();
      assertNull(CornerTrim.pastCusp(a, turned, reaching(Runs.shape(a, turned), reach, reach)));
    }
  }

  /** All crossings of two zigzags, worked pair by pair with Cramer's rule. */
  @Test
  void ofSeveralCrossingsTheOneNearestToTheCornerIsTaken() {
    Random random = new Random(4);
    int several = 0;
    for (int k = 0; k < 300; k++) {
      ParallelRun a = zigzag(random);
      ParallelRun b = zigzag(random);
      List<double[]> all = crossings(a, b);
      several += all.size() > 1 ? 1 : 0;
      double[] nearest = null;
      for (double[] at : all) {
        if (nearest == null || at[1] - at[0] < nearest[1] - nearest[0]) {
          nearest = at;
        }
      }
      CornerPlan plan = CornerTrim.crossing(a, b, Runs.shape(a, b));
      if (nearest == null || plan == null) {
        assertNull(nearest);
        assertNull(plan);
      } else {
        assertEquals(nearest[0], plan.endA(), 1e-9);
        assertEquals(nearest[1], plan.startB(), 1e-9);
      }
    }
    assertTrue(several > 100);
  }

  private static ParallelRun zigzag(Random random) {
    double[] xy = random.doubles(10, 0, 100).toArray();
    ParallelRun run = Runs.along(100, xy);
    return random.nextInt(3) > 0 ? run : Runs.turnedBack(run, random.nextInt(4));
  }

  private static List<double[]> crossings(ParallelRun a, ParallelRun b) {
    List<double[]> all = new ArrayList<>();
    for (int i = 0; i < a.strands().size(); i++) {
      for (int j = 0; j < b.strands().size(); j++) {
        Strand one = a.strands().get(i);
        Strand two = b.strands().get(j);
        double px = one.end().x() - one.start().x();
        double py = one.end().y() - one.start().y();
        double qx = two.end().x() - two.start().x();
        double qy = two.end().y() - two.start().y();
        double dx = two.start().x() - one.start().x();
        double dy = two.start().y() - one.start().y();
        double u = (dx * qy - dy * qx) / (px * qy - py * qx);
        double v = (dx * py - dy * px) / (px * qy - py * qx);
        if (!one.turnedBack() && !two.turnedBack() && u >= 0 && u <= 1 && v >= 0 && v <= 1) {
          all.add(new double[] {i + u, j + v});
        }
      }
    }
    return all;
  }

  /** At 10 mm up to 100 mm away; the strand that is crossed begins 100 mm, or a hair more, away. */
  @Test
  void whatCrossesFartherAwayThanTenDistancesIsLeftToTheOutline() {
    ParallelRun a = Runs.along(10, 0, -50, 0, 50);
    ParallelRun near = Runs.along(10, 120, 0, 60, -80, -100, 40);
    ParallelRun b = Runs.of(10, List.of(near.strands().get(0), near.strands().get(1)));
    assertEquals(100, b.sourceStart().distanceTo(new Point(60, -80)).toMm());
    CornerPlan plan = Objects.requireNonNull(CornerTrim.crossing(a, b, Runs.shape(a, b)));
    assertEquals(1 + 60.0 / 160, plan.startB(), 1e-9);
    assertEquals(15.0 / 100, plan.endA(), 1e-9);
    ParallelRun far = Runs.along(10, 120.001, 0, 60, -80, -100, 40);
    assertNull(CornerTrim.crossing(a, far, Runs.shape(a, far)));
    assertNotNull(CornerTrim.crossing(b.reversed(), a, Runs.shape(b.reversed(), a)));
    assertNull(CornerTrim.crossing(far.reversed(), a, Runs.shape(far.reversed(), a)));
  }

  @Test
  void segmentsMeetWhereTheGuessLeadsTo() {
    double v = HUMP.pointAt(EARLY).x() / 40;
    assertNear(EARLY, v, CornerTrim.meet(HUMP, 0.1, ACROSS_THE_HUMP, 0.2, true));
    assertNear(1 - EARLY, 1 - v, CornerTrim.meet(HUMP, 0.9, ACROSS_THE_HUMP, 0.8, false));
  }

  /** At the guess the hump runs along the line, so that no step leads anywhere. */
  @Test
  void withoutAWayFromTheGuessTheyMeetWhereItIsNearestToTheCorner() {
    double v = HUMP.pointAt(EARLY).x() / 40;
    assertNear(EARLY, v, CornerTrim.meet(HUMP, 0.5, ACROSS_THE_HUMP, 0.5, false));
    assertNear(1 - EARLY, 1 - v, CornerTrim.meet(HUMP, 0.5, ACROSS_THE_HUMP, 0.5, true));
  }

  @Test
  void segmentsThatOnlyTouchMeet() {
    Line upright = new Line(new Point(10, 0), new Point(10, 10));
    Line fromLeft = new Line(new Point(0, 4), new Point(10, 4));
    Line fromRight = new Line(new Point(20, 4), new Point(10, 4));
    for (Line other : List.of(fromLeft, fromRight)) {
      assertMeet(0.4, 1, upright, other);
      assertMeet(1, 0.4, other, upright);
    }
    Line level = new Line(new Point(0, 10), new Point(10, 10));
    Line fromBelow = new Line(new Point(4, 0), new Point(4, 10));
    Line fromAbove = new Line(new Point(4, 20), new Point(4, 10));
    for (Line other : List.of(fromBelow, fromAbove)) {
      assertMeet(0.4, 1, level, other);
      assertMeet(1, 0.4, other, level);
    }
  }

  private static void assertNear(double u, double v, double @Nullable [] met) {
    assertArrayEquals(new double[] {u, v}, Objects.requireNonNull(met), 1e-9);
  }

  private static void assertMeet(double u, double v, Segment a, Segment b) {
    double[] met = Objects.requireNonNull(CornerTrim.meet(a, 0.5, b, 0.5, true));
    assertEquals(u, met[0], 1e-12);
    assertEquals(v, met[1], 1e-12);
  }
}
