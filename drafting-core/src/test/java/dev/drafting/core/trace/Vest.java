package dev.drafting.core.trace;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;

/**
 * A vest known exactly, and a pencil that wanders about it: the truth against which truing is
 * measured. Invented data.
 */
final class Vest {
  static final List<String> EDGES = List.of("hem", "side", "armhole", "shoulder", "neck");

  private Vest() {}

  /** The right half, counter-clockwise from the lower end of the fold. */
  static Map<String, Curve> half() {
    Map<String, Curve> edges = new LinkedHashMap<>();
    edges.put("hem", cubic(0, 0, 80, 0, 160, 8, 238, 34));
    edges.put("side", Curve.line(new Point(238, 34), new Point(226, 405)));
    edges.put("armhole", cubic(226, 405, 165, 420, 160, 520, 168, 628));
    edges.put("shoulder", Curve.line(new Point(168, 628), new Point(96, 657)));
    edges.put("neck", cubic(96, 657, 92, 560, 60, 520, 0, 520));
    return edges;
  }

  /** One true edge of the right half. */
  static Curve edge(String name) {
    return Objects.requireNonNull(half().get(name), name);
  }

  static Curve cubic(double... c) {
    return Curve.of(
        new Cubic(
            new Point(c[0], c[1]),
            new Point(c[2], c[3]),
            new Point(c[4], c[5]),
            new Point(c[6], c[7])));
  }

  /** Hem and neck across the fold, the other edges right and left, counter-clockwise. */
  static List<Stroke> whole() {
    List<Stroke> strokes = new ArrayList<>();
    strokes.add(new Stroke("hem", across(edge("hem"))));
    for (String name : List.of("side", "armhole", "shoulder")) {
      strokes.add(new Stroke(name, edge(name)));
    }
    Curve neck = edge("neck");
    strokes.add(new Stroke("neck", neck.then(neck.mirrored().reversed())));
    for (String name : List.of("shoulder", "armhole", "side")) {
      strokes.add(new Stroke(name, edge(name).mirrored().reversed()));
    }
    return strokes;
  }

  private static Curve across(Curve hem) {
    return hem.mirrored().reversed().then(hem);
  }

  /** A true edge to be traced. */
  record Stroke(String name, Curve curve) {
    Stroke map(Transform transform) {
      return new Stroke(name, curve.map(transform));
    }

    Stroke reversed() {
      return new Stroke(name, curve.reversed());
    }
  }

  /** A pencil that wanders square to the edge, normally distributed. */
  static final class Pencil {
    private final Random random;
    private final double wander;
    private final double spacing;

    Pencil(long seed, double wander, double spacing) {
      this.random = new Random(seed);
      this.wander = wander;
      this.spacing = spacing;
    }

    List<Point> trace(Curve edge) {
      double length = edge.length().toMm();
      int steps = (int) Math.max(2, Math.rint(length / spacing));
      List<Point> points = new ArrayList<>();
      for (int i = 0; i <= steps; i++) {
        Length along = Length.mm(length * i / steps);
        Vector square = edge.directionAt(along).left();
        points.add(edge.pointAt(along).plus(square.times(wander * random.nextGaussian())));
      }
      return points;
    }

    Tracing half() {
      List<TracedEdge> edges = new ArrayList<>();
      Vest.half().forEach((name, curve) -> edges.add(TracedEdge.of(name, trace(curve))));
      return Tracing.of("front", Extent.HALF_ON_FOLD, edges);
    }

    Tracing whole(Transform lying) {
      List<TracedEdge> edges = new ArrayList<>();
      for (Stroke stroke : Vest.whole()) {
        edges.add(TracedEdge.of(stroke.name(), trace(stroke.curve().map(lying))));
      }
      return Tracing.of("front", Extent.WHOLE, edges);
    }
  }

  /** The same strokes in another order, some of them drawn the other way. */
  static Tracing shuffled(Tracing tracing, long seed) {
    Random random = new Random(seed);
    List<TracedEdge> edges = new ArrayList<>();
    for (TracedEdge edge : tracing.edges()) {
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < edge.points().size(); i++) {
        points.add(edge.points().point(i));
      }
      if (random.nextBoolean()) {
        Collections.reverse(points);
      }
      edges.add(TracedEdge.of(edge.name(), points));
    }
    Collections.shuffle(edges, random);
    return Tracing.of(tracing.piece(), tracing.extent(), edges);
  }

  /** The same tracing lying elsewhere. */
  static Tracing map(Tracing tracing, Transform transform) {
    List<TracedEdge> edges = new ArrayList<>();
    for (TracedEdge edge : tracing.edges()) {
      edges.add(TracedEdge.of(edge.name(), edge.points().map(transform)));
    }
    return Tracing.of(tracing.piece(), tracing.extent(), edges);
  }

  /** A half and its mirror image, every stroke twice. */
  static Tracing both(Tracing half) {
    List<TracedEdge> edges = new ArrayList<>(half.edges());
    edges.addAll(map(half, Transform.mirrorInFold()).edges());
    return Tracing.of(half.piece(), Extent.WHOLE, edges);
  }

  /** RMS distance of the trued edge from the true one, in mm, measured every 2 mm. */
  static double rms(Curve trued, Curve truth) {
    int steps = (int) Math.ceil(trued.length().toMm() / 2);
    double squares = 0;
    for (int i = 0; i <= steps; i++) {
      Point point = trued.pointAt(trued.length().times((double) i / steps));
      double off = truth.nearest(point).distance().toMm();
      squares += off * off;
    }
    return Math.sqrt(squares / (steps + 1));
  }
}
