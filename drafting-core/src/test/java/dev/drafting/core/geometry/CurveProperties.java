package dev.drafting.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws that hold for every curve, whatever it is made of. */
class CurveProperties {
  @Provide
  Arbitrary<Curve> curves() {
    return Shapes.curves();
  }

  @Provide
  Arbitrary<Cubic> cubics() {
    return Shapes.cubics();
  }

  @Provide
  Arbitrary<Curve> outlines() {
    return Shapes.outlines();
  }

  @Provide
  Arbitrary<Transform> motions() {
    return Shapes.motions();
  }

  private static double mm(Curve curve) {
    return curve.length().toMm();
  }

  @Property(tries = 200)
  void lengthsAddUpUnderSplitting(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    Length cut = curve.length().times(share);
    List<Curve> parts = curve.split(cut);
    assertEquals(2, parts.size());
    assertEquals(cut.toMm(), mm(parts.get(0)), 2e-9 * mm(curve));
    assertEquals(mm(curve), mm(parts.get(0)) + mm(parts.get(1)), 2e-9 * mm(curve));
    assertEquals(parts.get(0).end(), parts.get(1).start());
    assertEquals(curve.start(), parts.get(0).start());
    assertEquals(curve.end(), parts.get(1).end());
  }

  @Property(tries = 200)
  void turningAddsUpUnderSplitting(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    List<Curve> parts = curve.split(curve.length().times(share));
    Vector arrival = last(parts.get(0)).directionAt(1);
    Vector departure = parts.get(1).segments().get(0).directionAt(0);
    double sum =
        parts.get(0).turning().toRadians()
            + arrival.turnInRadians(departure)
            + parts.get(1).turning().toRadians();
    if (curve.isClosed()) {
      sum += last(curve).directionAt(1).turnInRadians(curve.segments().get(0).directionAt(0));
    }
    assertEquals(curve.turning().toRadians(), sum, 1e-6);
  }

  /** Straight back is half a turn to the left whichever way one comes: no law holds there. */
  private static boolean turnsStraightBack(Curve curve) {
    Vector arrival = last(curve).directionAt(1);
    for (Segment segment : curve.segments()) {
      if (Math.abs(arrival.turnInRadians(segment.directionAt(0))) > Math.PI - 1e-6) {
        return true;
      }
      Vector chord = segment.end().minus(segment.start());
      if (segment instanceof Cubic cubic
          && Math.abs(chord.cross(cubic.control1().minus(cubic.start()))) < 1e-6
          && Math.abs(chord.cross(cubic.control2().minus(cubic.start()))) < 1e-6) {
        return true;
      }
      arrival = segment.directionAt(1);
    }
    return false;
  }

  private static Segment last(Curve curve) {
    return curve.segments().get(curve.segments().size() - 1);
  }

  @Property(tries = 200)
  void mirroringTwiceIsTheSameToTheLastBit(@ForAll("curves") Curve curve) {
    assertEquals(curve, curve.mirrored().mirrored());
    assertEquals(curve.hashCode(), curve.mirrored().mirrored().hashCode());
  }

  @Property(tries = 200)
  void everyPointOfTheMirrorImageIsAMirroredPointToTheLastBit(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(min = 0, max = 1) double t) {
    Curve mirrored = curve.mirrored();
    assertEquals(curve.length(), mirrored.length());
    for (int i = 0; i < curve.segments().size(); i++) {
      assertEquals(
          curve.segments().get(i).pointAt(t).mirrored(), mirrored.segments().get(i).pointAt(t));
    }
    Length along = curve.length().times(t);
    assertEquals(curve.pointAt(along).mirrored(), mirrored.pointAt(along));
  }

  @Property(tries = 200)
  void reversingTwiceIsTheSameToTheLastBit(@ForAll("curves") Curve curve) {
    assertEquals(curve, curve.reversed().reversed());
  }

  @Property(tries = 200)
  void nothingDependsOnDirection(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Assume.that(!turnsStraightBack(curve));
    Curve back = curve.reversed();
    assertEquals(mm(curve), mm(back), 1e-10 * mm(curve));
    assertEquals(-curve.turning().toRadians(), back.turning().toRadians(), 1e-9);
    Length along = curve.length().times(share);
    Point there = curve.pointAt(along);
    Point here = back.pointAt(back.length().minus(along).max(Length.ZERO));
    assertTrue(there.gap(here) <= 3e-9 * mm(curve), there + " and " + here);
  }

  @Property(tries = 200)
  void nothingDependsOnWhereItLies(
      @ForAll("curves") Curve curve,
      @ForAll("motions") Transform motion,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Assume.that(!turnsStraightBack(curve));
    Curve moved = curve.map(motion);
    assertEquals(mm(curve), mm(moved), 1e-9 * mm(curve));
    double sign = motion.reversesOrientation() ? -1 : 1;
    assertEquals(sign * curve.turning().toRadians(), moved.turning().toRadians(), 1e-9);
    Point there = motion.apply(curve.pointAt(curve.length().times(share)));
    Point here = moved.pointAt(moved.length().times(share));
    assertTrue(there.gap(here) <= 3e-9 * mm(curve), there + " and " + here);
  }

  @Property(tries = 200)
  void scalingScalesLengthAndArea(
      @ForAll("outlines") Curve outline, @ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
    Curve scaled = outline.map(Transform.scaling(scale));
    assertEquals(scale * mm(outline), mm(scaled), 1e-9 * mm(scaled));
    double area = outline.areaSquareMm();
    assertEquals(scale * scale * area, scaled.areaSquareMm(), 1e-9 * scale * scale * area);
  }

  @Property(tries = 200)
  void outlinesHoldAreaAndTurnOnce(
      @ForAll("outlines") Curve outline, @ForAll("motions") Transform motion) {
    assertTrue(outline.areaSquareMm() > 0);
    assertEquals(2 * Math.PI, outline.turning().toRadians(), 1e-9);
    assertEquals(-2 * Math.PI, outline.reversed().turning().toRadians(), 1e-9);
    double area = outline.areaSquareMm();
    assertEquals(-area, outline.reversed().areaSquareMm(), 1e-12 * area);
    assertEquals(-area, outline.mirrored().areaSquareMm(), 1e-12 * area);
    double sign = motion.reversesOrientation() ? -1 : 1;
    assertEquals(sign * area, outline.map(motion).areaSquareMm(), 1e-10 * area);
  }

  @Property(tries = 200)
  void nothingDependsOnTheStartOfAClosedCurve(@ForAll("outlines") Curve outline) {
    List<Segment> segments = new ArrayList<>(outline.segments());
    segments.add(segments.remove(0));
    Curve turned = Curve.of(segments);
    assertEquals(mm(outline), mm(turned), 1e-12 * mm(outline));
    assertEquals(outline.turning().toRadians(), turned.turning().toRadians(), 1e-9);
    assertEquals(outline.areaSquareMm(), turned.areaSquareMm(), 1e-12 * outline.areaSquareMm());
  }

  @Property(tries = 200)
  void partsOverTheStartOfAClosedCurveAreTheRestOfTheOtherPart(
      @ForAll("outlines") Curve outline,
      @ForAll @DoubleRange(min = 0.05, max = 0.45) double first,
      @ForAll @DoubleRange(min = 0.55, max = 0.95) double second) {
    Length from = outline.length().times(first);
    Length to = outline.length().times(second);
    Curve part = outline.between(from, to);
    Curve rest = outline.between(to, from);
    assertEquals(mm(outline), mm(part) + mm(rest), 2e-9 * mm(outline));
    Curve whole = part.then(rest);
    assertTrue(whole.isClosed());
    assertEquals(outline.areaSquareMm(), whole.areaSquareMm(), 1e-9 * outline.areaSquareMm());
    assertEquals(2 * Math.PI, whole.turning().toRadians(), 1e-6);
  }

  @Property(tries = 200)
  void theParameterAtALengthIsWhereThatLengthEnds(
      @ForAll("cubics") Cubic cubic, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Length along = cubic.length().times(share);
    double t = cubic.parameterAt(along);
    assertEquals(along.toMm(), cubic.lengthTo(t).toMm(), 1e-9 * cubic.length().toMm());
  }

  @Property(tries = 200)
  void lengthIsNoLessThanTheChordAndNoMoreThanTheHandles(@ForAll("cubics") Cubic cubic) {
    double length = cubic.length().toMm();
    double polygon =
        cubic.start().gap(cubic.control1())
            + cubic.control1().gap(cubic.control2())
            + cubic.control2().gap(cubic.end());
    assertTrue(length >= cubic.start().gap(cubic.end()) * (1 - 1e-12));
    assertTrue(length <= polygon * (1 + 1e-12));
  }

  /**
   * A second implementation: composite Gauss-Legendre with three nodes on 4,000 equal intervals.
   * Beside a cusp, where the speed nearly vanishes, it is not exact enough to judge.
   */
  @Property(tries = 100)
  void lengthAgreesWithBruteForce(@ForAll("cubics") Cubic cubic) {
    int intervals = 4000;
    double root = Math.sqrt(0.6);
    double sum = 0;
    double slowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < intervals; i++) {
      double middle = (i + 0.5) / intervals;
      double half = 0.5 / intervals;
      double speed = cubic.derivativeAt(middle).norm();
      sum += 5 * cubic.derivativeAt(middle - root * half).norm();
      sum += 8 * speed;
      sum += 5 * cubic.derivativeAt(middle + root * half).norm();
      slowest = Math.min(slowest, speed);
    }
    double brute = sum / 18 / intervals;
    Assume.that(slowest > brute / 50);
    assertEquals(brute, cubic.length().toMm(), 1e-9 * brute);
  }

  /** The turning agrees with many small turns of the direction. */
  @Property(tries = 100)
  void turningAgreesWithManySmallTurns(@ForAll("cubics") Cubic cubic) {
    int steps = 20_000;
    double sum = 0;
    double sharpest = 0;
    Vector before = cubic.directionAt(0);
    for (int i = 1; i <= steps; i++) {
      Vector after = cubic.directionAt(i / (double) steps);
      double turn = before.turnInRadians(after);
      sharpest = Math.max(sharpest, Math.abs(turn));
      sum += turn;
      before = after;
    }
    Assume.that(sharpest < 1);
    assertEquals(sum, cubic.turning().toRadians(), 1e-9);
  }

  @Property(tries = 200)
  void directionIsTheLimitOfChords(
      @ForAll("cubics") Cubic cubic, @ForAll @DoubleRange(min = 0, max = 0.99) double t) {
    Assume.that(cubic.derivativeAt(t).norm() > 1);
    Vector chord = cubic.pointAt(t + 1e-7).minus(cubic.pointAt(t)).unit();
    assertTrue(Math.abs(chord.turnInRadians(cubic.directionAt(t))) < 1e-2);
  }

  @Property(tries = 200)
  void boundsHoldTheCurveAndTouchIt(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(min = 0, max = 1) double t) {
    Box box = curve.bounds();
    Box room = box.widened(Length.mm(1e-9));
    Box seen = Box.of(curve.start(), curve.end());
    for (Segment segment : curve.segments()) {
      assertTrue(room.contains(segment.pointAt(t)));
      for (int i = 0; i <= 2000; i++) {
        Point at = segment.pointAt(i / 2000.0);
        seen = seen.union(Box.of(at, at));
      }
    }
    assertTrue(box.minX() >= seen.minX() - 1e-2 && box.maxX() <= seen.maxX() + 1e-2);
    assertTrue(box.minY() >= seen.minY() - 1e-2 && box.maxY() <= seen.maxY() + 1e-2);
  }

  @Property(tries = 200)
  void storedCurvesComeBackEqualAndKeepTheirAnswers(@ForAll("curves") Curve curve) {
    Length before = curve.length();
    Object back = SerialCopy.of(curve);
    assertEquals(curve, back);
    assertEquals(before, ((Curve) back).length());
    assertTrue(curve.toString().length() < 1000);
  }
}
