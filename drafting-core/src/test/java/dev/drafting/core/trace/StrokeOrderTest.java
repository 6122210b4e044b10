package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Transform;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class StrokeOrderTest {
  private static TruedPiece trued(Vest.Pencil pencil, UnaryOperator<List<Point>> hand) {
    List<TracedEdge> edges = new ArrayList<>();
    for (String name : Vest.EDGES) {
      List<Point> points = pencil.trace(Vest.edge(name));
      edges.add(TracedEdge.of(name, name.equals("armhole") ? hand.apply(points) : points));
    }
    return Truing.of(Tracing.of("front", Extent.HALF_ON_FOLD, edges)).result();
  }

  private static List<Point> shuffled(List<Point> points) {
    List<Point> shuffled = new ArrayList<>(points);
    Collections.shuffle(shuffled, new Random(4));
    return shuffled;
  }

  private static List<String> said(TruedPiece trued) {
    return trued.report().findings().stream().map(Finding::id).toList();
  }

  @Test
  void pointsOutOfOrderGiveTheSameEdge() {
    TruedPiece plain = trued(new Vest.Pencil(3, 0, 9), points -> points);
    TruedPiece mixed = trued(new Vest.Pencil(3, 0, 9), StrokeOrderTest::shuffled);
    double off =
        Vest.rms(mixed.piece().edge("armhole").curve(), plain.piece().edge("armhole").curve());
    assertTrue(off < 1e-6, "off " + off);
    assertEquals(List.of(), said(plain));
    assertEquals(List.of("trace.order"), said(mixed));
  }

  @Test
  void anEdgeDrawnThereAndBackIsOneEdge() {
    for (long seed = 0; seed < 10; seed++) {
      Vest.Pencil again = new Vest.Pencil(100 + seed, 1, 9);
      TruedPiece doubled =
          trued(
              new Vest.Pencil(seed, 1, 9),
              points -> {
                List<Point> back = new ArrayList<>(again.trace(Vest.edge("armhole")));
                Collections.reverse(back);
                List<Point> both = new ArrayList<>(points);
                both.addAll(back);
                return both;
              });
      double off = Vest.rms(doubled.piece().edge("armhole").curve(), Vest.edge("armhole"));
      assertTrue(off < 1, "seed " + seed + " off " + off);
      assertTrue(said(doubled).contains("trace.order"), doubled.report().findings().toString());
    }
  }

  @Test
  void edgesFoundOnALineThatWasPutInOrderSaySo() {
    Vest.Pencil pencil = new Vest.Pencil(3, 0, 9);
    List<Polyline> strokes = new ArrayList<>();
    for (String name : Vest.EDGES) {
      List<Point> points = pencil.trace(Vest.edge(name));
      strokes.add(Polyline.of(name.equals("armhole") ? shuffled(points) : points));
    }
    UnnamedTracing found = UnnamedTracing.of("front", Extent.HALF_ON_FOLD, strokes);
    Tracing named = found.named(Vest.EDGES.toArray(String[]::new));
    for (TracedEdge edge : named.edges()) {
      assertEquals(edge.name().equals("armhole"), edge.isReordered(), edge.name());
    }
    TruedPiece trued = Truing.of(named.map(Transform.identity())).result();
    assertEquals(List.of("trace.order"), said(trued));
    assertEquals(Place.edge("front", "armhole"), trued.report().findings().get(0).place());
    assertEquals(
        named.edges(), named.map(Transform.identity()).edges(), "a copy forgets what was done");
  }

  @Test
  void whatIsInOrderStays() {
    for (double wander : new double[] {0, 1, 2}) {
      for (double spacing : new double[] {1, 5, 20}) {
        for (String name : Vest.EDGES) {
          List<Point> points = new Vest.Pencil(5, wander, spacing).trace(Vest.edge(name));
          double[] x = points.stream().mapToDouble(Point::x).toArray();
          double[] y = points.stream().mapToDouble(Point::y).toArray();
          assertNull(StrokeOrder.of(x, y, false), name + ", " + wander + ", " + spacing);
        }
      }
    }
  }

  private static int @Nullable [] order(boolean closed, double... xy) {
    double[] x = new double[xy.length / 2];
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = xy[2 * i];
      y[i] = xy[2 * i + 1];
    }
    return StrokeOrder.of(x, y, closed);
  }

  private static double[] along(double... x) {
    double[] xy = new double[2 * x.length];
    for (int i = 0; i < x.length; i++) {
      xy[2 * i] = x[i];
    }
    return xy;
  }

  /** Drawn, the way is 50 mm; from one to the nearest 30 mm. */
  @Test
  void aWayThatIsMuchShorterIsTheOneThatWasMeant() {
    assertArrayEquals(new int[] {0, 2, 1, 3}, order(false, along(0, 20, 10, 30)));
    assertArrayEquals(new int[] {3, 1, 2, 0}, order(false, along(100, 80, 90, 60)));
    assertNull(order(false, along(0, 10, 20, 30)));
    assertNull(order(false, along(30, 20, 10, 0)));
  }

  /** A closed line has to come home as well: 60 mm are not much shorter than 50. */
  @Test
  void aClosedLineComesHome() {
    assertNull(order(true, along(0, 20, 10, 30)));
    double[] zigzag = new double[16];
    int[] drawn = {0, 4, 1, 5, 2, 6, 3, 7};
    for (int i = 0; i < 8; i++) {
      zigzag[2 * i] = 50 * Math.cos(drawn[i] * Math.PI / 4);
      zigzag[2 * i + 1] = 50 * Math.sin(drawn[i] * Math.PI / 4);
    }
    int[] round = Objects.requireNonNull(order(true, zigzag));
    for (int k = 1; k < 8; k++) {
      int step = Math.floorMod(drawn[round[k]] - drawn[round[k - 1]], 8);
      assertTrue(step == 1 || step == 7, "step " + step);
    }
  }

  @Test
  void threePointsAndThousandsStayAsTheyAre() {
    assertNull(order(false, along(0, 30, 10)));
    for (int count : new int[] {3000, 3001}) {
      double[] x = new double[count];
      for (int i = 0; i < count; i++) {
        x[i] = 10 * (i * 1237L % count);
      }
      int @Nullable [] order = order(false, along(x));
      assertEquals(count == 3000, order != null);
      for (int k = 1; order != null && k < count; k++) {
        assertEquals(10, Math.abs(x[order[k]] - x[order[k - 1]]), 1e-9);
      }
    }
  }

  /** To and fro by less than 5 mm is a wobble of the hand, not a way. */
  @Test
  void wobblesAreNoWay() {
    double[] wobbling = new double[80];
    for (int i = 0; i < 40; i++) {
      wobbling[2 * i] = i + (i % 2 == 0 ? 2 : -2);
    }
    assertNull(order(false, wobbling));
  }

  /**
   * Far from the middle lies the corner of a V whose ends have most points: it begins at an end.
   */
  @Test
  void theWayBeginsAtAnEnd() {
    double[] x = {0, 6, 12, 18, 24, 30, 50, 75, 100};
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      points.add(new double[] {x[i], 60 * (1 - x[i] / 100)});
    }
    for (int i = x.length - 2; i >= 0; i--) {
      points.add(new double[] {x[i], -60 * (1 - x[i] / 100)});
    }
    List<Integer> mixed = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      mixed.add(i);
    }
    Collections.shuffle(mixed, new Random(7));
    double[] xy = new double[2 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      xy[2 * i] = points.get(mixed.get(i))[0];
      xy[2 * i + 1] = points.get(mixed.get(i))[1];
    }
    List<Integer> found = new ArrayList<>();
    for (int i : Objects.requireNonNull(order(false, xy))) {
      found.add(mixed.get(i));
    }
    if (found.get(0) != 0) {
      Collections.reverse(found);
    }
    assertEquals(IntStream.range(0, points.size()).boxed().toList(), found);
  }
}
