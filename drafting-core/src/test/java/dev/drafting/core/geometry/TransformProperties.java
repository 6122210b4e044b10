package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class TransformProperties {
  @Provide
  Arbitrary<Transform> motions() {
    return Shapes.motions();
  }

  @Provide
  Arbitrary<Point> points() {
    return Shapes.points();
  }

  @Property(tries = 200)
  void oneAfterTheOtherIsBothInOne(
      @ForAll("motions") Transform first,
      @ForAll("motions") Transform second,
      @ForAll("points") Point point) {
    Transform both = first.then(second).then(Transform.scaling(1.5));
    Point there = Transform.scaling(1.5).apply(second.apply(first.apply(point)));
    assertTrue(both.apply(point).gap(there) < 1e-9);
    assertEquals(1.5, both.scale(), 1e-12);
    assertEquals(
        first.reversesOrientation() != second.reversesOrientation(), both.reversesOrientation());
  }

  @Property(tries = 200)
  void theInverseTakesEverythingBack(
      @ForAll("motions") Transform motion, @ForAll("points") Point point) {
    Transform scaled = motion.then(Transform.scaling(0.3));
    assertTrue(scaled.inverse().apply(scaled.apply(point)).gap(point) < 1e-9);
  }

  @Property(tries = 200)
  void waysAreTurnedButNotMoved(
      @ForAll("motions") Transform motion,
      @ForAll("points") Point from,
      @ForAll("points") Point to) {
    Vector way = motion.apply(to).minus(motion.apply(from));
    assertTrue(way.minus(motion.apply(to.minus(from))).norm() < 1e-9);
    assertEquals(from.gap(to), way.norm(), 1e-9);
  }

  @Property(tries = 200)
  void aLineStaysWhereItIsMirroredIn(
      @ForAll("points") Point from, @ForAll("points") Point to, @ForAll("points") Point point) {
    Assume.that(from.gap(to) > 1);
    Transform mirror = Transform.mirrorIn(from, to);
    assertTrue(mirror.apply(from).gap(from) < 1e-9);
    assertTrue(mirror.apply(to).gap(to) < 1e-9);
    Point image = mirror.apply(point);
    assertTrue(mirror.apply(image).gap(point) < 1e-9);
    Vector line = to.minus(from).unit();
    assertEquals(0, image.minus(point).dot(line), 1e-9);
    assertEquals(line.cross(point.minus(from)), -line.cross(image.minus(from)), 1e-9);
    assertTrue(mirror.reversesOrientation());
  }

  @Example
  void theFoldAndQuarterTurnsAreExact() {
    assertEquals(p(-0.1, 0.7), Transform.mirrorInFold().apply(p(0.1, 0.7)));
    Transform quarter = Transform.rotation(Shapes.ORIGIN, Angle.degrees(90));
    assertEquals(p(-0.7, 0.1), quarter.apply(p(0.1, 0.7)));
    assertEquals(
        p(-0.1, -0.7), Transform.rotation(Shapes.ORIGIN, Angle.degrees(-180)).apply(p(0.1, 0.7)));
    assertEquals(p(5, 6), Transform.rotation(p(5, 6), Angle.degrees(33)).apply(p(5, 6)));
  }

  @Example
  void refusals() {
    assertThrows(DraftingException.class, () -> Transform.scaling(0));
    assertThrows(DraftingException.class, () -> Transform.scaling(-1));
    assertThrows(DraftingException.class, () -> Transform.scaling(Double.NaN));
    assertThrows(DraftingException.class, () -> Transform.scaling(Double.POSITIVE_INFINITY));
    assertThrows(DraftingException.class, () -> Transform.mirrorIn(p(1, 1), p(1, 1)));
  }

  @Example
  void isAValue() {
    Transform move = Transform.translation(new Vector(3, 4));
    assertEquals(move, Transform.identity().then(move));
    assertEquals(move, SerialCopy.of(move));
    assertEquals(move.hashCode(), Transform.identity().then(move).hashCode());
    assertFalse(move.equals(Transform.identity()));
    assertEquals("Transform(turned 0°, scaled 1, moved (3, 4))", move.toString());
    assertEquals(
        "Transform(mirrored, turned 180°, scaled 1, moved (0, 0))",
        Transform.mirrorInFold().toString());
  }
}
