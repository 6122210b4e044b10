package dev.drafting.core.offset;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Refuses what is no outline and no line: gaps, clockwise outlines, lines that cross themselves.
 */
final class SourceCheck {
  private static final double JOINED = 1e-6;

  /** How far before and after a crossing one looks which way the line comes and goes. */
  private static final double BESIDE = 1e-4;

  /** Two ways closer together than this, in radians, run along each other rather than cross. */
  private static final double ALONG_EACH_OTHER = 1e-3;

  private final List<OffsetEdge> edges;
  private final Curve line;

  private SourceCheck(List<OffsetEdge> edges, boolean closed) {
    this.edges = edges;
    List<Strand> chain = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      for (Segment segment : edges.get(i).curve().segments()) {
        chain.add(Strand.join(segment, i));
      }
    }
    this.line = Curve.of(ChainJoints.snapped(chain, closed).stream().map(Strand::segment).toList());
  }

  /** The edges of an outline, or an exception that names the one at fault. */
  static List<OffsetEdge> outline(List<OffsetEdge> closedOutline) {
    List<OffsetEdge> edges = joined(closedOutline);
    checkJoined(edges.get(edges.size() - 1), edges.get(0));
    SourceCheck check = new SourceCheck(edges, true);
    check.counterClockwise();
    check.crossesNowhere();
    return edges;
  }

  /** The edges of an open line, or an exception that names the one at fault. */
  static List<OffsetEdge> openLine(List<OffsetEdge> openLine) {
    List<OffsetEdge> edges = joined(openLine);
    new SourceCheck(edges, false).crossesNowhere();
    return edges;
  }

  private static List<OffsetEdge> joined(List<OffsetEdge> chain) {
    List<OffsetEdge> edges = List.copyOf(chain);
    if (edges.isEmpty()) {
      throw DraftingException.of("an outline has no edges").accepted("one edge or more");
    }
    for (int i = 0; i + 1 < edges.size(); i++) {
      checkJoined(edges.get(i), edges.get(i + 1));
    }
    return edges;
  }

  private static void checkJoined(OffsetEdge edge, OffsetEdge next) {
    Length gap = edge.curve().end().distanceTo(next.curve().start());
    if (gap.toMm() > JOINED) {
      throw DraftingException.of("the edge does not end where " + next.name() + " begins")
          .at(edge.name())
          .value("a gap of " + gap)
          .accepted("edges that join up within 0.000001 mm");
    }
  }

  private void counterClockwise() {
    double area = line.areaSquareMm();
    if (!(area > 0)) {
      throw DraftingException.of("the outline runs clockwise or encloses nothing")
          .at(edges.get(0).name())
          .value(area + " mm²")
          .accepted("a counter-clockwise outline with an area above zero");
    }
  }

  private void crossesNowhere() {
    for (Crossing crossing : line.selfCrossings()) {
      if (crosses(crossing)) {
        String edge = edgeAt(crossing.along());
        String other = edgeAt(crossing.alongOther());
        throw DraftingException.of(
                edge.equals(other) ? "the edge crosses itself" : "the edge crosses " + other)
            .at(edge)
            .value(crossing.point())
            .accepted("edges that touch at most");
      }
    }
  }

  /** Whether the line comes and goes on opposite sides; touching places are none. */
  private boolean crosses(Crossing crossing) {
    double[] ways = {
      way(crossing.point(), crossing.along().toMm() - BESIDE),
      way(crossing.point(), crossing.along().toMm() + BESIDE),
      way(crossing.point(), crossing.alongOther().toMm() - BESIDE),
      way(crossing.point(), crossing.alongOther().toMm() + BESIDE)
    };
    double out = turn(ways[0], ways[1]);
    double before = turn(ways[0], ways[2]);
    double after = turn(ways[0], ways[3]);
    return apart(before, out) && apart(after, out) && before < out != after < out;
  }

  private static boolean apart(double way, double out) {
    return way > ALONG_EACH_OTHER
        && way < 2 * Math.PI - ALONG_EACH_OTHER
        && Math.abs(way - out) > ALONG_EACH_OTHER;
  }

  private static double turn(double from, double to) {
    double turn = to - from;
    return turn < 0 ? turn + 2 * Math.PI : turn;
  }

  /** The direction from a point to the line at a length, not a number beyond an open end. */
  private double way(Point from, double along) {
    double total = line.length().toMm();
    double inside = line.isClosed() ? (along + total) % total : along;
    if (inside < 0 || inside > total) {
      return Double.NaN;
    }
    Vector to = line.pointAt(Length.mm(inside)).minus(from);
    return Math.atan2(to.dy(), to.dx());
  }

  private String edgeAt(Length along) {
    double left = along.toMm();
    int last = edges.size() - 1;
    for (OffsetEdge edge : edges.subList(0, last)) {
      left -= edge.curve().length().toMm();
      if (left <= JOINED) {
        return edge.name();
      }
    }
    return edges.get(last).name();
  }
}
