package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

class TruingProperties {
  private static final double SAME_MM = 1e-6;

  private static TruedPiece trued(Tracing tracing) {
    return Truing.of(tracing).result();
  }

  private static void assertSamePiece(TruedPiece one, TruedPiece other) {
    for (String name : Vest.EDGES) {
      var here = one.piece().edge(name).curve();
      var there = other.piece().edge(name).curve();
      assertEquals(here.segments().size(), there.segments().size(), name);
      assertTrue(here.start().distanceTo(there.start()).toMm() < SAME_MM, name);
      assertTrue(here.end().distanceTo(there.end()).toMm() < SAME_MM, name);
      assertTrue(Vest.rms(here, there) < SAME_MM, () -> name + " off by " + Vest.rms(here, there));
    }
  }

  @Property(tries = 15)
  void orderAndDirectionOfStrokesChangeNoBit(
      @ForAll @LongRange(min = 0, max = 10_000) long seed,
      @ForAll @DoubleRange(min = 0, max = 2) double wander) {
    Tracing half = new Vest.Pencil(seed, wander, 12).half();
    assertEquals(trued(half), trued(Vest.shuffled(half, seed)));
    Tracing whole = new Vest.Pencil(seed, wander, 15).whole(Transform.identity());
    assertEquals(trued(whole), trued(Vest.shuffled(whole, seed)));
  }

  @Property(tries = 15)
  void aWholeTracingMayLieAnywhere(
      @ForAll @LongRange(min = 0, max = 10_000) long seed,
      @ForAll @DoubleRange(min = -80, max = 80) double degrees,
      @ForAll @DoubleRange(min = -3000, max = 3000) double x,
      @ForAll @DoubleRange(min = -3000, max = 3000) double y) {
    Transform lying =
        Transform.rotation(new Point(0, 300), Angle.degrees(degrees))
            .then(Transform.translation(new Vector(x, y)));
    Vest.Pencil here = new Vest.Pencil(seed, 1, 15);
    Vest.Pencil there = new Vest.Pencil(seed, 1, 15);
    assertSamePiece(trued(here.whole(Transform.identity())), trued(there.whole(lying)));
  }

  @Property(tries = 15)
  void theOtherSideUpGivesTheSamePiece(@ForAll @LongRange(min = 0, max = 10_000) long seed) {
    Tracing tracing = new Vest.Pencil(seed, 1, 15).whole(Transform.identity());
    assertSamePiece(trued(tracing), trued(Vest.map(tracing, Transform.mirrorInFold())));
  }

  @Property(tries = 15)
  void aHalfMayLieHigherOrLower(
      @ForAll @LongRange(min = 0, max = 10_000) long seed,
      @ForAll @DoubleRange(min = -3000, max = 3000) double y) {
    Transform up = Transform.translation(new Vector(0, y));
    Tracing tracing = new Vest.Pencil(seed, 1, 12).half();
    TruedPiece moved = trued(Vest.map(tracing, up));
    TruedPiece here = trued(tracing);
    for (String name : Vest.EDGES) {
      var expected = here.piece().edge(name).curve().map(up);
      assertTrue(Vest.rms(moved.piece().edge(name).curve(), expected) < SAME_MM, name);
    }
  }

  @Property(tries = 10)
  void aSymmetricalTracingHasNoLopsidedness(@ForAll @LongRange(min = 0, max = 10_000) long seed) {
    Tracing half = new Vest.Pencil(seed, 1, 12).half();
    TruedPiece whole = trued(Vest.both(half));
    for (Lopsidedness sides : whole.report().lopsidedness()) {
      assertTrue(sides.largest().toMm() < SAME_MM, sides::toString);
    }
  }

  @Property(tries = 10)
  void theSameTracingGivesTheSameBytes(@ForAll @LongRange(min = 0, max = 10_000) long seed) {
    Tracing tracing = new Vest.Pencil(seed, 1.5, 15).whole(Transform.identity());
    assertEquals(trued(tracing), trued(tracing));
    assertEquals(trued(tracing).toString(), trued(tracing).toString());
  }
}
