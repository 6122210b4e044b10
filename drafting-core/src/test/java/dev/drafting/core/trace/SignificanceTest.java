package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import org.junit.jupiter.api.Test;

/** What is told from noise, against tables, and what of a rest is a bow, by hand. */
class SignificanceTest {
  private static final Noise TWO = Noise.declared(2);

  /**
   * Where the noise is known for sure, squares over its square are distributed as chi squared: at
   * one in a hundred 6.635, 15.086 and 23.209 for 1, 5 and 10 numbers (NIST/SEMATECH e-Handbook of
   * Statistical Methods, 1.3.6.7.4).
   */
  @Test
  void oneInAHundredIsTakenForShape() {
    Significance significance = new Significance(TWO);
    double[][] table = {{1, 6.635}, {5, 15.086}, {10, 23.209}};
    for (double[] row : table) {
      assertTrue(significance.isNoise(4 * (row[1] - 0.01), row[0]), "freedom " + row[0]);
      assertFalse(significance.isNoise(4 * (row[1] + 0.01), row[0]), "freedom " + row[0]);
    }
    assertTrue(significance.isNoise(4, 1));
    assertTrue(significance.isNoise(1e9, 0));
    assertTrue(significance.isNoise(0, 3));
  }

  private static EdgeFit line(double[] y, Ends ends) {
    double[] x = new double[y.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = 1e4 * i / (x.length - 1);
    }
    Samples samples = Samples.traced(x, y);
    boolean[] kept = EdgeFit.all(y.length);
    LineFit fitted = new LineFit(samples, EdgeFit.weights(kept), ends);
    return new EdgeFit(samples, Form.STRAIGHT, fitted, kept, TWO);
  }

  private static double rest(EdgeFit line) {
    double rest = 0;
    for (int i = 0; i < line.kept.length; i++) {
      rest += line.fitted.distance(i) * line.fitted.distance(i);
    }
    return rest;
  }

  /** A bow, and a bow one way and then the other, are all that a line leaves of a cubic. */
  @Test
  void allThatALineLeavesOfACubicIsABow() {
    double[] bow = new double[9];
    double[] toAndFro = new double[9];
    for (int i = 0; i < 9; i++) {
      double t = i / 4.0 - 1;
      bow[i] = 3 * t * t;
      toAndFro[i] = 5 * t * t * t;
    }
    EdgeFit one = line(bow, Ends.FREE);
    assertEquals(rest(one), Bow.squares(one, Ends.FREE), 1e-3 * rest(one));
    EdgeFit two = line(toAndFro, Ends.FREE);
    assertEquals(rest(two), Bow.squares(two, Ends.FREE), 1e-3 * rest(two));
    assertTrue(rest(one) > 1 && rest(two) > 1);
  }

  /** Up and down by turns is no bow: of eight points all that four powers can take is little. */
  @Test
  void whatGoesUpAndDownIsNoBow() {
    EdgeFit line = line(new double[] {1, -1, 1, -1, -1, 1, -1, 1}, Ends.FREE);
    assertTrue(Bow.squares(line, Ends.FREE) < 0.35 * rest(line));
    // Four points leave a cubic nothing over.
    EdgeFit four = line(new double[] {1, -1, -1, 1}, Ends.FREE);
    assertEquals(rest(four), Bow.squares(four, Ends.FREE), 1e-6);
  }

  /**
   * A hem that leaves the fold level rises by the square of the way; a tilt is none of its bows.
   */
  @Test
  void aLevelLineMayRiseButNotTilt() {
    Ends level = new Ends(End.SQUARE_ON_FOLD, End.FREE);
    double[] rise = new double[9];
    double[] tilt = new double[9];
    for (int i = 0; i < 9; i++) {
      rise[i] = 6 * (i / 8.0) * (i / 8.0);
      tilt[i] = 6 * i / 8.0;
    }
    EdgeFit hem = line(rise, level);
    assertEquals(rest(hem), Bow.squares(hem, level), 1e-3 * rest(hem));
    EdgeFit slope = line(tilt, level);
    assertTrue(Bow.squares(slope, level) < 0.99 * rest(slope));
    double[] fall = new double[9];
    for (int i = 0; i < 9; i++) {
      fall[i] = rise[8 - i];
    }
    Ends last = new Ends(End.FREE, End.SQUARE_ON_FOLD);
    double[] x = new double[9];
    for (int i = 0; i < 9; i++) {
      x[i] = 1e4 * (8 - i) / 8;
    }
    Samples samples = Samples.traced(x, fall);
    boolean[] kept = EdgeFit.all(9);
    EdgeFit neck =
        new EdgeFit(
            samples, Form.STRAIGHT, new LineFit(samples, EdgeFit.weights(kept), last), kept, TWO);
    assertEquals(rest(neck), Bow.squares(neck, last), 1e-3 * rest(neck));
  }

  /** Ten points may be looked at 2 002 000 times in all. */
  @Test
  void anEdgeIsNotSearchedForEver() {
    Effort effort = new Effort("hem", 10);
    effort.spend(2_000_000);
    effort.spend(2_000);
    assertEquals(
        "hem: the points lie along no edge, however it is bent. Found: 10 points. Accepted: points"
            + " along one edge, as steadily as a pencil sets them, or fewer of them.",
        assertThrows(DraftingException.class, () -> effort.spend(1)).getMessage());
  }

  /** A line has two numbers, a cubic that may slide along itself six; a level end takes one. */
  @Test
  void freedomIsWhatMovesAnEdgeSideways() {
    Ends level = new Ends(End.SQUARE_ON_FOLD, End.FREE);
    Ends both = new Ends(End.SQUARE_ON_FOLD, End.SQUARE_ON_FOLD);
    assertEquals(2, Form.STRAIGHT.freedom(Ends.FREE));
    assertEquals(1, Form.STRAIGHT.freedom(level));
    assertEquals(1, Form.STRAIGHT.freedom(both));
    Form cubics = Form.curved(Knots.single().split(0));
    assertEquals(7, cubics.freedom(Ends.FREE));
    assertEquals(6, cubics.freedom(level));
    assertEquals(5, cubics.freedom(both));
    assertEquals(2, cubics.cubics());
    assertEquals(0, Form.STRAIGHT.cubics());
  }
}
