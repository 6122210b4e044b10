package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.ORIGIN;
import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each place where curves meet is named once: at corners, where curves close, where they recross.
 */
class CrossingPlacesTest {
  private static Curve chain(double... xy) {
    List<Segment> lines = new ArrayList<>();
    for (int i = 2; i < xy.length; i += 2) {
      lines.add(new Line(p(xy[i - 2], xy[i - 1]), p(xy[i], xy[i + 1])));
    }
    return Curve.of(lines);
  }

  private static final Curve SQUARE = chain(0, 0, 100, 0, 100, 100, 0, 100, 0, 0);

  private static void assertPlaces(List<Crossing> found, double... alongs) {
    assertEquals(alongs.length / 2, found.size(), found.toString());
    for (int i = 0; i < found.size(); i++) {
      assertEquals(alongs[2 * i], found.get(i).along().toMm(), 1e-9);
      assertEquals(alongs[2 * i + 1], found.get(i).alongOther().toMm(), 1e-9);
    }
  }

  /** Where a curve closes its length is zero, and a little before it is the whole less that. */
  @ParameterizedTest
  @CsvSource({"0, 0", "5e-7, 0", "2e-6, 399.999998", "1e-4, 399.9999", "0.01, 399.99", "50, 350"})
  void justBeforeACurveCloses(double before, double along) {
    Curve across = chain(-6, before - 8, 3, before + 4);
    assertPlaces(SQUARE.intersections(across), along, 10);
    assertPlaces(across.intersections(SQUARE), 10, along);
  }

  /** A corner belongs to two edges, and is one place all the same. */
  @Test
  void cornersOnALine() {
    Curve zigzag = chain(0, 0, 3, 4, 6, 0, 9, -4, 12, 0, 15, 4);
    assertPlaces(zigzag.intersections(chain(-10, 0, 50, 0)), 0, 10, 10, 16, 20, 22);
    assertPlaces(zigzag.intersections(chain(-10, 0, 6, 0, 50, 0)), 0, 10, 10, 16, 20, 22);
  }

  /**
   * The corner of one curve on a place that the other passes twice: two crossings, turned anyhow.
   */
  @Test
  void aCornerWhereTheOtherPassesTwice() {
    for (int degrees = 0; degrees < 360; degrees += 7) {
      Transform turned =
          Transform.rotation(p(13, 7), Angle.degrees(degrees))
              .then(Transform.translation(new Vector(0.1 * degrees, 31.7)));
      Curve corner = chain(-30, -40, 0, 0, 30, -40).map(turned);
      Curve bow = chain(-40, 30, 0, 0, 40, -30, 40, 30, 0, 0, -40, -30).map(turned);
      assertPlaces(corner.intersections(bow), 50, 50, 50, 210);
      assertPlaces(bow.intersections(corner), 50, 50, 210, 50);
    }
  }

  /** A curve meets itself where it passes twice, the earlier length first; corners do not count. */
  @Test
  void aCurveMeetsItselfWhereItPassesTwice() {
    Curve bow = chain(-40, 30, 40, -30, 40, 30, -40, -30);
    assertPlaces(bow.selfCrossings(), 50, 210);
    assertPlaces(bow.reversed().selfCrossings(), 50, 210);
    Curve closed = chain(-40, 30, 40, -30, 40, 30, -40, -30, -40, 30);
    assertPlaces(closed.selfCrossings(), 50, 210);
    assertPlaces(SQUARE.selfCrossings());
    assertPlaces(chain(0, 0, 30, 0, 30, 40, 0, 0).selfCrossings());
  }

  @Test
  void anEndThatComesBackToTheMiddle() {
    assertPlaces(chain(0, 0, 30, 0, 30, 40, 15, 0).selfCrossings(), 15, 70 + Math.hypot(15, 40));
  }

  /** Of edges that are equally near the earliest counts, also when its box is further off. */
  @Test
  void ofEdgesThatAreEquallyNearTheEarliestCounts() {
    Arc over = Arc.through(p(20, -5), p(0, 5), p(-20, -5));
    Curve lid = Curve.of(new Line(p(-20, -5), p(20, -5)), over);
    assertEquals(20, lid.nearest(ORIGIN).along().toMm(), 0);
    assertEquals(Length.mm(5), lid.nearest(ORIGIN).distance());
    assertEquals(50, SQUARE.nearest(p(50, 50)).along().toMm(), 0);
    assertEquals(0, SQUARE.nearest(p(-3, -4)).along().toMm(), 0);
    assertEquals(100, SQUARE.nearest(p(103, -4)).along().toMm(), 0);
  }

  /** Off both ends of an arc the nearer end is nearest, the start if both are equally near. */
  @Test
  void offTheEndsOfAnArc() {
    Arc half = Arc.of(ORIGIN, Length.mm(50), Angle.ZERO, Angle.degrees(180));
    assertEquals(0, NearestSearch.onSegment(half, p(0, -10)), 0);
    assertEquals(0, NearestSearch.onSegment(half, p(1, -10)), 0);
    assertEquals(1, NearestSearch.onSegment(half, p(-1, -10)), 0);
    assertEquals(0, NearestSearch.onSegment(half.reversed(), p(-1, -10)), 0);
    assertEquals(0.5, NearestSearch.onSegment(half, p(0, 70)), 1e-15);
    assertEquals(0.25, NearestSearch.onSegment(half.reversed(), p(-7, 7)), 1e-15);
  }
}
