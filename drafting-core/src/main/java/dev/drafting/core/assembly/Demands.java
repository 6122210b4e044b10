package dev.drafting.core.assembly;

import dev.drafting.core.assembly.Face.Side;
import dev.drafting.core.finding.Place;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads from a pattern what truing its pieces together has to meet. */
final class Demands {
  /** A turn that rounding makes, in radians. */
  private static final double EXACT = 1e-7;

  private final Pattern pattern;
  private final Surface surface;
  private final Map<EdgeRef, Integer> number;
  private final List<Demand> demands = new ArrayList<>();
  private final Set<EdgeRef> bending = new LinkedHashSet<>();
  private final Set<Set<LoopStep.PieceCorner>> crossed = new HashSet<>();

  Demands(Pattern pattern, Map<EdgeRef, Integer> number) {
    this.pattern = pattern;
    this.number = number;
    this.surface = SurfaceBuilder.build(pattern, SewingDirections.of(pattern).seams());
  }

  List<Demand> all() {
    return demands;
  }

  /** Straight edges that may only run smoothly across a seam as gentle curves. */
  Set<EdgeRef> bending() {
    return bending;
  }

  /** Seams that are off by no more than this are to match, the others stay as they are. */
  void addSeams(double most) {
    for (Seam seam : pattern.seams()) {
      if (seam.isMirrored()) {
        continue;
      }
      List<Demand.Term> terms = new ArrayList<>();
      double off = -seam.ease().toMm();
      off += addLengths(seam.first(), 1, terms);
      off += addLengths(seam.second(), -1, terms);
      double offset = Math.abs(off) <= most ? off : 0;
      demands.add(new Demand(Place.seam(seam.name()), seam, offset, terms));
    }
  }

  /** An edge that is to stay as long as it is. */
  void addLength(EdgeRef edge) {
    List<Demand.Term> length =
        List.of(new Demand.Term(number.getOrDefault(edge, 0), Demand.LENGTH, 1));
    demands.add(new Demand(Place.edge(edge.piece(), edge.edge()), null, 0, length));
  }

  private double addLengths(List<EdgeRef> edges, double factor, List<Demand.Term> terms) {
    double sum = 0;
    for (EdgeRef edge : edges) {
      sum += factor * pattern.edge(edge).length().toMm();
      terms.add(new Demand.Term(number.getOrDefault(edge, 0), Demand.LENGTH, factor));
    }
    return sum;
  }

  /** Edges that bend by no more than this across a seam or a fold are to run smoothly. */
  void addCrossings(double most) {
    for (List<LoopStep> loop : surface.loops()) {
      for (int i = 0; i < loop.size(); i++) {
        LoopStep step = loop.get(i);
        boolean pointed = step.corners.stream().anyMatch(c -> c.corner().isPointed());
        double off = step.angle - Math.PI;
        if (step.crosses() && !pointed && Math.abs(off) <= most && !step.corners.isEmpty()) {
          addCrossing(step, loop.get((i + 1) % loop.size()), off);
        }
      }
    }
  }

  private void addCrossing(LoopStep step, LoopStep next, double off) {
    EdgeRef arriving = edge(step);
    EdgeRef leaving = edge(next);
    if (isStraight(arriving) && isStraight(leaving) && Math.abs(off) > EXACT) {
      if (Math.abs(off) <= pattern.crossingTolerance().toRadians()) {
        return;
      }
      bending.add(arriving);
      bending.add(leaving);
    }
    if (!crossed.add(new HashSet<>(step.corners))) {
      return;
    }
    List<Demand.Term> terms = new ArrayList<>();
    for (LoopStep.PieceCorner at : step.corners) {
      addCorner(at.piece(), at.corner(), terms);
    }
    LoopStep.PieceCorner first = step.corners.get(0);
    Place place = Place.corner(first.piece(), first.corner().before(), first.corner().after());
    demands.add(new Demand(place, null, Demand.MM_PER_RADIAN * off, terms));
  }

  /** The angle within a corner shrinks as the outline turns more. */
  private void addCorner(String piece, Corner corner, List<Demand.Term> terms) {
    int before = number.getOrDefault(new EdgeRef(piece, corner.before()), 0);
    int after = number.getOrDefault(new EdgeRef(piece, corner.after()), 0);
    terms.add(new Demand.Term(before, Demand.ARRIVING, Demand.MM_PER_RADIAN));
    terms.add(new Demand.Term(after, Demand.LEAVING, -Demand.MM_PER_RADIAN));
  }

  private EdgeRef edge(LoopStep step) {
    Side side = surface.side(step.side);
    return new EdgeRef(side.face.piece.name(), side.edge.name());
  }

  private boolean isStraight(EdgeRef edge) {
    return GivingEdge.isStraight(pattern.edge(edge).curve());
  }
}
