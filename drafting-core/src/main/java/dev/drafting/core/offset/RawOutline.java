package dev.drafting.core.offset;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The chain of parallels and joins before distant parts are trimmed against each other. It may
 * still cross itself.
 */
final class RawOutline {
  private static final double WIDEST = 99_000;

  private final List<OffsetEdge> edges;
  private final Map<Integer, CornerTreatment> corners;
  private final boolean closed;
  private final List<ParallelRun> runs = new ArrayList<>();
  private final List<CornerPlan> plans = new ArrayList<>();

  private RawOutline(
      List<OffsetEdge> edges, Map<Integer, CornerTreatment> corners, boolean closed) {
    this.edges = edges;
    this.corners = corners;
    this.closed = closed;
  }

  /**
   * Builds the chain.
   *
   * @param edges the outline
   * @param corners treatments by the edge before the corner; a mitre where none is given
   * @param closed whether the last edge meets the first
   * @param tolerance millimetres
   */
  static RawOutline of(
      List<OffsetEdge> edges,
      Map<Integer, CornerTreatment> corners,
      boolean closed,
      double tolerance) {
    RawOutline outline = new RawOutline(edges, corners, closed);
    outline.runBeside(tolerance);
    outline.planCorners();
    outline.dropImpossibleTrims();
    return outline;
  }

  /**
   * The chain: strands each ending where the next begins, the last where the first begins if it is
   * closed. The first belongs to the first edge where that has any.
   */
  List<Strand> chain() {
    List<Strand> joined = ChainJoints.snapped(ChainJoints.merged(unjoined()), closed);
    return ChainJoints.snapped(Spikes.removed(joined, closed), closed);
  }

  /** What was lost at corners because a curve is tighter there than its distance. */
  List<Trimming> trimmings() {
    List<Trimming> trimmings = new ArrayList<>();
    int n = runs.size();
    for (int i = 0; i < n; i++) {
      ParallelRun run = runs.get(i);
      List<Strand> kept = run.between(plans.get((i + n - 1) % n).startB(), plans.get(i).endA());
      if (kept.isEmpty()) {
        continue;
      }
      Strand first = kept.get(0);
      Strand last = kept.get(kept.size() - 1);
      if (run.startsTurnedBack() && first.origin() != null) {
        Length until = lengthTo(run, first.origin(), first.origin().from());
        trimmings.add(tight(run, first.start(), until));
      }
      if (run.endsTurnedBack() && last.origin() != null) {
        Length until = lengthTo(run, last.origin(), last.origin().to());
        trimmings.add(tight(run, last.end(), length(run).minus(until)));
      }
    }
    trimmings.removeIf(trimming -> !trimming.lost().isPositive());
    return trimmings;
  }

  /** How long the edge is from where the run begins to a place beside it. */
  private Length lengthTo(ParallelRun run, Origin origin, double at) {
    return length(run.edge(), run.first().index(), origin.index())
        .plus(origin.segment().lengthTo(at));
  }

  private Length length(ParallelRun run) {
    return length(run.edge(), run.first().index(), run.last().index() + 1);
  }

  private Length length(int edge, int from, int to) {
    return edges.get(edge).curve().segments().subList(from, to).stream()
        .map(Segment::length)
        .reduce(Length.ZERO, Length::plus);
  }

  private Trimming tight(ParallelRun run, Point at, Length lost) {
    return new Trimming(edges.get(run.edge()).name(), at, Trimming.Cause.TIGHT_CURVE, lost);
  }

  private void runBeside(double tolerance) {
    for (int edge = 0; edge < edges.size(); edge++) {
      List<ParallelRun> own = runsBeside(edge, CornerPlanner.TOUCHING, tolerance);
      if (own.isEmpty()) {
        own = runsBeside(edge, 0, tolerance);
      }
      if (own.isEmpty()) {
        throw DraftingException.of("the edge has no length")
            .at(edges.get(edge).name())
            .value(edges.get(edge).curve())
            .accepted("an edge longer than 0 mm");
      }
      addJoined(own);
    }
  }

  /** What runs on without a corner is one run, so that a corner may be cut anywhere on it. */
  private void addJoined(List<ParallelRun> own) {
    int from = 0;
    for (int to = 1; to <= own.size(); to++) {
      if (to == own.size() || !own.get(to - 1).runsOnInto(own.get(to))) {
        runs.add(ParallelRun.joined(own.subList(from, to)));
        from = to;
      }
    }
  }

  /** Beside longer ones, segments shorter than the ends of edges may be apart get no parallel. */
  private List<ParallelRun> runsBeside(int edge, double longerThan, double tolerance) {
    List<ParallelRun> own = new ArrayList<>();
    List<Segment> segments = edges.get(edge).curve().segments();
    double distance = edges.get(edge).distance().toMm();
    for (int index = 0; index < segments.size(); index++) {
      checkRadius(segments.get(index), edge, distance);
      Box box = segments.get(index).bounds();
      if (Math.max(box.maxX() - box.minX(), box.maxY() - box.minY()) > longerThan) {
        own.add(ParallelRun.of(segments.get(index), edge, index, distance, tolerance));
      }
    }
    return own;
  }

  private void checkRadius(Segment segment, int edge, double distance) {
    if (segment instanceof Arc
        && Math.abs(segment.curvatureAt(0)) * (WIDEST - Math.abs(distance)) < 1) {
      throw DraftingException.of("an arc of the edge is too wide")
          .at(edges.get(edge).name())
          .value("a radius over 100 m")
          .accepted("a radius up to 100 m with its distance, or a line");
    }
  }

  private void planCorners() {
    for (int i = 0; i < runs.size(); i++) {
      ParallelRun a = runs.get(i);
      ParallelRun b = runs.get((i + 1) % runs.size());
      if (!closed && i + 1 == runs.size()) {
        plans.add(openEnds(a, b));
        continue;
      }
      boolean corner = i + 1 == runs.size() || a.edge() != b.edge();
      CornerTreatment treatment =
          corner
              ? corners.getOrDefault(a.edge(), CornerTreatment.mitre())
              : CornerTreatment.mitre();
      plans.add(plan(a, b, treatment));
    }
  }

  /** An open chain ends square: with the ends of the parallels, or before they turn back. */
  private static CornerPlan openEnds(ParallelRun last, ParallelRun first) {
    return new CornerPlan(
        last.lastForward(), List.of(), List.of(), List.of(), first.firstForward());
  }

  private CornerPlan plan(ParallelRun a, ParallelRun b, CornerTreatment treatment) {
    if (treatment.kind() != CornerTreatment.Kind.FOLDED_BACK) {
      return CornerPlanner.plan(a, b, a.edge(), treatment);
    }
    CornerPlan folded = FoldedBack.plan(runsOf(a.edge()), runsOf(b.edge()), a.edge(), treatment);
    return folded != null ? folded : CornerPlanner.plan(a, b, a.edge(), CornerTreatment.mitre());
  }

  private List<ParallelRun> runsOf(int edge) {
    return runs.stream().filter(run -> run.edge() == edge).toList();
  }

  /** Where both ends of a run are cut so far that nothing is left, its corners are left uncut. */
  private void dropImpossibleTrims() {
    int n = runs.size();
    for (int i = 0; i < n; i++) {
      int before = (i + n - 1) % n;
      if (plans.get(before).startB() >= plans.get(i).endA() - 1e-9) {
        leaveUncut(before);
        leaveUncut(i);
      }
    }
  }

  private void leaveUncut(int corner) {
    ParallelRun a = runs.get(corner);
    ParallelRun b = runs.get((corner + 1) % runs.size());
    CornerPlan plan = plans.get(corner);
    if (!closed && corner + 1 == runs.size()) {
      plans.set(corner, new CornerPlan(a.strands().size(), List.of(), List.of(), List.of(), 0));
    } else if (plan.startB() > 0 || plan.endA() < a.strands().size()) {
      plans.set(corner, CornerPlanner.throughCorner(a, b, a.edge()));
    }
  }

  private List<Strand> unjoined() {
    List<Strand> chain = new ArrayList<>();
    int n = runs.size();
    for (int i = 0; i < n; i++) {
      CornerPlan before = plans.get((i + n - 1) % n);
      CornerPlan after = plans.get(i);
      chain.addAll(before.beforeB());
      chain.addAll(runs.get(i).between(before.startB(), after.endA()));
      chain.addAll(after.beyondA());
      chain.addAll(after.across());
    }
    return chain;
  }
}
