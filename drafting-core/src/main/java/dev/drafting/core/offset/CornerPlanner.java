package dev.drafting.core.offset;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Brings the parallels of two neighbouring segments together. Gaps are closed by the treatment,
 * overruns are trimmed where the parallels really meet, and where allowances of unequal width meet
 * almost in line a step leads from one to the other.
 */
final class CornerPlanner {
  /** Below this many millimetres the two parallels are taken to meet already. */
  static final double TOUCHING = 1e-6;

  private static final double STRAIGHT = 1e-9;

  /** Curves fitted beside a short tail may lie off by this many times its length. */
  private static final double ASIDE = 10;

  private final ParallelRun a;
  private final ParallelRun b;
  private final CornerShape shape;
  private final int joinEdge;

  private CornerPlanner(ParallelRun a, ParallelRun b, int joinEdge) {
    this.a = a;
    this.b = b;
    this.joinEdge = joinEdge;
    this.shape =
        CornerShape.of(a.sourceEnd(), a.endWay(), b.startWay(), a.distance(), b.distance());
  }

  /**
   * Plans one corner.
   *
   * @param a the run that arrives
   * @param b the run that leaves
   * @param joinEdge the edge that joins here are attributed to
   * @param treatment how a gap is closed; folded-back corners are planned by {@link FoldedBack}
   */
  static CornerPlan plan(ParallelRun a, ParallelRun b, int joinEdge, CornerTreatment treatment) {
    if (treatment.kind() == CornerTreatment.Kind.SQUARE && treatment.side() == CornerSide.AFTER) {
      return new CornerPlanner(b.reversed(), a.reversed(), joinEdge)
          .plan(treatment.reversed())
          .reversed(b.strands().size(), a.strands().size());
    }
    return new CornerPlanner(a, b, joinEdge).plan(treatment);
  }

  /**
   * Leads from one run to the corner itself and from there to the other run. Where a run is turned
   * back at the corner, it is left at the cusp.
   */
  static CornerPlan throughCorner(ParallelRun a, ParallelRun b, int joinEdge) {
    List<Strand> across = new ArrayList<>();
    Point corner = a.sourceEnd();
    double last = a.lastForward();
    double first = b.firstForward();
    addLine(across, OffsetTag.STEP, joinEdge, a.pointAt(last), corner);
    addLine(across, OffsetTag.STEP, joinEdge, corner, b.pointAt(first));
    return new CornerPlan(last, List.of(), across, List.of(), first);
  }

  private static void addLine(List<Strand> strands, OffsetTag tag, int edge, Point from, Point to) {
    if (!from.equals(to)) {
      strands.add(new Strand(new Line(from, to), tag, edge, null, false));
    }
  }

  private CornerPlan plan(CornerTreatment treatment) {
    double reachA = shape.reachA();
    double reachB = shape.reachB();
    boolean turnedBack = a.endsTurnedBack() || b.startsTurnedBack();
    if (reachA * reachB < 0 && steps(treatment)) {
      return turnedBack ? stepBetweenCusps() : step();
    }
    if (turnedBack) {
      return pastCusps(treatment);
    }
    if (shape.touches()) {
      return bridge(a.end(), List.of(), b.start());
    }
    if (treatment.kind() == CornerTreatment.Kind.SQUARE && canBeSquare()) {
      return square();
    }
    return isGap() ? closeGap(treatment) : trimmed();
  }

  private boolean isGap() {
    return shape.reachA() >= -TOUCHING && shape.reachB() >= -TOUCHING;
  }

  private CornerPlan trimmed() {
    CornerPlan trimmed = CornerTrim.trim(a, b, shape);
    if (trimmed != null) {
      return trimmed;
    }
    boolean turnedBack = a.endsTurnedBack() || b.startsTurnedBack();
    return !turnedBack && canStep() ? step() : throughCorner(a, b, joinEdge);
  }

  /**
   * A gap beside an end that is turned back is closed as if it were not, and the straight line to
   * its end is left where the part that runs forwards crosses it: that is before the end, since the
   * curve turns on in the same sense. Through the corner itself the allowance would shrink to
   * nothing there.
   */
  private CornerPlan pastCusps(CornerTreatment treatment) {
    if (!isGap()) {
      return trimmed();
    }
    CornerPlan gap = closeGap(treatment);
    double endA = gap.endA();
    double startB = gap.startB();
    List<Strand> beyondA = gap.beyondA();
    List<Strand> beforeB = gap.beforeB();
    if (a.endsTurnedBack()) {
      Point leave = beyondA.isEmpty() ? a.end() : beyondA.get(0).end();
      CornerTrim.Place place = CornerTrim.firstOn(a.reversed(), new Line(leave, a.end()));
      if (place == null) {
        return betweenCusps(treatment);
      }
      endA = a.strands().size() - place.at();
      beyondA = List.of(a.continuation(place.point(), leave, true));
    }
    if (b.startsTurnedBack()) {
      Point reach = beforeB.isEmpty() ? b.start() : beforeB.get(0).start();
      CornerTrim.Place place = CornerTrim.firstOn(b, new Line(reach, b.start()));
      if (place == null) {
        return betweenCusps(treatment);
      }
      startB = place.at();
      beforeB = List.of(b.continuation(reach, place.point(), false));
    }
    return new CornerPlan(endA, beyondA, gap.across(), beforeB, startB);
  }

  /**
   * The parallel that is not turned back runs on straight to the part of the other that runs
   * forwards; or both run straight on from their cusps to where they meet, within the limit.
   */
  private CornerPlan betweenCusps(CornerTreatment treatment) {
    CornerPlan continued = CornerTrim.pastCusp(a, b, shape);
    if (continued != null) {
      return continued;
    }
    if (a.isTurnedBack() || b.isTurnedBack()) {
      return throughCorner(a, b, joinEdge);
    }
    double last = a.lastForward();
    double first = b.firstForward();
    CornerPlan cut = cutTail(last, first);
    if (cut != null) {
      return cut;
    }
    Point tip = tipOf(last, first, treatment);
    List<Strand> across = line(OffsetTag.JOIN, a.pointAt(last), tip);
    across.addAll(line(OffsetTag.JOIN, tip, b.pointAt(first)));
    return new CornerPlan(last, List.of(), across, List.of(), first);
  }

  /**
   * Where a curve is too tight on both sides of the corner, its parallel crosses itself before one
   * cusp and behind the other. The tail between may be so flat that the fitted curves miss each
   * other: then they are cut half-way along it.
   *
   * @return null if the second cusp lies ahead of the first
   */
  private @Nullable CornerPlan cutTail(double last, double first) {
    Point cusp = a.pointAt(last);
    Vector tail = b.pointAt(first).minus(cusp);
    if (tail.dot(shape.wayA()) >= 0) {
      return null;
    }
    CornerPlan crossing = CornerTrim.crossing(a, b, shape);
    if (crossing != null) {
      return crossing;
    }
    Point middle = cusp.plus(tail.times(0.5));
    Vector aside = tail.left().times(ASIDE);
    Line across = new Line(middle.plus(aside.negated()), middle.plus(aside));
    CornerTrim.Place leave = CornerTrim.firstOn(a.reversed(), across);
    CornerTrim.Place reach = CornerTrim.firstOn(b, across);
    return leave == null || reach == null
        ? null
        : new CornerPlan(
            a.strands().size() - leave.at(),
            List.of(),
            line(OffsetTag.JOIN, leave.point(), reach.point()),
            List.of(),
            reach.at());
  }

  /**
   * Where two parallels meet when they run straight on; the end of the first if that is too far.
   */
  private Point tipOf(double last, double first, CornerTreatment treatment) {
    Point end = a.pointAt(last);
    Vector gap = b.pointAt(first).minus(end);
    Vector on = a.directionAt(last);
    Vector back = b.directionAt(first).negated();
    double onward = gap.cross(back) / on.cross(back);
    double backward = gap.cross(on) / on.cross(back);
    boolean bevelled = treatment.kind() == CornerTreatment.Kind.BEVEL;
    double most = CornerTreatment.mitre().limit() * shape.wider();
    boolean meet = onward >= 0 && backward >= 0 && Math.max(onward, backward) <= most;
    return meet && !bevelled ? end.plus(on.times(onward)) : end;
  }

  /** From the end of A straight on to a point, across, and from another point on to B. */
  private CornerPlan bridge(Point leaveA, List<Strand> across, Point reachB) {
    return new CornerPlan(a.strands().size(), beyond(leaveA), across, before(reachB), 0);
  }

  private List<Strand> beyond(Point to) {
    return a.end().equals(to) ? List.of() : List.of(a.continuation(a.end(), to, true));
  }

  private List<Strand> before(Point from) {
    return b.start().equals(from) ? List.of() : List.of(b.continuation(from, b.start(), false));
  }

  private List<Strand> line(OffsetTag tag, Point from, Point to) {
    List<Strand> strands = new ArrayList<>();
    addLine(strands, tag, joinEdge, from, to);
    return strands;
  }

  private CornerPlan closeGap(CornerTreatment treatment) {
    return switch (treatment.kind()) {
      case BEVEL -> bridge(a.end(), line(OffsetTag.JOIN, a.end(), b.start()), b.start());
      case ROUND -> round();
      default -> mitre(treatment.limit());
    };
  }

  private CornerPlan mitre(double limit) {
    double most = limit * shape.wider();
    if (shape.tipDistance() <= most) {
      Point tip = shape.tip();
      return bridge(tip, List.of(), tip);
    }
    Vector towards = towardsTip();
    Point leave = cutAt(most, towards, a.end(), shape.wayA());
    Point reach = cutAt(most, towards, b.start(), shape.wayB().negated());
    return bridge(leave, line(OffsetTag.JOIN, leave, reach), reach);
  }

  private Vector towardsTip() {
    double far = shape.tipDistance();
    return far < 1e9 ? shape.tip().minus(shape.corner()).unit() : shape.wayA();
  }

  private Point cutAt(double most, Vector towards, Point from, Vector way) {
    double already = from.minus(shape.corner()).dot(towards);
    return from.plus(way.times((most - already) / way.dot(towards)));
  }

  private CornerPlan round() {
    double turn = Math.atan2(shape.sine(), shape.cosine());
    boolean wideA = Math.abs(a.distance()) >= Math.abs(b.distance());
    double ratio = wideA ? b.distance() / a.distance() : a.distance() / b.distance();
    double sweep = Math.copySign(Math.abs(turn) - Math.acos(ratio), turn);
    if (Math.abs(sweep) * shape.wider() <= TOUCHING) {
      return mitre(CornerTreatment.mitre().limit());
    }
    Vector spoke = wideA ? a.end().minus(shape.corner()) : b.start().minus(shape.corner());
    double from = spoke.angle().toRadians() - (wideA ? 0 : sweep);
    Arc arc =
        Arc.of(shape.corner(), Length.mm(shape.wider()), Angle.radians(from), Angle.radians(sweep));
    return bridge(
        wideA ? a.end() : arc.start(),
        List.of(Strand.join(arc, joinEdge)),
        wideA ? arc.end() : b.start());
  }

  /** How far beyond the corner, along A, the line parallel to B crosses A itself. */
  private double crossingOnA() {
    return shape.sine() == 0 ? Double.POSITIVE_INFINITY : b.distance() / shape.sine();
  }

  private boolean canBeSquare() {
    double x = crossingOnA();
    return a.distance() != 0
        && a.distance() * b.distance() >= 0
        && x >= 0
        && Math.hypot(x, a.distance()) <= CornerTreatment.mitre().limit() * shape.wider();
  }

  private CornerPlan square() {
    Point crossing = shape.corner().plus(shape.wayA().times(crossingOnA()));
    Point leave = a.end().plus(shape.wayA().times(crossingOnA()));
    if (crossingOnA() * shape.cosine() <= TOUCHING) {
      return bridge(leave, line(OffsetTag.JOIN, leave, crossing), crossing);
    }
    Vector down = crossing.minus(leave);
    Line cut = new Line(leave, crossing.plus(down));
    CornerTrim.Place place = CornerTrim.firstOn(b, cut);
    if (place == null) {
      return isGap() ? mitre(CornerTreatment.mitre().limit()) : trimmed();
    }
    return new CornerPlan(
        a.strands().size(),
        beyond(leave),
        line(OffsetTag.JOIN, leave, place.point()),
        List.of(),
        place.at());
  }

  private boolean canStep() {
    double narrow = Math.min(Math.abs(a.distance()), Math.abs(b.distance()));
    // equal and opposite distances at a smooth corner must not hang on the rounding of its turn
    double room = shape.wider() * (1 + STRAIGHT);
    return shape.cosine() > 0.25 && narrow / shape.cosine() <= room;
  }

  private boolean steps(CornerTreatment treatment) {
    boolean wanted =
        treatment.kind() == CornerTreatment.Kind.STEP
            || !(shape.tipDistance() <= treatment.limit() * shape.wider());
    return wanted && canStep();
  }

  private CornerPlan stepBetweenCusps() {
    double last = a.lastForward();
    double first = b.firstForward();
    List<Strand> across = line(OffsetTag.STEP, a.pointAt(last), b.pointAt(first));
    return new CornerPlan(last, List.of(), across, List.of(), first);
  }

  /** The wider allowance ends square at the corner; the narrower parallel runs into that end. */
  private CornerPlan step() {
    boolean wideA = Math.abs(a.distance()) > Math.abs(b.distance());
    Vector outward = wideA ? shape.outwardA() : shape.outwardB();
    double narrow = wideA ? b.distance() : a.distance();
    Point foot = shape.corner().plus(outward.times(narrow / shape.cosine()));
    if (narrow * shape.sine() < 0) {
      return bridge(a.end(), line(OffsetTag.STEP, a.end(), b.start()), b.start());
    }
    return wideA
        ? bridge(a.end(), line(OffsetTag.STEP, a.end(), foot), foot)
        : bridge(foot, line(OffsetTag.STEP, foot, b.start()), b.start());
  }
}
