package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.sample.RandomGarments;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Laws of the offset. */
class OffsetProperties {
  private static final double TOLERANCE = 0.01;

  /** Garment-like outlines always have a result at these distances. */
  private static OffsetResult offset(List<OffsetEdge> edges) {
    return Offset.of(edges).result();
  }

  private static List<OffsetEdge> at(List<OffsetEdge> edges, double distance) {
    return edges.stream()
        .map(edge -> OffsetEdge.of(edge.name(), edge.curve(), Length.mm(distance)))
        .toList();
  }

  private static List<OffsetEdge> mapped(List<OffsetEdge> edges, Transform transform) {
    return edges.stream()
        .map(edge -> OffsetEdge.of(edge.name(), edge.curve().map(transform), edge.distance()))
        .toList();
  }

  /** A convex outline: points on an ellipse, joined by lines, arcs or cubics that bulge outward. */
  private static List<OffsetEdge> convex(int seed, double distance) {
    var random = new java.util.Random(seed);
    int n = 3 + random.nextInt(5);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double turn = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / n;
      points.add(new Point(120 * Math.cos(turn), 80 * Math.sin(turn)));
    }
    List<OffsetEdge> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % n);
      Vector out = Parallels.outward(b.minus(a));
      Segment side =
          switch (random.nextInt(3)) {
            case 0 -> new dev.drafting.core.geometry.Line(a, b);
            case 1 ->
                dev.drafting.core.geometry.Arc.through(a, a.midpoint(b).plus(out.times(0.02)), b);
            default ->
                new dev.drafting.core.geometry.Cubic(
                    a,
                    a.between(b, 0.3).plus(out.times(0.02)),
                    a.between(b, 0.7).plus(out.times(0.03)),
                    b);
          };
      edges.add(Outlines.edge("edge " + i, distance, side));
    }
    return edges;
  }

  private static boolean isConvex(List<OffsetEdge> edges) {
    for (int i = 0; i < edges.size(); i++) {
      Curve one = edges.get(i).curve();
      Curve two = edges.get((i + 1) % edges.size()).curve();
      if (one.directionAt(one.length()).cross(two.directionAt(Length.ZERO)) < 0) {
        return false;
      }
    }
    return true;
  }

  /** Steiner's formulas for parallel bodies of convex sets (Jakob Steiner, 1840). */
  @Property(tries = 200)
  void steiner(@ForAll int seed, @ForAll @DoubleRange(min = 0.1, max = 40) double d) {
    List<OffsetEdge> edges = convex(seed, d);
    net.jqwik.api.Assume.that(isConvex(edges));
    Offset rounded = Offset.of(edges);
    for (int i = 0; i < edges.size(); i++) {
      rounded = rounded.withCorner(i, CornerTreatment.round());
    }
    Curve outline = Offset.of(at(edges, 0)).result().outline();
    double length = outline.length().toMm();
    double area = outline.areaSquareMm();
    Curve result = rounded.result().outline();
    double slack = TOLERANCE * length * 1.5;
    assertEquals(area + length * d + Math.PI * d * d, result.areaSquareMm(), slack);
    assertEquals(length + 2 * Math.PI * d, result.length().toMm(), TOLERANCE);
  }

  @Property(tries = 150)
  void edgePartsLieAtTheirDistanceFromTheirOwnEdge(@ForAll @IntRange(max = 1_000_000) int seed) {
    List<OffsetEdge> edges = new RandomGarments(seed).any();
    OffsetResult result = offset(edges);
    OwnDistance.check(edges, result, TOLERANCE);
  }

  @Property(tries = 60)
  void nothingDependsOnTheFirstEdge(
      @ForAll @IntRange(max = 1_000_000) int seed, @ForAll @IntRange(min = 1, max = 3) int by) {
    List<OffsetEdge> edges = new RandomGarments(seed).any();
    List<OffsetEdge> turned = new ArrayList<>(edges);
    Collections.rotate(turned, by);
    OffsetResult one = offset(edges);
    OffsetResult two = offset(turned);
    sameMeasures(edges, one, two, 1, 1e-6);
  }

  @Property(tries = 60)
  void nothingDependsOnWhereTheOutlineLies(
      @ForAll @IntRange(max = 1_000_000) int seed,
      @ForAll @DoubleRange(max = 360) double degrees,
      @ForAll @DoubleRange(min = -500, max = 500) double dx) {
    List<OffsetEdge> edges = new RandomGarments(seed).any();
    Transform moved =
        Transform.rotation(new Point(10, 20), Angle.degrees(degrees))
            .then(Transform.translation(new Vector(dx, -dx / 2)));
    sameMeasures(edges, offset(edges), offset(mapped(edges, moved)), 1, 1e-6);
  }

  @Property(tries = 60)
  void theMirrorImageHasTheMirroredOffset(@ForAll @IntRange(max = 1_000_000) int seed) {
    List<OffsetEdge> edges = new RandomGarments(seed).any();
    List<OffsetEdge> mirrored = new ArrayList<>();
    for (OffsetEdge edge : edges) {
      mirrored.add(
          0, OffsetEdge.of(edge.name(), edge.curve().mirrored().reversed(), edge.distance()));
    }
    sameMeasures(edges, offset(edges), offset(mirrored), 1, 2 * TOLERANCE);
  }

  @Property(tries = 60)
  void scalingOutlineDistancesAndToleranceScalesTheResult(
      @ForAll @IntRange(max = 1_000_000) int seed, @ForAll @IntRange(min = -2, max = 2) int power) {
    double factor = Math.pow(2, power);
    List<OffsetEdge> edges = new RandomGarments(seed).any();
    List<OffsetEdge> scaled =
        edges.stream()
            .map(
                edge ->
                    OffsetEdge.of(
                        edge.name(),
                        edge.curve().map(Transform.scaling(factor)),
                        edge.distance().times(factor)))
            .toList();
    OffsetResult big = Offset.of(scaled).withTolerance(Length.mm(0.01 * factor)).result();
    sameMeasures(edges, offset(edges), big, factor, 1e-5);
  }

  private static void sameMeasures(
      List<OffsetEdge> edges, OffsetResult one, OffsetResult two, double factor, double within) {
    double length = one.outline().length().toMm();
    assertEquals(length * factor, two.outline().length().toMm(), within * factor * 4);
    assertEquals(
        one.outline().areaSquareMm() * factor * factor,
        two.outline().areaSquareMm(),
        within * factor * factor * length);
    for (OffsetEdge edge : edges) {
      assertEquals(
          one.length(edge.name()).toMm() * factor,
          two.length(edge.name()).toMm(),
          within * factor * 4,
          edge.name());
    }
  }

  @Property(tries = 60)
  void thereAndBackIsWhereItWas(
      @ForAll @IntRange(max = 1_000_000) int seed,
      @ForAll @DoubleRange(min = 1, max = 12) double d) {
    List<OffsetEdge> edges = at(new RandomGarments(seed).halfBodice(), d);
    OffsetResult out = offset(edges);
    net.jqwik.api.Assume.that(out.trimmings().isEmpty());
    net.jqwik.api.Assume.that(out.parts().size() == edges.size());
    List<OffsetEdge> back = new ArrayList<>();
    for (OffsetPart part : out.parts()) {
      back.add(OffsetEdge.of(part.sourceName(), part.curve(), Length.mm(-d)));
    }
    OffsetResult home = offset(back);
    Curve start = offset(at(edges, 0)).outline();
    assertEquals(
        start.areaSquareMm(), home.outline().areaSquareMm(), 3 * TOLERANCE * start.length().toMm());
    for (OffsetEdge edge : edges) {
      var line = dev.drafting.core.geometry.JtsBridge.toJts(edge.curve(), Length.mm(1e-4));
      for (OffsetPart part : home.parts(edge.name())) {
        for (int i = 0; i <= 8; i++) {
          Point point = part.curve().pointAt(part.curve().length().times(i / 8.0));
          double off = line.distance(OwnDistance.point(point));
          assertTrue(off < 3 * TOLERANCE, edge.name() + " is off by " + off);
        }
      }
    }
  }

  @Property(tries = 60)
  void aWiderAllowanceContainsANarrowerOne(
      @ForAll @IntRange(max = 1_000_000) int seed,
      @ForAll @DoubleRange(min = -15, max = 30) double d,
      @ForAll @DoubleRange(min = 1, max = 5) double more) {
    List<OffsetEdge> edges = new RandomGarments(seed).halfBodice();
    var inner = OwnDistance.polygon(offset(at(edges, d)));
    var outer = OwnDistance.polygon(offset(at(edges, d + more)));
    assertTrue(outer.buffer(2 * TOLERANCE).contains(inner));
  }
}
