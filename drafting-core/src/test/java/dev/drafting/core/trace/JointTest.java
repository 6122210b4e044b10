package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.trace.Segmentation.Part;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;
import org.junit.jupiter.api.Test;

/** Lines with a point every 5 mm that turn at their points by so many degrees. */
class JointTest {
  private static final double STEP = 5;

  private static Walk turning(int size, IntToDoubleFunction degrees) {
    return turning(size, 0, 0, degrees);
  }

  private static Walk turning(int size, double wander, long seed, IntToDoubleFunction degrees) {
    Random random = new Random(seed);
    double[] x = new double[size];
    double[] y = new double[size];
    double placeX = 0;
    double placeY = 0;
    double heading = 0;
    for (int i = 0; i < size; i++) {
      heading += Math.toRadians(degrees.applyAsDouble(i)) / 2;
      double off = wander * random.nextGaussian();
      x[i] = placeX - off * Math.sin(heading);
      y[i] = placeY + off * Math.cos(heading);
      heading += Math.toRadians(degrees.applyAsDouble(i)) / 2;
      placeX += STEP * Math.cos(heading);
      placeY += STEP * Math.sin(heading);
    }
    return Walk.of(x, y, wander);
  }

  /** Two straight lines of twenty steps that meet at this angle on the point between them. */
  private static Walk bend(double degrees) {
    return turning(41, i -> i == 20 ? degrees : 0);
  }

  private static Joint middle(Walk walk, double noise) {
    int last = walk.size() - 1;
    return new Joint(walk, new Part(0, last / 2), new Part(last / 2, last), noise);
  }

  /** What one cubic leaves of so many points up to the corner and from it on, in square mm. */
  private static double leftOfOneCubic(Walk walk, int corner, int beside) {
    double[] middle = {walk.way[corner], walk.x[corner], walk.y[corner]};
    WeightedObservedPoints xs = new WeightedObservedPoints();
    WeightedObservedPoints ys = new WeightedObservedPoints();
    for (int i = corner + 1 - beside; i < corner + beside; i++) {
      xs.add((walk.way[i] - middle[0]) / 100, walk.x[i] - middle[1]);
      ys.add((walk.way[i] - middle[0]) / 100, walk.y[i] - middle[2]);
    }
    return left(xs) + left(ys);
  }

  private static double left(WeightedObservedPoints points) {
    PolynomialFunction cubic =
        new PolynomialFunction(PolynomialCurveFitter.create(3).fit(points.toList()));
    return points.toList().stream()
        .mapToDouble(p -> Math.pow(p.getY() - cubic.value(p.getX()), 2))
        .sum();
  }

  /** Two cubics explain all, and of mere noise 8 variances more than one. */
  @Test
  void aJointIsLookedAtOverLongerStretchesUntilItStandsOut() {
    Walk corner = bend(60);
    double noise = 0.2;
    for (int beside : new int[] {6, 9, 13, 19, 21}) {
      // As much noise as lets it just stand out over so many points.
      double left = leftOfOneCubic(corner, 20, beside);
      assertTrue(left / noise / noise > 408 || beside == 6);
      noise = Math.sqrt(left / 408.5);
      assertEquals(400.5, middle(corner, noise).standsOut(), 1e-6, "" + beside);
    }
    assertEquals(39.5 - 8, middle(corner, noise * Math.sqrt(408.5 / 39.5)).standsOut(), 1e-6);
  }

  @Test
  void aCornerMustStandOutByThirtyVariances() {
    Walk corner = bend(60);
    double left = leftOfOneCubic(corner, 20, 21);
    assertTrue(middle(corner, Math.sqrt(left / 38.1)).isCorner());
    assertFalse(middle(corner, Math.sqrt(left / 37.9)).isCorner());
  }

  @Test
  void aJointKnowsItsStretches() {
    Joint joint = middle(bend(60), 0.2);
    assertEquals(new Part(0, 20), joint.one());
    assertEquals(new Part(20, 40), joint.next());
  }

  @Test
  void linesThatMeetAtAnAngleTurnACorner() {
    for (double degrees : new double[] {-120, -60, -11, 11, 30, 60, 90, 150}) {
      assertTrue(middle(bend(degrees), 0.05).isCorner(), "" + degrees);
    }
    for (double degrees : new double[] {-9, 0, 5, 9}) {
      assertFalse(middle(bend(degrees), 0.05).isCorner(), "" + degrees);
    }
  }

  @Test
  void aStretchWhoseEndLiesBesideThePointMeetsTheNextBetween() {
    Walk walk = turning(42, i -> i == 20 || i == 21 ? 45 : 0);
    assertTrue(new Joint(walk, new Part(0, 20), new Part(21, 41), 0.1).isCorner());
  }

  /** The arc of a circle of 200 mm: so much in 5 mm. */
  @Test
  void anArcRunsThrough() {
    double degrees = Math.toDegrees(STEP / 200);
    for (double noise : new double[] {0.001, 0.1, 1}) {
      assertFalse(middle(turning(61, i -> degrees), noise).isCorner());
      assertFalse(middle(turning(61, i -> i < 30 ? 0 : degrees), noise).isCorner());
      assertFalse(middle(turning(61, i -> i > 30 ? 0 : degrees), noise).isCorner());
      assertFalse(middle(turning(61, i -> i < 30 ? -degrees : degrees), noise).isCorner());
    }
  }

  @Test
  void arcsThatMeetAtAnAngleTurnACorner() {
    double degrees = Math.toDegrees(STEP / 200);
    for (double noise : new double[] {0.01, 0.3}) {
      assertTrue(middle(turning(61, i -> i == 30 ? 40 : degrees), noise).isCorner());
      assertTrue(middle(turning(61, i -> i == 30 ? 40 : -degrees), noise).isCorner());
      assertTrue(middle(turning(61, i -> i == 30 ? 40 : i < 30 ? degrees : 0), noise).isCorner());
      assertTrue(middle(turning(61, i -> i == 30 ? 40 : i < 30 ? 0 : degrees), noise).isCorner());
    }
  }

  /** A turn of 40 degrees on 120 mm between straight lines, as at the top of a hip. */
  @Test
  void aTightBendBetweenStraightLinesIsNoCorner() {
    Walk hip = turning(81, i -> Math.abs(i - 40) <= 12 ? 1.6 : 0);
    for (double noise : new double[] {0.01, 0.1, 0.5}) {
      assertFalse(middle(hip, noise).isCorner());
    }
  }

  /** A stretch of two points at a right angle to a line, and at 8 and 12 degrees. */
  @Test
  void besideAStretchOfTwoPointsTheTurnTells() {
    for (double degrees : new double[] {-90, -12, 12, 90}) {
      assertTrue(stub(degrees).isCorner(), "" + degrees);
      assertTrue(stubFirst(degrees).isCorner(), "" + degrees);
    }
    for (double degrees : new double[] {-8, 0, 8}) {
      assertFalse(stub(degrees).isCorner(), "" + degrees);
      assertFalse(stubFirst(degrees).isCorner(), "" + degrees);
    }
  }

  private static Joint stub(double degrees) {
    Walk walk = turning(32, i -> i == 30 ? degrees : 0);
    return new Joint(walk, new Part(0, 30), new Part(30, 31), 0.001);
  }

  private static Joint stubFirst(double degrees) {
    Walk walk = turning(32, i -> i == 1 ? degrees : 0);
    return new Joint(walk, new Part(0, 1), new Part(1, 31), 0.001);
  }

  @Test
  void besideAStretchOfTwoPointsTheTurnTellsWhicheverWayTheLineRuns() {
    for (double heading : new double[] {50, 170, -170}) {
      Walk turned = turning(32, i -> i == 0 ? 2 * heading : i == 30 ? 12 : 0);
      assertTrue(new Joint(turned, new Part(0, 30), new Part(30, 31), 0.001).isCorner());
      Walk straight = turning(32, i -> i == 0 ? 2 * heading : i == 30 ? 8 : 0);
      assertFalse(new Joint(straight, new Part(0, 30), new Part(30, 31), 0.001).isCorner());
    }
  }

  /** No points of other stretches are looked at, nor more of the longer than of the shorter. */
  @Test
  void theShorterOfTheStretchesSaysHowFarIsLooked() {
    Walk corner = bend(60);
    double noise = 0.5;
    for (int blocks : new int[] {3, 4, 5}) {
      double stands = leftOfOneCubic(corner, 20, blocks) / noise / noise - 8;
      Joint before = new Joint(corner, new Part(21 - blocks, 20), new Part(20, 40), noise);
      assertEquals(stands, before.standsOut(), 1e-6);
      Joint after = new Joint(corner, new Part(4, 20), new Part(20, 19 + blocks), noise);
      assertEquals(stands, after.standsOut(), 1e-6);
    }
  }

  /** The line winds by 35 degrees to either side every 200 mm on its whole length. */
  @Test
  void aCornerBetweenLongStretchesThatWindIsSeen() {
    for (int phase = 0; phase < 40; phase += 5) {
      int start = phase;
      IntToDoubleFunction winding = i -> 5 * Math.sin(2 * Math.PI * (i + start) / 40);
      for (double noise : new double[] {0.02, 0.1}) {
        Walk smooth = turning(201, noise, phase, winding);
        assertFalse(middle(smooth, noise).isCorner(), phase + " smooth " + noise);
        for (double degrees : new double[] {-40, 40}) {
          Walk corner =
              turning(201, noise, phase, i -> winding.applyAsDouble(i) + (i == 100 ? degrees : 0));
          assertTrue(middle(corner, noise).isCorner(), phase + " " + degrees + " " + noise);
        }
      }
    }
  }

  /** What a long stretch does far from the joint says nothing about the turn at the joint. */
  @Test
  void theTurnBetweenStretchesThatWindIsThatOfTheCornerAlone() {
    for (int phase = 0; phase < 40; phase += 5) {
      int start = phase;
      for (double degrees : new double[] {7, 14}) {
        Walk corner =
            turning(
                201, i -> 3 * Math.sin(2 * Math.PI * (i + start) / 40) + (i == 100 ? degrees : 0));
        assertEquals(degrees > 10, middle(corner, 0.02).isCorner(), phase + ": " + degrees);
      }
    }
  }

  @Test
  void betweenStraightLinesAShallowTurnIsSeenThroughTheNoise() {
    int found = 0;
    int claimed = 0;
    for (long seed = 0; seed < 40; seed++) {
      found += middle(turning(61, 0.5, seed, i -> i == 30 ? 14 : 0), 0.5).isCorner() ? 1 : 0;
      claimed += middle(turning(61, 0.5, seed, i -> i == 30 ? 6 : 0), 0.5).isCorner() ? 1 : 0;
    }
    assertTrue(found >= 39, "found " + found);
    assertTrue(claimed <= 1, "claimed " + claimed);
  }

  /**
   * A curve that bends on, of which a cubic explains what lies near the joint only; a corner of 15
   * degrees lies between two of them, 6 degrees do not make one.
   */
  @Test
  void aStretchIsLookedAtAsFarAsACubicExplainsIt() {
    for (double bending : new double[] {-4, 4}) {
      for (double noise : new double[] {0.05, 0.2}) {
        for (double degrees : new double[] {6, 15}) {
          Walk corner =
              turning(
                  121,
                  noise,
                  3,
                  i -> bending * Math.pow((i - 60) / 60.0, 3) + (i == 60 ? degrees : 0));
          assertEquals(
              degrees > 10,
              middle(corner, noise).isCorner(),
              bending + " " + noise + " " + degrees);
        }
      }
    }
  }

  /** Straight lines of 20 points that go over into arcs of 60 mm far from the corner. */
  @Test
  void arcsBeyondStraightLinesDoNotChangeTheCornerBetweenThem() {
    double arc = Math.toDegrees(STEP / 60);
    for (double degrees : new double[] {7, 13}) {
      for (long seed = 0; seed < 5; seed++) {
        Walk corner =
            turning(91, 0.1, seed, i -> i == 45 ? degrees : i < 25 ? arc : i > 65 ? -arc : 0);
        assertEquals(degrees > 10, middle(corner, 0.1).isCorner(), degrees + " seed " + seed);
      }
    }
  }

  /** Of a hundred corners and as many places where lines run on, drawn with 1 mm of noise. */
  @Test
  void cornersAreToldFromLinesThatRunOnThroughTheNoise() {
    int corners = 0;
    int claimed = 0;
    double degrees = Math.toDegrees(STEP / 300);
    for (long seed = 0; seed < 50; seed++) {
      corners += middle(turning(61, 1, seed, i -> i == 30 ? 35 : 0), 1).isCorner() ? 1 : 0;
      corners += middle(turning(61, 1, seed, i -> i == 30 ? 45 : degrees), 1).isCorner() ? 1 : 0;
      claimed += middle(turning(61, 1, seed, i -> degrees), 1).isCorner() ? 1 : 0;
      claimed += middle(turning(61, 1, seed, i -> i < 30 ? 0 : 2 * degrees), 1).isCorner() ? 1 : 0;
    }
    assertTrue(corners >= 98, "found " + corners);
    assertTrue(claimed <= 2, "claimed " + claimed);
  }
}
