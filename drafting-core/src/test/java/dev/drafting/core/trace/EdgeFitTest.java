package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is said of a fit whose points lie off it by given distances. */
class EdgeFitTest {
  private static final Noise TWO = Noise.declared(2);

  private static Samples every(double step, int count) {
    double[] x = IntStream.range(0, count).mapToDouble(i -> i * step).toArray();
    return Samples.traced(x, new double[count]);
  }

  private static EdgeFit off(double step, boolean[] kept, double... distances) {
    Samples samples = every(step, distances.length);
    Track track = new Track(Knots.straight());
    return new EdgeFit(
        samples, Form.STRAIGHT, new GivenFit(track, samples.share, distances), kept, TWO);
  }

  private static EdgeFit off(double... distances) {
    return off(10, EdgeFit.all(distances.length), distances);
  }

  @Test
  void squaresAreThoseOfThePointsThatCount() {
    boolean[] kept = {true, true, false, true};
    EdgeFit fit = off(10, kept, 1, -2, 50, 3);
    assertEquals(1 + 4 + 9, fit.squares(), 1e-12);
    assertEquals(3, fit.observations(), 1e-12);
    assertEquals(Math.sqrt(14 / 3.0), fit.rms(), 1e-12);
    assertEquals(3, fit.keptCount());
  }

  /** 21 points at every millimetre are five observations. */
  @Test
  void pointsThatFollowEachOtherCloselyCountForLess() {
    double[] ones = new double[21];
    Arrays.fill(ones, 2);
    EdgeFit fit = off(1, EdgeFit.all(21), ones);
    assertEquals(5, fit.observations(), 1e-12);
    assertEquals(4 * 5, fit.squares(), 1e-12);
    assertEquals(2, fit.rms(), 1e-12);
  }

  /**
   * Of 16 points, all one off, the products of neighbours have to add up to more than 16 / 2 / 4,
   * half of what they deviate by chance: nine neighbours alike and six unlike do, eight and seven
   * do not.
   */
  @Test
  void aPatternIsOfNeighboursThatAreAlike() {
    assertTrue(off(1, 1, 1, -1, -1, 1, 1, -1, -1, -1, 1, 1, -1, -1, -1, 1).hasPattern());
    assertFalse(off(1, 1, 1, -1, -1, 1, 1, -1, -1, 1, -1, 1, 1, 1, 1, -1).hasPattern());
    assertFalse(off(1, -1, 1, -1, 1, -1, 1, -1).hasPattern());
    boolean[] kept = EdgeFit.all(5);
    kept[2] = false;
    assertTrue(off(10, kept, 1, 1, -9, 1, 1).hasPattern());
    assertFalse(off(10, kept, -1, 1, 9, -1, 1).hasPattern());
  }

  @Test
  void endsAreShortWhereTheirPointsAreRefused() {
    boolean[] start = {false, false, true, true, false};
    assertEquals(2, off(10, start, 0, 0, 0, 0, 0).firstKept());
    assertEquals(3, off(10, start, 0, 0, 0, 0, 0).lastKept());
    assertTrue(EdgeFit.endsShort(start, 2));
    assertFalse(EdgeFit.endsShort(start, 3));
    boolean[] end = {true, true, true, false, false};
    assertTrue(off(10, end, 0, 0, 0, 0, 0).endsShort(2));
    assertFalse(off(10, end, 0, 0, 0, 0, 0).endsShort(3));
    assertFalse(EdgeFit.endsShort(EdgeFit.all(5), 1));
    assertTrue(EdgeFit.endsShort(new boolean[2], 3));
  }

  @Test
  void anEdgeIsMuchLongerByAThirdAndMoreThanAPencilWanders() {
    assertFalse(EdgeFit.isMuchLonger(140, 100, TWO));
    assertTrue(EdgeFit.isMuchLonger(140.1, 100, TWO));
  }

  private static EdgeFit along(Track track, double... shares) {
    double[] x = new double[shares.length];
    double[] y = new double[shares.length];
    for (int i = 0; i < shares.length; i++) {
      track.look(shares[i]);
      x[i] = track.x;
      y[i] = track.y;
    }
    return new EdgeFit(
        Samples.traced(x, y),
        Form.curved(track.knots),
        new GivenFit(track, shares, new double[shares.length]),
        EdgeFit.all(shares.length),
        TWO);
  }

  /** An arch of 100 mm at its foot, 112 mm high. */
  private static Track arch() {
    return new Track(Knots.single(), new double[] {0, 0, 100, 100}, new double[] {0, 150, 150, 0});
  }

  @Test
  void anArchIsAstrayWithoutPointsOnIt() {
    assertFalse(arch().isFolded());
    assertTrue(along(arch(), 0, 1).isAstray());
    assertTrue(along(arch(), 0, 0.05, 0.95, 1).isAstray());
    assertFalse(along(arch(), 0, 0.2, 0.4, 0.6, 0.8, 1).isAstray());
    assertFalse(along(arch(), 0, 0.5, 1).isAstray());
  }

  /** It runs on beyond its last point, or before its first. */
  @Test
  void anEdgeEndsWithItsPoints() {
    Track line = new Track(Knots.single(), new double[] {0, 100, 200, 300}, new double[4]);
    assertFalse(along(line, 0, 0.3, 0.6, 0.95).isAstray());
    assertTrue(along(line, 0, 0.3, 0.6).isAstray());
    assertTrue(along(line, 0.4, 0.7, 1).isAstray());
  }

  /** Two cubics, the first almost straight, the second an arch: each is looked at by itself. */
  @Test
  void eachCubicIsHeldToThePointsBesideIt() {
    Track hook =
        new Track(
            Knots.single().split(0),
            new double[] {0, 300, 600, 700, 700},
            new double[] {0, 0, 0, 260, -40});
    double[] straight = {0, 0.1, 0.2, 0.3, 0.4, 0.5};
    double[] bent = {0.6, 0.7, 0.8, 0.9, 1};
    assertFalse(
        along(hook, IntStream.range(0, 11).mapToDouble(i -> i / 10.0).toArray()).isAstray());
    double[] few = Arrays.copyOf(straight, 7);
    few[6] = 1;
    assertTrue(along(hook, few).isAstray());
    double[] others = new double[6];
    System.arraycopy(bent, 0, others, 1, 5);
    assertFalse(along(hook, others).isAstray());
  }

  /** What turns by more than an eighth of a turn in a twelfth of a cubic doubles back. */
  @Test
  void aFoldedEdgeIsAstray() {
    Track folded =
        new Track(Knots.single(), new double[] {0, 300, -200, 100}, new double[] {0, 4, 4, 0});
    assertTrue(folded.isFolded());
    double[] shares = IntStream.range(0, 41).mapToDouble(i -> i / 40.0).toArray();
    assertTrue(along(folded, shares).isAstray());
  }

  private static FittedEdge edge(Track track, Ends ends) {
    return new FittedEdge("neck", ends, along(track, 0, 0.5, 1), List.of(), null);
  }

  /** A handle usually takes a third of the way from the fold; one that is shorter hurries. */
  @Test
  void aCurveThatHurriesToMeetTheFoldIsPerhapsPointed() {
    Ends first = new Ends(End.SQUARE_ON_FOLD, End.FREE);
    Ends last = new Ends(End.FREE, End.SQUARE_ON_FOLD);
    double[] y = {0, 0, 30, 90};
    double[] down = {90, 30, 0, 0};
    Track roomy = new Track(Knots.single(), new double[] {0, 31, 60, 90}, y);
    Track hurried = new Track(Knots.single(), new double[] {0, 29, 60, 90}, y);
    assertFalse(edge(roomy, first).isPerhapsPointed());
    assertTrue(edge(hurried, first).isPerhapsPointed());
    assertFalse(edge(hurried, Ends.FREE).isPerhapsPointed());
    Track roomyDown = new Track(Knots.single(), new double[] {90, 60, 31, 0}, down);
    Track hurriedDown = new Track(Knots.single(), new double[] {90, 60, 29, 0}, down);
    assertFalse(edge(roomyDown, last).isPerhapsPointed());
    assertTrue(edge(hurriedDown, last).isPerhapsPointed());
    Track two =
        new Track(
            Knots.single().split(0),
            new double[] {0, 40, 60, 80, 90},
            new double[] {0, 0, 9, 30, 90});
    assertTrue(edge(two, first).isPerhapsPointed());
    assertTrue(
        edge(new Track(Knots.straight(), new double[] {0, 9}, new double[2]), first)
            .isPerhapsPointed());
  }

  /** Its points come to the fold 45 degrees off square, and leave it 30 degrees off. */
  @Test
  void howPointsMeetTheFoldIsToldInDegreesOffSquare() {
    Track unbound =
        new Track(
            Knots.single(),
            new double[] {0, 10 * Math.sqrt(3), 60, 90},
            new double[] {0, -10, 30, 60});
    FittedEdge hem = edge(arch(), new Ends(End.SQUARE_ON_FOLD, End.FREE));
    assertEquals(30, hem.comparedWith(along(unbound, 0, 1)).atFold(), 1e-9);
    FittedEdge neck = edge(arch(), new Ends(End.FREE, End.SQUARE_ON_FOLD));
    assertEquals(45, neck.comparedWith(along(unbound, 0, 1)).atFold(), 1e-9);
    assertEquals(0, neck.atFold());
  }
}
