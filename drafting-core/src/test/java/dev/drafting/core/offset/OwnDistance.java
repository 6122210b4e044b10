package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.sample.OffsetJudge;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Results as JTS sees them. */
final class OwnDistance {
  private static final GeometryFactory JTS = new GeometryFactory();

  private OwnDistance() {}

  static Geometry point(Point point) {
    return JTS.createPoint(new Coordinate(point.x(), point.y()));
  }

  static Geometry polygon(OffsetResult result) {
    return JtsBridge.toPolygon(result.outline(), Length.mm(0.001));
  }

  /** Demands that {@link OffsetJudge} finds nothing. */
  static void check(List<OffsetEdge> edges, OffsetResult result, double tolerance) {
    assertEquals(
        List.of(), OffsetJudge.faults(edges, result, tolerance), () -> edges + ": " + result);
  }
}
