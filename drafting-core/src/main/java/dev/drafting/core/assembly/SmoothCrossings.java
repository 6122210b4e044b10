package dev.drafting.core.assembly;

import dev.drafting.core.assembly.Face.Side;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Turns the ends of the edges of openings until they run smoothly across seams and folds. Corners
 * stay where they are, and no seam changes its length.
 */
final class SmoothCrossings {
  private final Pattern pattern;
  private final Surface surface;
  private final double most;

  /** What the corner at the end of an edge has to gain, in radians. */
  private final Map<EdgeEnd, Double> gains = new LinkedHashMap<>();

  private record EdgeEnd(EdgeRef edge, boolean atEnd) {}

  private SmoothCrossings(Pattern pattern, Surface surface, Angle most) {
    this.pattern = pattern;
    this.surface = surface;
    this.most = most.toRadians();
  }

  static Pattern of(Pattern pattern, Angle most) {
    Surface surface = SurfaceBuilder.build(pattern, SewingDirections.of(pattern).seams());
    SmoothCrossings smooth = new SmoothCrossings(pattern, surface, most);
    for (List<LoopStep> loop : surface.loops()) {
      for (int i = 0; i < loop.size(); i++) {
        smooth.add(loop.get(i), loop.get((i + 1) % loop.size()));
      }
    }
    return smooth.turned();
  }

  private void add(LoopStep step, LoopStep next) {
    double off = step.angle - Math.PI;
    boolean pointed = step.corners.stream().anyMatch(c -> c.corner().isPointed());
    if (!step.crosses() || pointed || Math.abs(off) > most || !endsWithEdge(step, next)) {
      return;
    }
    EdgeEnd arriving = new EdgeEnd(edge(step), step.asDrawn);
    EdgeEnd leaving = new EdgeEnd(edge(next), !next.asDrawn);
    boolean straight = isStraight(arriving);
    if (straight && isStraight(leaving)) {
      if (Math.abs(off) > pattern.crossingTolerance().toRadians()) {
        share(off / 2, arriving, leaving);
      }
    } else if (straight) {
      share(off, leaving);
    } else if (isStraight(leaving)) {
      share(off, arriving);
    } else {
      share(off / 2, arriving, leaving);
    }
  }

  private void share(double each, EdgeEnd... ends) {
    for (EdgeEnd end : ends) {
      gains.putIfAbsent(end, -each);
    }
  }

  /** Tells whether both sides come to the seam at an end of their edges, not within them. */
  private boolean endsWithEdge(LoopStep step, LoopStep next) {
    Side after = surface.side(step.asDrawn ? surface.after(step.side) : step.side);
    Side before = surface.side(next.asDrawn ? next.side : surface.after(next.side));
    return after.corner != null && before.corner != null;
  }

  private EdgeRef edge(LoopStep step) {
    Side side = surface.side(step.side);
    return new EdgeRef(side.face.piece.name(), side.edge.name());
  }

  private boolean isStraight(EdgeEnd end) {
    return pattern.edge(end.edge()).curve().segments().stream().allMatch(Line.class::isInstance);
  }

  private Pattern turned() {
    Map<EdgeRef, double[]> turns = new LinkedHashMap<>();
    gains.forEach(
        (end, gain) ->
            turns.computeIfAbsent(end.edge(), edge -> new double[2])[end.atEnd() ? 1 : 0] =
                end.atEnd() ? gain : -gain);
    Pattern turned = pattern;
    for (Map.Entry<EdgeRef, double[]> turn : turns.entrySet()) {
      String piece = turn.getKey().piece();
      Edge edge = turned.edge(turn.getKey());
      Angle atStart = Angle.radians(turn.getValue()[0]);
      Angle atEnd = Angle.radians(turn.getValue()[1]);
      turned = turned.withPiece(turned.piece(piece).withTurnedEdge(edge.name(), atStart, atEnd));
    }
    return turned;
  }
}
