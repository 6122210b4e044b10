package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Parallels of single segments. */
class CubicParallelTest {
  /** The neckline shaped like a J on which JTS was measured (units of mm, 242 mm long). */
  private static final Cubic J = Outlines.cubic(0, 0, 0, 80, 60, 140, 140, 180);

  /** Distance of a point from a densely sampled cubic, refined by parabolic steps. */
  private static double distance(Cubic cubic, Point point) {
    double best = Double.POSITIVE_INFINITY;
    double bestT = 0;
    int n = 2000;
    for (int i = 0; i <= n; i++) {
      double d =
          Math.hypot(
              cubic.pointAt((double) i / n).x() - point.x(),
              cubic.pointAt((double) i / n).y() - point.y());
      if (d < best) {
        best = d;
        bestT = (double) i / n;
      }
    }
    double step = 1.0 / n;
    for (int k = 0; k < 40; k++) {
      step /= 2;
      for (double t : new double[] {bestT - step, bestT + step}) {
        if (t >= 0 && t <= 1) {
          Point at = cubic.pointAt(t);
          double d = Math.hypot(at.x() - point.x(), at.y() - point.y());
          if (d < best) {
            best = d;
            bestT = t;
          }
        }
      }
    }
    return best;
  }

  private static double worst(Cubic source, double d, List<Strand> strands) {
    double worst = 0;
    for (Strand strand : strands) {
      if (!strand.turnedBack()) {
        for (int i = 0; i <= 50; i++) {
          double off = distance(source, strand.segment().pointAt(i / 50.0));
          worst = Math.max(worst, Math.abs(off - Math.abs(d)));
        }
      }
    }
    return worst;
  }

  @Test
  void theWholeParallelKeepsToTheToleranceItWasProvenFor() {
    for (double tolerance : new double[] {0.1, 0.01, 1e-3, 1e-4, 1e-6}) {
      for (double d : new double[] {10, -10, 40, -30}) {
        List<Strand> strands = Parallels.of(J, 0, 0, d, tolerance);
        double worst = worst(J, d, strands);
        assertTrue(worst <= tolerance * 1.0001, tolerance + " at " + d + ": " + worst);
      }
    }
  }

  @Test
  void fewCubicsSuffice() {
    assertEquals(1, Parallels.of(J, 0, 0, 10, 0.01).size());
    assertTrue(Parallels.of(J, 0, 0, 10, 1e-6).size() <= 8);
  }

  @Test
  void endsAndEndDirectionsAreExact() {
    for (double d : new double[] {7, -13}) {
      List<Strand> strands = Parallels.of(J, 0, 0, d, 0.01);
      Segment first = strands.get(0).segment();
      Segment last = strands.get(strands.size() - 1).segment();
      assertEquals(d, first.start().x(), 1e-12);
      assertEquals(0, first.start().y(), 1e-12);
      assertEquals(0, first.directionAt(0).cross(J.directionAt(0)), 1e-14);
      assertEquals(0, last.directionAt(1).cross(J.directionAt(1)), 1e-14);
      Vector normal = Parallels.outward(J.directionAt(1));
      assertEquals(0, last.end().minus(J.end().plus(normal.times(d))).length().toMm(), 1e-12);
    }
  }

  @Test
  void randomCubicsKeepToTheTolerance() {
    Random random = new Random(11);
    for (int i = 0; i < 150; i++) {
      Cubic source =
          Outlines.cubic(
              0,
              0,
              100 * random.nextDouble(),
              60 * random.nextGaussian(),
              100 + 100 * random.nextDouble(),
              60 * random.nextGaussian(),
              200,
              40 * random.nextGaussian());
      double d = 5 * random.nextGaussian();
      List<Strand> strands = Parallels.of(source, 0, 0, d, 0.01);
      boolean turnedBack = strands.stream().anyMatch(Strand::turnedBack);
      if (!turnedBack) {
        double worst = nearestToStation(source, d, strands);
        assertTrue(worst <= 0.01, source + " at " + d + ": " + worst);
      }
    }
  }

  /** How far true parallel points lie from the strand that claims their stretch of the source. */
  private static double nearestToStation(Cubic source, double d, List<Strand> strands) {
    double worst = 0;
    for (Strand strand : strands) {
      Origin origin = strand.origin();
      for (int i = 0; i <= 20 && origin != null; i++) {
        double t = origin.from() + (origin.to() - origin.from()) * i / 20;
        Point truly = source.pointAt(t).plus(Parallels.outward(source.directionAt(t)).times(d));
        if (strand.segment() instanceof Cubic cubic) {
          worst = Math.max(worst, distance(cubic, truly));
        }
      }
    }
    return worst;
  }

  @Test
  void arcsStayArcs() {
    Arc arc = Outlines.arc(5, 6, 50, 30, 100);
    Arc wider = (Arc) Parallels.of(arc, 0, 0, 7, 0.01).get(0).segment();
    assertEquals(Length.mm(57), wider.radius());
    assertEquals(arc.centre(), wider.centre());
    Arc clockwise = Outlines.arc(5, 6, 50, 130, -100);
    Arc narrower = (Arc) Parallels.of(clockwise, 0, 0, 7, 0.01).get(0).segment();
    assertEquals(Length.mm(43), narrower.radius());
    assertTrue(Parallels.of(clockwise, 0, 0, 60, 0.01).get(0).turnedBack());
  }

  @Test
  void atNoDistanceTheSegmentIsItsOwnParallel() {
    assertEquals(J, Parallels.of(J, 0, 0, 0, 0.01).get(0).segment());
  }

  @Test
  void aStretchTighterThanTheDistanceIsTurnedBack() {
    Cubic tight = Outlines.cubic(0, 0, 60, 0, 60, 40, 0, 40);
    List<Strand> inside = Parallels.of(tight, 0, 0, -25, 0.01);
    assertTrue(inside.stream().anyMatch(Strand::turnedBack));
    assertFalse(Parallels.of(tight, 0, 0, 25, 0.01).stream().anyMatch(Strand::turnedBack));
  }

  @Test
  void aRoundedCornerDrawnAsACubicVanishesInItsOwnCentre() {
    double k = 0.5522847498307935 * 10;
    Cubic quarter = Outlines.cubic(10, 0, 10, k, k, 10, 0, 10);
    List<Strand> strands = Parallels.of(quarter, 0, 0, -10, 0.01);
    assertTrue(strands.size() < 40, "strands: " + strands.size());
  }

  @Test
  void handlesOfNoLengthAreNoObstacle() {
    Cubic plain = Outlines.cubic(0, 0, 0, 0, 60, 100, 100, 100);
    List<Strand> strands = Parallels.of(plain, 0, 0, 7, 0.01);
    assertTrue(worst(plain, 7, strands) <= 0.0101);
    assertTrue(strands.size() < 30, "strands: " + strands.size());
  }
}
