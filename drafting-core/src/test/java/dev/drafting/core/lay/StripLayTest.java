package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.locationtech.jts.geom.Polygon;

/** Outlines whose shortest strip is known by their area; JTS looks at what overlaps. */
class StripLayTest {
  private static final Length WIDTH = Length.mm(100);
  private static final Angle UPRIGHT = Angle.degrees(90);

  private static Curve rectangle(double along, double across) {
    return Curve.polyline(
        new Point(0, 0),
        new Point(along, 0),
        new Point(along, across),
        new Point(0, across),
        new Point(0, 0));
  }

  /** Stops as soon as the strip is as short as its area allows, and after five seconds anyway. */
  private static StripLay.Result shortest(StripLay lay, double least) {
    return lay.plan(1, Duration.ofSeconds(5), length -> length.toMm() > least * 1.02);
  }

  private static void holds(StripLay.Result result) {
    List<Polygon> laid = new ArrayList<>();
    for (Curve outline : result.outlines()) {
      assertTrue(outline.bounds().minX() >= -0.02 && outline.bounds().minY() >= -0.02);
      assertTrue(outline.bounds().maxX() <= result.length().toMm() + 0.02);
      assertTrue(outline.bounds().maxY() <= WIDTH.toMm() + 0.02);
      Polygon next = JtsBridge.toPolygon(outline, Length.mm(0.01));
      laid.forEach(other -> assertEquals(0, other.intersection(next).getArea(), 1));
      laid.add(next);
    }
  }

  @Test
  void squaresLieSideBySide() {
    StripLay lay = StripLay.of(WIDTH).with(rectangle(50, 50), 4, Angle.ZERO);
    StripLay.Result result = shortest(lay, 100);
    assertEquals(4, result.outlines().size());
    holds(result);
    assertTrue(result.length().toMm() < 103, result.length().toString());
  }

  /** What is 100 mm long fits across the strip when it is turned, in the order of the outlines. */
  @Test
  void outlinesAreTurnedAsTheyMay() {
    StripLay lay =
        StripLay.of(WIDTH)
            .with(rectangle(100, 30), 2, Angle.ZERO, UPRIGHT)
            .with(rectangle(100, 20), 1, UPRIGHT);
    StripLay.Result result = shortest(lay, 80);
    holds(result);
    assertEquals(
        List.of(3000.0, 3000.0, 2000.0),
        result.outlines().stream().map(o -> (double) Math.round(o.areaSquareMm())).toList());
    assertEquals(100, result.outlines().get(2).bounds().height().toMm(), 0.01);
  }

  /** A clockwise outline is laid like any other. */
  @Test
  void theSenseOfAnOutlineDoesNotMatter() {
    StripLay lay = StripLay.of(WIDTH).with(rectangle(60, 50).reversed(), 2, Angle.ZERO);
    StripLay.Result result = shortest(lay, 60);
    holds(result);
    assertTrue(result.length().toMm() < 62, result.length().toString());
  }

  /** Told no, it stops with the strip it was told of. */
  @Test
  void eachShorterStripIsTold() {
    StripLay lay = StripLay.of(WIDTH).with(rectangle(50, 50), 4, Angle.ZERO);
    List<Length> told = new ArrayList<>();
    StripLay.Result result =
        lay.plan(
            1,
            Duration.ofMinutes(5),
            length -> {
              told.add(length);
              return told.size() < 3;
            });
    assertEquals(3, told.size());
    assertTrue(told.get(0).compareTo(told.get(1)) > 0 && told.get(1).compareTo(told.get(2)) > 0);
    assertEquals(told.get(2), result.length());
  }

  private static String refused(Executable lay) {
    return String.valueOf(assertThrows(DraftingException.class, lay).getMessage());
  }

  @Test
  void whatCannotBeLaidIsRefused() {
    StripLay strip = StripLay.of(WIDTH);
    assertTrue(refused(() -> StripLay.of(Length.ZERO)).startsWith("a strip has no width."));
    assertTrue(
        refused(() -> strip.plan(1, Duration.ofMillis(10), length -> true))
            .startsWith("there is nothing to lay."));
    Curve square = rectangle(50, 50);
    assertTrue(
        refused(() -> strip.with(square, 0, Angle.ZERO)).contains("Found: 0 times, 1 turns"));
    assertTrue(refused(() -> strip.with(square, 1)).contains("Found: 1 times, 0 turns"));
    assertEquals(
        "an outline is wider than the strip. Found: 101 mm. Accepted: up to 100 mm.",
        refused(() -> strip.with(rectangle(20, 101), 1, Angle.ZERO)));
    assertEquals(
        "1 outline on a strip 100 mm wide",
        strip.with(rectangle(20, 101), 1, Angle.ZERO, UPRIGHT).toString());
    Curve open = Curve.polyline(new Point(0, 0), new Point(50, 0), new Point(50, 50));
    assertTrue(
        refused(() -> strip.with(open, 1, Angle.ZERO))
            .endsWith("Accepted: a curve that ends where it starts."));
  }

  @Test
  void isAValue() {
    StripLay lay = StripLay.of(WIDTH).with(rectangle(50, 50), 4, Angle.ZERO);
    assertEquals("4 outlines on a strip 100 mm wide", lay.toString());
    assertEquals(lay, SerialCopy.of(lay));
    assertEquals(lay.hashCode(), SerialCopy.of(lay).hashCode());
    List<StripLay> others =
        List.of(
            StripLay.of(WIDTH),
            StripLay.of(Length.mm(101)).with(rectangle(50, 50), 4, Angle.ZERO),
            StripLay.of(WIDTH).with(rectangle(50, 50), 3, Angle.ZERO),
            StripLay.of(WIDTH).with(rectangle(50, 50), 4, UPRIGHT));
    for (StripLay other : others) {
      assertNotEquals(lay, other);
      assertNotEquals(lay.hashCode(), other.hashCode());
    }
  }
}
