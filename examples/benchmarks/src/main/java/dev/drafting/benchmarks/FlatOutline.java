package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.buffer.OffsetCurve;

/**
 * An outline as JTS takes it: chords in place of curves, so fine that its whole result is as exact
 * as ours.
 *
 * <p>A chord that strays from its curve by e has a parallel that strays from the curve's parallel
 * by e too, and where two such parallels are mitred, the tip is too far out by about e times the
 * distance times the curvature. So the chords may stray by the tolerance over one plus distance
 * times strongest curvature. Corners are mitred as in ours, which needs no quadrant segments; the
 * simplification of input by a hundredth of the distance, which JTS does unless told otherwise, is
 * turned off for the buffer; the offset curve cannot be told so. Making the chords is not part of
 * what is timed.
 */
final class FlatOutline {
  private static final double TOLERANCE = 0.01;
  private static final int SAMPLES = 64;

  private final Polygon polygon;
  private final double distance;
  private final BufferParameters parameters = new BufferParameters();

  private FlatOutline(Polygon polygon, double distance) {
    this.polygon = polygon;
    this.distance = distance;
    parameters.setJoinStyle(BufferParameters.JOIN_MITRE);
    parameters.setMitreLimit(4);
    parameters.setSimplifyFactor(0);
  }

  static FlatOutline of(List<Segment> outline, Length distance) {
    double strongest = 0;
    for (Segment segment : outline) {
      for (int i = 0; i <= SAMPLES; i++) {
        strongest = Math.max(strongest, Math.abs(segment.curvatureAt((double) i / SAMPLES)));
      }
    }
    double stray = TOLERANCE / (1 + distance.toMm() * strongest);
    Polygon polygon = JtsBridge.toPolygon(Curve.of(outline), Length.mm(stray));
    return of(polygon.getCoordinates(), distance);
  }

  /** Points as they are, kept in the way that suits JTS best. */
  static FlatOutline of(Coordinate[] points, Length distance) {
    return new FlatOutline(new GeometryFactory().createPolygon(points), distance.toMm());
  }

  int points() {
    return polygon.getNumPoints();
  }

  Geometry buffer() {
    return BufferOp.bufferOp(polygon, distance, parameters);
  }

  /**
   * Along the ring, outward to its right; of a polygon it would take the buffer's usual settings.
   */
  Geometry offsetCurve() {
    return OffsetCurve.getCurve(
        polygon.getExteriorRing(),
        -distance,
        parameters.getQuadrantSegments(),
        parameters.getJoinStyle(),
        parameters.getMitreLimit());
  }
}
