package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class UnnamedTracingProperties {
  private static List<Point> whole(long seed, double wander) {
    Vest.Pencil pencil = new Vest.Pencil(seed, wander, 8);
    List<Point> round = new ArrayList<>();
    Vest.whole().forEach(stroke -> round.addAll(pencil.trace(stroke.curve())));
    return round;
  }

  private static UnnamedTracing traced(List<Point> round) {
    return UnnamedTracing.of("front", Extent.WHOLE, Polyline.of(round));
  }

  @Property(tries = 25)
  void itDoesNotMatterWhereThePencilWasSetDownOrWhichWayItWent(
      @ForAll @LongRange(min = 0, max = 10_000) long seed,
      @ForAll @DoubleRange(min = 0, max = 2) double wander,
      @ForAll @IntRange(min = 1, max = 300) int start) {
    List<Point> round = whole(seed, wander);
    List<TracedStretch> stretches = traced(round).stretches();
    List<Point> elsewhere = new ArrayList<>(round);
    Collections.rotate(elsewhere, start);
    assertEquals(stretches, traced(elsewhere).stretches());
    Collections.reverse(elsewhere);
    assertEquals(stretches, traced(elsewhere).stretches());
  }

  @Property(tries = 25)
  void thePieceMayLieAnywhereEitherSideUp(
      @ForAll @LongRange(min = 0, max = 10_000) long seed,
      @ForAll @DoubleRange(min = -180, max = 180) double degrees,
      @ForAll @DoubleRange(min = -2000, max = 2000) double x,
      @ForAll boolean turned) {
    List<Point> round = whole(seed, 1);
    Transform lying =
        Transform.rotation(new Point(0, 300), Angle.degrees(degrees))
            .then(Transform.translation(new Vector(x, -x / 3)));
    Transform placed = turned ? Transform.mirrorInFold().then(lying) : lying;
    List<Point> elsewhere = round.stream().map(placed::apply).collect(Collectors.toList());
    assertEquals(corners(round, traced(round)), corners(elsewhere, traced(elsewhere)));
  }

  /** The places, among the points of the tracing, where a stretch begins or ends. */
  private static List<Integer> corners(List<Point> round, UnnamedTracing traced) {
    return traced.stretches().stream()
        .flatMap(stretch -> Stream.of(stretch.from(), stretch.to()))
        .map(round::indexOf)
        .sorted()
        .collect(Collectors.toList());
  }

  @Property(tries = 60)
  void everyPointBelongsToAnEdge(
      @ForAll @LongRange(min = 0, max = 10_000) long seed,
      @ForAll @DoubleRange(min = 0, max = 3) double wander) {
    List<Point> round = whole(seed, wander);
    List<Point> named = new ArrayList<>();
    for (TracedStretch stretch : traced(round).stretches()) {
      for (int i = 0; i < stretch.points().size(); i++) {
        named.add(stretch.points().point(i));
      }
    }
    assertEquals(
        round.stream().distinct().collect(Collectors.toSet()),
        named.stream().distinct().collect(Collectors.toSet()));
  }
}
