package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.drafting.core.geometry.Point;
import org.junit.jupiter.api.Test;

/** Straight lines through few points, by hand. */
class LineFitTest {
  private static LineFit fit(double[] x, double[] y, double[] weights, Ends ends) {
    return new LineFit(Samples.traced(x, y), weights, ends);
  }

  private static double[] all(double... x) {
    return EdgeFit.weights(EdgeFit.all(x.length));
  }

  private static void at(double x, double y, Point point) {
    assertEquals(x, point.x(), 1e-9, point.toString());
    assertEquals(y, point.y(), 1e-9, point.toString());
  }

  /** Two points above a line and two below it, alike on both sides: the line is between them. */
  @Test
  void aLineRunsFromTheFirstPointToTheLast() {
    double[] x = {10, 20, 30, 40};
    double[] y = {5, 3, 3, 5};
    LineFit there = fit(x, y, all(x), Ends.FREE);
    at(10, 4, there.track().start());
    at(40, 4, there.track().end());
    assertEquals(1, there.distance(0), 1e-9);
    assertEquals(-1, there.distance(1), 1e-9);
    assertEquals(4, there.looks());
    assertEquals(0, there.share(0), 1e-9);
    assertEquals(1 / 3.0, there.share(1), 1e-9);
    LineFit back = fit(new double[] {40, 30, 20, 10}, new double[] {5, 3, 3, 5}, all(x), Ends.FREE);
    at(40, 4, back.track().start());
    at(10, 4, back.track().end());
    assertEquals(-1, back.distance(0), 1e-9);
  }

  /** Points at (0, 0), (1, 2), (2, 4) and one that does not count. */
  @Test
  void pointsThatDoNotCountDoNotTurnIt() {
    double[] weights = {1, 1, 0, 1};
    LineFit line =
        fit(new double[] {0, 10, 15, 20}, new double[] {0, 20, 90, 40}, weights, Ends.FREE);
    at(0, 0, line.track().start());
    at(20, 40, line.track().end());
    // From (15, 90) square to the line y = 2 x.
    assertEquals((90 - 30) / Math.sqrt(5), line.distance(2), 1e-9);
  }

  @Test
  void aSteepLineRunsOnInTheOrderOfItsPoints() {
    double[] x = {30, 20, 10};
    LineFit down = fit(x, new double[] {90, 50, 10}, all(x), Ends.FREE);
    at(30, 90, down.track().start());
    at(10, 10, down.track().end());
    LineFit up = fit(new double[] {7, 7, 7}, new double[] {0, 30, 60}, all(x), Ends.FREE);
    at(7, 0, up.track().start());
    at(7, 60, up.track().end());
  }

  @Test
  void aLineThatMeetsTheFoldSquarelyIsLevel() {
    double[] x = {2, 40, 90};
    Ends hem = new Ends(End.SQUARE_ON_FOLD, End.FREE);
    LineFit out = fit(x, new double[] {1, 4, 10}, all(x), hem);
    at(0, 5, out.track().start());
    at(90, 5, out.track().end());
    Ends neck = new Ends(End.FREE, End.SQUARE_ON_FOLD);
    LineFit home = fit(new double[] {90, 40, 2}, new double[] {10, 4, 1}, all(x), neck);
    at(90, 5, home.track().start());
    at(0, 5, home.track().end());
    assertEquals(-5, home.distance(0), 1e-9);
  }

  /** A V neck: the line goes on to the fold at its own slope. */
  @Test
  void aLineThatMeetsTheFoldAtAPointGoesOnToIt() {
    double[] x = {90, 60, 30};
    Ends pointed = new Ends(End.FREE, End.POINTED_ON_FOLD);
    LineFit neck = fit(x, new double[] {200, 140, 80}, all(x), pointed);
    at(90, 200, neck.track().start());
    at(0, 20, neck.track().end());
  }

  /** Points at x = 0, but for a pencil's width, do not say where they meet the fold. */
  @Test
  void aLineAlongTheFoldEndsWhereItsPointsEnd() {
    double[] x = {0, 0, 0};
    Ends pointed = new Ends(End.FREE, End.POINTED_ON_FOLD);
    LineFit along = fit(x, new double[] {200, 140, 80}, all(x), pointed);
    at(0, 200, along.track().start());
    assertEquals(0, along.track().end().x(), 1e-9);
  }

  private static Track cubic(double... xy) {
    return new Track(
        Knots.single(),
        new double[] {xy[0], xy[2], xy[4], xy[6]},
        new double[] {xy[1], xy[3], xy[5], xy[7]});
  }

  /** Its ends are 150 mm apart, so a handle is usually 50 mm; less than 5 is too little. */
  @Test
  void aLevelEndWithHardlyAHandleGetsOne() {
    Ends level = new Ends(End.SQUARE_ON_FOLD, End.FREE);
    Ends handled = SplineFit.handled(cubic(0, 0, 4.9, 0, 90, 60, 120, 90), level);
    Unknowns asked = new Unknowns(4);
    handled.ask(asked, 0, 4);
    Track track = cubic(9, 9, 9, 9, 9, 9, 9, 9);
    asked.numbered().spread(new double[asked.count()], new Track[] {track});
    assertEquals(0.3 * 50, track.cx[1], 1e-9);
    assertSame(level.end(), handled.end());
    assertEquals(level, SplineFit.handled(cubic(0, 0, 5.1, 0, 90, 60, 120, 90), level));
    assertEquals(level, SplineFit.handled(new Track(Knots.straight()), level));
    assertEquals(Ends.FREE, SplineFit.handled(cubic(0, 0, 1, 0, 90, 60, 120, 90), Ends.FREE));
    Ends last = new Ends(End.FREE, End.SQUARE_ON_FOLD);
    assertEquals(last, SplineFit.handled(cubic(120, 90, 90, 60, 5.1, 0, 0, 0), last));
    Ends given = SplineFit.handled(cubic(120, 90, 90, 60, -2, 0, 0, 0), last);
    assertEquals(true, given.end().hasHandle());
    assertEquals(given, SplineFit.handled(cubic(120, 90, 90, 60, -2, 0, 0, 0), given));
  }

  /** Of an edge of two cubics the handle reaches half as far. */
  @Test
  void aHandleBelongsToItsOwnCubic() {
    Knots two = Knots.single().split(0);
    double[] y = {0, 0, 20, 60, 90};
    Ends level = new Ends(End.SQUARE_ON_FOLD, End.FREE);
    assertEquals(
        level, SplineFit.handled(new Track(two, new double[] {0, 2.6, 40, 90, 120}, y), level));
    Ends handled = SplineFit.handled(new Track(two, new double[] {0, 2.4, 40, 90, 120}, y), level);
    assertEquals(true, handled.start().hasHandle());
    double[] down = {90, 60, 20, 0, 0};
    Ends last = new Ends(End.FREE, End.SQUARE_ON_FOLD);
    assertEquals(
        last, SplineFit.handled(new Track(two, new double[] {120, 90, 40, 2.6, 0}, down), last));
    assertEquals(
        true,
        SplineFit.handled(new Track(two, new double[] {120, 90, 40, 2.4, 0}, down), last)
            .end()
            .hasHandle());
  }
}
