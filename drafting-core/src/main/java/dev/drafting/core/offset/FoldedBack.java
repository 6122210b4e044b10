package dev.drafting.core.offset;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The corner of a turned-up hem: what the neighbour's parallel does above the fold it does mirrored
 * below, and mirrored again beyond a second fold. Written for a hem that leaves the corner; the
 * other side is the same with the outline turned round.
 *
 * <p>Depths are measured outward from the tangent of the hem's finished edge at the corner.
 */
final class FoldedBack {
  private static final double STEEPEST = 0.2;
  private static final double FARTHEST = 4;
  private static final int PIECES = 16;

  /** What a parallel lacks or has too much by less than touching is left to the joints. */
  private static final List<Strand> NO_LINE = List.of();

  private final List<Segment> rising;
  private final ParallelRun neighbour;
  private final ParallelRun hem;
  private final Point corner;
  private final Vector outward;
  private final List<Double> folds;
  private final int joinEdge;

  private FoldedBack(
      List<ParallelRun> neighbours, ParallelRun hem, List<Double> folds, int joinEdge) {
    this.neighbour = neighbours.get(neighbours.size() - 1);
    this.hem = hem;
    this.corner = hem.sourceStart();
    this.outward = Parallels.outward(hem.startWay());
    this.folds = folds;
    this.joinEdge = joinEdge;
    this.rising = rising(neighbours);
  }

  /**
   * Plans a folded-back corner.
   *
   * @param arriving all runs of the edge before the corner
   * @param leaving all runs of the edge after it
   * @param joinEdge the edge that the mirrored lines are attributed to
   * @param treatment which is the hem, and its folds
   * @return null where nothing is turned up or the neighbour runs along the hem
   */
  static @Nullable CornerPlan plan(
      List<ParallelRun> arriving,
      List<ParallelRun> leaving,
      int joinEdge,
      CornerTreatment treatment) {
    List<Double> folds = treatment.folds().stream().map(fold -> fold.toMm()).toList();
    if (treatment.side() == CornerSide.AFTER) {
      return plan(arriving, leaving.get(0), folds, 1, joinEdge);
    }
    ParallelRun hem = arriving.get(arriving.size() - 1);
    List<ParallelRun> turned = new ArrayList<>();
    for (ParallelRun run : leaving) {
      turned.add(0, run.reversed());
    }
    CornerPlan plan = plan(turned, hem.reversed(), folds, -1, joinEdge);
    return plan == null
        ? null
        : plan.reversed(leaving.get(0).strands().size(), hem.strands().size());
  }

  private static @Nullable CornerPlan plan(
      List<ParallelRun> neighbours, ParallelRun hem, List<Double> folds, int side, int joinEdge) {
    boolean turned = side * hem.distance() > folds.get(0);
    Vector outward = Parallels.outward(hem.startWay());
    Vector arrival = neighbours.get(neighbours.size() - 1).endWay();
    if (!turned || side * arrival.dot(outward) <= STEEPEST) {
      return null;
    }
    List<Double> signed = folds.stream().map(fold -> side * fold).toList();
    return new FoldedBack(neighbours, hem, signed, joinEdge).plan(side);
  }

  private double depth(Point point) {
    return point.minus(corner).dot(outward);
  }

  /** The neighbour's parallel from below the corner upwards, with straight continuations. */
  private List<Segment> rising(List<ParallelRun> neighbours) {
    double far = 10 * (Math.abs(hem.distance()) + Math.abs(neighbour.distance()));
    List<Segment> path = new ArrayList<>();
    Point low = neighbour.end().plus(neighbour.endWay().times(far));
    add(path, new Line(low, neighbour.end()));
    for (int i = neighbours.size() - 1; i >= 0; i--) {
      List<Strand> strands = neighbours.get(i).strands();
      for (int j = strands.size() - 1; j >= 0; j--) {
        Segment segment = strands.get(j).segment().reversed();
        Point last = path.get(path.size() - 1).end();
        if (last.distanceTo(segment.start()).toMm() > 1e-9) {
          add(path, new Line(last, segment.start()));
        }
        add(path, segment);
      }
    }
    Point top = path.get(path.size() - 1).end();
    Vector on = neighbours.get(0).startWay().negated();
    add(path, new Line(top, top.plus(on.times(far))));
    return path;
  }

  /** A line that goes straight on from a line makes one with it. */
  private static void add(List<Segment> path, Segment next) {
    int last = path.size() - 1;
    if (last >= 0 && path.get(last) instanceof Line line && next instanceof Line on) {
      if (Math.abs(line.directionAt(0).cross(on.directionAt(0))) < 1e-12) {
        path.set(last, new Line(line.start(), on.end()));
        return;
      }
    }
    path.add(next);
  }

  private @Nullable CornerPlan plan(int side) {
    double deepest = hem.distance();
    List<Segment> mirrored = mirrored(deepest, side);
    List<Segment> above = rising(folds.get(0), folds.get(0) - side);
    if (mirrored.isEmpty() || above.isEmpty() || !joined(mirrored)) {
      return null;
    }
    Point leave = above.get(0).start();
    Point reach = mirrored.get(mirrored.size() - 1).end();
    double beside = Math.abs(reach.minus(hem.start()).dot(hem.startWay()));
    if (Math.abs(depth(reach) - deepest) > CornerPlanner.TOUCHING
        || beside > FARTHEST * Math.abs(deepest)) {
      return null;
    }
    double onHem = reach.minus(hem.start()).dot(hem.startWay());
    if (onHem <= CornerPlanner.TOUCHING) {
      List<Strand> before =
          onHem < -CornerPlanner.TOUCHING
              ? List.of(hem.continuation(reach, hem.start(), false))
              : NO_LINE;
      return withNeighbour(leave, mirrored, before, 0);
    }
    List<Segment> longer = mirrored(1.5 * deepest, side);
    return joined(longer) ? meetHem(leave, longer) : null;
  }

  /** A neighbour that runs to and fro between the folds cannot be mirrored layer by layer. */
  private static boolean joined(List<Segment> segments) {
    for (int i = 1; i < segments.size(); i++) {
      Length gap = segments.get(i - 1).end().distanceTo(segments.get(i).start());
      if (gap.toMm() > CornerPlanner.TOUCHING) {
        return false;
      }
    }
    return true;
  }

  /** The hem's own parallel is cut where the mirrored line crosses it. */
  private @Nullable CornerPlan meetHem(Point leave, List<Segment> mirrored) {
    for (int i = mirrored.size() - 1; i >= 0; i--) {
      for (int j = 0; j < hem.strands().size() && !hem.strands().get(j).turnedBack(); j++) {
        Segment across = hem.strands().get(j).segment();
        double[] met = CornerTrim.meet(across, 0.1, mirrored.get(i), 0.5, false);
        if (met != null) {
          List<Segment> kept = new ArrayList<>(mirrored.subList(0, i));
          kept.add(mirrored.get(i).between(0, met[1]));
          return withNeighbour(leave, kept, List.of(), j + met[0]);
        }
      }
    }
    return null;
  }

  /** Null where the neighbour's parallel is left before its last run begins. */
  private @Nullable CornerPlan withNeighbour(
      Point leave, List<Segment> mirrored, List<Strand> before, double startOnHem) {
    List<Strand> across = new ArrayList<>();
    for (Segment segment : mirrored) {
      across.add(Strand.join(segment, joinEdge));
    }
    Vector beyondEnd = leave.minus(neighbour.end());
    double on = beyondEnd.dot(neighbour.endWay());
    if (on >= -CornerPlanner.TOUCHING
        && Math.abs(beyondEnd.cross(neighbour.endWay())) <= CornerPlanner.TOUCHING) {
      List<Strand> beyond =
          on > CornerPlanner.TOUCHING
              ? List.of(neighbour.continuation(neighbour.end(), leave, true))
              : NO_LINE;
      return new CornerPlan(neighbour.strands().size(), beyond, across, before, startOnHem);
    }
    Double place = placeOnNeighbour(leave);
    return place == null ? null : new CornerPlan(place, List.of(), across, before, startOnHem);
  }

  private @Nullable Double placeOnNeighbour(Point leave) {
    for (int i = neighbour.strands().size() - 1; i >= 0; i--) {
      Segment segment = neighbour.strands().get(i).segment().reversed();
      Double u = parameter(segment, depth(leave));
      if (u != null && segment.pointAt(u).distanceTo(leave).toMm() < CornerPlanner.TOUCHING) {
        return i + 1 - u;
      }
    }
    return null;
  }

  /** From the first fold outward to a depth: one mirrored stretch for every layer. */
  private List<Segment> mirrored(double deepest, int side) {
    List<Segment> all = new ArrayList<>();
    Transform mirror = Transform.identity();
    for (int k = 0; k < folds.size() && side * folds.get(k) < side * deepest; k++) {
      double from = folds.get(k);
      boolean lastLayer = k + 1 == folds.size() || side * folds.get(k + 1) >= side * deepest;
      double to = lastLayer ? deepest : folds.get(k + 1);
      Point onFold = corner.plus(outward.times(from));
      mirror = mirror.then(Transform.mirrorIn(onFold, onFold.plus(hem.startWay())));
      for (Segment segment : rising(onGarment(from, k), onGarment(to, k))) {
        all.add(segment.map(mirror));
      }
    }
    return all;
  }

  /** The depth on the flat garment that a depth on layer k came from. */
  private double onGarment(double depth, int layer) {
    double unfolded = depth;
    for (int k = layer; k >= 0; k--) {
      unfolded = 2 * folds.get(k) - unfolded;
    }
    return unfolded;
  }

  /** The neighbour's parallel between two depths, in that order. */
  private List<Segment> rising(double from, double to) {
    boolean up = depthFalls() == from > to;
    double first = up ? from : to;
    double second = up ? to : from;
    List<Segment> kept = new ArrayList<>();
    boolean started = false;
    for (Segment segment : rising) {
      double start = 0;
      if (!started) {
        Double u = parameter(segment, first);
        if (u == null) {
          continue;
        }
        started = true;
        if (u >= 1) {
          continue; // the next segment begins there, or by a rounding beyond
        }
        start = u;
      }
      Double u = parameter(segment.between(start, 1), second);
      double end = u == null ? 1 : start + (1 - start) * u;
      if (end > start) {
        kept.add(segment.between(start, end));
      }
      if (u != null) {
        break;
      }
    }
    return up ? kept : turned(kept);
  }

  private boolean depthFalls() {
    return depth(rising.get(0).start()) > depth(rising.get(rising.size() - 1).end());
  }

  private static List<Segment> turned(List<Segment> segments) {
    List<Segment> turned = new ArrayList<>();
    for (Segment segment : segments) {
      turned.add(segment.reversed());
    }
    Collections.reverse(turned);
    return turned;
  }

  /** The first parameter at which a segment has a depth, or null. */
  private @Nullable Double parameter(Segment segment, double wanted) {
    double before = depth(segment.start()) - wanted;
    int pieces = segment instanceof Line ? 1 : PIECES;
    for (int i = 1; i <= pieces; i++) {
      double u0 = (i - 1.0) / pieces;
      double u1 = (double) i / pieces;
      double after = depth(segment.pointAt(u1)) - wanted;
      if (before == 0) {
        return u0;
      }
      if (before * after <= 0) {
        return segment instanceof Line ? before / (before - after) : halve(segment, wanted, u0, u1);
      }
      before = after;
    }
    return null;
  }

  private double halve(Segment segment, double wanted, double from, double to) {
    double low = from;
    double high = to;
    boolean falling = depth(segment.pointAt(from)) > wanted;
    for (int i = 0; i < 60 && high > low; i++) {
      double middle = (low + high) / 2;
      if (depth(segment.pointAt(middle)) > wanted == falling) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
