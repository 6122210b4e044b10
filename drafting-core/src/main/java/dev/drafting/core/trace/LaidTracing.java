package dev.drafting.core.trace;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Transform;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** A tracing, trued by itself, in the frame of its piece. */
final class LaidTracing {
  private static final int STATIONS = 24;

  /** As a share of a length; the most that a lay pulls or pushes together. */
  private static final double MOST_BY_THE_LAY = 0.1;

  private static final double CLEARLY = 3;

  final Tracing tracing;
  final boolean turnedOver;
  final TruedPiece trued;
  final List<String> edges;

  private LaidTracing(Tracing tracing, boolean turnedOver) {
    this.tracing = tracing;
    this.turnedOver = turnedOver;
    this.trued = Truing.of(tracing).result();
    this.edges =
        trued.piece().edges().stream()
            .filter(edge -> !edge.isOnFold())
            .map(edge -> edge.name())
            .collect(Collectors.toList());
  }

  static LaidTracing of(Tracing tracing) {
    return new LaidTracing(tracing, false);
  }

  boolean isFolded() {
    return tracing.extent() != Extent.AS_IT_LIES;
  }

  /** Another tracing of the same piece, the same side up. */
  LaidTracing like(Tracing other) {
    LaidTracing laid = of(other);
    if (laid.isFolded() != isFolded()) {
      throw DraftingException.of("one tracing has a fold and another has none")
          .at(tracing.piece())
          .value(other.extent())
          .accepted("tracings on the fold or whole, or all as they lie");
    }
    if (follow(edges, laid.edges)) {
      return checked(laid);
    }
    List<String> backwards = new ArrayList<>(laid.edges);
    Collections.reverse(backwards);
    if (!isFolded() && follow(edges, backwards)) {
      return checked(new LaidTracing(other.map(Transform.mirrorInFold()), true));
    }
    throw DraftingException.of("two tracings of a piece have other edges")
        .at(tracing.piece())
        .value(String.join(", ", laid.edges))
        .accepted(String.join(", ", edges));
  }

  /** Whether names follow each other round the outline alike, from anywhere. */
  private static boolean follow(List<String> names, List<String> others) {
    List<String> turned = new ArrayList<>(others);
    for (int i = 0; i < others.size(); i++) {
      if (turned.equals(names)) {
        return true;
      }
      Collections.rotate(turned, 1);
    }
    return false;
  }

  /** Refuses another tracing whose edges would fit far better with their names moved on. */
  private LaidTracing checked(LaidTracing other) {
    double asNamed = misfit(other, 0);
    if (isFolded() || asNamed <= MOST_BY_THE_LAY) {
      return other;
    }
    for (int shift = 1; shift < edges.size(); shift++) {
      if (misfit(other, shift) * CLEARLY < asNamed) {
        throw DraftingException.of("the edges of one tracing are named from another corner")
            .at(tracing.piece())
            .value(
                "a "
                    + edges.get(shift)
                    + " as long as the "
                    + edges.get(0)
                    + " of the first tracing")
            .accepted("the same names for the same edges");
      }
    }
    return other;
  }

  /** By what share the edges of another tracing are longer or shorter, from a corner on. */
  private double misfit(LaidTracing other, int shift) {
    double squares = 0;
    for (int i = 0; i < edges.size(); i++) {
      Curve theirs = other.edge(edges.get((i + shift) % edges.size()));
      double ratio = theirs.length().toMm() / edge(edges.get(i)).length().toMm();
      squares += Math.log(ratio) * Math.log(ratio);
    }
    return Math.sqrt(squares / edges.size());
  }

  Curve edge(String name) {
    return trued.piece().edge(name).curve();
  }

  /** Points along the edges, as many on each, in the order of these names. */
  List<Point> stations(List<String> names) {
    List<Point> stations = new ArrayList<>();
    for (String name : names) {
      Curve curve = edge(name);
      for (int i = 0; i <= STATIONS; i++) {
        stations.add(curve.pointAt(curve.length().times((double) i / STATIONS)));
      }
    }
    return stations;
  }

  /** The traced points of an edge in the frame of the piece, those left of the fold turned over. */
  List<Point> points(String name) {
    List<Point> points = new ArrayList<>();
    for (TracedEdge stroke : tracing.edges()) {
      if (stroke.name().equals(name)) {
        Polyline placed = stroke.points().map(trued.report().placement());
        for (int i = 0; i < placed.size(); i++) {
          Point point = placed.point(i);
          boolean left = tracing.extent() == Extent.WHOLE && point.x() < 0;
          points.add(left ? new Point(-point.x(), point.y()) : point);
        }
      }
    }
    return points;
  }
}
