package dev.drafting.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Curves made flat, with JTS as the second implementation of length, area and distance. */
class FlattenProperties {
  private static final Length FINE = Length.mm(1e-5);

  @Provide
  Arbitrary<Curve> curves() {
    return Shapes.curves();
  }

  @Provide
  Arbitrary<Curve> outlines() {
    return Shapes.outlines();
  }

  @Property(tries = 100)
  void noPointOfTheCurveIsFurtherAwayThanTheTolerance(@ForAll("curves") Curve curve) {
    for (double tolerance : new double[] {5, 0.5, 0.01}) {
      LineString flat = JtsBridge.toJts(curve.flatten(Length.mm(tolerance)));
      for (int i = 0; i <= 300; i++) {
        Point at = curve.pointAt(curve.length().times(i / 300.0));
        double off =
            flat.distance(new GeometryFactory().createPoint(new Coordinate(at.x(), at.y())));
        assertTrue(off <= tolerance, off + " mm at " + at + " of " + curve);
      }
    }
  }

  @Property(tries = 100)
  void allPointsLieOnTheCurveAndTheJointsAreAmongThem(@ForAll("curves") Curve curve) {
    Polyline flat = curve.flatten(Length.mm(1));
    assertEquals(curve.start(), flat.point(0));
    assertEquals(curve.end(), flat.point(flat.size() - 1));
    int joint = 0;
    for (int i = 0; i < flat.size(); i++) {
      assertTrue(curve.nearest(flat.point(i)).distance().toMm() < 1e-9);
      if (flat.point(i).equals(curve.segments().get(joint).end())) {
        joint = Math.min(joint + 1, curve.segments().size() - 1);
      }
    }
    assertEquals(curve.segments().size() - 1, joint);
  }

  @Property(tries = 100)
  void lengthAgreesWithJtsOnAFineFlattening(@ForAll("curves") Curve curve) {
    double chords = JtsBridge.toJts(curve, FINE).getLength();
    double length = curve.length().toMm();
    assertTrue(chords <= length * (1 + 1e-12), "chords are never longer");
    assertEquals(length, chords, 1e-4);
  }

  @Property(tries = 100)
  void areaAgreesWithJtsOnAFineFlattening(@ForAll("outlines") Curve outline) {
    Polygon polygon = JtsBridge.toPolygon(outline, FINE);
    assertTrue(polygon.isValid());
    assertEquals(polygon.getArea(), outline.areaSquareMm(), FINE.toMm() * outline.length().toMm());
  }

  /** R (1 - cos(sweep / 2)) is the sagitta of a chord. */
  @Example
  void aCircleIsCutAsFinelyAsItsSagittaAsks() {
    Polyline flat = Shapes.circle(100).flatten(Length.mm(0.1));
    double step = 2 * Math.PI / (flat.size() - 1);
    assertTrue(100 * (1 - Math.cos(step / 2)) <= 0.1);
    double coarser = 2 * Math.PI / (flat.size() - 2);
    assertTrue(100 * (1 - Math.cos(coarser / 2)) > 0.1, "no finer than needed");
  }

  @Example
  void tolerancesThatMakeNoSenseAreRefused() {
    Curve circle = Shapes.circle(100);
    assertThrows(DraftingException.class, () -> circle.flatten(Length.ZERO));
    assertThrows(DraftingException.class, () -> circle.flatten(Length.mm(-1)));
    assertThrows(DraftingException.class, () -> circle.flatten(Length.mm(1e-12)));
  }
}
