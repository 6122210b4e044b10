package dev.drafting.core.offset.sample;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.OffsetEdge;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.offset.OffsetTag;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsSimpleOp;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * Judges the result of an offset by its definition, with JTS: the outline is simple, its parts join
 * up, every point of an EDGE part lies at its edge's distance from the edge, or from the straight
 * continuation of the edge, and nowhere nearer to it, and is opposite the place that it names.
 */
public final class OffsetJudge {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double FLAT = 5e-4;
  private static final int STATIONS = 10;

  private final List<OffsetEdge> edges;
  private final OffsetResult result;
  private final double within;
  private final List<String> faults = new ArrayList<>();

  private OffsetJudge(List<OffsetEdge> edges, OffsetResult result, double tolerance) {
    this.edges = edges;
    this.result = result;
    this.within = tolerance + FLAT;
  }

  /** What is wrong with the result of a closed outline; empty if nothing is. */
  public static List<String> faults(List<OffsetEdge> edges, OffsetResult result, double tolerance) {
    List<String> faults = faultsOfOpen(edges, result, tolerance);
    if (!result.outline().isClosed() || !(result.outline().areaSquareMm() > 0)) {
      faults.add("not a counter-clockwise outline");
    }
    return faults;
  }

  /** What is wrong with the result of an open line, which may close where its ends overlap. */
  public static List<String> faultsOfOpen(
      List<OffsetEdge> edges, OffsetResult result, double tolerance) {
    OffsetJudge judge = new OffsetJudge(edges, result, tolerance);
    judge.simple();
    judge.joined();
    judge.ownDistances();
    judge.losses();
    return judge.faults;
  }

  /** Whether an outline or an open line crosses itself nowhere. */
  public static boolean isSimple(Curve outline) {
    return error(outline, 1e-3).isEmpty() || error(outline, 1e-6).isEmpty();
  }

  private static String error(Curve outline, double flat) {
    if (!outline.isClosed()) {
      IsSimpleOp judge = new IsSimpleOp(JtsBridge.toJts(outline, Length.mm(flat)));
      return judge.isSimple() ? "" : "crosses itself at " + judge.getNonSimpleLocation();
    }
    IsValidOp judge = new IsValidOp(JtsBridge.toPolygon(outline, Length.mm(flat)));
    return judge.isValid() ? "" : judge.getValidationError().toString();
  }

  private void simple() {
    Curve outline = result.outline();
    if (!isSimple(outline)) {
      faults.add("not simple: " + error(outline, 1e-6));
    }
  }

  private void joined() {
    List<OffsetPart> parts = result.parts();
    int joints = result.outline().isClosed() ? parts.size() : parts.size() - 1;
    for (int i = 0; i < joints; i++) {
      Point end = parts.get(i).curve().end();
      Point next = parts.get((i + 1) % parts.size()).curve().start();
      if (end.distanceTo(next).toMm() > 1e-8) {
        faults.add("a gap after " + parts.get(i));
      }
    }
  }

  /** What is kept and what is lost of the edges of one name is no more than there is of them. */
  private void losses() {
    Map<String, Double> left = new TreeMap<>();
    edges.forEach(edge -> left.merge(edge.name(), edge.curve().length().toMm(), Double::sum));
    for (OffsetPart part : result.parts()) {
      if (part.tag() == OffsetTag.EDGE) {
        String name = edges.get(part.source()).name();
        left.merge(name, part.from().minus(part.to()).toMm(), Double::sum);
      }
    }
    result.trimmings().forEach(lost -> left.merge(lost.edge(), -lost.lost().toMm(), Double::sum));
    left.forEach(
        (name, length) -> {
          if (length < -within) {
            faults.add(-length + " mm more of " + name + " is kept and lost than there is");
          }
        });
  }

  private void ownDistances() {
    List<Geometry> lines = new ArrayList<>();
    for (OffsetEdge edge : edges) {
      lines.add(JtsBridge.toJts(edge.curve(), Length.mm(FLAT)));
    }
    for (OffsetPart part : result.parts()) {
      if (part.tag() == OffsetTag.EDGE) {
        ownDistance(part, edges.get(part.source()), lines.get(part.source()));
      }
    }
  }

  private void ownDistance(OffsetPart part, OffsetEdge edge, Geometry line) {
    double wanted = Math.abs(edge.distance().toMm());
    Length length = part.curve().length();
    for (int i = 0; i <= STATIONS; i++) {
      Point at = part.curve().pointAt(length.times((double) i / STATIONS));
      double found = line.distance(JTS.createPoint(new Coordinate(at.x(), at.y())));
      if (found < wanted - within) {
        faults.add(edge + " comes as near as " + found + " at " + at);
      } else if (found > wanted + within && !onContinuation(edge, at, wanted)) {
        faults.add(edge + " goes as far as " + found + " at " + at);
      }
    }
    opposite(edge, part.curve().start(), part.from(), wanted);
    opposite(edge, part.curve().end(), part.to(), wanted);
  }

  private void opposite(OffsetEdge edge, Point at, Length along, double wanted) {
    Point source = edge.curve().pointAt(along.min(edge.curve().length()));
    double found = at.distanceTo(source).toMm();
    if (Math.abs(found - wanted) > within && !onContinuation(edge, at, wanted)) {
      faults.add(edge + " at " + along + " is not opposite " + at);
    }
  }

  /** Beyond either end, or outside a corner between two segments of the edge. */
  private boolean onContinuation(OffsetEdge edge, Point at, double wanted) {
    for (Segment segment : edge.curve().segments()) {
      if (beyond(at.minus(segment.start()), segment.directionAt(0).negated(), wanted)
          || beyond(at.minus(segment.end()), segment.directionAt(1), wanted)) {
        return true;
      }
    }
    return false;
  }

  private boolean beyond(Vector off, Vector way, double wanted) {
    return off.dot(way) >= -within && Math.abs(Math.abs(off.cross(way)) - wanted) <= within;
  }
}
