package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What a list of edges must be to enclose a piece. */
final class PieceCheck {
  private static final double GAP = Piece.GAP_MM;
  private static final int MOST_SEGMENTS = 1_000_000;
  private static final double SMALLEST_SQUARE_MM = 1e-6;

  private PieceCheck() {}

  /** The closed outline of the edges, or a refusal that names the edge at fault. */
  static Curve outline(List<Edge> edges) {
    refuseEmpty(edges);
    refuseSameNames(edges);
    refuseTooMany(edges);
    refuseGaps(edges);
    List<Segment> segments = new ArrayList<>();
    edges.forEach(e -> segments.addAll(e.curve().segments()));
    Curve outline = Curve.of(segments);
    refuseClockwise(outline);
    refuseAcrossFold(edges, outline);
    return outline;
  }

  private static void refuseEmpty(List<Edge> edges) {
    if (edges.isEmpty()) {
      throw DraftingException.of("the piece has no edges").value(0).accepted("one edge or more");
    }
  }

  private static void refuseSameNames(List<Edge> edges) {
    Set<String> names = new HashSet<>();
    for (Edge edge : edges) {
      if (!names.add(edge.name())) {
        throw DraftingException.of("two edges have the same name")
            .value(edge.name())
            .accepted("a name of its own for every edge");
      }
    }
  }

  private static void refuseTooMany(List<Edge> edges) {
    long segments = edges.stream().mapToLong(e -> e.curve().segments().size()).sum();
    if (segments > MOST_SEGMENTS) {
      throw DraftingException.of("the outline has too many points")
          .value(segments)
          .accepted("a million at most");
    }
  }

  private static void refuseGaps(List<Edge> edges) {
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get(i);
      Edge after = edges.get((i + 1) % edges.size());
      Point end = before.curve().end();
      Point start = after.curve().start();
      double gap = Math.hypot(start.x() - end.x(), start.y() - end.y());
      if (!(gap <= GAP)) {
        throw DraftingException.of(
                "the outline is open between the end of "
                    + before.name()
                    + " and the start of "
                    + after.name())
            .value("a gap of " + gap + " mm")
            .accepted("edges in counter-clockwise order, each beginning where the last one ends");
      }
    }
  }

  private static void refuseClockwise(Curve outline) {
    double area = outline.areaSquareMm();
    if (!(Math.abs(area) >= SMALLEST_SQUARE_MM)) {
      throw DraftingException.of("the outline encloses nothing")
          .value(area + " square mm")
          .accepted("an outline with an area");
    }
    if (area < 0) {
      throw DraftingException.of("the outline runs clockwise")
          .accepted("edges that run counter-clockwise, with the piece on their left");
    }
  }

  private static void refuseAcrossFold(List<Edge> edges, Curve outline) {
    long folds = edges.stream().filter(Edge::isOnFold).count();
    if (folds > 1) {
      throw DraftingException.of("more than one edge lies on the fold")
          .value(folds)
          .accepted("one at most");
    }
    double across = outline.bounds().minX();
    if (folds == 1 && across < -GAP) {
      throw DraftingException.of("the half piece reaches across its fold")
          .value("x = " + across + " mm")
          .accepted("a half with x of zero or more");
    }
  }

  static DraftingException unknownEdge(String edge, List<Edge> edges) {
    return DraftingException.of("there is no such edge")
        .value(edge)
        .accepted(edges.stream().map(Edge::name).collect(Collectors.joining(", ")));
  }

  /** The angle of the cloth on the left where one curve follows another, 0 to 2 pi. */
  static Angle interiorAngle(Curve before, Curve after) {
    List<Segment> arriving = before.segments();
    Vector in = arriving.get(arriving.size() - 1).directionAt(1);
    Vector out = after.segments().get(0).directionAt(0);
    return Angle.radians(Math.PI - Math.atan2(in.cross(out), in.dot(out)));
  }
}
