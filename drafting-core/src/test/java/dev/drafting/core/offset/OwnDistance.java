package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The law of tagged points, checked with JTS: every point of an EDGE part lies at its edge's
 * distance from the edge, or from the straight continuation of the edge, and nowhere nearer to the
 * edge unless an end that is too tightly curved was reported.
 */
final class OwnDistance {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double FLAT = 5e-4;
  private static final int STATIONS = 10;

  private OwnDistance() {}

  static Geometry point(Point point) {
    return JTS.createPoint(new Coordinate(point.x(), point.y()));
  }

  static Geometry polygon(OffsetResult result) {
    return JtsBridge.toPolygon(result.outline(), Length.mm(0.001));
  }

  static void check(List<OffsetEdge> edges, OffsetResult result, double tolerance) {
    List<Geometry> lines = new java.util.ArrayList<>();
    for (OffsetEdge edge : edges) {
      lines.add(JtsBridge.toJts(edge.curve(), Length.mm(FLAT)));
    }
    for (OffsetPart part : result.parts()) {
      if (part.tag() == OffsetTag.EDGE) {
        OffsetEdge edge = edges.get(part.source());
        assertEquals(edge.name(), part.sourceName());
        boolean tight =
            result.trimmings().stream()
                .anyMatch(
                    trimming ->
                        trimming.edge().equals(edge.name())
                            && trimming.cause() == Trimming.Cause.TIGHT_CURVE);
        Length length = part.curve().length();
        for (int i = 0; i <= STATIONS; i++) {
          Point at = part.curve().pointAt(length.times((double) i / STATIONS));
          double found = lines.get(part.source()).distance(point(at));
          check(edge, at, found, tight, tolerance + FLAT);
        }
      }
    }
  }

  private static void check(OffsetEdge edge, Point at, double found, boolean tight, double within) {
    double wanted = Math.abs(edge.distance().toMm());
    if (Math.abs(found - wanted) <= within || (tight && found < wanted)) {
      return;
    }
    assertTrue(found > wanted, () -> edge + " comes as near as " + found + " at " + at);
    assertTrue(
        onContinuation(edge, at, wanted, within),
        () -> edge + " goes as far as " + found + " at " + at);
  }

  /** Beyond either end, or outside a corner between two segments of the edge. */
  private static boolean onContinuation(OffsetEdge edge, Point at, double wanted, double within) {
    Curve curve = edge.curve();
    for (var segment : curve.segments()) {
      if (beyond(at.minus(segment.start()), segment.directionAt(0).negated(), wanted, within)
          || beyond(at.minus(segment.end()), segment.directionAt(1), wanted, within)) {
        return true;
      }
    }
    return false;
  }

  private static boolean beyond(Vector off, Vector way, double wanted, double within) {
    return off.dot(way) >= -within && Math.abs(Math.abs(off.cross(way)) - wanted) <= within;
  }
}
