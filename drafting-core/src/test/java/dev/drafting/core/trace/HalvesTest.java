package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A bag whose right side stands 100 mm from the fold and whose left side 104 mm, with a hem drawn
 * right across: halves are averaged by hand.
 */
class HalvesTest {
  private static Stroke stroke(String name, Point... points) {
    return Stroke.of(TracedEdge.of(name, List.of(points)));
  }

  private static EdgeFit line(Stroke stroke, boolean... left) {
    boolean[] kept = EdgeFit.all(stroke.samples.size());
    for (int i = 0; i < left.length; i++) {
      kept[i] = left[i];
    }
    LineFit fitted = new LineFit(stroke.samples, EdgeFit.weights(kept), Ends.FREE);
    return new EdgeFit(stroke.samples, Form.STRAIGHT, fitted, kept, Noise.declared(1));
  }

  /** Round the outline from the hem, its right end first. */
  private static List<Stroke> bag() {
    return List.of(
        stroke("hem", new Point(-104, 0), new Point(-44, 0), new Point(20, 0), new Point(100, 0)),
        stroke("side", new Point(100, 0), new Point(100, 90), new Point(100, 200)),
        stroke("top", new Point(100, 200), new Point(10, 200), new Point(-104, 200)),
        stroke("side", new Point(-104, 200), new Point(-104, 120), new Point(-104, 0)));
  }

  /** The fold line of the same bag with both sides alike. */
  private static FoldLine fold() {
    List<Stroke> alike = new ArrayList<>(bag());
    alike.set(0, stroke("hem", new Point(-100, 0), new Point(0, 0), new Point(100, 0)));
    alike.set(2, stroke("top", new Point(100, 200), new Point(0, 200), new Point(-100, 200)));
    alike.set(3, stroke("side", new Point(-100, 200), new Point(-100, 0)));
    return FoldLine.fromCorners("bag", alike);
  }

  private static List<Halves.Half> halves(List<EdgeFit> fits) {
    List<Track> tracks = fits.stream().map(EdgeFit::track).toList();
    return new Halves(List.of("hem", "side", "top", "side"), fits, tracks, fold()).averaged(0);
  }

  private static List<EdgeFit> fits() {
    return bag().stream().map(stroke -> line(stroke)).toList();
  }

  @Test
  void theHalfRunsFromTheLowerEndToTheUpper() {
    List<Halves.Half> halves = halves(fits());
    assertEquals(List.of("hem", "side", "top"), halves.stream().map(half -> half.name).toList());
    assertEquals(
        List.of(List.of(0), List.of(1, 3), List.of(2)),
        halves.stream().map(half -> half.strokes).toList());
  }

  /** Every point goes half way to the other side; both keep their heights. */
  @Test
  void sidesAreAveraged() {
    Halves.Half side = halves(fits()).get(1);
    assertArrayEquals(new double[] {102, 102, 102, 102, 102, 102}, side.samples.x, 1e-9);
    assertArrayEquals(new double[] {0, 0, 90, 120, 200, 200}, side.samples.y, 1e-9);
    assertArrayEquals(new double[] {0, 0, 0.45, 0.6, 1, 1}, side.samples.share, 1e-9);
    assertEquals(0, side.samples.start(0).distanceTo(new Point(102, 0)).toMm(), 1e-9);
    assertEquals(0, side.samples.end(5).distanceTo(new Point(102, 200)).toMm(), 1e-9);
    assertEquals(6, side.samples.independent, 1e-9);
    assertEquals(4, side.lopsidedness.largest().toMm(), 1e-9);
    assertEquals(4, side.lopsidedness.rms().toMm(), 1e-9);
    assertEquals(102, side.lopsidedness.where().x(), 1e-9);
  }

  /**
   * A hem across the fold: shares are counted from the fold out, and its end is between both ends.
   */
  @Test
  void anEdgeAcrossTheFoldIsLaidOnItself() {
    Halves.Half hem = halves(fits()).get(0);
    assertArrayEquals(new double[] {20, 44, 100, 104}, hem.samples.x, 1e-9);
    double[] out = {20 / 102.0, 44 / 102.0, 100 / 102.0, 1};
    assertArrayEquals(out, hem.samples.share, 1e-9);
    assertEquals(0, hem.samples.end(3).distanceTo(new Point(102, 0)).toMm(), 1e-9);
    Halves.Half top = halves(fits()).get(2);
    assertArrayEquals(new double[] {104, 100, 10}, top.samples.x, 1e-9);
    assertArrayEquals(new double[] {0, 2 / 102.0, 92 / 102.0}, top.samples.share, 1e-9);
    assertEquals(0, top.samples.start(0).distanceTo(new Point(102, 200)).toMm(), 1e-9);
  }

  @Test
  void slipsDoNotCount() {
    List<EdgeFit> fits = new ArrayList<>(fits());
    fits.set(1, line(bag().get(1), true, false, true));
    Halves.Half side = halves(fits).get(1);
    assertArrayEquals(new double[] {0, 0, 120, 200, 200}, side.samples.y, 1e-9);
    assertEquals(5, side.samples.independent, 1e-9);
  }
}
