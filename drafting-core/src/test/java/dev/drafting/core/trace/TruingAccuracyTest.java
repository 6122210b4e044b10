package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * How near truing comes to a vest that is known exactly, over 50 seeded tracings of each sort.
 * Measured with points 10 mm apart and 1 mm of noise, per edge: half RMS 0.23 to 0.45 mm, whole
 * 0.16 to 0.31 mm; the worst single edge 0.9 mm. The bounds leave room for another processor's
 * rounding, not for a worse method.
 */
class TruingAccuracyTest {
  private static final int SEEDS = 50;

  private static final class Score {
    private double squares;
    private double worst;
    private double lengthError;
    private int straight;
    private int cubics;

    double rms() {
      return Math.sqrt(squares / SEEDS);
    }
  }

  private static Map<String, Score> scores(double wander, double spacing, boolean whole) {
    Map<String, Score> scores = new LinkedHashMap<>();
    Vest.EDGES.forEach(name -> scores.put(name, new Score()));
    for (long seed = 0; seed < SEEDS; seed++) {
      Vest.Pencil pencil = new Vest.Pencil(seed, wander, spacing);
      Tracing tracing = whole ? pencil.whole(Transform.identity()) : pencil.half();
      TruedPiece trued = Truing.of(tracing).result();
      Transform back =
          Transform.translation(
              new Vector(0, -trued.report().placement().apply(new Point(0, 0)).y()));
      assertTrue(trued.piece().outline().selfCrossings().isEmpty());
      scores.forEach(
          (name, score) -> {
            Curve found = trued.piece().edge(name).curve().map(back);
            double off = Vest.rms(found, Vest.edge(name));
            score.squares += off * off;
            score.worst = Math.max(score.worst, off);
            score.lengthError +=
                Math.abs(found.length().toMm() - Vest.edge(name).length().toMm()) / SEEDS;
            EdgeReport report = trued.report().edge(name);
            score.straight += report.isStraight() ? 1 : 0;
            score.cubics += report.cubics();
          });
    }
    return scores;
  }

  @Test
  void aHalfComesOutWithinHalfOfTheNoise() {
    for (double wander : new double[] {0.5, 1, 2}) {
      scores(wander, 10, false)
          .forEach(
              (name, score) -> {
                assertTrue(score.rms() < 0.5 * wander, () -> name + " RMS " + score.rms());
                assertTrue(score.worst < 1.25 * wander, () -> name + " worst " + score.worst);
                assertTrue(
                    score.lengthError < 1.1 * wander,
                    () -> name + " length off by " + score.lengthError);
              });
    }
  }

  @Test
  void aWholeTracingAveragesTheNoiseOfItsHalves() {
    scores(1, 10, true)
        .forEach(
            (name, score) -> {
              assertTrue(score.rms() < 0.36, () -> name + " RMS " + score.rms());
              assertTrue(score.worst < 0.9, () -> name + " worst " + score.worst);
              assertTrue(
                  score.lengthError < 0.9, () -> name + " length off by " + score.lengthError);
            });
  }

  @Test
  void straightIsToldFromCurvedWithFewFalseAlarms() {
    int straight = 0;
    for (Map.Entry<String, Score> entry : scores(1, 10, false).entrySet()) {
      Score score = entry.getValue();
      if (Vest.edge(entry.getKey()).segments().get(0) instanceof Line) {
        straight += score.straight;
      } else {
        assertEquals(0, score.straight, entry.getKey());
        assertTrue(score.cubics <= 1.2 * SEEDS, () -> entry.getKey() + " cubics " + score.cubics);
      }
    }
    assertEquals(2 * SEEDS, straight, 2);
  }

  /** Of a normal error, two thirds lie within one standard deviation and 19 of 20 within two. */
  @Test
  void theUncertaintyOfALengthIsWhatItSays() {
    int one = 0;
    int two = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      TruingReport report = Truing.of(new Vest.Pencil(seed, 1, 6).half()).result().report();
      for (String name : Vest.EDGES) {
        EdgeReport edge = report.edge(name);
        double off = Math.abs(edge.length().toMm() - Vest.edge(name).length().toMm());
        one += off <= edge.lengthUncertainty().toMm() ? 1 : 0;
        two += off <= 2 * edge.lengthUncertainty().toMm() ? 1 : 0;
      }
    }
    double all = SEEDS * Vest.EDGES.size();
    assertEquals(0.68, one / all, 0.15);
    assertEquals(0.95, two / all, 0.06);
  }

  @Test
  void anEdgeRunsSmoothlyIntoTheNextWhereThePointsDo() {
    Curve whole = Vest.edge("armhole");
    Length half = whole.length().times(0.5);
    int smooth = 0;
    for (long seed = 0; seed < 20; seed++) {
      Vest.Pencil pencil = new Vest.Pencil(seed, 1, 6);
      List<TracedEdge> edges = new ArrayList<>();
      for (String name : Vest.EDGES) {
        if (name.equals("armhole")) {
          edges.add(TracedEdge.of("lower", pencil.trace(whole.split(half).get(0))));
          edges.add(TracedEdge.of("upper", pencil.trace(whole.split(half).get(1))));
        } else {
          edges.add(TracedEdge.of(name, pencil.trace(Vest.edge(name))));
        }
      }
      Tracing tracing = Tracing.of("front", Extent.HALF_ON_FOLD, edges);
      TruedPiece trued = Truing.of(tracing).withCurved("lower").withCurved("upper").result();
      Curve lower = trued.piece().edge("lower").curve();
      Vector in = lower.directionAt(lower.length());
      Vector out = trued.piece().edge("upper").curve().directionAt(Length.ZERO);
      smooth += Math.abs(in.cross(out)) < 1e-4 ? 1 : 0;
    }
    assertTrue(smooth >= 16, "smooth in " + smooth + " of 20");
  }

  /** A wave of a sleeve cap as it is drawn by a hand that hardly wanders, but slips once. */
  @Test
  void anEdgeOfASteadyHandThatSlipsOnceIsNoLongerThanItWasDrawn() {
    for (long seed = 0; seed < 2 * SEEDS; seed++) {
      Random random = new Random(seed);
      List<Point> cap = new ArrayList<>();
      int slip = 5 + random.nextInt(70);
      for (int i = 0; i <= 88; i++) {
        double along = i / 88.0;
        double off = i == slip || i == slip + 1 ? 12 : 0;
        double x = 170 - 340 * along + 0.1 * random.nextGaussian();
        double y = 420 + 65 * (1 - Math.cos(2 * Math.PI * along)) + 0.1 * random.nextGaussian();
        cap.add(new Point(x, y + off));
      }
      TruedPiece trued =
          Truing.of(
                  Tracing.of(
                      "sleeve",
                      Extent.AS_IT_LIES,
                      List.of(
                          TracedEdge.of("front seam", 115, 0, 170, 420),
                          TracedEdge.of("cap", cap),
                          TracedEdge.of("back seam", -170, 420, -115, 0),
                          TracedEdge.of("hem", -115, 0, 115, 0))))
              .result();
      EdgeReport report = trued.report().edge("cap");
      assertEquals(440.8, report.length().toMm(), 1, "seed " + seed + ": " + report);
      assertEquals(2, report.refused().size(), 3, "seed " + seed + ": " + report);
    }
  }
}
