package dev.drafting.core.trace;

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
import java.util.Random;
import java.util.function.UnaryOperator;
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
}
