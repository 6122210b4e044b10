package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.ORIGIN;
import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where segments meet, and in how few steps that is found. */
class SegmentCrossingsTest {
  private static final Line LEVEL = new Line(p(0, 0), p(100, 0));
  private static final Arc CIRCLE = Arc.of(ORIGIN, Length.mm(50), Angle.ZERO, Angle.degrees(360));

  private static int pairs(Segment one, Segment other) {
    return SegmentCrossings.pairsCompared(one, other);
  }

  /** The parameters of meetings to 1e-6, each once. */
  private static Set<String> meetings(Segment one, Segment other) {
    Set<String> found = new TreeSet<>();
    for (SegmentCrossings.Meeting meeting : SegmentCrossings.of(one, other)) {
      assertEquals(0, one.pointAt(meeting.s()).gap(other.pointAt(meeting.t())), 1e-9);
      found.add(Coordinates.text(meeting.s(), 6) + " " + Coordinates.text(meeting.t(), 6));
    }
    return found;
  }

  @Test
  void whatIsApartTakesNoComparison() {
    assertEquals(0, pairs(LEVEL, new Line(p(0, 1), p(100, 1))));
    assertEquals(0, pairs(CIRCLE, new Line(p(51, -9), p(60, 9))));
    assertTrue(SegmentCrossings.of(CIRCLE, new Line(p(51, -9), p(60, 9))).isEmpty());
  }

  /** Directions that are apart: Newton's method goes to the one place at once. */
  @Test
  void whatCrossesSquarelyIsComparedOnce() {
    Line steep = new Line(p(25, -30), p(25, 70));
    assertEquals(1, pairs(LEVEL, steep));
    assertEquals(
        List.of(new SegmentCrossings.Meeting(0.25, 0.3)), SegmentCrossings.of(LEVEL, steep));
    Cubic seam = new Cubic(p(0, 0), p(30, 20), p(70, 20), p(100, 0));
    Cubic dart = new Cubic(p(40, -50), p(45, 0), p(55, 40), p(60, 90));
    assertEquals(1, pairs(seam, dart));
    assertEquals(1, SegmentCrossings.of(seam, dart).size());
    Arc quarter = Arc.of(ORIGIN, Length.mm(50), Angle.degrees(-45), Angle.degrees(90));
    assertEquals(1, pairs(quarter, new Line(p(0, 0), p(100, 0))));
    assertEquals("[0.5 0.5]", meetings(quarter, LEVEL).toString());
  }

  /** What two lie on together has ends of one or the other; between them nothing is compared. */
  @Test
  void aStretchInCommonIsNamedByItsEnds() {
    Line later = new Line(p(40, 0), p(140, 0));
    assertEquals("[0.4 0, 1 0.6]", meetings(LEVEL, later).toString());
    assertEquals(0, pairs(LEVEL, later));
    Line backwards = new Line(p(80, 0), p(20, 0));
    assertEquals("[0.2 1, 0.8 0]", meetings(LEVEL, backwards).toString());
    assertEquals(0, pairs(LEVEL, backwards));
    Cubic seam = new Cubic(p(0, 0), p(30, 90), p(70, 90), p(100, 0));
    assertEquals("[0 0, 1 1]", meetings(seam, seam).toString());
    assertEquals(0, pairs(seam, seam));
    assertEquals(
        "[0.25 1, 0.75 0]", meetings(seam, seam.between(0.25, 0.75).reversed()).toString());
    assertEquals(0, pairs(seam, seam.between(0.25, 0.75).reversed()));
    assertEquals(0, pairs(CIRCLE, CIRCLE));
    assertEquals(0, pairs(CIRCLE, CIRCLE.reversed()));
    assertEquals(0, pairs(CIRCLE, CIRCLE.between(0.2, 0.9)));
  }

  /** Ends in common do not mean that what lies between them is. */
  @Test
  void betweenEndsInCommonAWaveCrossesItsChord() {
    Cubic wave = new Cubic(p(0, 0), p(30, 60), p(70, -60), p(100, 0));
    assertEquals("[0 0, 0.5 0.5, 1 1]", meetings(wave, LEVEL).toString());
    assertEquals("[0 0, 0.5 0.5, 1 1]", meetings(LEVEL, wave).toString());
    Arc bow = Arc.through(p(0, 0), p(50, 20), p(100, 0));
    assertEquals("[0 0, 1 1]", meetings(bow, LEVEL).toString());
    assertEquals("[0 0.5, 1 0.5]", meetings(CIRCLE, LEVEL).toString());
  }

  @Test
  void linesAreNeverHalved() {
    assertEquals(1, pairs(LEVEL, new Line(p(-20, -1e-4), p(120, 1e-4))));
    assertEquals(1, pairs(LEVEL, new Line(p(50, 0.9e-9), p(200, 5e-8))));
  }

  @ParameterizedTest
  @ValueSource(doubles = {10, 75, 140, 260})
  void aTouchIsOnePlace(double degrees) {
    Vector out = Vector.at(Angle.degrees(degrees));
    Point at = ORIGIN.plus(out.times(50));
    Line tangent = new Line(at.plus(out.left().times(-60)), at.plus(out.left().times(40)));
    List<SegmentCrossings.Meeting> found = SegmentCrossings.of(CIRCLE, tangent);
    assertEquals(1, found.size());
    assertEquals(degrees / 360, found.get(0).s(), 1e-6);
    assertEquals(0.6, found.get(0).t(), 1e-6);
    int few = pairs(CIRCLE, tangent);
    assertTrue(few > 10 && few < 300, few + " pairs");
    assertEquals(0, SegmentCrossings.of(CIRCLE, tangent.map(off(out, 1e-7))).size());
  }

  private static Transform off(Vector out, double by) {
    return Transform.translation(out.times(by));
  }

  @Test
  void twoTouchesAreTwoPlaces() {
    Arc left = Arc.of(p(25, 20), Length.mm(20), Angle.degrees(180), Angle.degrees(180));
    Arc right = Arc.of(p(75, 20), Length.mm(20), Angle.degrees(180), Angle.degrees(180));
    assertEquals("[0.5 0.25]", meetings(left, LEVEL).toString());
    assertEquals("[0.5 0.75]", meetings(right, LEVEL).toString());
    List<Crossing> found =
        Curve.of(left, new Line(p(45, 20), p(55, 20)), right).intersections(Curve.of(LEVEL));
    assertEquals(2, found.size());
    assertEquals(25, found.get(0).alongOther().toMm(), 1e-3);
    assertEquals(75, found.get(1).alongOther().toMm(), 1e-3);
  }

  /** x = 2u^3 - u, y = u^2: it meets itself on the axis where u^2 = 1/2. */
  @Test
  void aLoopMeetsItselfOnce() {
    // u from -1 to 1: Bernstein coefficients of both polynomials
    Cubic loop = new Cubic(p(-1, 1), p(7 / 3.0, -1 / 3.0), p(-7 / 3.0, -1 / 3.0), p(1, 1));
    List<Crossing> found = Curve.of(loop).selfCrossings();
    assertEquals(1, found.size());
    assertEquals(0, found.get(0).point().gap(p(0, 0.5)), 1e-14);
    assertEquals(loop.lengthTo((1 - Math.sqrt(0.5)) / 2).toMm(), found.get(0).along().toMm(), 1e-9);
    assertEquals(
        loop.lengthTo((1 + Math.sqrt(0.5)) / 2).toMm(), found.get(0).alongOther().toMm(), 1e-9);
    for (SegmentCrossings.Meeting meeting : SegmentCrossings.within(loop)) {
      boolean joint = meeting.s() == meeting.t();
      assertEquals(joint ? meeting.s() : 1 - meeting.t(), meeting.s(), 1e-14);
    }
    Cubic arch = new Cubic(p(0, 0), p(0, 90), p(90, 90), p(90, 0));
    assertTrue(Curve.of(arch).selfCrossings().isEmpty());
  }
}
