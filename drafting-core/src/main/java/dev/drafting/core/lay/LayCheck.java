package dev.drafting.core.lay;

import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Looks at a plan as it is given out, by polygons and areas, apart from how it was found: nothing
 * overlaps, nothing lies off the cloth or on a flaw.
 */
final class LayCheck {
  private static final Length FLAT = Length.mm(0.01);
  private static final double NOTHING_SQUARE_MM = 1e-3;
  private static final double OFF_MM = 1e-6;

  private final List<String> faults = new ArrayList<>();

  private LayCheck() {}

  static LayCheck of(LayPlan plan) {
    LayCheck check = new LayCheck();
    List<Polygon> polygons = new ArrayList<>();
    for (LaidPiece piece : plan.pieces()) {
      polygons.add(polygon(piece));
    }
    double high = plan.cloth().tableWidth().toMm();
    for (int i = 0; i < polygons.size(); i++) {
      String name = plan.pieces().get(i).name();
      Envelope box = polygons.get(i).getEnvelopeInternal();
      if (box.getMinX() < -OFF_MM || box.getMinY() < -OFF_MM || box.getMaxY() > high + OFF_MM) {
        check.faults.add(name + " lies off the cloth: " + box);
      }
      for (int j = 0; j < i; j++) {
        if (overlap(polygons.get(i), polygons.get(j))) {
          check.faults.add(name + " lies on " + plan.pieces().get(j).name());
        }
      }
      for (Cloth.Flaw flaw : plan.cloth().flaws()) {
        if (overlap(polygons.get(i), rectangle(flaw))) {
          check.faults.add(name + " lies on a flaw");
        }
      }
    }
    return check;
  }

  private static Polygon polygon(LaidPiece piece) {
    return JtsBridge.toPolygon(piece.cutLine(), FLAT);
  }

  private static Polygon rectangle(Cloth.Flaw flaw) {
    double x = flaw.fromEnd().toMm();
    double y = flaw.fromSide().toMm();
    Envelope box = new Envelope(x, x + flaw.along().toMm(), y, y + flaw.across().toMm());
    return (Polygon) new GeometryFactory().toGeometry(box);
  }

  private static boolean overlap(Polygon one, Polygon other) {
    return one.getEnvelopeInternal().intersects(other.getEnvelopeInternal())
        && OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION).getArea()
            > NOTHING_SQUARE_MM;
  }

  List<String> faults() {
    return faults;
  }

  void requireNone() {
    if (!faults.isEmpty()) {
      throw new IllegalStateException("a lay plan with " + faults);
    }
  }
}
