package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DrawnRectangleTest {
  private static final Length WIDTH = Length.mm(210);
  private static final Length HEIGHT = Length.mm(297);

  private static DrawnRectangle seen(UnaryOperator<Point> eye) {
    return DrawnRectangle.of(
        WIDTH,
        HEIGHT,
        eye.apply(new Point(0, 0)),
        eye.apply(new Point(210, 0)),
        eye.apply(new Point(210, 297)),
        eye.apply(new Point(0, 297)));
  }

  /**
   * A camera above the table, tilted about both axes: the projection of a plane (common optics).
   */
  private static UnaryOperator<Point> camera(double tilt, double roll, double height) {
    double ct = Math.cos(Math.toRadians(tilt));
    double st = Math.sin(Math.toRadians(tilt));
    double cr = Math.cos(Math.toRadians(roll));
    double sr = Math.sin(Math.toRadians(roll));
    return p -> {
      double x = p.x() - 100;
      double y = p.y() - 150;
      double x1 = cr * x - sr * y;
      double y1 = sr * x + cr * y;
      double depth = height + st * y1;
      return new Point(2000 + 3000 * x1 / depth, 1500 + 3000 * ct * y1 / depth);
    };
  }

  @Property(tries = 200)
  void whatACameraSawIsPutRight(
      @ForAll @DoubleRange(min = -25, max = 25) double tilt,
      @ForAll @DoubleRange(min = -180, max = 180) double roll,
      @ForAll @DoubleRange(min = 900, max = 3000) double height,
      @ForAll @DoubleRange(min = -300, max = 500) double x,
      @ForAll @DoubleRange(min = -300, max = 600) double y) {
    UnaryOperator<Point> camera = camera(tilt, roll, height);
    Point truth = new Point(x, y);
    Point found = seen(camera).corrected(camera.apply(truth));
    assertTrue(found.distanceTo(truth).toMm() < 1e-6, () -> found + " for " + truth);
  }

  @Property(tries = 100)
  void aSkewPrintIsPutRight(
      @ForAll @DoubleRange(min = 0.9, max = 1.1) double across,
      @ForAll @DoubleRange(min = 0.9, max = 1.1) double along,
      @ForAll @DoubleRange(min = -0.2, max = 0.2) double skew) {
    UnaryOperator<Point> print =
        p -> new Point(40 + across * p.x() + skew * p.y(), -7 + along * p.y());
    Point truth = new Point(481.5, 702.25);
    Point found = seen(print).corrected(print.apply(truth));
    assertTrue(found.distanceTo(truth).toMm() < 1e-6, found::toString);
  }

  @Test
  void aPictureOfTheOtherSideIsTurnedOver() {
    DrawnRectangle mirrored = seen(p -> new Point(800 - 2 * p.x(), 2 * p.y()));
    assertTrue(mirrored.isTurnedOver());
    assertEquals(new Point(30, 40), rounded(mirrored.corrected(new Point(740, 80))));
    assertEquals(
        "210 mm x 297 mm, 0.500 mm to the unit, out of square by 0.0°, turned over",
        mirrored.toString());
    assertFalse(seen(p -> p).isTurnedOver());
    assertEquals(0.5, mirrored.unit().toMm(), 1e-9);
  }

  private static Point rounded(Point point) {
    return new Point(Math.rint(point.x() * 1e6) / 1e6, Math.rint(point.y() * 1e6) / 1e6);
  }

  @Test
  void wholeTracingsAreCorrected() {
    UnaryOperator<Point> camera = camera(10, 3, 1500);
    Tracing truth = new Vest.Pencil(1, 0, 20).half();
    List<TracedEdge> seen =
        truth.edges().stream()
            .map(
                edge ->
                    TracedEdge.of(
                        edge.name(),
                        IntStream.range(0, edge.points().size())
                            .mapToObj(i -> camera.apply(edge.points().point(i)))
                            .toList()))
            .toList();
    DrawnRectangle rectangle = seen(camera);
    Tracing found = rectangle.corrected(Tracing.of("front", Extent.HALF_ON_FOLD, seen));
    TruedPiece trued = Truing.of(found).result();
    for (String name : Vest.EDGES) {
      double off = Vest.rms(trued.piece().edge(name).curve(), Vest.edge(name));
      assertTrue(off < 1e-5, name + " " + off);
    }
    assertEquals(2, rectangle.corrected(Polyline.of(2000, 1500, 2100, 1500)).size());
  }

  @Test
  void whatIsNoRectangleIsRefused() {
    Point a = new Point(0, 0);
    Point b = new Point(100, 0);
    Point c = new Point(100, 140);
    Point d = new Point(0, 140);
    assertEquals(
        "lower right: the corners of a drawn rectangle lie badly. Found: (100, 140). "
            + "Accepted: corners that follow each other, of 30 to 150°.",
        assertThrows(DraftingException.class, () -> DrawnRectangle.of(WIDTH, HEIGHT, a, c, b, d))
            .getMessage());
    assertThrows(DraftingException.class, () -> DrawnRectangle.of(WIDTH, HEIGHT, a, b, a, d));
    assertEquals(
        "width: a drawn rectangle is too small or too large. Found: 5 mm. Accepted: 20 mm to 5 m.",
        assertThrows(
                DraftingException.class, () -> DrawnRectangle.of(Length.mm(5), HEIGHT, a, b, c, d))
            .getMessage());
    DrawnRectangle askew = seen(camera(25, 0, 900));
    assertThrows(DraftingException.class, () -> askew.corrected(new Point(2000, 99_999)));
  }

  @Test
  void valuesAreReadBack() {
    DrawnRectangle rectangle = seen(camera(10, 3, 1500));
    Object read = SerialCopy.of(rectangle);
    assertEquals(rectangle, read);
    assertEquals(rectangle.hashCode(), read.hashCode());
    assertNotEquals(rectangle, seen(p -> p));
  }

  private static DrawnRectangle sized(double width, double height) {
    Point[] at = {new Point(0, 0), new Point(100, 0), new Point(100, 140), new Point(0, 140)};
    return DrawnRectangle.of(Length.mm(width), Length.mm(height), at[0], at[1], at[2], at[3]);
  }

  @Test
  void sizesAreWithinBounds() {
    assertEquals(20, sized(20, 5000).corrected(new Point(100, 0)).x(), 1e-9);
    assertEquals(5000, sized(5000, 20).corrected(new Point(100, 0)).x(), 1e-9);
    for (double wrong : new double[] {19.9, 5000.1}) {
      assertEquals("width", assertThrows(DraftingException.class, () -> sized(wrong, 100)).where());
      assertEquals(
          "height", assertThrows(DraftingException.class, () -> sized(100, wrong)).where());
    }
  }

  private static DrawnRectangle leaning(double degrees) {
    double lean = 100 / Math.tan(Math.toRadians(degrees));
    return DrawnRectangle.of(
        WIDTH,
        WIDTH,
        new Point(0, 0),
        new Point(100, 0),
        new Point(100 + lean, 100),
        new Point(lean, 100));
  }

  @Test
  void cornersAreNeitherTooSharpNorTooBlunt() {
    for (double degrees : new double[] {31, 149}) {
      assertTrue(leaning(degrees).toString().endsWith("out of square by 59.0°"));
    }
    assertTrue(leaning(80).toString().endsWith("out of square by 10.0°"));
    for (double degrees : new double[] {29, 151}) {
      assertThrows(DraftingException.class, () -> leaning(degrees));
    }
  }

  /** The horizon of a picture is where its depth is none; beyond it nothing lies on the table. */
  @Test
  void pointsLieBeforeTheHorizon() {
    DrawnRectangle road =
        DrawnRectangle.of(
            WIDTH,
            HEIGHT,
            new Point(-100, 0),
            new Point(100, 0),
            new Point(50, 100),
            new Point(-50, 100));
    // Sides that come together by half in 100 meet at 200.
    assertTrue(road.corrected(new Point(0, 199)).y() > 10_000);
    assertThrows(DraftingException.class, () -> road.corrected(new Point(0, 201)));
    assertEquals(105, road.corrected(new Point(0, 50)).x(), 1e-9);
  }
}
