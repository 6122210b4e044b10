package dev.drafting.core.trace;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * Tracings of one piece laid on each other by least squares over points along their trued edges: on
 * a fold up and down only, else moved and turned (the closed solution in the plane; Kabsch, "A
 * solution for the best rotation to relate two sets of vectors", 1976).
 */
final class TracingMean {
  private static final int ROUNDS = 4;
  private static final double STRETCHED = 0.02;

  private final List<LaidTracing> laid;
  private final List<String> names;
  private final List<Transform> places = new ArrayList<>();
  private List<Point> mean;

  TracingMean(List<LaidTracing> laid) {
    this.laid = laid;
    this.names = laid.get(0).edges;
    this.mean = laid.get(0).stations(names);
    for (int round = 0; round < ROUNDS; round++) {
      places.clear();
      laid.forEach(one -> places.add(place(one)));
      mean = mean();
    }
    // The mean lies where the first tracing does.
    Transform back = places.get(0).inverse();
    places.replaceAll(place -> place.then(back));
    mean = mean();
  }

  private List<Point> mean() {
    double[] x = new double[mean.size()];
    double[] y = new double[mean.size()];
    for (int t = 0; t < laid.size(); t++) {
      List<Point> stations = laid.get(t).stations(names);
      for (int i = 0; i < x.length; i++) {
        Point placed = places.get(t).apply(stations.get(i));
        x[i] += placed.x() / laid.size();
        y[i] += placed.y() / laid.size();
      }
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      points.add(new Point(x[i], y[i]));
    }
    return points;
  }

  /** Where a tracing fits the mean best. */
  private Transform place(LaidTracing one) {
    List<Point> stations = one.stations(names);
    Point from = centre(stations);
    Point to = centre(mean);
    if (one.isFolded()) {
      return Transform.translation(new Vector(0, to.y() - from.y()));
    }
    double along = 0;
    double across = 0;
    for (int i = 0; i < stations.size(); i++) {
      Vector here = stations.get(i).minus(from);
      Vector there = mean.get(i).minus(to);
      along += here.dot(there);
      across += here.cross(there);
    }
    return Transform.rotation(from, Angle.radians(Math.atan2(across, along)))
        .then(Transform.translation(to.minus(from)));
  }

  private static Point centre(List<Point> points) {
    double x = 0;
    double y = 0;
    for (Point point : points) {
      x += point.x() / points.size();
      y += point.y() / points.size();
    }
    return new Point(x, y);
  }

  /** The root of the mean square of what lies between a tracing and the mean, in mm. */
  double deviation(LaidTracing one) {
    Transform place = places.get(laid.indexOf(one));
    List<Point> stations = one.stations(names);
    double squares = 0;
    for (int i = 0; i < stations.size(); i++) {
      double off = place.apply(stations.get(i)).distanceTo(mean.get(i)).toMm();
      squares += off * off;
    }
    return Math.sqrt(squares / stations.size());
  }

  /** The points of all tracings, edge by edge, in the order along the first one's edge. */
  Tracing together() {
    LaidTracing first = laid.get(0);
    List<TracedEdge> edges = new ArrayList<>();
    for (String name : names) {
      Curve edge = first.edge(name);
      List<Point> points = new ArrayList<>();
      for (int t = 0; t < laid.size(); t++) {
        for (Point point : laid.get(t).points(name)) {
          points.add(places.get(t).apply(point));
        }
      }
      points.sort(Comparator.comparing(point -> edge.nearest(point).along()));
      edges.add(TracedEdge.of(name, points));
    }
    Extent extent = first.isFolded() ? Extent.HALF_ON_FOLD : Extent.AS_IT_LIES;
    return Tracing.of(first.tracing.piece(), extent, edges);
  }

  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    double width = middle(one -> box(one).width().toMm());
    double height = middle(one -> box(one).height().toMm());
    for (int t = 0; t < laid.size(); t++) {
      LaidTracing one = laid.get(t);
      if (one.turnedOver) {
        findings.add(turnedOver(t));
      }
      stretched(t, box(one).width().toMm() / width - 1, "wider", "narrower", findings);
      stretched(t, box(one).height().toMm() / height - 1, "longer", "shorter", findings);
    }
    return findings;
  }

  private Box box(LaidTracing one) {
    return one.trued.piece().outline().map(places.get(laid.indexOf(one))).bounds();
  }

  private double middle(ToDoubleFunction<LaidTracing> measure) {
    double[] all = laid.stream().mapToDouble(measure).sorted().toArray();
    return all.length % 2 == 1
        ? all[all.length / 2]
        : Arrays.stream(all, all.length / 2 - 1, all.length / 2 + 1).average().orElseThrow();
  }

  private Place piece() {
    return Place.piece(laid.get(0).tracing.piece());
  }

  private Finding turnedOver(int tracing) {
    return Finding.note(
        "trace.other-side",
        piece(),
        "tracing " + (tracing + 1) + " shows the other side of the piece; it was turned over");
  }

  private void stretched(
      int tracing, double more, String greater, String smaller, List<Finding> findings) {
    if (Math.abs(more) <= STRETCHED) {
      return;
    }
    String which = "tracing " + (tracing + 1);
    findings.add(
        Finding.warning(
                "trace.stretched",
                piece(),
                String.format(
                    Locale.ROOT,
                    "%s is %.1f %% %s than the tracings in the middle: the piece was %s as it lay",
                    which,
                    100 * Math.abs(more),
                    more > 0 ? greater : smaller,
                    more > 0 ? "stretched" : "pushed together"))
            .withRemedy(
                Remedy.of("Lay the piece again without pulling, and trace it again.")
                    .with("trace.again", which)));
  }
}
