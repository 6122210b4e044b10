package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which ends of strokes are no slips, of strokes whose fits are given. */
class AgreedCornersTest {
  private static final Point CORNER = new Point(50, 0);

  private static EdgeFit fit(double noise, boolean first, boolean last, Point from, Point to) {
    Stroke stroke = Stroke.of(TracedEdge.of("edge", List.of(from, from.midpoint(to), to)));
    boolean[] kept = {first, true, last};
    GivenFit fitted =
        new GivenFit(new Track(Knots.straight()), stroke.samples.share, new double[3]);
    return new EdgeFit(stroke.samples, Form.STRAIGHT, fitted, kept, Noise.declared(noise));
  }

  private static EdgeFit before(boolean last) {
    return fit(1, true, last, new Point(0, 0), CORNER);
  }

  private static EdgeFit after(boolean first, double gap) {
    return fit(1, first, true, CORNER.plus(new Vector(0, gap)), new Point(50, 90));
  }

  /** Each edge that is fitted again, with the ends that are sure. */
  private static List<String> again(boolean closed, EdgeFit... fits) {
    List<String> again = new ArrayList<>();
    List<EdgeFit> kept =
        SharedCorners.kept(
            List.of(fits),
            closed,
            (edge, samples) -> {
              String start = samples.isSure(0) ? " start" : "";
              String end = samples.isSure(samples.size() - 1) ? " end" : "";
              again.add(edge + start + end);
              return fits[edge];
            });
    assertEquals(List.of(fits), kept);
    return again;
  }

  @Test
  void anEndThatTheNextStrokeHasToo() {
    assertEquals(List.of("0 end"), again(false, before(false), after(true, 0.5)));
    assertEquals(List.of("1 start"), again(false, before(true), after(false, 0.5)));
    assertEquals(List.of(), again(false, before(true), after(true, 0.5)));
    assertEquals(List.of(), again(false, before(false), after(false, 0.5)));
  }

  /** One and the same point says it once only. */
  @Test
  void notAPointThatBothShare() {
    assertEquals(List.of(), again(false, before(false), after(true, 0)));
  }

  /**
   * Two points at one place are farther apart than 4.29 times the noise once in a hundred times.
   */
  @Test
  void notAPlaceTooFarAway() {
    assertEquals(List.of("0 end"), again(false, before(false), after(true, 4.2)));
    assertEquals(List.of(), again(false, before(false), after(true, 4.4)));
    EdgeFit rough = fit(2, true, true, new Point(50, 8.5), new Point(50, 90));
    assertEquals(List.of("0 end"), again(false, before(false), rough));
    EdgeFit roughFirst = fit(2, true, false, new Point(0, 0), CORNER);
    assertEquals(List.of("0 end"), again(false, roughFirst, after(true, 8.5)));
  }

  @Test
  void aClosedOutlineAgreesWhereItBeginsToo() {
    EdgeFit home = fit(1, true, true, new Point(50, 90), new Point(0, 0.5));
    EdgeFit first = fit(1, false, true, new Point(0, 0), CORNER);
    assertEquals(List.of("0 start"), again(true, first, after(true, 0.5), home));
    assertEquals(List.of(), again(false, first, after(true, 0.5), home));
    EdgeFit shortEnd = fit(1, true, false, new Point(50, 90), new Point(0, 0.5));
    EdgeFit whole = fit(1, true, true, new Point(0, 0), CORNER);
    assertEquals(List.of("2 end"), again(true, whole, after(true, 0.5), shortEnd));
    assertEquals(List.of(), again(false, whole, after(true, 0.5), shortEnd));
  }

  @Test
  void bothEndsOfOneEdge() {
    EdgeFit middle = fit(1, false, false, CORNER, new Point(50, 90));
    EdgeFit last = fit(1, true, true, new Point(50, 91), new Point(0, 90));
    EdgeFit first = fit(1, true, true, new Point(0, 0), new Point(49, 0));
    assertEquals(List.of("1 start end"), again(false, first, middle, last));
  }
}
