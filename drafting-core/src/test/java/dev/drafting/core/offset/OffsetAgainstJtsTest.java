package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Convex polygons against JTS buffer, a general-purpose geometry library. */
class OffsetAgainstJtsTest {
  private static final int POLYGONS = Integer.getInteger("seeds", 200);

  private static List<OffsetEdge> polygon(Random random, double distance) {
    int n = 3 + random.nextInt(8);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double turn = 2 * Math.PI * (i + 0.5 * random.nextDouble()) / n;
      points.add(new Point(200 * Math.cos(turn), 150 * Math.sin(turn)));
    }
    List<OffsetEdge> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Curve side = Curve.line(points.get(i), points.get((i + 1) % n));
      edges.add(OffsetEdge.of("side " + i, side, Length.mm(distance)));
    }
    return edges;
  }

  private static Geometry source(List<OffsetEdge> edges) {
    Curve whole = edges.get(0).curve();
    for (OffsetEdge edge : edges.subList(1, edges.size())) {
      whole = whole.then(edge.curve());
    }
    return JtsBridge.toPolygon(whole, Length.mm(0.001));
  }

  @Test
  void mitredPolygonsAreTheSame() {
    Random random = new Random(2);
    for (int i = 0; i < POLYGONS; i++) {
      double distance = -20 + 60 * random.nextDouble();
      List<OffsetEdge> edges = polygon(random, distance);
      Offset offset = Offset.of(edges);
      for (int k = 0; k < edges.size(); k++) {
        offset = offset.withCorner(k, CornerTreatment.mitre(50));
      }
      Geometry ours = OwnDistance.polygon(offset.result());
      BufferParameters style = new BufferParameters();
      style.setJoinStyle(BufferParameters.JOIN_MITRE);
      style.setMitreLimit(50);
      Geometry theirs = BufferOp.bufferOp(source(edges), distance, style);
      assertEquals(theirs.getArea(), ours.getArea(), 1e-6 * theirs.getArea());
      assertTrue(ours.symDifference(theirs).getArea() < 1e-6 * theirs.getArea());
    }
  }

  @Test
  void roundedPolygonsAreTheSameUpToTheChordsOfJts() {
    Random random = new Random(3);
    for (int i = 0; i < POLYGONS / 2; i++) {
      double distance = 1 + 30 * random.nextDouble();
      List<OffsetEdge> edges = polygon(random, distance);
      Offset offset = Offset.of(edges);
      for (int k = 0; k < edges.size(); k++) {
        offset = offset.withCorner(k, CornerTreatment.round());
      }
      Geometry ours = OwnDistance.polygon(offset.result());
      int quadrant = 200;
      Geometry theirs = source(edges).buffer(distance, quadrant);
      // chords lie inside the arc by at most d (1 - cos(pi / 4 / quadrant)), ours by 0.001 mm
      double sagitta = distance * (1 - Math.cos(Math.PI / 4 / quadrant)) + 0.001;
      assertTrue(
          ours.symDifference(theirs).getArea() < sagitta * 2 * Math.PI * distance + 0.01,
          () -> "distance " + distance);
    }
  }
}
