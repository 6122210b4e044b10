package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.sample.RandomOutline;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Results against the definition itself, away from the corners, where treatments rule: union and
 * difference of strips by JTS where all distances have one sign, and counting strips one by one,
 * flattened to a millionth of a millimetre, where they have both.
 */
class OffsetAgainstStripsTest {
  private static final int EACH = 12;
  private static final double TOLERANCE = 0.01;
  private static final double MITRED = 4.05;

  private static List<OffsetEdge> ofOneSign(RandomOutline.Kind kind, int seed) {
    double sign = seed % 2 == 0 ? 1 : -0.5;
    return RandomOutline.of(kind, seed).edges().stream()
        .map(
            edge ->
                OffsetEdge.of(edge.name(), edge.curve(), edge.distance().abs().times(sign * 0.4)))
        .toList();
  }

  /** Traced edges have a mitre every few millimetres: nothing of them is away from corners. */
  private static boolean hasJointsWithinEdges(List<OffsetEdge> edges) {
    return edges.stream().anyMatch(edge -> edge.curve().segments().size() > 1);
  }

  @ParameterizedTest
  @EnumSource(names = {"CONVEX", "STAR", "GARMENT"})
  void oneSignIsUnionOrDifferenceOfStrips(RandomOutline.Kind kind) {
    int compared = 0;
    for (int seed = 0; seed < EACH; seed++) {
      List<OffsetEdge> edges = ofOneSign(kind, seed);
      if (hasJointsWithinEdges(edges)) {
        continue;
      }
      Geometry ours = OwnDistance.polygon(Offset.of(edges).result());
      Geometry theirs = largest(Strips.byJts(edges, 1e-3));
      Geometry differ =
          OverlayNGRobust.overlay(
              OverlayNGRobust.overlay(ours, theirs, OverlayNG.SYMDIFFERENCE),
              Strips.corners(edges, MITRED),
              OverlayNG.DIFFERENCE);
      double slack = 2 * TOLERANCE * ours.getLength();
      assertTrue(differ.getArea() < slack, kind + ", seed " + seed + ": " + differ.getArea());
      compared += Strips.corners(edges, MITRED).contains(ours) ? 0 : 1;
    }
    assertTrue(compared > EACH / 4, "only " + compared + " have anything beyond their corners");
  }

  /** Without the holes that the strips themselves leave free. */
  private static Geometry largest(Geometry all) {
    Geometry largest = all.getFactory().createEmpty(2);
    for (int i = 0; i < all.getNumGeometries(); i++) {
      Polygon part = (Polygon) all.getGeometryN(i);
      Polygon filled = part.getFactory().createPolygon(part.getExteriorRing());
      largest = filled.getArea() > largest.getArea() ? filled : largest;
    }
    return largest;
  }

  @ParameterizedTest
  @EnumSource(names = {"CONVEX", "STAR", "GARMENT"})
  void bothSignsBoundWhatCountsOneOrMore(RandomOutline.Kind kind) {
    int stations = 0;
    for (int seed = 0; seed < EACH; seed++) {
      List<OffsetEdge> edges = RandomOutline.of(kind, seed).edges();
      if (hasJointsWithinEdges(edges)) {
        continue;
      }
      OffsetResult result = Offset.of(edges).result();
      Strips.Count count = new Strips.Count(edges, 1e-6);
      Geometry corners = Strips.corners(edges, MITRED);
      for (OffsetPart part : result.parts()) {
        stations += check(part, count, corners, kind + ", seed " + seed);
      }
    }
    assertTrue(stations >= EACH / 2, "only " + stations + " stations away from corners");
  }

  private static int check(OffsetPart part, Strips.Count count, Geometry corners, String which) {
    int stations = 0;
    for (double share : new double[] {0.13, 0.41, 0.77}) {
      Length along = part.curve().length().times(share);
      Point at = part.curve().pointAt(along);
      if (part.tag() == OffsetTag.EDGE && !corners.contains(OwnDistance.point(at))) {
        Vector left = part.curve().directionAt(along).left().times(3 * TOLERANCE);
        int inside = count.at(at.x() + left.dx(), at.y() + left.dy());
        int outside = count.at(at.x() - left.dx(), at.y() - left.dy());
        assertTrue(inside >= 1, () -> which + ": counts " + inside + " inside " + part);
        assertTrue(outside <= 0, () -> which + ": counts " + outside + " outside " + part);
        stations++;
      }
    }
    return stations;
  }

  /** The oracle itself, on a square: the strips and nothing at the corners. */
  @Test
  void theStripsOfASquareAreItsSides() {
    List<OffsetEdge> edges = Outlines.rectangle(100, 100, 10, 10, 10, 10);
    assertEquals(14_000, Strips.byJts(edges, 1e-3).getArea(), 1e-9);
    Strips.Count count = new Strips.Count(edges, 1e-6);
    assertEquals(1, count.at(50, -5));
    assertEquals(0, count.at(-5, -5));
    assertEquals(1, count.at(50, 50));
    Geometry boundary = OwnDistance.polygon(Offset.of(edges).result()).getBoundary();
    assertEquals(480, boundary.getLength(), 1e-9);
  }
}
