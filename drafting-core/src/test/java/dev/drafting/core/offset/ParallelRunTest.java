package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Runs put together by hand: where the part begins and ends that runs forwards. */
class ParallelRunTest {
  private static final boolean FORWARDS = false;
  private static final boolean BACK = true;

  private static Line line(double x0, double y0, double x1, double y1) {
    return new Line(new Point(x0, y0), new Point(x1, y1));
  }

  private static Strand strand(boolean turnedBack, Line line) {
    return new Strand(line, OffsetTag.EDGE, 0, null, turnedBack);
  }

  /** A run at 10 mm beside a straight edge from (0, 0), through points, turned back or not. */
  private static ParallelRun run(double edgeLength, double[] xy, boolean... turnedBack) {
    List<Strand> strands = new ArrayList<>();
    for (int i = 0; i < turnedBack.length; i++) {
      Line line = line(xy[2 * i], xy[2 * i + 1], xy[2 * i + 2], xy[2 * i + 3]);
      strands.add(strand(turnedBack[i], line));
    }
    ParallelRun.Source edge = new ParallelRun.Source(line(0, 0, edgeLength, 0), 0);
    return new ParallelRun(0, edge, edge, 10, strands, false);
  }

  private static double[] through(double... xy) {
    return xy;
  }

  @Test
  void aRunWithoutAStretchTurnedBackIsForwardsFromEndToEnd() {
    ParallelRun plain = run(100, through(0, -10, 60, -10, 100, -10), FORWARDS, FORWARDS);
    assertFalse(plain.startsTurnedBack());
    assertFalse(plain.endsTurnedBack());
    assertFalse(plain.isTurnedBack());
    assertEquals(0, plain.firstForward());
    assertEquals(2, plain.lastForward());
  }

  @Test
  void aRunTurnedBackThroughoutHasNoForwardPartToCutTo() {
    ParallelRun back = run(100, through(60, -6, 50, -6, 40, -6), BACK, BACK);
    assertTrue(back.startsTurnedBack());
    assertTrue(back.endsTurnedBack());
    assertTrue(back.isTurnedBack());
    assertEquals(0, back.firstForward());
    assertEquals(2, back.lastForward());
  }

  @Test
  void oneStretchTurnedBackIsNotTheWhole() {
    ParallelRun end = run(100, through(0, -10, 80, -10, 70, -10), FORWARDS, BACK);
    assertFalse(end.isTurnedBack());
    assertFalse(end.startsTurnedBack());
    assertTrue(end.endsTurnedBack());
    ParallelRun start = run(100, through(10, -10, 0, -10, 80, -10), BACK, FORWARDS);
    assertFalse(start.isTurnedBack());
    assertTrue(start.startsTurnedBack());
    assertFalse(start.endsTurnedBack());
  }

  /** At y = -12 no place is within 10 mm of the end at (100, 0). */
  @Test
  void clearOfTheEndTheForwardPartEndsAtTheStretchTurnedBack() {
    ParallelRun run =
        run(100, through(0, -12, 50, -12, 106, -12, 100, -10), FORWARDS, FORWARDS, BACK);
    assertEquals(2, run.lastForward());
    assertEquals(0, run.firstForward());
  }

  /** At y = -6 the distance from (100, 0) is 10 where x = 92. */
  @Test
  void theForwardPartEndsWhereItComesWithinTheDistanceOfTheEnd() {
    ParallelRun run = run(100, through(0, -6, 106, -6, 100, -10), FORWARDS, BACK);
    assertEquals(92 / 106.0, run.lastForward(), 1e-12);
    assertEquals(92, run.pointAt(run.lastForward()).x(), 1e-9);
    assertEquals(0, run.firstForward());
  }

  /** At y = -6 the distance from (0, 0) is 10 where x = 8. */
  @Test
  void theForwardPartBeginsWhereItLeavesTheDistanceOfTheStart() {
    ParallelRun run = run(100, through(0, -10, -6, -6, 104, -6), BACK, FORWARDS);
    assertEquals(1 + 14 / 110.0, run.firstForward(), 1e-12);
    assertEquals(8, run.pointAt(run.firstForward()).x(), 1e-9);
    assertEquals(2, run.lastForward());
  }

  @Test
  void strandsThatBeginTooNearTheEndAreLeftOut() {
    double[] points = through(0, -6, 50, -6, 95, -6, 99, -6, 106, -6, 100, -10);
    ParallelRun run = run(100, points, FORWARDS, FORWARDS, FORWARDS, FORWARDS, BACK);
    assertEquals(1 + 42 / 45.0, run.lastForward(), 1e-12);
    double[] mirrored = through(0, -10, -6, -6, 1, -6, 5, -6, 50, -6, 100, -6);
    ParallelRun other = run(100, mirrored, BACK, FORWARDS, FORWARDS, FORWARDS, FORWARDS);
    assertEquals(3 + 3 / 45.0, other.firstForward(), 1e-12);
  }

  @Test
  void severalStretchesTurnedBackAtTheEndAreLeftOut() {
    double[] points = through(0, -6, 106, -6, 104, -8, 100, -10);
    ParallelRun run = run(100, points, FORWARDS, BACK, BACK);
    assertEquals(92 / 106.0, run.lastForward(), 1e-12);
  }

  @Test
  void whatIsNearTheEndThroughoutGoesUpToTheStretchTurnedBack() {
    ParallelRun run =
        run(100, through(93, -6, 97, -6, 106, -6, 100, -10), FORWARDS, FORWARDS, BACK);
    assertEquals(2, run.lastForward());
  }

  @Test
  void beforeAnotherStretchTurnedBackItIsNotCut() {
    double[] points = through(0, -6, 96, -6, 94, -6, 98, -6, 106, -6, 100, -10);
    ParallelRun run = run(100, points, FORWARDS, BACK, FORWARDS, FORWARDS, BACK);
    assertEquals(4, run.lastForward());
  }

  @Test
  void turnedBackAtBothEndsTheMiddleIsLeft() {
    double[] points = through(0, -10, -4, -6, 104, -6, 100, -10);
    ParallelRun run = run(100, points, BACK, FORWARDS, BACK);
    assertEquals(1 + 12 / 108.0, run.firstForward(), 1e-12);
    assertEquals(1 + 96 / 108.0, run.lastForward(), 1e-12);
  }

  /** Within 10 mm of the end up from x = 6, of the start down from x = 8: nothing is between. */
  @Test
  void ifNothingWouldBeLeftNothingIsCut() {
    double[] points = through(0, -10, -4, -6, 18, -6, 14, -10);
    ParallelRun run = run(14, points, BACK, FORWARDS, BACK);
    assertEquals(0, run.firstForward());
    assertEquals(3, run.lastForward());
  }

  /** A hem that ends in a bend of 3 mm radius; on the inside 10 mm do not fit. */
  @Test
  void theEndIsMeasuredFromTheTrueParallelAndNotFromItsFit() {
    Cubic hem = Outlines.cubic(0, 0, 60, 0, 100, 0, 100, 9);
    for (double tolerance : new double[] {0.1, 0.01, 1e-4}) {
      ParallelRun run = ParallelRun.of(hem, 0, 0, -10, tolerance);
      assertTrue(run.endsTurnedBack());
      double last = run.lastForward();
      assertTrue(last < run.strands().size() - 1);
      Point expected = trulyClear(hem, -10);
      assertEquals(0, run.pointAt(last).distanceTo(expected).toMm(), 2 * tolerance);
      assertEquals(0, run.firstForward());

      ParallelRun other = ParallelRun.of(hem.reversed(), 0, 0, 10, tolerance);
      assertTrue(other.startsTurnedBack());
      Point first = other.pointAt(other.firstForward());
      assertEquals(0, first.distanceTo(expected).toMm(), 2 * tolerance);
      assertEquals(other.strands().size(), other.lastForward());
    }
  }

  /** The last point of the parallel, from the start, that is 10 mm from the end of the source. */
  private static Point trulyClear(Cubic source, double distance) {
    double t = 0;
    while (parallel(source, t, distance).distanceTo(source.end()).toMm() >= Math.abs(distance)) {
      t += 1e-6;
    }
    return parallel(source, t, distance);
  }

  private static Point parallel(Cubic source, double t, double distance) {
    return source.pointAt(t).plus(source.directionAt(t).left().times(-distance));
  }

  @Test
  void partsBetweenPlacesAreCutAtTheirShares() {
    ParallelRun run =
        run(100, through(0, -10, 40, -10, 60, -10, 100, -10), FORWARDS, FORWARDS, BACK);
    List<Strand> part = run.between(0.25, 2.5);
    assertEquals(3, part.size());
    assertEquals(10, part.get(0).start().x(), 1e-12);
    assertEquals(60, part.get(1).end().x(), 1e-12);
    assertEquals(80, part.get(2).end().x(), 1e-12);
    assertEquals(1, run.between(1, 2).size());
    assertEquals(List.of(), run.between(1.25, 1.25));
    assertEquals(List.of(), run.between(1, 1));
    assertEquals(run.strands(), run.between(0, 3));
  }

  @Test
  void runsGoOnIntoEachOtherWhereTheEdgeHasNoCornerAndNeitherIsTurnedBack() {
    Line one = line(0, 0, 50, 0);
    Line straight = line(50, 0, 90, 0);
    Line up = line(50, 0, 50, 40);
    ParallelRun first = ParallelRun.of(one, 0, 0, 10, 0.01);
    assertTrue(first.runsOnInto(ParallelRun.of(straight, 0, 1, 10, 0.01)));
    assertFalse(first.runsOnInto(ParallelRun.of(up, 0, 1, 10, 0.01)));
    ParallelRun.Source source = new ParallelRun.Source(straight, 1);
    List<Strand> back = List.of(strand(BACK, line(50, -10, 90, -10)));
    ParallelRun turned = new ParallelRun(0, source, source, 10, back, false);
    assertFalse(first.runsOnInto(turned));
    ParallelRun.Source before = new ParallelRun.Source(one, 0);
    ParallelRun turnedFirst = new ParallelRun(0, before, before, 10, back, false);
    assertFalse(turnedFirst.runsOnInto(ParallelRun.of(straight, 0, 1, 10, 0.01)));
  }

  @Test
  void turnedRoundTwiceARunIsAsItWas() {
    ParallelRun run = run(100, through(0, -10, -6, -6, 104, -6), BACK, FORWARDS);
    assertEquals(run, run.reversed().reversed());
    assertEquals(-10, run.reversed().distance());
    assertTrue(run.reversed().endsTurnedBack());
    assertEquals(new Point(100, 0), run.reversed().sourceStart());
    assertEquals(new Point(104, -6), run.reversed().start());
  }
}
