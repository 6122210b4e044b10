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
import dev.drafting.core.measure.Length;
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

  /** Of each tracing, the points along its edges that answer to those of the others. */
  private final List<List<Point>> stations = new ArrayList<>();

  private final List<Transform> places = new ArrayList<>();
  private List<Point> mean;

  TracingMean(List<LaidTracing> laid) {
    this.laid = laid;
    this.names = laid.get(0).edges;
    laid.forEach(one -> stations.add(one.stations(names)));
    this.mean = stations.get(0);
    for (int round = 0; round < ROUNDS; round++) {
      places.clear();
      stations.forEach(points -> places.add(place(points)));
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
      for (int i = 0; i < x.length; i++) {
        Point placed = places.get(t).apply(stations.get(t).get(i));
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
  private Transform place(List<Point> points) {
    Point from = centre(points);
    Point to = centre(mean);
    if (laid.get(0).isFolded()) {
      return Transform.translation(new Vector(0, to.y() - from.y()));
    }
    double along = 0;
    double across = 0;
    for (int i = 0; i < points.size(); i++) {
      Vector here = points.get(i).minus(from);
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

  /** Of each tracing, the root of the mean square of what lies between it and the mean. */
  List<Length> deviations() {
    List<Length> deviations = new ArrayList<>();
    for (int t = 0; t < laid.size(); t++) {
      double squares = 0;
      for (int i = 0; i < mean.size(); i++) {
        Point placed = places.get(t).apply(stations.get(t).get(i));
        double off = placed.distanceTo(mean.get(i)).toMm();
        squares += off * off;
      }
      deviations.add(Length.mm(Math.sqrt(squares / mean.size())));
    }
    return deviations;
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
    List<Box> boxes = new ArrayList<>();
    for (int t = 0; t < laid.size(); t++) {
      boxes.add(laid.get(t).trued.piece().outline().map(places.get(t)).bounds());
    }
    double width = middle(boxes, box -> box.width().toMm());
    double height = middle(boxes, box -> box.height().toMm());
    for (int t = 0; t < laid.size(); t++) {
      if (laid.get(t).turnedOver) {
        findings.add(turnedOver(t));
      }
      Box box = boxes.get(t);
      stretched(t, box.width().toMm() / width - 1, "wider", "narrower", findings);
      stretched(t, box.height().toMm() / height - 1, "longer", "shorter", findings);
    }
    return findings;
  }

  private static double middle(List<Box> boxes, ToDoubleFunction<Box> measure) {
    double[] all = boxes.stream().mapToDouble(measure).sorted().toArray();
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
