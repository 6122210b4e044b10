package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class UnnamedTracingTest {
  private static final int SEEDS = 40;
  private static final double NEAR_MM = 15;
  private static final Polyline RECTANGLE = Polyline.of(0, 0, 100, 0, 100, 50, 0, 50, 0, 0);

  private static List<Point> round(Vest.Pencil pencil) {
    List<Point> round = new ArrayList<>();
    Vest.half().values().forEach(curve -> round.addAll(pencil.trace(curve)));
    return round;
  }

  private static UnnamedTracing vest(long seed, double wander, double spacing) {
    List<Point> round = round(new Vest.Pencil(seed, wander, spacing));
    return UnnamedTracing.of("front", Extent.HALF_ON_FOLD, Polyline.of(round));
  }

  private static String[] names() {
    return Vest.EDGES.toArray(new String[0]);
  }

  @Test
  void exactPointsGiveTheEdgesExactly() {
    UnnamedTracing vest = vest(1, 0, 7);
    assertEquals(5, vest.stretches().size());
    TruedPiece trued = Truing.of(vest.named(names())).result();
    Vest.half()
        .forEach(
            (name, curve) -> {
              Curve found = trued.piece().edge(name).curve();
              assertTrue(Vest.rms(found, curve) < 1e-6, () -> name + Vest.rms(found, curve));
              assertEquals(curve.length().toMm(), found.length().toMm(), 1e-6, name);
            });
  }

  @Test
  void pointsOutOfOrderArePutInOrder() {
    List<Point> inOrder = round(new Vest.Pencil(1, 0, 7));
    UnnamedTracing vest = UnnamedTracing.of("front", Extent.HALF_ON_FOLD, Polyline.of(inOrder));
    for (long seed = 0; seed < SEEDS; seed++) {
      List<Point> shuffled = new ArrayList<>(inOrder);
      Collections.shuffle(shuffled, new Random(seed));
      UnnamedTracing ordered =
          UnnamedTracing.of("front", Extent.HALF_ON_FOLD, Polyline.of(shuffled));
      assertEquals(vest.corners(), ordered.corners(), "" + seed);
      assertEquals(points(vest.stretches()), points(ordered.stretches()), "" + seed);
      assertTrue(ordered.named(names()).edges().stream().allMatch(TracedEdge::isReordered));
    }
  }

  private static List<Polyline> points(List<TracedStretch> stretches) {
    return stretches.stream().map(TracedStretch::points).toList();
  }

  @Test
  void aClosedLineIsPutInOrderToo() {
    List<Point> round = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      double way = 10 * i;
      round.add(
          way < 200
              ? new Point(way, 0)
              : way < 300
                  ? new Point(200, way - 200)
                  : way < 500 ? new Point(500 - way, 100) : new Point(0, 600 - way));
    }
    List<TracedStretch> sides =
        UnnamedTracing.of("patch", Extent.AS_IT_LIES, Polyline.of(closed(round))).stretches();
    assertEquals(4, sides.size());
    Collections.shuffle(round, new Random(7));
    UnnamedTracing ordered =
        UnnamedTracing.of("patch", Extent.AS_IT_LIES, Polyline.of(closed(round)));
    assertEquals(points(sides), points(ordered.stretches()));
  }

  private static List<Point> closed(List<Point> round) {
    List<Point> closed = new ArrayList<>(round);
    closed.add(round.get(0));
    return closed;
  }

  @Test
  void aLineDrawnThereAndBackHasTheSameCorners() {
    int found = 0;
    int claimed = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      List<Point> doubled = round(new Vest.Pencil(seed, 0.5, 5));
      List<Point> back = round(new Vest.Pencil(seed + SEEDS, 0.5, 5));
      Collections.reverse(back);
      doubled.addAll(back);
      List<Point> corners =
          UnnamedTracing.of("front", Extent.HALF_ON_FOLD, Polyline.of(doubled)).corners();
      claimed += corners.size();
      found += found(corners);
    }
    assertTrue(found >= 0.98 * 4 * SEEDS, "found " + found);
    assertTrue(found >= 0.98 * claimed, found + " of " + claimed);
  }

  /** How many of the four corners of the vest have been found. */
  private static int found(List<Point> corners) {
    int found = 0;
    for (String edge : Vest.EDGES.subList(1, 5)) {
      Point truth = Vest.edge(edge).start();
      found += corners.stream().anyMatch(c -> c.distanceTo(truth).toMm() < NEAR_MM) ? 1 : 0;
    }
    return found;
  }

  /** Of 160 corners and as many places that look like one, with a point every 5 mm. */
  @Test
  void cornersAreFoundThroughTheNoise() {
    for (double wander : new double[] {0.5, 1}) {
      int found = 0;
      int claimed = 0;
      for (long seed = 0; seed < SEEDS; seed++) {
        List<Point> corners = vest(seed, wander, 5).corners();
        claimed += corners.size();
        found += found(corners);
      }
      assertTrue(found >= 0.98 * 4 * SEEDS, wander + " mm: found " + found);
      assertTrue(found >= 0.98 * claimed, wander + " mm: " + found + " of " + claimed);
    }
  }

  @Test
  void theEdgesComeOutAsIfTheyHadBeenNamed() {
    double squares = 0;
    int trued = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      UnnamedTracing vest = vest(seed, 1, 5);
      if (vest.stretches().size() == 5) {
        TruedPiece piece = Truing.of(vest.named(names())).result();
        for (String edge : Vest.EDGES) {
          double off = Vest.rms(piece.piece().edge(edge).curve(), Vest.edge(edge));
          squares += off * off;
          trued++;
        }
      }
    }
    assertTrue(Math.sqrt(squares / trued) < 0.5, "RMS " + Math.sqrt(squares / trued));
  }

  @Test
  void whoGivesTheCornersOnlyGetsThem() {
    UnnamedTracing strip = UnnamedTracing.of("strip", Extent.AS_IT_LIES, RECTANGLE);
    assertEquals(4, strip.corners().size());
    assertEquals(
        "[1: (0, 0) to (100, 0), 100 mm apart, 2: (100, 0) to (100, 50), 50 mm apart,"
            + " 3: (100, 50) to (0, 50), 100 mm apart, 4: (0, 50) to (0, 0), 50 mm apart]",
        strip.stretches().toString());
  }

  @Test
  void edgesOfFewPointsMeetOnTheirCorners() {
    UnnamedTracing vest =
        UnnamedTracing.of(
            "front",
            Extent.HALF_ON_FOLD,
            Polyline.of(
                0, 0, 40, 0, 80, 0, 120, 0, 160, 0, 200, 0, 240, 0, 240, 60, 240, 120, 240, 180,
                240, 240, 240, 310, 240, 380, 220, 382, 196, 395, 176, 423, 168, 455, 165, 495, 167,
                535, 172, 571, 180, 590, 155, 600, 130, 610, 105, 620, 98, 601, 89, 577, 76, 552,
                58, 530, 32, 513, 0, 508));
    TruedPiece trued = Truing.of(vest.named(names())).result();
    Point underarm = trued.piece().edge("armhole").curve().start();
    assertEquals(0, underarm.distanceTo(new Point(240, 380)).toMm(), 2);
  }

  @Test
  void theCapOfASleeveHasNoCorner() {
    List<Point> round = new ArrayList<>();
    for (int i = 0; i <= 46; i++) {
      round.add(new Point(-115 + 5 * i, 0));
    }
    for (int i = 1; i <= 84; i++) {
      round.add(new Point(115 + 55 * i / 84.0, 420 * i / 84.0));
    }
    for (int i = 1; i < 80; i++) {
      double t = i / 80.0;
      round.add(new Point(170 - 340 * t, 420 + 65 * (1 + Math.cos(Math.PI * (1 - 2 * t)))));
    }
    for (int i = 0; i <= 84; i++) {
      round.add(new Point(-170 + 55 * i / 84.0, 420 - 420 * i / 84.0));
    }
    UnnamedTracing sleeve = UnnamedTracing.of("sleeve", Extent.AS_IT_LIES, Polyline.of(round));
    List<Point> truth =
        List.of(new Point(-115, 0), new Point(115, 0), new Point(170, 420), new Point(-170, 420));
    assertEquals(4, sleeve.stretches().size());
    for (TracedStretch stretch : sleeve.stretches()) {
      Point corner = truth.get(stretch.number() - 1);
      assertTrue(stretch.from().distanceTo(corner).toMm() < 5.1, stretch.toString());
    }
  }

  @Test
  void aStrokeMayEndAnywhereAndRunPastCorners() {
    List<Point> round = round(new Vest.Pencil(5, 0.5, 5));
    Polyline first = Polyline.of(round.subList(0, 90));
    List<Point> rest = new ArrayList<>(round.subList(90, round.size()));
    Collections.reverse(rest);
    UnnamedTracing inTwo =
        UnnamedTracing.of("front", Extent.HALF_ON_FOLD, List.of(Polyline.of(rest), first));
    UnnamedTracing inOne = UnnamedTracing.of("front", Extent.HALF_ON_FOLD, Polyline.of(round));
    assertEquals(inOne, inTwo);
    assertEquals(inOne.hashCode(), inTwo.hashCode());
  }

  @Test
  void theMakerPutsCornersRight() {
    UnnamedTracing vest = vest(1, 0, 7);
    UnnamedTracing split = vest.withCorner(new Point(230, 280));
    assertEquals(6, split.stretches().size());
    assertEquals(split, split.withCorner(new Point(230, 280)));
    assertEquals(vest, split.withoutCorner(new Point(230, 280)));
    assertEquals(4, vest.withoutCorner(new Point(238, 30)).stretches().size());
    assertNotEquals(vest, split);
    UnnamedTracing one =
        UnnamedTracing.of("wedge", Extent.HALF_ON_FOLD, Polyline.of(0, 0, 50, 0, 0, 80));
    assertEquals(
        "wedge: a tracing needs corners to have edges. Found: (50, 0). "
            + "Accepted: a tracing with two corners or more.",
        assertThrows(DraftingException.class, () -> one.withoutCorner(new Point(50, 0)))
            .getMessage());
  }

  @Test
  void aPieceHasAName() {
    Polyline triangle = Polyline.of(0, 0, 80, 0, 0, 60, 0, 0);
    assertEquals(
        "a tracing has no name. Accepted: a name such as front or back.",
        assertThrows(
                DraftingException.class, () -> UnnamedTracing.of(" ", Extent.AS_IT_LIES, triangle))
            .getMessage());
  }

  @Test
  void whatCannotBeNamedIsRefused() {
    UnnamedTracing vest = vest(1, 0, 7);
    assertEquals(
        "front: there are not as many names as stretches between corners. Found: 2 names. "
            + "Accepted: 5 names, or other corners (withCorner, withoutCorner).",
        assertThrows(DraftingException.class, () -> vest.named("hem", "side")).getMessage());
    assertEquals(
        "front: hem: an edge is traced too often. Found: 2 times. Accepted: each edge once.",
        assertThrows(
                DraftingException.class,
                () -> vest.named("hem", "side", "armhole", "shoulder", "hem"))
            .getMessage());
  }

  @Test
  void aRoundLineHasNoCorner() {
    List<Point> round = new ArrayList<>();
    for (int i = 0; i < 120; i++) {
      double turn = 2 * Math.PI * i / 120;
      round.add(new Point(100 * Math.cos(turn), 100 * Math.sin(turn)));
    }
    assertEquals(
        "patch: no corner stands out of the line. Accepted: a line with corners; "
            + "an edge without corners is traced under its name.",
        assertThrows(
                DraftingException.class,
                () -> UnnamedTracing.of("patch", Extent.AS_IT_LIES, Polyline.of(round)))
            .getMessage());
    assertThrows(
        DraftingException.class, () -> UnnamedTracing.of("patch", Extent.AS_IT_LIES, List.of()));
  }

  @Test
  void valuesAreReadBackAndReadWell() {
    UnnamedTracing vest = vest(2, 1, 15);
    assertEquals(vest, SerialCopy.of(vest));
    assertEquals(vest.stretches().get(0), SerialCopy.of(vest.stretches().get(0)));
    assertEquals(
        "strip, 4 points, 4 corners",
        UnnamedTracing.of("strip", Extent.AS_IT_LIES, RECTANGLE).toString());
    TracedStretch first =
        UnnamedTracing.of("strip", Extent.AS_IT_LIES, RECTANGLE).stretches().get(0);
    assertEquals(1, first.number());
    assertEquals(new Point(100, 0), first.to());
    assertEquals(Length.mm(100), first.points().length());
  }

  /** A raglan edge leaves the straight side at 24 degrees, drawn with 1 mm of noise. */
  @Test
  void aShallowCornerAtTheEndOfAStraightEdgeIsFound() {
    int found = 0;
    for (long seed = 0; seed < 100; seed++) {
      Random random = new Random(seed);
      List<Point> round = new ArrayList<>();
      for (int i = 0; i <= 49; i++) {
        round.add(near(5 * i, 12 * (1 - Math.cos(Math.PI / 98 * i)), random));
      }
      for (int i = 0; i <= 78; i++) {
        round.add(near(245 + 5 * i / 78.0, 12 + 388 * i / 78.0, random));
      }
      for (int i = 0; i <= 57; i++) {
        double t = i / 57.0;
        double wave = Math.sin(2 * Math.PI * t);
        round.add(near(250 - 170 * t + 9 * wave, 400 + 220 * t + 7 * wave, random));
      }
      for (int i = 0; i <= 24; i++) {
        double turn = Math.PI / 48 * i;
        round.add(near(80 * Math.cos(turn), 620 - 70 * Math.sin(turn), random));
      }
      Point underarm = new Point(250, 400);
      found +=
          UnnamedTracing.of("front", Extent.HALF_ON_FOLD, Polyline.of(round)).corners().stream()
                  .anyMatch(corner -> corner.distanceTo(underarm).toMm() <= 15)
              ? 1
              : 0;
    }
    assertTrue(found >= 92, "found " + found);
  }

  private static Point near(double x, double y, Random random) {
    return new Point(x + random.nextGaussian(), y + random.nextGaussian());
  }
}
