package dev.drafting.core.offset;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The definition of an offset, without any of its code: what a line square to each edge sweeps, as
 * quadrilaterals beside the chords of the flattened edge.
 */
final class Strips {
  private static final GeometryFactory JTS = new GeometryFactory();

  private Strips() {}

  /** Corners of the quadrilaterals beside one segment: source, source, parallel, parallel. */
  private static List<Coordinate[]> beside(Segment segment, double distance, double flat) {
    Curve curve = Curve.of(segment);
    Polyline chords = curve.flatten(Length.mm(flat));
    List<Coordinate[]> quads = new ArrayList<>();
    Coordinate[] last = null;
    for (int i = 0; i < chords.size(); i++) {
      Point at = chords.point(i);
      Vector way = wayAt(segment, curve, at, i, chords.size());
      Coordinate[] here = {
        new Coordinate(at.x(), at.y()),
        new Coordinate(at.x() + distance * way.dy(), at.y() - distance * way.dx())
      };
      if (last != null) {
        quads.add(new Coordinate[] {last[0], last[1], here[1], here[0], last[0]});
      }
      last = here;
    }
    return quads;
  }

  private static Vector wayAt(Segment segment, Curve curve, Point at, int i, int count) {
    if (i == 0 || i == count - 1) {
      return segment.directionAt(i == 0 ? 0 : 1);
    }
    return curve.directionAt(curve.nearest(at).along().min(curve.length()));
  }

  static Polygon source(List<OffsetEdge> edges, double flat) {
    Curve whole = edges.get(0).curve();
    for (OffsetEdge edge : edges.subList(1, edges.size())) {
      whole = whole.then(edge.curve());
    }
    return JtsBridge.toPolygon(whole, Length.mm(flat));
  }

  /** The garment with all outward strips added, then all inward strips taken away, by JTS. */
  static Geometry byJts(List<OffsetEdge> edges, double flat) {
    List<Geometry> outward = new ArrayList<>(List.of(source(edges, flat)));
    List<Geometry> inward = new ArrayList<>();
    for (OffsetEdge edge : edges) {
      double distance = edge.distance().toMm();
      for (Segment segment : edge.curve().segments()) {
        for (Coordinate[] quad :
            distance == 0 ? List.<Coordinate[]>of() : beside(segment, distance, flat)) {
          (distance > 0 ? outward : inward).add(JTS.createPolygon(quad).buffer(0));
        }
      }
    }
    Geometry all = OverlayNGRobust.union(outward);
    return inward.isEmpty()
        ? all
        : OverlayNGRobust.overlay(all, OverlayNGRobust.union(inward), OverlayNG.DIFFERENCE);
  }

  /** Round every corner and joint what treatments may change: discs of so many distances. */
  static Geometry corners(List<OffsetEdge> edges, double distances) {
    List<Geometry> discs = new ArrayList<>();
    int n = edges.size();
    for (int i = 0; i < n; i++) {
      double before = Math.abs(edges.get((i + n - 1) % n).distance().toMm());
      double radius = distances * Math.max(before, Math.abs(edges.get(i).distance().toMm())) + 0.1;
      discs.add(OwnDistance.point(edges.get(i).curve().start()).buffer(radius, 30));
    }
    return OverlayNGRobust.union(discs);
  }

  /**
   * The count of the definition at a point, by a flattening of our own: one inside the garment,
   * plus the outward strips that cover it, less the inward ones. A quadrilateral of a strip that is
   * turned back counts the other way, as its orientation does.
   */
  static final class Count {
    private final List<Coordinate[]> rings = new ArrayList<>();

    Count(List<OffsetEdge> edges, double flat) {
      rings.add(source(edges, flat).getExteriorRing().getCoordinates());
      for (OffsetEdge edge : edges) {
        for (Segment segment : edge.curve().segments()) {
          if (!edge.distance().equals(Length.ZERO)) {
            rings.addAll(beside(segment, edge.distance().toMm(), flat));
          }
        }
      }
    }

    int at(double x, double y) {
      int count = 0;
      for (Coordinate[] ring : rings) {
        for (int i = 1; i < ring.length; i++) {
          Coordinate a = ring[i - 1];
          Coordinate b = ring[i];
          if (a.y <= y != b.y <= y) {
            double side = (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
            count += a.y <= y ? (side > 0 ? 1 : 0) : (side < 0 ? -1 : 0);
          }
        }
      }
      return count;
    }
  }
}
